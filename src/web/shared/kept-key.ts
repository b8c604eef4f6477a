/**
 * The key of this phone, in the browser's own store (IndexedDB). The private key is not extractable: the
 * browser signs with it and gives it to nobody, neither to this page nor to one that was smuggled in.
 */
import type { PhoneKey } from '../../phone/index.ts';

const database = 'ringledger';
const shelf = 'phone-key';
/** A phone is one person's, or the gate's, at a time. */
const place = 'this phone';

/**
 * What keeps this browser from making a key, by a code of `problems.ftl`: browsers give keys only to pages that came
 * over https, or from the very computer that they run on.
 */
export function keyInTheWay(): 'key_needs_https' | 'key_not_possible' | undefined {
  if (!window.isSecureContext) return 'key_needs_https';
  return 'subtle' in crypto && 'indexedDB' in window ? undefined : 'key_not_possible';
}

/** `undefined`: this phone has none. */
export async function keptKey(): Promise<PhoneKey | undefined> {
  const found: unknown = await onShelf('readonly', (keys) => keys.get(place));
  return isKey(found) ? found : undefined;
}

/** Throws a DOMException where the browser keeps nothing, as some do in private windows. */
export async function keepKey(key: PhoneKey): Promise<void> {
  await onShelf('readwrite', (keys) => keys.put(key, place));
  // Without this a browser that runs out of room may throw the key away; it may say no, and then it is so.
  await navigator.storage?.persist?.();
}

export async function forgetKey(): Promise<void> {
  await onShelf('readwrite', (keys) => keys.delete(place));
}

function isKey(found: unknown): found is PhoneKey {
  return typeof found === 'object' && found !== null && 'privateKey' in found && 'thumbprint' in found;
}

async function onShelf<Found>(
  mode: IDBTransactionMode,
  what: (keys: IDBObjectStore) => IDBRequest<Found>,
): Promise<Found> {
  const store = await openStore();
  try {
    const transaction = store.transaction(shelf, mode);
    const found = answerTo(what(transaction.objectStore(shelf)));
    await new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error);
    });
    return await found;
  } finally {
    store.close();
  }
}

function openStore(): Promise<IDBDatabase> {
  const opening = indexedDB.open(database, 1);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore(shelf);
  };
  return answerTo(opening);
}

function answerTo<Found>(request: IDBRequest<Found>): Promise<Found> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
