/** Sessions are ended by their owner or a manager, and all of an account's when its factors change. */
import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction, type SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';
import type { Office } from '../actor.ts';
import { looksAfter, withShows } from './account-record.ts';

type Why = 'signed-out' | 'ended' | 'password-changed' | 'reset' | 'closed';

const endOne: Statement = {
  name: 'accounts.end-session',
  text: `UPDATE session SET ended_at = $2 WHERE id = $1::uuid AND ended_at IS NULL AND ends_at > $2
         RETURNING id, account_id AS "accountId"`,
};
const endAll: Statement = {
  name: 'accounts.end-sessions',
  text: `UPDATE session SET ended_at = $2 WHERE account_id = $1::uuid AND ended_at IS NULL AND ends_at > $2
         RETURNING id, account_id AS "accountId"`,
};

interface Ended {
  readonly id: string;
  readonly accountId: string;
}

/**
 * All sessions of an account that had not ended, each with its line. Call it before other lines are appended: who ends a
 * single session takes the session first and the ledger after it, too.
 */
export async function endSessionsOf(
  parts: AppParts,
  tx: SqlTransaction,
  { accountId, why, at }: { readonly accountId: string; readonly why: Why; readonly at: Date },
): Promise<void> {
  const ended = await tx.sql.rows<Ended>(endAll, [accountId, at]);
  for (const session of ended) await tellEnded(parts, tx, { ...session, why, at });
}

/** Her own session, at her own wish. */
export function signOut(parts: AppParts, actor: Office): Promise<void> {
  return inTransaction(parts.db, (tx) => end(parts, tx, { sessionId: actor.sessionId, why: 'signed-out' }));
}

/**
 * A session of her own, or, for a manager, of an account within her reach; one that has ended stays so. Throws not_found.
 */
export function endSession(
  parts: AppParts,
  { actor, sessionId }: { readonly actor: Office; readonly sessionId: string },
): Promise<void> {
  return inTransaction(parts.db, async (tx) => {
    const found = await tx.prisma.session.findUnique({
      where: { id: sessionId },
      select: { accountId: true, account: { include: withShows } },
    });
    const isHers = found?.accountId === actor.accountId;
    if (found === null || !(isHers || looksAfter(actor, found.account))) throw problem('not_found');
    const why = sessionId === actor.sessionId ? 'signed-out' : 'ended';
    await end(parts, tx, { sessionId, why });
  });
}

async function end(
  parts: AppParts,
  tx: SqlTransaction,
  { sessionId, why }: { readonly sessionId: string; readonly why: Why },
): Promise<void> {
  const at = parts.clock.now();
  const ended = await tx.sql.row<Ended>(endOne, [sessionId, at]);
  if (ended !== undefined) await tellEnded(parts, tx, { ...ended, why, at });
}

async function tellEnded(
  parts: AppParts,
  tx: SqlTransaction,
  { id: sessionId, accountId, why, at }: Ended & { readonly why: Why; readonly at: Date },
): Promise<void> {
  const body = { sessionId, accountId, why };
  await appendLine(parts, tx, { showId: ofTheService, type: 'session.ended', body, at });
}
