/** A ledger as the office reads it. */
import { z } from 'zod';
import { lineTypes } from './event-catalogue.ts';

const moment = z.iso
  .datetime({ offset: true, error: 'it must be a moment like 2026-05-02T14:03:05Z' })
  .transform((text) => new Date(text));
const error = 'it must be a type of api-docs/events.md';
const lineType = z.enum(lineTypes, error);

export const ledgerQuery = z.strictObject({
  type: z
    .union([lineType.transform((one) => [one]), z.array(lineType).max(lineTypes.length)], { error })
    .optional()
    .describe('Only lines of this type; several: ?type=card.signed&type=card.amended'),
  classId: z.uuid().toLowerCase().optional().describe('Only lines about this class.'),
  actor: z.uuid().toLowerCase().optional().describe('Only what this account, phone or person did.'),
  from: moment.optional().describe('Only lines of this moment or later.'),
  to: moment.optional().describe('Only lines before this moment.'),
  after: z.coerce.number().int().min(0).default(0).describe('`nextAfter` of the page before.'),
  limit: z.coerce.number().int().min(1).max(500).default(100).describe('At most so many lines.'),
});
export type LedgerQuery = z.infer<typeof ledgerQuery>;

const actor = z
  .looseObject({ as: z.string() })
  .describe(
    'Who did it, by ids: office (account, session), judge, scribe or gate (phone), everyone, service.',
  );

const line = z.strictObject({
  sequence: z.int().describe('1, 2, 3 ... of this ledger, without a gap.'),
  type: z.string(),
  what: z.string().describe('What a line of this type means.'),
  at: z.string(),
  actor,
  body: z.record(z.string(), z.unknown()).describe('Ids and numbers, never names; see api-docs/events.md.'),
  previousHash: z.string().nullable().describe('Hash of the line before; null: it is the first.'),
  hash: z.string().describe('SHA-256 of the line in canonical form (RFC 8785).'),
  seal: z
    .string()
    .describe("The service's signature over it (JWS with detached payload); see api-docs/evidence.md."),
});

export const ledgerHead = z.strictObject({
  sequence: z.int().describe('Number of the last line; 0: there is none.'),
  hash: z.string().nullable().describe('Its hash, which stands for the whole ledger up to it.'),
});

export const ledgerPage = z.strictObject({
  ledgerId: z.string().describe('The show; the nil UUID: the service itself.'),
  items: z.array(line),
  nextAfter: z.int().nullable().describe('Send it as `after` for the next page; null: this is the last.'),
  head: ledgerHead,
});
