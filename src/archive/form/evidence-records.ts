/** What is evidence: phones, cards, rulings, postings and the ledger, as they stand in an archive. */
import { z } from 'zod';
import { contentSchema } from '../../cards/offline.ts';
import { nameText, wording } from '../../office/offline.ts';
import { postingBody } from './posting-body.ts';
import {
  asKept,
  base64,
  detachedJws,
  id,
  instant,
  jws,
  ordinal,
  plainJson,
  publicKey,
  publishedKey,
  sha256,
  thumbprint,
} from './spellings.ts';

const words = asKept(wording);

export const phone = z.strictObject({
  id,
  showId: id,
  role: z.enum(['judge', 'scribe', 'gate']),
  personId: id.nullable(),
  label: asKept(nameText).nullable(),
  publicKey,
  thumbprint,
  pairedAt: instant,
  revokedAt: instant.nullable(),
  revokedWhy: words.nullable(),
});

export const card = z.strictObject({ id, classId: id, seatId: id, sheetId: id, createdAt: instant });

export const paperCard = z.strictObject({
  id,
  classId: id,
  seatId: id,
  revision: ordinal,
  previousHash: sha256.nullable(),
  reason: z.string().min(1).max(2_000).nullable(),
  status: z.enum(['open', 'accepted', 'withdrawn']),
  withdrawnWhy: z.string().min(1).max(2_000).nullable(),
  salt: z.string().regex(/^[0-9a-f]{32}$/),
  createdBy: id,
  createdAt: instant,
});

export const paperEntry = z.strictObject({
  paperCardId: id,
  accountId: id,
  content: contentSchema,
  contentHash: sha256,
  version: ordinal,
  enteredAt: instant,
});

export const paperPhoto = z.strictObject({
  paperCardId: id,
  bytes: base64.nullable().describe('The picture; null in an archive without names.'),
  mediaType: z.literal('image/jpeg'),
  hash: sha256,
  width: ordinal,
  height: ordinal,
  storedBy: id,
  storedAt: instant,
});

export const revision = z.strictObject({
  id,
  cardId: id,
  revision: ordinal,
  content: contentSchema,
  contentHash: sha256,
  previousHash: sha256.nullable(),
  signedBySeatId: id,
  signedAt: instant,
  receivedAt: instant,
  amendmentReason: z.string().min(1).max(2_000).nullable(),
  jws: jws.nullable(),
  phoneId: id.nullable(),
  paperCardId: id.nullable(),
});

export const ruling = z.strictObject({
  id,
  classId: id,
  kind: z.enum(['run-off', 're-work', 'judge', 'coin', 'share', 'declined']),
  classEntryIds: z.array(id),
  decision: z.strictObject({ order: z.array(z.array(id)) }),
  decidedBy: z.string().min(1).max(200),
  why: z.string().min(1).max(2_000),
  ruledAt: instant,
  recordedBy: id.nullable(),
});

export const posting = z.strictObject({
  id,
  classId: id,
  version: ordinal,
  state: z.enum(['provisional', 'official', 'corrected']),
  snapshot: postingBody,
  ruleHash: sha256,
  bodyHash: sha256,
  cardRevisionIds: z.array(id),
  reason: z.string().min(1).max(2_000).nullable(),
  postedAt: instant,
  ledgerSequence: z.int().min(1),
  ledgerHash: sha256,
  jws,
});

export const line = z.strictObject({
  sequence: z.int().min(1),
  type: z
    .string()
    .max(60)
    .regex(/^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/, 'it must be the type of an event'),
  at: instant,
  actor: z.record(z.string().regex(/^[a-z]{1,20}$/), z.string().max(60)),
  body: z.record(z.string().regex(/^[A-Za-z]{1,40}$/), plainJson(2)),
  previousHash: sha256.nullable(),
  hash: sha256,
  seal: detachedJws,
});

export const signingKey = z.strictObject({
  kid: thumbprint,
  jwk: publishedKey,
  source: z.enum(['own', 'imported']),
  addedAt: instant,
});
