import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import type { Show } from '../../platform/generated/prisma/client.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Statement } from '../../platform/sql.ts';
import { isPractice, type ShowBody, showOf } from '../shows/show-schemas.ts';
import { lockShow } from '../store/locks.ts';
import { copyClasses } from './copy-classes.ts';
import { copyEntries } from './copy-entries.ts';
import { copyPatterns, copyPeople, copyRings } from './copy-ground.ts';

/**
 * A practice show like this one, with ids of its own and without a name of anybody who rides: rings, people of the
 * panels, patterns, classes that are open, panels, back numbers, orders of go. No card, ruling or posting comes
 * along, and nothing that happens there reaches this show. Throws not_found, rehearsal_of_practice.
 */
export async function makeRehearsal(
  parts: AppParts,
  tx: Transaction,
  { showId }: { readonly showId: string },
): Promise<ShowBody> {
  const at = parts.clock.now();
  const show = await lockShow(tx, showId);
  if (isPractice(show)) throw problem('rehearsal_of_practice');
  const rehearsal = await addPracticeShow(parts, tx, show);
  await tx.sql.rows(letInSameAccounts, [showId, rehearsal.id]);
  await appendLine(parts, tx, {
    ...{ showId: rehearsal.id, type: 'show.created', at },
    body: { showId: rehearsal.id, kind: rehearsal.kind, rehearsalOf: showId },
  });
  const copy = { parts, tx, from: showId, to: rehearsal.id, at };
  const rings = await copyRings(copy);
  const people = await copyPeople(copy);
  const patterns = await copyPatterns(copy);
  const entries = await copyEntries(copy);
  const classes = await copyClasses(copy, { rings, people, patterns, entries });
  await appendLine(parts, tx, {
    ...{ showId: rehearsal.id, type: 'rehearsal.filled', at },
    body: {
      ...{ rehearsalOf: showId, rings: rings.size, people: people.size, patterns: patterns.size },
      ...{ entries: entries.size, classes: classes.size },
    },
  });
  await appendLine(parts, tx, { showId, type: 'rehearsal.made', body: { rehearsalId: rehearsal.id }, at });
  return showOf(rehearsal);
}

function addPracticeShow(parts: AppParts, tx: Transaction, show: Show): Promise<Show> {
  const { name, place, timeZone, firstDay, lastDay, minorPublicName } = show;
  return tx.prisma.show.create({
    data: {
      ...{ name, place, timeZone, firstDay, lastDay, minorPublicName },
      ...{ id: parts.ids.next(), kind: 'practice', rehearsalOfId: show.id, createdAt: parts.clock.now() },
    },
  });
}

/** Whoever works at the show rehearses it, and nobody else. */
const letInSameAccounts: Statement = {
  name: 'office.let-in-same-accounts',
  text: `INSERT INTO account_show (account_id, show_id)
         SELECT account_id, $2::uuid FROM account_show WHERE show_id = $1::uuid`,
};
