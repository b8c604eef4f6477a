/** A drawing in the units of its SVG: its longer side is 600 of them, whether it shows a trail course or a small ring. */
import type { Mark, Obstacle, PatternDrawing, Point, Step, Stroke } from '../../engine/patterns/types.ts';

export const longerSide = 600;

/** Lengths are rounded to tenths: what an SVG path says of an arc it draws nonetheless. */
export function scaledDrawing({ arena, cones, obstacles, maneuvers }: PatternDrawing): PatternDrawing {
  const by = longerSide / Math.max(arena.width, arena.height);
  const length = (decimetres: number) => Math.round(decimetres * by * 10) / 10;
  const point = ({ x, y }: Point): Point => ({ x: length(x), y: length(y) });
  const sizes = { length, point };
  return {
    arena: { width: length(arena.width), height: length(arena.height) },
    cones: cones.map((cone) => ({ ...cone, ...point(cone) })),
    obstacles: obstacles.map((obstacle) => scaledObstacle(obstacle, sizes)),
    maneuvers: maneuvers.map(({ position, strokes, marks }) => ({
      position,
      strokes: strokes.map(({ gait, from, steps }): Stroke => {
        return { gait, from: point(from), steps: steps.map((step) => scaledStep(step, sizes)) };
      }),
      marks: marks.map((mark) => scaledMark(mark, sizes)),
    })),
  };
}

interface Sizes {
  readonly length: (decimetres: number) => number;
  readonly point: (point: Point) => Point;
}

function scaledStep(step: Step, { length, point }: Sizes): Step {
  switch (step.kind) {
    case 'straight':
      return { ...step, to: point(step.to) };
    case 'arc':
      return { ...step, to: point(step.to), radius: length(step.radius) };
    case 'circle':
      return { ...step, center: point(step.center) };
  }
}

const scaledMark = (mark: Mark, { point }: Sizes): Mark =>
  mark.kind === 'side-pass'
    ? { ...mark, from: point(mark.from), to: point(mark.to) }
    : { ...mark, at: point(mark.at) };

function scaledObstacle(obstacle: Obstacle, { length, point }: Sizes): Obstacle {
  switch (obstacle.kind) {
    case 'pole':
    case 'gate':
      return { ...obstacle, from: point(obstacle.from), to: point(obstacle.to) };
    case 'bridge':
      return {
        ...obstacle,
        from: point(obstacle.from),
        to: point(obstacle.to),
        width: length(obstacle.width),
      };
    case 'water':
      return { ...obstacle, at: point(obstacle.at), radius: length(obstacle.radius) };
    case 'judge':
      return { ...obstacle, at: point(obstacle.at) };
  }
}
