import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { lockShow } from '../store/locks.ts';
import { type HorseBody, type HorseChange, horseOf } from './exhibitor-schemas.ts';

/** How its name is spoken; the last word of the office holds. Throws not_found. */
export async function changeHorse(
  parts: AppParts,
  tx: Transaction,
  asked: HorseChange & { readonly showId: string; readonly horseId: string },
): Promise<HorseBody> {
  const at = parts.clock.now();
  const { showId, horseId, spokenAs } = asked;
  await lockShow(tx, showId);
  const before = await tx.prisma.horse.findFirst({ where: { id: horseId, showId } });
  if (before === null) throw problem('not_found');
  if (before.spokenAs === spokenAs) return horseOf(before);
  const row = await tx.prisma.horse.update({ where: { id: horseId }, data: { spokenAs } });
  await appendLine(parts, tx, { showId, type: 'horse.changed', body: { horseId }, at });
  return horseOf(row);
}
