import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { Transaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { isDrawn, settleOrder } from '../order/set-order.ts';
import { lockOpenClass } from '../store/locks.ts';
import {
  type ClassEntryBody,
  classEntryBody,
  classEntryOf,
  type NewStatus,
  withEntry,
} from './class-entry-schemas.ts';

type Status = ClassEntryBody['status'];

/** From which status one may come to which. Who went to another class is that class's business. */
const mayFollow: Readonly<Record<Status, readonly Status[]>> = {
  entered: ['checked-in', 'scratched', 'no-show', 'excused'],
  'checked-in': ['entered', 'scratched', 'no-show', 'excused'],
  scratched: ['entered', 'no-show'],
  'no-show': ['entered', 'checked-in', 'scratched'],
  excused: ['entered'],
  moved: [],
};

interface Asked extends NewStatus {
  readonly showId: string;
  readonly classId: string;
  readonly classEntryId: string;
}

/**
 * Checks an entry in, scratches it, takes a scratch back ... also while the class is judged and after it was
 * posted: the records follow what happened, and the office then posts a correction. The status it has already
 * is left alone. Throws not_found, class_not_open, status_change_refused, reason_needed.
 */
export async function changeStatus(parts: AppParts, tx: Transaction, asked: Asked): Promise<ClassEntryBody> {
  const { showId, classId, classEntryId, status, reason } = asked;
  const at = parts.clock.now();
  const showClass = await lockOpenClass(tx, showId, classId);
  const row = await tx.prisma.classEntry.findFirst({
    where: { id: classEntryId, classId },
    include: withEntry,
  });
  if (row === null) throw problem('not_found');
  const before = classEntryBody.shape.status.parse(row.status);
  if (before === status) return classEntryOf(row);
  mustBeAllowed(before, asked);
  const changed = await tx.prisma.classEntry.update({
    where: { id: classEntryId },
    data: { status, statusReason: reason, changedAt: at },
    include: withEntry,
  });
  const body = { classId, classEntryId, backNumber: row.entry.backNumber, status };
  const type = status === 'scratched' ? 'entry.scratched' : 'class-entry.changed';
  await appendLine(parts, tx, { showId, type, body, at });
  if (status !== 'entered' || row.goPosition !== null || !(await isDrawn(tx, classId)))
    return classEntryOf(changed);
  // It was scratched when the order was drawn, and is back: it goes last, like a late add.
  await settleOrder(parts, tx, { showClass, kind: 'late-add', reason });
  return classEntryOf(
    await tx.prisma.classEntry.findUniqueOrThrow({ where: { id: classEntryId }, include: withEntry }),
  );
}

function mustBeAllowed(before: Status, { status, reason }: NewStatus): void {
  const allowed = mayFollow[before];
  if (!allowed.includes(status)) {
    const detail = `The entry is ${before}; it may become ${allowed.join(', ') || 'nothing else'}.`;
    throw problem('status_change_refused', { detail });
  }
  const needless = status === 'checked-in' || (before === 'checked-in' && status === 'entered');
  if (reason === null && !needless) {
    throw problem('reason_needed', { errors: [{ field: '/reason', message: `${status} needs a reason` }] });
  }
}
