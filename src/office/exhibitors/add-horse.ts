import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { lockShow } from '../store/locks.ts';
import { type HorseBody, horseOf, type NewHorse } from './exhibitor-schemas.ts';

/** Throws not_found. */
export async function addHorse(
  parts: AppParts,
  tx: Transaction,
  asked: NewHorse & { showId: string },
): Promise<HorseBody> {
  const at = parts.clock.now();
  const { showId } = asked;
  await lockShow(tx, showId);
  const row = await tx.prisma.horse.create({ data: { ...asked, id: parts.ids.next(), createdAt: at } });
  await appendLine(parts, tx, { showId, type: 'horse.created', body: { horseId: row.id }, at });
  return horseOf(row);
}
