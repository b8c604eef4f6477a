/** Does a drawing show the pattern, and does it stay within the arena? */
import type { DrawingFault } from './drawing-fault.ts';
import type { DrawnManeuver, Mark, Obstacle, PatternDrawing, Point, Step, Stroke } from './types.ts';
import { endOf, outermost, segmentsOf } from './way.ts';

/** What the drawing must know of a pattern, its maneuvers in order. */
export interface NamedCones {
  readonly startCone: string | null;
  readonly endCone: string | null;
}

/** All faults at once. Where one maneuver ends and the next begins may lie apart: it is how sheets are drawn. */
export function checkDrawing(drawing: PatternDrawing, maneuvers: readonly NamedCones[]): DrawingFault[] {
  return [
    ...coneFaults(drawing, maneuvers),
    ...positionFaults(drawing, maneuvers.length),
    ...drawing.maneuvers.flatMap((maneuver, index) => emptyFaults(maneuver, `/maneuvers/${index}`)),
    ...stepFaults(drawing),
    ...outsideFaults(drawing),
  ];
}

function coneFaults({ cones }: PatternDrawing, maneuvers: readonly NamedCones[]): DrawingFault[] {
  const letters = cones.map(({ letter }) => letter);
  const doubled = letters.flatMap((letter, index): DrawingFault[] =>
    letters.indexOf(letter) === index
      ? []
      : [{ code: 'letter_twice', at: `/cones/${index}/letter`, written: letter }],
  );
  const named = new Set(maneuvers.flatMap(({ startCone, endCone }) => [startCone, endCone]));
  const missing = [...named].filter((letter) => letter !== null && !letters.includes(letter));
  return [
    ...doubled,
    ...missing.map(
      (letter): DrawingFault => ({ code: 'cone_not_drawn', at: '/cones', written: `${letter}` }),
    ),
  ];
}

function positionFaults({ maneuvers }: PatternDrawing, count: number): DrawingFault[] {
  const positions = maneuvers.map(({ position }) => position);
  const wrong = positions.flatMap((position, index): DrawingFault[] => {
    const at = `/maneuvers/${index}/position`;
    if (position > count) return [{ code: 'position_unknown', at, written: `${position}` }];
    return positions.indexOf(position) === index
      ? []
      : [{ code: 'position_twice', at, written: `${position}` }];
  });
  const all = Array.from({ length: count }, (_, index) => index + 1);
  const missing = all.filter((position) => !positions.includes(position));
  return [
    ...wrong,
    ...missing.map(
      (position): DrawingFault => ({ code: 'maneuver_not_drawn', at: '/maneuvers', written: `${position}` }),
    ),
  ];
}

const emptyFaults = ({ position, strokes, marks }: DrawnManeuver, at: string): DrawingFault[] =>
  strokes.length + marks.length > 0 ? [] : [{ code: 'maneuver_empty', at, written: `${position}` }];

interface Placed<Part> {
  readonly part: Part;
  readonly at: string;
}

const strokesOf = ({ maneuvers }: PatternDrawing): Placed<Stroke>[] =>
  maneuvers.flatMap(({ strokes }, index) =>
    strokes.map((part, order) => ({ part, at: `/maneuvers/${index}/strokes/${order}` })),
  );

function stepFaults(drawing: PatternDrawing): DrawingFault[] {
  return strokesOf(drawing).flatMap(({ part: { from, steps }, at }) => {
    let reached = from;
    return steps.flatMap((step, index) => {
      const found = stepFault(step, reached, `${at}/steps/${index}`);
      reached = endOf(step, reached);
      return found ?? [];
    });
  });
}

function stepFault(step: Step, from: Point, at: string): DrawingFault | undefined {
  const aim = step.kind === 'circle' ? step.center : step.to;
  if (aim.x === from.x && aim.y === from.y) return { code: 'goes_nowhere', at, written: place(aim) };
  if (step.kind !== 'arc') return undefined;
  const chordSquared = (aim.x - from.x) ** 2 + (aim.y - from.y) ** 2;
  if (chordSquared <= 4 * step.radius ** 2) return undefined;
  return { code: 'radius_too_small', at: `${at}/radius`, written: `${step.radius}` };
}

const place = ({ x, y }: Point): string => `${x}, ${y}`;

/** A bow may leave the arena between two points that are both within it. */
function outsideFaults(drawing: PatternDrawing): DrawingFault[] {
  const { arena, cones, obstacles, maneuvers } = drawing;
  const marks = maneuvers.flatMap((maneuver, index) =>
    maneuver.marks.map((part, order): Placed<Mark> => ({ part, at: `/maneuvers/${index}/marks/${order}` })),
  );
  const placed: Placed<readonly Point[]>[] = [
    ...cones.map((cone, index) => ({ part: [cone], at: `/cones/${index}` })),
    ...obstacles.map((obstacle, index) => ({ part: pointsOf(obstacle), at: `/obstacles/${index}` })),
    ...marks.map(({ part, at }) => ({ part: pointsOf(part), at })),
    ...strokesOf(drawing).flatMap(stretches),
  ];
  return placed.flatMap(({ part, at }): DrawingFault[] => {
    const out = part.find(({ x, y }) => isOff(x, arena.width) || isOff(y, arena.height));
    return out === undefined ? [] : [{ code: 'outside_arena', at, written: place(rounded(out)) }];
  });
}

/** What a floating sum may be off is less than a millimetre. */
const isOff = (value: number, most: number): boolean => value < -0.01 || value > most + 0.01;
const rounded = ({ x, y }: Point): Point => ({ x: Math.round(x), y: Math.round(y) });

function stretches({ part, at }: Placed<Stroke>): Placed<readonly Point[]>[] {
  const begun = { part: [part.from], at: `${at}/from` };
  if (part.steps.some((step, index) => stepFault(step, beginOf(part, index), at) !== undefined))
    return [begun];
  const ways = segmentsOf(part).map((segment, index) => ({
    part: outermost(segment),
    at: `${at}/steps/${index}`,
  }));
  return [begun, ...ways];
}

const beginOf = ({ from, steps }: Stroke, index: number): Point =>
  steps.slice(0, index).reduce((at, step) => endOf(step, at), from);

function pointsOf(part: Obstacle | Mark): readonly Point[] {
  return 'from' in part ? [part.from, part.to] : [part.at];
}
