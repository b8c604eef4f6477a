/** A change that was asked for, in one transaction; sent twice with one Idempotency-Key it is done once. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import { actorOf, senderKey } from '../access/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../platform/database.ts';
import { type Answer, answerOnce, bodyToSend, keyedRequest } from '../platform/http/answer-once.ts';
import { etagOf } from '../platform/http/versions.ts';

interface Exchange {
  readonly parts: AppParts;
  readonly request: FastifyRequest;
  readonly reply: FastifyReply;
}

/** Sets status and headers, and returns the body for the handler to return. */
export async function once<Body>(
  { parts, request, reply }: Exchange,
  work: (tx: Transaction) => Promise<Answer<Body>>,
): Promise<Body> {
  const sender = senderKey(actorOf(request));
  const keyed = keyedRequest(request, { sender, at: parts.clock.now() });
  const answer = await inTransaction(parts.db, (tx) => answerOnce(tx, keyed, () => work(tx)));
  return bodyToSend(reply, answer);
}

/** 201, with the version as ETag where the record has one. */
export const created = <Body extends object>(body: Body, location?: string): Answer<Body> => ({
  status: 201,
  body,
  headers: { ...versionHeader(body), ...(location === undefined ? {} : { location }) },
});

/** 200, with the version as ETag where the record has one. */
export const changed = <Body extends object>(body: Body): Answer<Body> => ({
  status: 200,
  body,
  headers: versionHeader(body),
});

function versionHeader(body: object): Record<string, string> {
  const version = 'version' in body ? body.version : 'classVersion' in body ? body.classVersion : undefined;
  return typeof version === 'number' ? { etag: etagOf(version) } : {};
}
