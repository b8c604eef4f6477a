/** Sessions of the office. What is sent with each request is drawn at random; only its SHA-256 is kept. */
import { randomBytes } from 'node:crypto';
import type { AppParts } from '../../platform/app-parts.ts';
import { hashOfText } from '../../platform/canonical-json.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';
import type { Duty, Office } from '../actor.ts';

const hour = 3_600_000;
/** A session that nothing comes under for so long has ended. */
const idleMilliseconds = 12 * hour;
const longestMilliseconds = 24 * hour;

/** A session that was not seen since then has ended. */
export const idleSince = (now: Date): Date => new Date(now.getTime() - idleMilliseconds);

export interface OpenedSession {
  readonly id: string;
  /** Shown once; it is not kept. */
  readonly token: string;
  readonly endsAt: Date;
}

const add: Statement = {
  name: 'accounts.add-session',
  text: `INSERT INTO session (id, account_id, token_hash, created_at, seen_at, ends_at)
         VALUES ($1::uuid, $2::uuid, $3, $4, $4, $5)`,
};

export async function openSession(
  { clock, ids }: Pick<AppParts, 'clock' | 'ids'>,
  tx: SqlTransaction,
  accountId: string,
): Promise<OpenedSession> {
  const at = clock.now();
  const id = ids.next();
  const token = `rls_${randomBytes(32).toString('base64url')}`;
  const endsAt = new Date(at.getTime() + longestMilliseconds);
  await tx.sql.rows(add, [id, accountId, hashOfText(token), at, endsAt]);
  return { id, token, endsAt };
}

/** `seen_at` moves once a minute at most, so that reading costs no write. */
const find: Statement = {
  name: 'accounts.find-session',
  text: `
    WITH found AS (
      SELECT session.id, session.account_id, session.seen_at, session.ended_at, session.ends_at,
             account.duty, account.whole_service, account.closed_at
      FROM session JOIN account ON account.id = session.account_id WHERE session.token_hash = $1
    ), seen AS (
      UPDATE session SET seen_at = $2 FROM found
      WHERE session.id = found.id AND found.seen_at BETWEEN $3 AND $4
        AND found.ended_at IS NULL AND found.closed_at IS NULL AND found.ends_at > $2
    )
    SELECT id, account_id AS "accountId", duty, whole_service AS "wholeService",
           ended_at IS NOT NULL OR closed_at IS NOT NULL AS revoked,
           ends_at <= $2 OR seen_at < $3 AS ended,
           ARRAY(SELECT show_id::text FROM account_show WHERE account_show.account_id = found.account_id) AS shows
    FROM found`,
};

interface FoundSession {
  readonly id: string;
  readonly accountId: string;
  readonly duty: Duty;
  readonly wholeService: boolean;
  readonly revoked: boolean;
  readonly ended: boolean;
  readonly shows: readonly string[];
}

/** Whose session it is. Throws token_invalid, token_expired, token_revoked. */
export async function readSession(
  { clock, db }: Pick<AppParts, 'clock' | 'db'>,
  token: string,
): Promise<Office> {
  if (!/^rls_[\w-]{43}$/.test(token)) throw problem('token_invalid');
  const at = clock.now();
  const stale = new Date(at.getTime() - 60_000);
  const found = await db.sql.row<FoundSession>(find, [hashOfText(token), at, idleSince(at), stale]);
  if (found === undefined) throw problem('token_invalid');
  const { id: sessionId, accountId, duty, wholeService, revoked, ended, shows } = found;
  const actor = { as: 'office', account: accountId, session: sessionId } as const;
  if (revoked) throw problem('token_revoked', { refused: { actor } });
  if (ended) throw problem('token_expired');
  return { as: 'office', duty, accountId, sessionId, shows: wholeService ? 'all' : new Set(shows) };
}
