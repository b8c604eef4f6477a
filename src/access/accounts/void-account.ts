/** Taking an account's factors away: to set it up anew, or for good. Its sessions end with them. */
import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Office } from '../actor.ts';
import { accountOf, accountWithinReach, mustLeaveAManager, withShows } from './account-record.ts';
import type { AccountBody, Invited } from './account-schemas.ts';
import { invited, newSetupCode } from './add-account.ts';
import { endSessionsOf } from './end-sessions.ts';

interface Asked {
  readonly actor: Office;
  readonly accountId: string;
}

const nothingOfIt = {
  ...{ passwordHash: null, totpSecret: null, totpLastStep: null },
  ...{ failedSignIns: 0, slowedUntil: null },
} as const;

/**
 * Password, second factor and sessions are void, and a new set-up code is out. The old code, if there was one, is void
 * too. Throws not_found, own_account, account_closed, last_manager.
 */
export function resetAccount(parts: AppParts, asked: Asked): Promise<Invited> {
  const { accountId } = asked;
  if (accountId === asked.actor.accountId) throw problem('own_account');
  return inTransaction(parts.db, async (tx) => {
    const at = parts.clock.now();
    const before = await accountWithinReach(tx, asked);
    if (before.closedAt !== null) throw problem('account_closed');
    await mustLeaveAManager(tx, before);
    return setUpAnew(parts, tx, { accountId, at });
  });
}

/** Without a question who asks: for the two who may, a manager and the command at the server. */
export async function setUpAnew(
  parts: AppParts,
  tx: Transaction,
  { accountId, at }: { readonly accountId: string; readonly at: Date },
): Promise<Invited> {
  const code = newSetupCode(at);
  const row = await tx.prisma.account.update({
    where: { id: accountId },
    data: { ...nothingOfIt, ...code.stored, version: { increment: 1 } },
    include: withShows,
  });
  await endSessionsOf(parts, tx, { accountId, why: 'reset', at });
  await appendLine(parts, tx, { showId: ofTheService, type: 'account.reset', body: { accountId }, at });
  return invited(row, code, at);
}

/** For good; doing it twice changes nothing. Throws not_found, last_manager. */
export function closeAccount(parts: AppParts, asked: Asked): Promise<AccountBody> {
  const { accountId } = asked;
  return inTransaction(parts.db, async (tx) => {
    const at = parts.clock.now();
    const before = await accountWithinReach(tx, asked);
    if (before.closedAt !== null) return accountOf(before, at);
    await mustLeaveAManager(tx, before);
    const noCode = { setupHash: null, setupEndsAt: null };
    const row = await tx.prisma.account.update({
      where: { id: accountId },
      data: { ...nothingOfIt, ...noCode, closedAt: at, version: { increment: 1 } },
      include: withShows,
    });
    await endSessionsOf(parts, tx, { accountId, why: 'closed', at });
    await appendLine(parts, tx, { showId: ofTheService, type: 'account.closed', body: { accountId }, at });
    return accountOf(row, at);
  });
}
