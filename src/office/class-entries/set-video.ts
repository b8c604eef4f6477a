import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { mustNotBeErased } from '../exhibitors/erased.ts';
import { lockOpenClass } from '../store/locks.ts';
import { type ClassEntryBody, classEntryOf, type NewVideo, withEntry } from './class-entry-schemas.ts';

interface Asked extends NewVideo {
  readonly showId: string;
  readonly classId: string;
  readonly classEntryId: string;
}

/**
 * A video may show a child, so its address is told to nobody but the office and the judges of the class, and the
 * ledger says only that it changed. Whose name was erased gets none. Throws not_found, class_not_open,
 * exhibitor_erased.
 */
export async function setVideo(parts: AppParts, tx: Transaction, asked: Asked): Promise<ClassEntryBody> {
  const { showId, classId, classEntryId, url } = asked;
  const at = parts.clock.now();
  await lockOpenClass(tx, showId, classId);
  const row = await tx.prisma.classEntry.findFirst({
    where: { id: classEntryId, classId },
    include: withEntry,
  });
  if (row === null) throw problem('not_found');
  if (url !== null) mustNotBeErased(row.entry.exhibitor);
  if (row.videoUrl === url) return classEntryOf(row);
  const changed = await tx.prisma.classEntry.update({
    where: { id: classEntryId },
    data: { videoUrl: url },
    include: withEntry,
  });
  await appendLine(parts, tx, {
    showId,
    type: 'class-entry.video-changed',
    body: { classId, classEntryId },
    at,
  });
  return classEntryOf(changed);
}
