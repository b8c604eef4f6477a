/** A paper card that was taken up by mistake, or that the judge's own signature overtook, is laid aside with a reason. */
import type { Actor } from '../../access/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import { mustBeOpen, paperCardLocked } from './paper-record.ts';
import * as statements from './paper-statements.ts';

interface Withdrawal {
  readonly paperCardId: string;
  readonly actor: Actor;
  readonly reason: string;
}

/** Withdrawn twice for the same reason is withdrawn once. Throws not_found, other_show, paper_card_closed. */
export async function withdrawPaperCard(
  parts: AppParts,
  tx: SqlTransaction,
  { paperCardId, actor, reason }: Withdrawal,
): Promise<void> {
  const paper = await paperCardLocked(tx, paperCardId, actor);
  if (paper.status === 'withdrawn' && paper.withdrawnWhy === reason) return;
  mustBeOpen(paper);
  const { classId, seatId, cardId, showId } = paper;
  await tx.sql.rows(statements.withdrawPaperCard, [paperCardId, reason]);
  const body = { classId, seatId, cardId, paperCardId };
  await appendLine(parts, tx, { showId, type: 'card.paper-withdrawn', body, at: parts.clock.now() });
}
