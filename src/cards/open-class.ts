/** The first card that is opened in a class opens the class: it must be empty then, and the ledger says that it was. */
import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../platform/database.ts';
import { Problem, problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';

const findOpened: Statement = {
  name: 'cards.find-class-opened',
  text: 'SELECT opened_at AS "openedAt" FROM show_class WHERE id = $1::uuid',
};

/** Two first cards follow each other, and the office changes nothing of the class meanwhile. */
const lockClass: Statement = {
  name: 'cards.lock-class-for-opening',
  text: 'SELECT opened_at AS "openedAt" FROM show_class WHERE id = $1::uuid FOR NO KEY UPDATE',
};

const setOpened: Statement = {
  name: 'cards.set-class-opened',
  text: 'UPDATE show_class SET opened_at = $2 WHERE id = $1::uuid AND opened_at IS NULL',
};

/** What may stand in a class only after it was opened. */
const countWritten: Statement = {
  name: 'cards.count-written-in-class',
  text: `
    SELECT ((SELECT count(*) FROM card_draft_go WHERE class_id = $1::uuid)
            + (SELECT count(*) FROM card_draft_order draft JOIN card ON card.id = draft.card_id
               WHERE card.class_id = $1::uuid))::int AS drafts,
           (SELECT count(*) FROM card_revision revision JOIN card ON card.id = revision.card_id
            WHERE card.class_id = $1::uuid)::int AS revisions,
           (SELECT count(*) FROM paper_card WHERE class_id = $1::uuid)::int AS "paperCards",
           (SELECT count(*) FROM ruling WHERE class_id = $1::uuid)::int AS rulings,
           (SELECT count(*) FROM posting WHERE class_id = $1::uuid)::int AS postings`,
};

const countGoes: Statement = {
  name: 'cards.count-goes-of-class',
  text: `SELECT count(*)::int AS goes FROM class_entry
         WHERE class_id = $1::uuid AND status IN ('entered', 'checked-in')`,
};

interface Written {
  readonly drafts: number;
  readonly revisions: number;
  readonly paperCards: number;
  readonly rulings: number;
  readonly postings: number;
}

interface ClassToOpen {
  readonly classId: string;
  readonly showId: string;
}

/**
 * Before anything else of the class is locked: a class that is not open yet is held for this transaction alone.
 * Returns whether it is still to be opened.
 */
export async function holdUnopened(tx: SqlTransaction, classId: string): Promise<boolean> {
  const seen = await tx.sql.row<{ openedAt: Date | null }>(findOpened, [classId]);
  if (seen === undefined || seen.openedAt !== null) return false;
  const held = await tx.sql.row<{ openedAt: Date | null }>(lockClass, [classId]);
  return held?.openedAt === null;
}

/** Opens a class that `holdUnopened` holds. Throws class_not_empty, and then nothing is opened. */
export async function openClass(
  parts: AppParts,
  tx: SqlTransaction,
  { classId, showId }: ClassToOpen,
): Promise<void> {
  const written = await writtenIn(tx, classId);
  mustBeEmpty(written);
  const at = parts.clock.now();
  await tx.sql.rows(setOpened, [classId, at]);
  const goes = (await tx.sql.row<{ goes: number }>(countGoes, [classId]))?.goes ?? 0;
  await appendLine(parts, tx, { showId, type: 'class.opened', body: { classId, goes, ...written }, at });
}

async function writtenIn(tx: SqlTransaction, classId: string): Promise<Written> {
  const written = await tx.sql.row<Written>(countWritten, [classId]);
  if (written === undefined) throw new Error('nothing was counted');
  return written;
}

function mustBeEmpty(written: Written): void {
  const found = Object.entries(written).filter(([, count]) => count > 0);
  if (found.length === 0) return;
  const words = found.map(([what, count]) => `${what === 'paperCards' ? 'paper cards' : what}: ${count}`);
  throw problem('class_not_empty', {
    detail: `Before its first card was opened, the class had ${words.join(', ')}.`,
    more: { found: written },
  });
}

/**
 * Runs what may open a class. Where that is refused because something is written in it already, the office hears of it
 * by a line of its own: the refusal itself has undone all that its transaction did.
 */
export async function tellingOffice<T>(parts: AppParts, classId: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof Problem && error.code === 'class_not_empty') await tellNotEmpty(parts, classId);
    throw error;
  }
}

const findShow: Statement = {
  name: 'cards.find-show-of-class',
  text: 'SELECT show_id AS "showId" FROM show_class WHERE id = $1::uuid',
};

async function tellNotEmpty(parts: AppParts, classId: string): Promise<void> {
  await inSqlTransaction(parts.db, async (tx) => {
    const found = await tx.sql.row<{ showId: string }>(findShow, [classId]);
    if (found === undefined) return;
    const body = { classId, ...(await writtenIn(tx, classId)) };
    const at = parts.clock.now();
    await appendLine(parts, tx, { showId: found.showId, type: 'class.opening-refused', body, at });
  });
}
