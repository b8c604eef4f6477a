/** The unsent work of another judge is not sent in this one's name, and not thrown away either. */
import { waitingRemarks } from '../go/waiting-remarks.ts';
import { exportOf } from './export-text.ts';
import type { KeptPhone } from './records.ts';
import { isUnsent, type StoreChange, wipe } from './store.ts';

/** Then the store is empty for whoever is paired now. */
export async function packAside(change: StoreChange, phone: KeptPhone): Promise<void> {
  const kept = await change.objectStore('classes').getAll();
  const writings = await change.objectStore('writings').getAll();
  const signatures = await change.objectStore('signatures').getAll();
  const remarks = waitingRemarks();
  const hasWork =
    Object.keys(remarks).length > 0 ||
    writings.some(isUnsent) ||
    signatures.some(({ state }) => state === 'waiting');
  if (hasWork) {
    const classes = kept.map(({ classId, day }) => ({
      day,
      writings: writings.filter((one) => one.classId === classId),
      signatures: signatures.filter((one) => one.classId === classId),
    }));
    await change.objectStore('leftBehind').put({
      id: crypto.randomUUID(),
      leftAt: new Date().toISOString(),
      judge: phone.phone?.judge.name ?? '',
      show: phone.phone?.show.name ?? '',
      text: exportOf({ phone, classes, remarks }),
    });
  }
  await wipe(change);
}
