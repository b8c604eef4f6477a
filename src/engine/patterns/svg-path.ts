/** A drawn way as the text of an SVG path (SVG 2, section 9.3). */

import type { Point, Step, Stroke } from './types.ts';
import { endOf } from './way.ts';

/** `M 10 20 L 10 120 A 50 50 0 0 1 60 170`, in decimetres. */
export function svgPath({ from, steps }: Stroke): string {
  const parts = [`M ${from.x} ${from.y}`];
  let at = from;
  for (const step of steps) {
    parts.push(svgStep(step, at));
    at = endOf(step, at);
  }
  return parts.join(' ');
}

/** The page's y goes down, so a turn to the right is SVG's positive direction. */
function svgStep(step: Step, from: Point): string {
  if (step.kind === 'straight') return `L ${step.to.x} ${step.to.y}`;
  const sweep = step.hand === 'right' ? 1 : 0;
  if (step.kind === 'arc') {
    const large = step.part === 'longer' ? 1 : 0;
    return `A ${step.radius} ${step.radius} 0 ${large} ${sweep} ${step.to.x} ${step.to.y}`;
  }
  const { center } = step;
  const radius = hundredths(Math.hypot(from.x - center.x, from.y - center.y));
  // An arc that ends where it begins is nothing to SVG: a circle is two halves.
  const half = (to: Point) => `A ${radius} ${radius} 0 0 ${sweep} ${to.x} ${to.y}`;
  const across = { x: 2 * center.x - from.x, y: 2 * center.y - from.y };
  return `${half(across)} ${half(from)}`;
}

const hundredths = (length: number): number => Math.round(length * 100) / 100;
