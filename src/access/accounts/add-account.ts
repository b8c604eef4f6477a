/** A new account: it has no password yet, only a one-time code with which the person sets it up. */
import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction, type Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Office } from '../actor.ts';
import {
  accountOf,
  mustBeShows,
  mustBeWithinReach,
  queueForAccounts,
  type StoredAccount,
  withShows,
} from './account-record.ts';
import type { Invited, NewAccount } from './account-schemas.ts';
import { drawSetupCode, hashOfSetupCode, setupHours } from './setup-code.ts';

interface WantedAccount extends NewAccount {
  /** Made by the demo: such an account keeps a service in production from starting. */
  readonly demo?: boolean;
}

/** By a manager. Throws not_allowed beyond her reach, unknown_reference, already_exists. */
export function inviteColleague(
  parts: AppParts,
  { actor, asked }: { readonly actor: Office; readonly asked: NewAccount },
): Promise<Invited> {
  mustBeWithinReach(actor, asked);
  return inTransaction(parts.db, async (tx) => {
    await queueForAccounts(tx);
    return addAccount(parts, tx, asked);
  });
}

/** Throws unknown_reference, already_exists. */
export async function addAccount(parts: AppParts, tx: Transaction, asked: WantedAccount): Promise<Invited> {
  const at = parts.clock.now();
  const { name, signIn, duty, wholeService, demo = false } = asked;
  const showIds = [...new Set(asked.showIds)];
  await mustBeShows(tx, showIds);
  if ((await tx.prisma.account.count({ where: { signIn } })) > 0) {
    const message = 'there is an account of this name; one that was closed keeps it';
    throw problem('already_exists', { errors: [{ field: '/signIn', message }] });
  }
  const code = newSetupCode(at);
  const row = await tx.prisma.account.create({
    data: {
      ...{ id: parts.ids.next(), name, signIn, duty, wholeService, demo, createdAt: at, ...code.stored },
      shows: { create: showIds.map((showId) => ({ showId })) },
    },
    include: withShows,
  });
  const body = { accountId: row.id, duty, wholeService, showIds: showIds.sort() };
  await appendLine(parts, tx, { showId: ofTheService, type: 'account.created', body, at });
  return invited(row, code, at);
}

export interface SetupCode {
  /** As it is shown, once. */
  readonly code: string;
  /** What is kept of it. */
  readonly stored: { readonly setupHash: string; readonly setupEndsAt: Date };
}

export function newSetupCode(at: Date): SetupCode {
  const code = drawSetupCode();
  const setupEndsAt = new Date(at.getTime() + setupHours * 3_600_000);
  return { code, stored: { setupHash: hashOfSetupCode(code), setupEndsAt } };
}

export const invited = (row: StoredAccount, { code, stored }: SetupCode, at: Date): Invited => ({
  account: accountOf(row, at),
  setupCode: code,
  setupEndsAt: stored.setupEndsAt.toISOString(),
});
