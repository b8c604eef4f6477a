import type { AppParts } from '../../platform/app-parts.ts';
import { afterId, type PageQuery, pageFrom } from '../../platform/http/pages.ts';
import type { Office } from '../actor.ts';
import { accountOf, looksAfter, noSuchAccount, withShows } from './account-record.ts';
import type { AccountBody } from './account-schemas.ts';

/** Those within the manager's reach, the oldest first. Throws invalid_cursor. */
export async function listAccounts(
  { db, clock }: AppParts,
  { actor, limit, cursor }: PageQuery & { readonly actor: Office },
): Promise<{ items: AccountBody[]; nextCursor: string | null }> {
  const after = afterId(cursor);
  const now = clock.now();
  const rows = await db.prisma.account.findMany({
    where: { ...withinReach(actor), ...(after === undefined ? {} : { id: { gt: after } }) },
    include: withShows,
    orderBy: { id: 'asc' },
    take: limit + 1,
  });
  return pageFrom(rows, limit, { key: ({ id }) => id, item: (row) => accountOf(row, now) });
}

/** `looksAfter`, as the database asks it. */
function withinReach({ shows }: Office) {
  if (shows === 'all') return {};
  return { wholeService: false, shows: { some: {}, every: { showId: { in: [...shows] } } } };
}

/** Throws not_found. */
export async function readAccount(
  { db, clock }: AppParts,
  { actor, accountId }: { readonly actor: Office; readonly accountId: string },
): Promise<AccountBody> {
  const row = await db.prisma.account.findUnique({ where: { id: accountId }, include: withShows });
  if (row === null || !looksAfter(actor, row)) throw noSuchAccount();
  return accountOf(row, clock.now());
}
