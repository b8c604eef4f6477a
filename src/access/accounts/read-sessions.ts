/** Who is signed in where. */
import type { AppParts } from '../../platform/app-parts.ts';
import type { Office } from '../actor.ts';
import { dutyOf, looksAfter, noSuchAccount, withShows } from './account-record.ts';
import type { CurrentSession, ListedSession } from './session-schemas.ts';
import { idleSince } from './sessions.ts';

/** The session that asks, and whose it is. */
export async function readCurrent({ db }: AppParts, { sessionId }: Office): Promise<CurrentSession> {
  const { endsAt, account } = await db.prisma.session.findUniqueOrThrow({
    where: { id: sessionId },
    include: { account: { include: withShows } },
  });
  const { id, name, signIn, duty, wholeService, shows } = account;
  const showIds = shows.map(({ showId }) => showId);
  return {
    sessionId,
    endsAt: endsAt.toISOString(),
    account: { id, name, signIn, duty: dutyOf(duty), wholeService, showIds },
  };
}

/** The sessions of an account that go on, newest first; at most 100. For its owner, and for a manager. Throws not_found. */
export async function listSessions(
  { db, clock }: AppParts,
  { actor, accountId }: { readonly actor: Office; readonly accountId: string },
): Promise<ListedSession[]> {
  const account = await db.prisma.account.findUnique({ where: { id: accountId }, include: withShows });
  if (account === null || !(accountId === actor.accountId || looksAfter(actor, account)))
    throw noSuchAccount();
  const now = clock.now();
  const rows = await db.prisma.session.findMany({
    where: { accountId, endedAt: null, endsAt: { gt: now }, seenAt: { gte: idleSince(now) } },
    orderBy: { id: 'desc' },
    take: 100,
  });
  return rows.map(({ id, createdAt, seenAt, endsAt }) => ({
    id,
    createdAt: createdAt.toISOString(),
    seenAt: seenAt.toISOString(),
    endsAt: endsAt.toISOString(),
    current: id === actor.sessionId,
  }));
}
