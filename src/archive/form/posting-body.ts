/**
 * The body of a posting, as far as something is made of it. What was computed (`results`) is plain JSON here:
 * whoever checks computes it anew and compares byte for byte, and no form could be as strict as that.
 */
import { z } from 'zod';
import { placingRule } from '../../office/offline.ts';
import type { PostingBody } from '../../results/offline.ts';
import { id, ordinal, plainJson, sha256 } from './spellings.ts';

export const postingBody = z.strictObject({
  form: z.literal('ringledger posting 1'),
  classId: id,
  classNumber: ordinal,
  sheet: z.strictObject({ code: z.string(), version: ordinal, hash: sha256 }),
  rule: placingRule,
  panel: z.array(z.strictObject({ seatId: id, seatOrder: ordinal, role: z.enum(['judge', 'referee']) })),
  entries: z.array(z.strictObject({ id, backNumber: ordinal, status: z.string().max(20) })),
  cards: z.array(z.strictObject({ seatId: id, revisionId: id, revision: ordinal, contentHash: sha256 })),
  decisions: z.array(
    z.strictObject({
      id,
      kind: z.enum(['run-off', 're-work', 'judge', 'coin', 'share', 'declined']),
      order: z.array(z.array(id)),
    }),
  ),
  results: z.array(z.record(z.string(), plainJson(7))),
}) as unknown as z.ZodType<PostingBody>;
