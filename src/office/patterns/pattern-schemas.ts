import { z } from 'zod';
import { exact } from '../../engine/numbers/exact.ts';
import type { Pattern, PatternManeuver } from '../../platform/generated/prisma/client.ts';
import { id } from '../schemas/common.ts';
import { decimalText } from '../schemas/placing-rule.ts';
import { coneLetter, nameText, wording } from '../schemas/text.ts';
import { drawingOf, patternDrawing } from './drawing-schema.ts';

const coefficient = decimalText.refine((text) => {
  const [whole = '', digits = ''] = text.split('.');
  return whole.length <= 6 && digits.length <= 3 && !text.startsWith('-') && /[1-9]/.test(text);
}, 'it must be more than 0, with at most six digits before and three after the point');

const maneuver = z.strictObject({
  name: nameText,
  description: wording.nullable().default(null),
  startCone: coneLetter.nullable().default(null),
  endCone: coneLetter.nullable().default(null),
  gait: nameText.nullable().default(null),
  leadOrDiagonal: z.enum(['left', 'right']).nullable().default(null),
  coefficient: coefficient.default('1').describe('What its mark is multiplied by.'),
});

export const newPattern = z.strictObject({
  name: nameText,
  maneuvers: z
    .array(maneuver)
    .min(1, 'a pattern has at least one maneuver')
    .max(100)
    .describe('In the order in which they are ridden.'),
  drawing: patternDrawing.nullable().default(null).describe('null: it is not drawn.'),
});
export type NewPattern = z.infer<typeof newPattern>;

export const patternBody = z.strictObject({
  id,
  name: z.string(),
  version: z.int(),
  drawing: patternDrawing.nullable(),
  maneuvers: z.array(
    z.strictObject({
      position: z.int(),
      name: z.string(),
      description: z.string().nullable(),
      startCone: z.string().nullable(),
      endCone: z.string().nullable(),
      gait: z.string().nullable(),
      leadOrDiagonal: z.enum(['left', 'right']).nullable(),
      coefficient: z.string(),
    }),
  ),
});
export type PatternBody = z.infer<typeof patternBody>;

export const withManeuvers = { maneuvers: { orderBy: { position: 'asc' } } } as const;

export const patternOf = (row: Pattern & { maneuvers: PatternManeuver[] }): PatternBody => ({
  id: row.id,
  name: row.name,
  version: row.version,
  drawing: drawingOf(row.drawing),
  maneuvers: row.maneuvers.map(maneuverOf),
});

type ManeuverBody = PatternBody['maneuvers'][number];

const maneuverOf = (row: PatternManeuver): ManeuverBody => ({
  position: row.position,
  name: row.name,
  description: row.description,
  startCone: row.startCone,
  endCone: row.endCone,
  gait: row.gait,
  leadOrDiagonal: row.leadOrDiagonal === 'left' || row.leadOrDiagonal === 'right' ? row.leadOrDiagonal : null,
  coefficient: coefficientText(row.coefficient),
});

/** `2.500` as `2.5`: the same text whoever wrote it. */
export const coefficientText = (stored: { toString(): string }): string =>
  exact(stored.toString()).toString();
