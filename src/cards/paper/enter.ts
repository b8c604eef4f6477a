/**
 * Two different people each read the whole paper and type it, neither seeing what the other has. Where both have the
 * same it becomes a revision of the card; where they differ each looks at the paper again and corrects her own.
 */
import { type Actor, officeOf } from '../../access/index.ts';
import type { CardContent } from '../../engine/sheets/card-types.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { type Fingerprinted, fingerprinted } from '../../platform/canonical-json.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { mustBeCurrent } from '../../platform/http/versions.ts';
import { problem } from '../../platform/problems/index.ts';
import { entriesOf } from '../card-record.ts';
import { mustBeSignable } from '../check-content.ts';
import { writeRevision } from '../revisions.ts';
import { hashWithSalt } from './hash-with-salt.ts';
import {
  mustBeOpen,
  type PaperEntry,
  type PaperOfCard,
  paperCardForEntering,
  paperEntriesOf,
} from './paper-record.ts';
import * as statements from './paper-statements.ts';
import { settledContent } from './settled-content.ts';

export interface Entering {
  readonly paperCardId: string;
  readonly actor: Actor;
  readonly content: CardContent;
  /** Version of her own entry that she has seen; `undefined`: she has none yet. */
  readonly seen: number | undefined;
}

/**
 * Keeps what she read, and accepts the card where the other read the same. The same again changes nothing, also after
 * it was accepted. Throws paper_card_closed, paper_card_overtaken, paper_card_has_both, if_match_required,
 * stale_version, amendment_changes_nothing, and what `paperCardForEntering` and `mustBeSignable` throw.
 */
export async function enterPaperCard(parts: AppParts, tx: SqlTransaction, entering: Entering): Promise<void> {
  const { paperCardId, actor, content, seen } = entering;
  const found = await paperCardForEntering(tx, paperCardId, actor);
  const entries = await paperEntriesOf(tx, found.paper);
  const accountId = officeOf(actor).accountId;
  const mine = entries.find((entry) => entry.accountId === accountId);
  const sent = fingerprinted(settledContent(content));
  if (mine?.contentHash === sent.hash) return;
  mustTakeEntries(found);
  if (mine === undefined && entries.length > 1) throw problem('paper_card_has_both');
  mustBeOfHers(mine, seen);
  await mustStand(tx, found, { content, sent });
  await keep(parts, tx, { ...found, accountId, sent, entries });
  const other = entries.find((entry) => entry.accountId !== accountId);
  if (other?.contentHash !== sent.hash) return;
  await accept(parts, tx, { ...found, sent, enteredBy: other.accountId, checkedBy: accountId });
}

function mustTakeEntries({ paper }: PaperOfCard): void {
  mustBeOpen(paper);
  if (paper.overtaken) throw problem('paper_card_overtaken');
}

/** A first entry is of no version; a correction is of the one that is kept. */
function mustBeOfHers(mine: PaperEntry | undefined, seen: number | undefined): void {
  if (mine === undefined && seen === undefined) return;
  if (seen === undefined) throw problem('if_match_required');
  mustBeCurrent(mine?.version ?? 0, seen);
}

interface Typed {
  /** As it came. */
  readonly content: CardContent;
  /** As it is kept. */
  readonly sent: Fingerprinted<CardContent>;
}

/** The faults are named where they stand in what was sent, so that is what is checked; what is kept says the same. */
async function mustStand(tx: SqlTransaction, { card }: PaperOfCard, { content, sent }: Typed): Promise<void> {
  mustBeSignable({ card, entries: await entriesOf(tx, card), content, under: '' });
  if (card.contentHash === sent.hash) throw problem('amendment_changes_nothing');
}

interface Kept extends PaperOfCard {
  readonly sent: Fingerprinted<CardContent>;
}

interface Mine extends Kept {
  readonly accountId: string;
  readonly entries: readonly PaperEntry[];
}

async function keep(parts: AppParts, tx: SqlTransaction, mine: Mine): Promise<void> {
  const { paper, accountId, sent, entries } = mine;
  const { id: paperCardId, classId, seatId, cardId, showId } = paper;
  const at = laterThan(entries, parts.clock.now());
  const values = [paperCardId, accountId, sent.text, sent.hash, at];
  const saved = await tx.sql.row<{ version: number }>(statements.savePaperEntry, values);
  if (saved === undefined) throw new Error('the entry was not kept');
  const body = { classId, seatId, cardId, paperCardId, accountId, version: saved.version };
  await appendLine(parts, tx, { showId, type: 'card.paper-entered', body, at });
}

/** Two saves within one millisecond still follow each other. */
const laterThan = (entries: readonly PaperEntry[], now: Date): Date =>
  new Date(Math.max(now.getTime(), ...entries.map(({ enteredAt }) => enteredAt.getTime() + 1)));

interface Agreed extends Kept {
  readonly enteredBy: string;
  /** Whose entry came to be the same. */
  readonly checkedBy: string;
}

async function accept(parts: AppParts, tx: SqlTransaction, agreed: Agreed): Promise<void> {
  const { paper, card, sent, enteredBy, checkedBy } = agreed;
  mustBeSignable({ card, entries: await entriesOf(tx, card), content: sent.content, under: '' });
  await tx.sql.rows(statements.acceptPaperCard, [paper.id]);
  const saltedHash = hashWithSalt({ content: sent.content, salt: paper.salt });
  const added = { signed: sent, signedAt: parts.clock.now(), ...followsOn(card, paper) };
  const accepted = { paperCardId: paper.id, enteredBy, checkedBy, saltedHash };
  await writeRevision(parts, tx, { card, added: { ...added, paper: accepted } });
}

function followsOn({ revision, contentHash }: PaperOfCard['card'], { reason }: PaperOfCard['paper']) {
  if (revision === null || contentHash === null) return { previous: null, reason: null };
  return { previous: { revision, contentHash }, reason };
}
