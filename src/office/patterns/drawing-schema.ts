/** The drawing of a pattern on the wire: the engine's `PatternDrawing`, in whole decimetres. */
import { z } from 'zod';
import { drawnGaits, hands, type PatternDrawing } from '../../engine/patterns/types.ts';
import { coneLetter } from '../schemas/text.ts';

/** 5 m to 300 m: from a round pen to a field. */
const side = z.int().min(50).max(3_000);
const coordinate = z.int().min(0).max(3_000);
const point = z.strictObject({ x: coordinate, y: coordinate });
const line = { from: point, to: point };
const radius = z.int().min(1).max(3_000);
const hand = z.enum(hands).describe('As the rider turns.');

const obstacle = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('pole'), ...line }),
  z.strictObject({ kind: z.literal('gate'), ...line }),
  z.strictObject({ kind: z.literal('bridge'), ...line, width: z.int().min(1).max(200) }),
  z.strictObject({ kind: z.literal('water'), at: point, radius }),
  z.strictObject({ kind: z.literal('judge'), at: point }),
]);

const step = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('straight'), to: point }),
  z.strictObject({ kind: z.literal('arc'), hand, to: point, radius, part: z.enum(['shorter', 'longer']) }),
  z.strictObject({ kind: z.literal('circle'), hand, center: point }),
]);

const stroke = z.strictObject({
  gait: z.enum(drawnGaits).describe('trot is the jog, and canter the lope, too.'),
  from: point,
  steps: z.array(step).min(1).max(60),
});

const mark = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('halt'), at: point }),
  z.strictObject({
    kind: z.literal('turn'),
    at: point,
    hand,
    quarters: z.int().min(1).max(40).describe('4 are once around.'),
  }),
  z.strictObject({ kind: z.literal('lead-change'), at: point, how: z.enum(['flying', 'simple']) }),
  z.strictObject({ kind: z.literal('side-pass'), ...line }),
]);

export const patternDrawing = z
  .strictObject({
    arena: z.strictObject({ width: side, height: side }),
    cones: z
      .array(
        z.strictObject({
          letter: coneLetter,
          x: coordinate,
          y: coordinate,
          stands: z.enum(['cone', 'board']),
        }),
      )
      .max(26),
    obstacles: z.array(obstacle).max(100),
    maneuvers: z
      .array(
        z.strictObject({
          position: z.int().min(1).max(100),
          strokes: z.array(stroke).max(30),
          marks: z.array(mark).max(30),
        }),
      )
      .max(100)
      .describe('Each maneuver of the pattern once.'),
  })
  .meta({
    id: 'PatternDrawing',
    description:
      'The arena from above. Whole decimetres; x to the right, y down the page, from the upper left corner.',
  }) satisfies z.ZodType<PatternDrawing>;

/** As it stands in the database, where only what was checked comes in. */
export const drawingOf = (kept: unknown): z.infer<typeof patternDrawing> | null =>
  kept === null ? null : patternDrawing.parse(kept);
