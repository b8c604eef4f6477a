/**
 * Keeps the pages of a phone, so that they open with no network at all. It knows the files of one build; a newer one
 * waits beside it until it is let in, and the files of the build before stay, because a page of it may still be open.
 *
 * It touches nothing but those pages and their files: what the API answers is never kept here.
 */
import type { KeptFile } from './kept-file.ts';

declare const self: ServiceWorkerGlobalScope;

/** Put in by the build. */
declare const filesOfBuild: readonly KeptFile[];
declare const nameOfBuild: string;

const files = filesOfBuild;
const prefix = 'ringledger pages ';
const ours = prefix + nameOfBuild;

self.addEventListener('install', (event) => {
  event.waitUntil(keepAll());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldBuilds());
});

self.addEventListener('message', ({ data }) => {
  if (data === 'take over') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  const file = fileFor(request, pathname);
  if (file !== undefined) event.respondWith(keptOrFetched(request, file));
});

/** All or nothing: where one file cannot be had, or is another than the build says, the build is not installed. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(ours);
  for (const file of files) {
    if ((await cache.match(file.address)) === undefined) await cache.put(file.address, await fresh(file));
  }
}

async function fresh({ address, hash, isPage }: KeptFile): Promise<Response> {
  // The names of other files hold a hash of what is in them: what is here already need not be fetched again.
  const before = isPage ? undefined : await caches.match(address);
  if (before !== undefined) return before;
  const answer = await fetch(address, { cache: isPage ? 'reload' : 'default' });
  const bytes = await answer.clone().arrayBuffer();
  if (!answer.ok || (await hashOf(bytes)) !== hash)
    throw new Error(`${address} is not the one of this build`);
  return answer;
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', bytes);
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** This build and the one before. */
async function dropOldBuilds(): Promise<void> {
  const kept = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== ours);
  for (const name of kept.slice(0, -1)) await caches.delete(name);
}

/** `/judge/classes/7` is the page `/judge`. */
function fileFor({ mode }: Request, pathname: string): string | undefined {
  const isHere = ({ address, isPage }: KeptFile) =>
    isPage ? mode === 'navigate' && `${pathname}/`.startsWith(`${address}/`) : pathname === address;
  if (pathname.startsWith('/assets/')) return pathname;
  return files.find(isHere)?.address;
}

/** First of this build, then of the one before, then from the service. */
async function keptOrFetched(request: Request, address: string): Promise<Response> {
  const cache = await caches.open(ours);
  return (await cache.match(address)) ?? (await caches.match(address)) ?? fetch(request);
}
