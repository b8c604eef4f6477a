import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction } from '../../platform/database.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Office } from '../actor.ts';
import {
  accountOf,
  accountWithinReach,
  mustBeShows,
  mustBeWithinReach,
  mustLeaveAManager,
  type StoredAccount,
  withShows,
} from './account-record.ts';
import { type AccountBody, type AccountChange, reachFault } from './account-schemas.ts';

interface Change {
  readonly actor: Office;
  readonly accountId: string;
  readonly versionRead: number;
  readonly change: AccountChange;
}

/**
 * Name, duty, shows of an account, by a manager; it holds for the sessions that are under way. Throws not_found,
 * stale_version, account_closed, not_allowed beyond her reach, invalid_request, unknown_reference, last_manager.
 */
export function changeAccount(parts: AppParts, asked: Change): Promise<AccountBody> {
  const { accountId, actor } = asked;
  return inTransaction(parts.db, async (tx) => {
    const at = parts.clock.now();
    const before = await accountWithinReach(tx, asked);
    mustBeCurrent(before.version, asked.versionRead);
    if (before.closedAt !== null) throw problem('account_closed');
    const { name, duty, wholeService, showIds } = changed(before, asked.change);
    mustBeWithinReach(actor, { wholeService, showIds });
    await mustBeShows(tx, showIds);
    if (duty !== 'manager' || !wholeService) await mustLeaveAManager(tx, before);
    const row = await tx.prisma.account.update({
      where: { id: accountId },
      data: {
        ...{ name, duty, wholeService, version: { increment: 1 } },
        shows: { deleteMany: {}, create: showIds.map((showId) => ({ showId })) },
      },
      include: withShows,
    });
    const body = { accountId, version: row.version, duty, wholeService, showIds };
    await appendLine(parts, tx, { showId: ofTheService, type: 'account.changed', body, at });
    return accountOf(row, at);
  });
}

/** As it will stand. Whoever gets the whole service loses her single shows. Throws invalid_request. */
function changed(before: StoredAccount, change: AccountChange) {
  const { name = before.name, duty = before.duty, wholeService = before.wholeService } = change;
  const kept = wholeService ? [] : before.shows.map(({ showId }) => showId);
  const showIds = [...new Set(change.showIds ?? kept)].sort();
  const message = reachFault({ wholeService, showIds });
  if (message !== undefined) throw problem('invalid_request', { errors: [{ field: '/showIds', message }] });
  return { name, duty, wholeService, showIds };
}
