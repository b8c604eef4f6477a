/**
 * What a phone may send twice counts once: the first answer is kept under the sender's key, in the same
 * transaction as the change itself, and given again to the same request
 * (draft-ietf-httpapi-idempotency-key-header).
 */
import type { FastifyReply, FastifyRequest } from 'fastify';
import { fingerprint } from '../canonical-json.ts';
import type { SqlTransaction } from '../database.ts';
import { problem } from '../problems/index.ts';
import { json, type Statement } from '../sql.ts';

export interface KeyedRequest {
  readonly key: string;
  /** Who asked for what: two senders may use the same key. */
  readonly scope: string;
  /** SHA-256 over the canonical form (RFC 8785) of the body, as hex. */
  readonly requestHash: string;
  readonly at: Date;
}

export interface Answer<Body> {
  readonly status: number;
  readonly body: Body;
  readonly headers?: Readonly<Record<string, string>>;
  /** Was it given before? */
  readonly replayed?: boolean;
}

interface Sender {
  /** Who sends, whatever session or phone it is under: "account <id>", "person <id>". */
  readonly sender: string;
  readonly at: Date;
}

/** `undefined` where the request carries no key. Throws invalid_request for an unusable one. */
export function keyedRequest(request: FastifyRequest, { sender, at }: Sender): KeyedRequest | undefined {
  const key = request.headers['idempotency-key'];
  if (key === undefined) return undefined;
  if (typeof key !== 'string' || !/^[\x21-\x7e]{1,255}$/.test(key)) {
    const message = 'it must have 1 to 255 printable ASCII characters';
    throw problem('invalid_request', { errors: [{ field: 'headers/idempotency-key', message }] });
  }
  const address = request.url.split('?')[0] ?? '';
  const requestHash = fingerprintOf(request.body ?? null);
  return { key, scope: `${sender} ${request.method} ${address}`, requestHash, at };
}

/** JSON.parse reads `1e400` as infinite, which has no canonical form. */
function fingerprintOf(body: unknown): string {
  try {
    return fingerprint(body);
  } catch {
    const message = 'it must hold no number that is too large, and no half of a surrogate pair';
    throw problem('invalid_request', { errors: [{ field: '', message }] });
  }
}

/** Waits where the same key is being worked on by another transaction. */
const claim: Statement = {
  name: 'idempotency.claim',
  text: `
    INSERT INTO idempotency_key (key, scope, request_hash, created_at) VALUES ($1, $2, $3, $4)
    ON CONFLICT (key, scope) DO NOTHING RETURNING key`,
};
const kept: Statement = {
  name: 'idempotency.kept',
  text: 'SELECT request_hash AS "requestHash", status, response FROM idempotency_key WHERE key = $1 AND scope = $2',
};
const keep: Statement = {
  name: 'idempotency.keep',
  text: 'UPDATE idempotency_key SET status = $3, response = $4::jsonb WHERE key = $1 AND scope = $2',
};

/**
 * Does `work` and keeps its answer, or gives the kept one without doing it again. A refusal is not kept: the
 * transaction goes back, and the key is free. Throws idempotency_key_reused for the same key with other content.
 */
export async function answerOnce<Body>(
  tx: SqlTransaction,
  asked: KeyedRequest | undefined,
  work: () => Promise<Answer<Body>>,
): Promise<Answer<Body>> {
  if (asked === undefined) return work();
  const { key, scope, requestHash, at } = asked;
  const isNew = await tx.sql.row(claim, [key, scope, requestHash, at]);
  if (isNew === undefined) return replay<Body>(tx, asked);
  const answer = await work();
  const { status, body, headers = {} } = answer;
  await tx.sql.rows(keep, [key, scope, status, json({ body, headers })]);
  return answer;
}

interface KeptAnswer<Body> {
  readonly requestHash: string;
  readonly status: number;
  /** `null`: it held the name of somebody who was erased since. */
  readonly response: { readonly body: Body; readonly headers: Readonly<Record<string, string>> } | null;
}

async function replay<Body>(tx: SqlTransaction, asked: KeyedRequest): Promise<Answer<Body>> {
  const found = await tx.sql.row<KeptAnswer<Body>>(kept, [asked.key, asked.scope]);
  if (found === undefined) throw new Error('the kept answer is gone');
  if (found.response === null) throw problem('answer_erased');
  if (found.requestHash !== asked.requestHash) throw problem('idempotency_key_reused');
  return { status: found.status, ...found.response, replayed: true };
}

/** The fingerprint of the request goes too: a name and a birthday can be guessed and tried against it. */
const forgetResponses: Statement = {
  name: 'idempotency.forget-responses',
  text: `
    UPDATE idempotency_key SET response = NULL, request_hash = repeat('0', 64)
    WHERE response IS NOT NULL
      AND (response -> 'body' ->> 'id' = ANY ($1) OR response -> 'body' ->> 'exhibitorId' = ANY ($1))
    RETURNING key`,
};

/**
 * Forgets what was answered about these records, and keeps that it was: who sends such a request again is refused
 * with answer_erased. Returns how many answers there were.
 */
export async function forgetAnswers(tx: SqlTransaction, recordIds: readonly string[]): Promise<number> {
  return (await tx.sql.rows(forgetResponses, [recordIds])).length;
}

/** Sends status, headers and body. */
export function sendAnswer<Body>(reply: FastifyReply, answer: Answer<Body>): FastifyReply {
  return reply.send(bodyToSend(reply, answer));
}

/** Sets status and headers, and gives the body to send; whether it was given before stands in a header. */
export function bodyToSend<Body>(reply: FastifyReply, answer: Answer<Body>): Body {
  const { status, headers, body, replayed } = answer;
  if (replayed === true) reply.header('idempotency-replayed', 'true');
  reply.code(status).headers({ ...headers });
  return body;
}

const forget: Statement = {
  name: 'idempotency.forget',
  text: 'DELETE FROM idempotency_key WHERE created_at < $1',
};

/** A phone that was off for a week sends again with the same keys; after that they are let go. */
const keptDays = 30;

export async function forgetOldKeys(tx: SqlTransaction, now: Date): Promise<void> {
  await tx.sql.rows(forget, [new Date(now.getTime() - keptDays * 86_400_000)]);
}
