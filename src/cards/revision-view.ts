/** Signed revisions as they are shown. */
import { z } from 'zod';
import { contentSchema } from './card-schemas.ts';
import type { RevisionHead, SignedRevision } from './revisions.ts';

const head = {
  id: z.string(),
  revision: z.int().describe('1 as first signed, 2 for the first amendment ...'),
  contentHash: z.string().describe('SHA-256 over the canonical form (RFC 8785) of the content.'),
  previousHash: z
    .string()
    .nullable()
    .describe('contentHash of the revision that it amends; null: the first.'),
  signedAt: z.string().describe("By the judge's phone; from paper: when it was accepted."),
  receivedAt: z.string().describe('By the service.'),
  reason: z.string().nullable().describe('Why it was amended; null: the first.'),
  origin: z
    .enum(['phone', 'paper'])
    .describe('Signed by the judge on her phone, or entered off paper by two people of the office.'),
  paperCardId: z.string().nullable().describe('null: from the phone.'),
  enteredBy: z.string().nullable().describe('From paper: the account that entered it.'),
  checkedBy: z.string().nullable().describe('From paper: the other account, which read the same.'),
};

export const revisionSchema = z.strictObject(head).meta({ id: 'CardRevisionHead' });
export type RevisionView = z.output<typeof revisionSchema>;

export const fullRevisionSchema = z
  .strictObject({
    ...head,
    cardId: z.string(),
    content: contentSchema,
    phoneId: z.string().nullable().describe('Whose key signed it; null: from paper.'),
    jws: z.string().nullable().describe('As the phone signed it (RFC 7515); null: from paper.'),
  })
  .meta({ id: 'CardRevision' });

export const signedSchema = z
  .strictObject({
    ...head,
    cardId: z.string(),
    classId: z.string(),
    seatId: z.string(),
    openTies: z
      .array(z.array(z.string()))
      .describe('Ties that the judge has left open, by class entry: flagged. Never where places are merged.'),
  })
  .meta({ id: 'SignedCard' });

export function revisionView({
  id,
  revision,
  contentHash,
  previousHash,
  ...rest
}: RevisionHead): RevisionView {
  return {
    ...{ id, revision, contentHash, previousHash },
    signedAt: rest.signedAt.toISOString(),
    receivedAt: rest.receivedAt.toISOString(),
    reason: rest.reason,
    ...originOf(rest),
  };
}

type Origin = Pick<RevisionView, 'origin' | 'paperCardId' | 'enteredBy' | 'checkedBy'>;

function originOf({
  paperCardId,
  paperAccountIds,
}: Pick<RevisionHead, 'paperCardId' | 'paperAccountIds'>): Origin {
  const [enteredBy = null, checkedBy = null] = paperAccountIds ?? [];
  return { origin: paperCardId === null ? 'phone' : 'paper', paperCardId, enteredBy, checkedBy };
}

export const fullRevisionView = (cardId: string, revision: SignedRevision) => ({
  ...revisionView(revision),
  cardId,
  content: revision.content,
  phoneId: revision.phoneId,
  jws: revision.jws,
});
