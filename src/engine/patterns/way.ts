/** The geometry of a drawn way. Plain numbers: a drawing is looked at, and nothing is scored by it. */
import type { Hand, Point, Step, Stroke } from './types.ts';

/** A straight line, or a bow around a center. Angles in radians, clockwise on the page, 0 to the right. */
export type Segment =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly length: number }
  | {
      readonly kind: 'bow';
      readonly center: Point;
      readonly radius: number;
      readonly begins: number;
      /** More than 0 clockwise, which is a turn to the right. */
      readonly sweep: number;
      readonly length: number;
    };

export interface Place extends Point {
  /** Which way the horse looks there, in radians as above. */
  readonly heading: number;
}

const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);
const angleFrom = (center: Point, { x, y }: Point): number => Math.atan2(y - center.y, x - center.x);
const sideOf = (hand: Hand): 1 | -1 => (hand === 'right' ? 1 : -1);

/** Where a step ends that began at `from`. */
export const endOf = (step: Step, from: Point): Point => (step.kind === 'circle' ? from : step.to);

export function segmentsOf({ from, steps }: Stroke): Segment[] {
  let at = from;
  return steps.map((step) => {
    const segment = segmentOf(step, at);
    at = endOf(step, at);
    return segment;
  });
}

function segmentOf(step: Step, from: Point): Segment {
  if (step.kind === 'straight') {
    return { kind: 'line', from, to: step.to, length: distance(from, step.to) };
  }
  if (step.kind === 'circle') {
    const { center, hand } = step;
    const sweep = sideOf(hand) * 2 * Math.PI;
    return bow({ center, radius: distance(center, from), begins: angleFrom(center, from), sweep });
  }
  return arc(step, from);
}

type Bow = Omit<Extract<Segment, { kind: 'bow' }>, 'kind' | 'length'>;
const bow = (parts: Bow): Segment => ({
  kind: 'bow',
  ...parts,
  length: parts.radius * Math.abs(parts.sweep),
});

/** The center lies off the middle of the chord: on the inside of the turn for the shorter part. */
function arc({ hand, to, radius, part }: Extract<Step, { kind: 'arc' }>, from: Point): Segment {
  const chord = distance(from, to);
  const off = Math.sqrt(Math.max(0, radius ** 2 - (chord / 2) ** 2));
  const side = sideOf(hand) * (part === 'shorter' ? 1 : -1);
  const center = {
    x: (from.x + to.x) / 2 - (side * off * (to.y - from.y)) / chord,
    y: (from.y + to.y) / 2 + (side * off * (to.x - from.x)) / chord,
  };
  const begins = angleFrom(center, from);
  return bow({ center, radius, begins, sweep: turned(begins, angleFrom(center, to), hand) });
}

/** From one angle to the other in the direction of the hand: never 0, never more than once around. */
function turned(begins: number, ends: number, hand: Hand): number {
  const around = 2 * Math.PI;
  const clockwise = (((ends - begins) % around) + around) % around;
  return hand === 'right' ? clockwise : clockwise - around;
}

export const lengthOf = (segments: readonly Segment[]): number =>
  segments.reduce((sum, { length }) => sum + length, 0);

/** So many decimetres from its beginning; before the beginning or behind the end it is the beginning or the end. */
export function placeAlong(segments: readonly Segment[], decimetres: number): Place {
  let left = Math.max(0, decimetres);
  for (const segment of segments) {
    if (left <= segment.length) return placeOn(segment, left);
    left -= segment.length;
  }
  const last = segments.at(-1);
  if (last === undefined) throw new Error('a way without a step');
  return placeOn(last, last.length);
}

function placeOn(segment: Segment, decimetres: number): Place {
  const part = segment.length === 0 ? 0 : decimetres / segment.length;
  if (segment.kind === 'line') {
    const { from, to } = segment;
    return {
      x: from.x + (to.x - from.x) * part,
      y: from.y + (to.y - from.y) * part,
      heading: Math.atan2(to.y - from.y, to.x - from.x),
    };
  }
  const { center, radius, begins, sweep } = segment;
  const angle = begins + sweep * part;
  return {
    x: center.x + radius * Math.cos(angle),
    y: center.y + radius * Math.sin(angle),
    heading: angle + (Math.sign(sweep) * Math.PI) / 2,
  };
}

/** The outermost points of a segment: its ends, and where a bow comes by the right, the bottom, the left, the top. */
export function outermost(segment: Segment): Point[] {
  const ends = [placeOn(segment, 0), placeOn(segment, segment.length)];
  if (segment.kind === 'line') return ends;
  const { center, radius, begins, sweep } = segment;
  const quarters = [0, 1, 2, 3].map((quarter) => (quarter * Math.PI) / 2);
  const passed = quarters.filter((angle) => isPassed(angle, begins, sweep));
  return [
    ...ends,
    ...passed.map((angle) => ({
      x: center.x + radius * Math.cos(angle),
      y: center.y + radius * Math.sin(angle),
    })),
  ];
}

function isPassed(angle: number, begins: number, sweep: number): boolean {
  const around = 2 * Math.PI;
  const ahead = ((((angle - begins) * Math.sign(sweep)) % around) + around) % around;
  return ahead <= Math.abs(sweep);
}
