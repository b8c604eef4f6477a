/** What the routes of cards have in common. */
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, actorOf, senderKey } from '../access/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../platform/database.ts';
import { type Answer, answerOnce, keyedRequest } from '../platform/http/answer-once.ts';
import { id } from '../platform/http/id.ts';
import { versionRead } from '../platform/http/versions.ts';
import type { ProblemCode } from '../platform/problems/index.ts';
import type { SeenVersion } from './draft-versions.ts';

export const tags = ['Cards'];

export const classParams = z.object({ classId: id });
export const cardParams = z.object({ cardId: id });
export const goParams = z.object({ cardId: id, classEntryId: id });
export const revisionParams = z.object({
  cardId: id,
  revision: z.coerce.number().int().min(1).max(1_000_000),
});

/** What any of these routes may refuse. */
export const accessRefusals = [
  'token_missing',
  'token_invalid',
  'token_expired',
  'token_revoked',
  'not_allowed',
  'other_show',
  'other_seat',
  'not_found',
] as const satisfies readonly ProblemCode[];

/** What any change of a card may refuse. */
export const writingRefusals = [...accessRefusals, 'seat_withdrawn', 'class_not_open'] as const;

/** By If-Match the version that the sender has seen; by If-None-Match: * that there was none. */
export function seenVersion(request: FastifyRequest): SeenVersion {
  if (request.headers['if-match'] !== undefined) return versionRead(request);
  return request.headers['if-none-match']?.trim() === '*' ? 'none' : undefined;
}

/** One transaction; sent twice with one Idempotency-Key it is done once, whichever phone of the judge sends it. */
export function onceForSeat<Body>(
  parts: AppParts,
  request: FastifyRequest,
  work: (tx: SqlTransaction, actor: Actor) => Promise<Answer<Body>>,
): Promise<Answer<Body>> {
  const actor = actorOf(request);
  const keyed = keyedRequest(request, { sender: senderKey(actor), at: parts.clock.now() });
  return inSqlTransaction(parts.db, (tx) => answerOnce(tx, keyed, () => work(tx, actor)));
}
