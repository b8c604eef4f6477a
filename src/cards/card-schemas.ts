/**
 * What may be sent to and read from a card. Only the form is checked here; whether the sheet of the class
 * allows a mark is the engine's question, and it answers for all faults of a go at once.
 */
import { z } from 'zod';
import { rulingCodes } from '../engine/sheets/types.ts';

/** As it was written: a text, so that 0.1 + 0.2 never happens. `"½"` and `"1e309"` come through to the engine, which says why not. */
const mark = z
  .string({ error: 'write the mark as text, such as "0.5" or "-1"' })
  .max(40)
  .describe('A decimal as text: "71.5", "-0.5", "0".');
const position = z.int().min(1).max(100).describe('Position of the maneuver in the pattern, from 1.');
const remark = z.string().trim().min(1).max(1000).describe("The judge's own words; shown with the card.");
const code = z.string().min(1).max(60);

const maneuverMark = z.union(
  [
    z.strictObject({ position, mark, remark: remark.optional() }),
    z.strictObject({ position, notSeen: z.literal(true), remark: remark.optional() }),
  ],
  { error: 'a maneuver has either a "mark" (text) or "notSeen": true, beside its "position"' },
);

export const goSchema = z
  .strictObject({
    maneuvers: z.array(maneuverMark).max(100).optional(),
    extras: z.record(code, mark).optional().describe('Form and effectiveness, collective marks: by code.'),
    penalties: z
      .array(z.strictObject({ code, position: position.optional() }))
      .max(200)
      .optional()
      .describe('Each time it was taken; without a position it is against the whole go.'),
    errorsOfCourse: z.int().min(0).max(100).optional(),
    mark: mark.optional().describe('The one mark of the whole go, on a sheet with one mark.'),
    measure: mark.optional().describe('Seconds, on a measured sheet.'),
    ruling: z
      .strictObject({ code: z.enum(rulingCodes), remark: remark.optional() })
      .optional()
      .describe('What the judge ruled about the go: off pattern, disqualified ...'),
    remark: remark.optional(),
  })
  .describe("What one judge writes for one entry's go. What is not written yet is left out, never null.");

