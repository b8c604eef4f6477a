/** What the verbs of the desk share: the store, what the screen sees of it, and who must hear of a change. */
import type { Mirror } from './mirror.ts';
import type { Writing } from './records.ts';
import { change, type Store, type StoreChange } from './store.ts';
import type { Tabs } from './tabs.ts';

export interface DeskRoom {
  readonly store: Store;
  readonly mirror: Mirror;
  readonly tabs: Tabs;
  /** There is something to send. */
  readonly wake: () => void;
}

/** Kept first, then shown here, then told to the other tabs. */
export async function changeClass<Result>(
  { store, mirror, tabs }: DeskRoom,
  classId: string,
  work: (change: StoreChange) => Promise<Result>,
): Promise<Result> {
  const result = await change(store, work);
  await mirror.loadClass(classId);
  tabs.tell({ kind: 'classes', classIds: [classId] });
  return result;
}

/** One part of one card: the quick way, since a tap waits for it. */
export async function changePart<Result extends { readonly writing?: Writing }>(
  { store, mirror, tabs }: DeskRoom,
  work: (change: StoreChange) => Promise<Result>,
): Promise<Result> {
  const result = await change(store, work);
  if (result.writing !== undefined) {
    mirror.setPart(result.writing);
    tabs.tell({ kind: 'classes', classIds: [result.writing.classId] });
  }
  return result;
}

/** The browser did not keep it: full, or its store was closed. Anything else is a fault of the page. */
export const isNotKept = (error: unknown): boolean => error instanceof DOMException;
