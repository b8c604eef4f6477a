/** A paper card as it is shown to one account: who has entered, and what only where it may be seen. */
import { type Actor, officeOf, reachesShow } from '../../access/index.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { entriesOf } from '../card-record.ts';
import { findClass } from '../card-statements.ts';
import { type EntryDifference, entryDifferences } from './entry-differences.ts';
import { type PaperCard, type PaperEntry, paperEntriesOf } from './paper-record.ts';
import type { PaperCardView } from './paper-schemas.ts';
import { readPaperCards } from './paper-statements.ts';
import { photoHeadOf } from './photo-record.ts';

export async function paperCardView(
  tx: SqlTransaction,
  paper: PaperCard,
  actor: Actor,
): Promise<PaperCardView> {
  const { cardId, classId, seatId, id, createdAt, salt: _kept, showId: _known, ...told } = paper;
  const entries = await paperEntriesOf(tx, paper);
  const accountId = officeOf(actor).accountId;
  const mine = entries.find((entry) => entry.accountId === accountId);
  const other = entries.find((entry) => entry.accountId !== accountId);
  return {
    ...{ id, classId, seatId, cardId, ...told },
    createdAt: createdAt.toISOString(),
    entries: entries.map((entry) => ({
      ...{ accountId: entry.accountId, version: entry.version },
      enteredAt: entry.enteredAt.toISOString(),
    })),
    mine: mine === undefined ? null : { content: mine.content, version: mine.version },
    differences: mine && other ? await differencesBetween(tx, paper, { mine, other }) : null,
    photo: await photoHeadOf(tx, id),
  };
}

/** Throws not_found, other_show. */
export async function paperCardsOfClass(
  tx: SqlTransaction,
  { classId, actor }: { readonly classId: string; readonly actor: Actor },
): Promise<PaperCardView[]> {
  const found = await tx.sql.row<{ showId: string }>(findClass, [classId]);
  if (found === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  if (!reachesShow(actor, found.showId)) throw problem('other_show');
  const shown: PaperCardView[] = [];
  for (const paper of await tx.sql.rows<PaperCard>(readPaperCards, [classId])) {
    shown.push(await paperCardView(tx, paper, actor));
  }
  return shown;
}

type Shown = NonNullable<PaperCardView['differences']>;

/** `null` where both say the same. */
async function differencesBetween(
  tx: SqlTransaction,
  paper: PaperCard,
  { mine, other }: { readonly mine: PaperEntry; readonly other: PaperEntry },
): Promise<Shown | null> {
  if (mine.contentHash === other.contentHash) return null;
  const entries = await entriesOf(tx, paper);
  const backNumbers = new Map(entries.map(({ id, backNumber }) => [id, backNumber] as const));
  const found = entryDifferences({ mine: mine.content, other: other.content, backNumbers });
  return found.map((difference: EntryDifference) => ({
    ...difference,
    backNumber: backNumbers.get(difference.classEntryId) ?? null,
  }));
}
