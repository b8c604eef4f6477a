/** The phone's own store. Whatever a person wrote is on the disk (durability strict) before anything else happens. */
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import {
  type KeptAmendment,
  type KeptClass,
  type KeptLeftBehind,
  type KeptPhone,
  type KeptSignature,
  thisPhone,
  type Writing,
} from './records.ts';

interface DeskSchema extends DBSchema {
  phone: { key: string; value: KeptPhone };
  classes: { key: string; value: KeptClass };
  writings: {
    key: [string, string];
    value: Writing;
    indexes: { ofClass: string };
  };
  signatures: { key: string; value: KeptSignature; indexes: { ofClass: string } };
  amendments: { key: string; value: KeptAmendment };
  leftBehind: { key: string; value: KeptLeftBehind };
}

export type ShelfName = 'phone' | 'classes' | 'writings' | 'signatures' | 'amendments' | 'leftBehind';
const shelves: readonly ShelfName[] = [
  ...(['phone', 'classes', 'writings', 'signatures', 'amendments', 'leftBehind'] as const),
];

export type Store = IDBPDatabase<DeskSchema>;
export type StoreChange = IDBPTransaction<DeskSchema, ShelfName[], 'readwrite'>;

/** Rejects where the browser keeps nothing, as some do in private windows. */
export function openStore(): Promise<Store> {
  return openDB<DeskSchema>('ringledger-desk', 1, {
    upgrade(db) {
      db.createObjectStore('phone', { keyPath: 'place' });
      db.createObjectStore('classes', { keyPath: 'classId' });
      db.createObjectStore('writings', { keyPath: ['classId', 'part'] }).createIndex('ofClass', 'classId');
      db.createObjectStore('signatures', { keyPath: 'id' }).createIndex('ofClass', 'classId');
      db.createObjectStore('amendments', { keyPath: 'classId' });
      db.createObjectStore('leftBehind', { keyPath: 'id' });
    },
    // A newer version of the page wants to change the store: it must not wait for this one.
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase | null)?.close(),
  });
}

/**
 * One transaction over everything. It resolves once the browser says that it is on the disk; `work` may await nothing
 * but the store. Rejects, and nothing is changed, where the browser does not keep it.
 */
export async function change<Result>(
  store: Store,
  work: (change: StoreChange) => Promise<Result>,
): Promise<Result> {
  const transaction = store.transaction([...shelves], 'readwrite', { durability: 'strict' });
  try {
    const result = await work(transaction);
    await transaction.done;
    return result;
  } catch (error) {
    // What was cut off says so by itself; its own rejection tells nothing more.
    transaction.done.catch(() => undefined);
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    throw error;
  }
}

export const phoneIn = (change: StoreChange): Promise<KeptPhone | undefined> =>
  change.objectStore('phone').get(thisPhone);

/** All but what was left behind by others, which only its reader throws away. */
export async function wipe(change: StoreChange): Promise<void> {
  for (const shelf of shelves) if (shelf !== 'leftBehind') await change.objectStore(shelf).clear();
}

/** Parts of cards and signatures that the service does not have. */
export async function countUnsent(store: Store): Promise<number> {
  const [writings, signatures] = await Promise.all([store.getAll('writings'), store.getAll('signatures')]);
  return writings.filter(isUnsent).length + signatures.filter(({ state }) => state === 'waiting').length;
}

export const isUnsent = ({ unsentSince }: Pick<Writing, 'unsentSince'>): boolean => unsentSince !== undefined;
