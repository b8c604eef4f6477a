/** What this device keeps of the gate (IndexedDB): what was seen last, and what is not sent yet. */
import { type DBSchema, deleteDB, type IDBPDatabase, openDB } from 'idb';
import type { Outgoing } from './gate-types.ts';

export interface Kept extends DBSchema {
  /** By what it is: `show`, `board`, `sheet <class>`, `announcement <class>`, `gone <class>`. */
  seen: { key: string; value: { readonly owner: string; readonly value: unknown } };
  /** In the order in which it was made. */
  outgoing: { key: number; value: Outgoing & { readonly sequence?: number } };
}

export type KeptStore = IDBPDatabase<Kept>;

const database = 'ringledger-gate';

/** Rejects where the browser keeps nothing, as some do in private windows. */
export const openKept = (): Promise<KeptStore> =>
  openDB<Kept>(database, 1, {
    upgrade(store) {
      store.createObjectStore('seen');
      store.createObjectStore('outgoing', { keyPath: 'sequence', autoIncrement: true });
    },
    // Another tab takes it away: it may not wait for this one.
    blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
  });

/** Nothing of the gate stays on this device: for whoever lets a phone go. */
export const forgetGate = (): Promise<void> => deleteDB(database);
