/** An account as it is stored, and who may look after it. */
import type { SqlTransaction, Transaction } from '../../platform/database.ts';
import type { Account } from '../../platform/generated/prisma/client.ts';
import { type Problem, problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';
import type { Duty, Office } from '../actor.ts';
import { type AccountBody, accountBody } from './account-schemas.ts';

export type StoredAccount = Account & { readonly shows: ReadonlyArray<{ readonly showId: string }> };

/** With the shows, in the order of their ids. */
export const withShows = { shows: { select: { showId: true }, orderBy: { showId: 'asc' } } } as const;

export const dutyOf = (stored: string): Duty => accountBody.shape.duty.parse(stored);

export function accountOf(row: StoredAccount, now: Date): AccountBody {
  const { id, name, signIn, wholeService, version, createdAt, closedAt } = row;
  return {
    ...{ id, name, signIn, duty: dutyOf(row.duty), wholeService },
    showIds: row.shows.map(({ showId }) => showId),
    state: stateOf(row, now),
    createdAt: createdAt.toISOString(),
    closedAt: closedAt?.toISOString() ?? null,
    version,
  };
}

function stateOf({ closedAt, passwordHash, setupEndsAt }: Account, now: Date): AccountBody['state'] {
  if (closedAt !== null) return 'closed';
  if (passwordHash !== null) return 'active';
  return setupEndsAt !== null && setupEndsAt > now ? 'invited' : 'set-up-ended';
}

interface Reach {
  readonly wholeService: boolean;
  readonly showIds: readonly string[];
}

/** Nobody gives more than she has: a manager of some shows looks after the accounts of those shows alone. */
function isWithinReach({ shows }: Office, { wholeService, showIds }: Reach): boolean {
  if (shows === 'all') return true;
  return !wholeService && showIds.length > 0 && showIds.every((showId) => shows.has(showId));
}

/** What she would give. Throws not_allowed. */
export function mustBeWithinReach(actor: Office, reach: Reach): void {
  if (isWithinReach(actor, reach)) return;
  throw problem('not_allowed', {
    detail: 'Your account is for some shows; nobody gives more than she has.',
  });
}

/** Is she a manager, and the account within her reach? */
export function looksAfter(
  actor: Office,
  { wholeService, shows }: Pick<StoredAccount, 'wholeService' | 'shows'>,
): boolean {
  const showIds = shows.map(({ showId }) => showId);
  return actor.duty === 'manager' && isWithinReach(actor, { wholeService, showIds });
}

/** The same answer, whether there is no such account or it is another's: which ids exist is nobody's business. */
export const noSuchAccount = (): Problem =>
  problem('not_found', { detail: 'There is no such account within your reach.' });

const queue: Statement = {
  name: 'accounts.queue',
  text: `SELECT pg_advisory_xact_lock(hashtext('ringledger: accounts'))`,
};

/** Changes of accounts queue up, all of them, so that two managers cannot close each other's account at once. */
export async function queueForAccounts(tx: SqlTransaction): Promise<void> {
  await tx.sql.row(queue);
}

/** For a change by a manager. One that is out of her reach is not there: throws not_found. */
export async function accountWithinReach(
  tx: Transaction,
  { actor, accountId }: { readonly actor: Office; readonly accountId: string },
): Promise<StoredAccount> {
  await queueForAccounts(tx);
  const row = await tx.prisma.account.findUnique({ where: { id: accountId }, include: withShows });
  if (row === null || !looksAfter(actor, row)) throw noSuchAccount();
  return row;
}

/** Has both factors, and may look after every account. */
export const managerOfAll = {
  duty: 'manager',
  wholeService: true,
  closedAt: null,
  passwordHash: { not: null },
} as const;

/** Before one is closed, reset, or made less. Throws last_manager. */
export async function mustLeaveAManager(tx: Transaction, row: Account): Promise<void> {
  const { id, duty, wholeService, closedAt, passwordHash } = row;
  const isOne = duty === 'manager' && wholeService && closedAt === null && passwordHash !== null;
  if (!isOne) return;
  const others = await tx.prisma.account.count({ where: { ...managerOfAll, id: { not: id } } });
  if (others === 0) throw problem('last_manager');
}

/** Throws unknown_reference and names each show that is not there. */
export async function mustBeShows(tx: Transaction, showIds: readonly string[]): Promise<void> {
  const found = await tx.prisma.show.findMany({ where: { id: { in: [...showIds] } }, select: { id: true } });
  const known = new Set(found.map(({ id }) => id));
  const errors = showIds.flatMap((showId, at) =>
    known.has(showId) ? [] : [{ field: `/showIds/${at}`, message: 'there is no such show' }],
  );
  if (errors.length > 0) throw problem('unknown_reference', { errors });
}
