/** Has the browser keep the pages of a phone (`worker/`), so that they open with no network at all. */

/** The pages of a phone. Whoever opens one has all kept. */
const scopes = ['/judge', '/pair', '/gate'] as const;

const script = '/sw.js';

interface Policies {
  readonly createPolicy: (
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ) => { readonly createScriptURL: (address: string) => string };
}

let address: string | undefined;

/** The pages take scripts from a policy only (trusted types); browsers that know none take the plain address. */
function trustedScript(): string {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: Policies };
  address ??=
    trustedTypes
      ?.createPolicy('ringledger-worker', { createScriptURL: () => script })
      .createScriptURL(script) ?? script;
  return address;
}

/** Does nothing where the browser has no service workers: the page then needs the network to open. */
export async function keepPages(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const worker = trustedScript();
  await Promise.all(
    scopes.map((scope) => navigator.serviceWorker.register(worker, { scope, updateViaCache: 'none' })),
  ).catch(() => undefined);
}

/** `undefined`: the browser keeps none for that page. */
export async function pagesKept(
  scope: (typeof scopes)[number],
): Promise<ServiceWorkerRegistration | undefined> {
  await keepPages();
  if (!('serviceWorker' in navigator)) return undefined;
  return navigator.serviceWorker.getRegistration(scope);
}

/**
 * For a page on which nobody is in the middle of anything: a newer version is let in as soon as it is here, and shows
 * when the page is opened next. The page that is open goes on with its own files.
 */
export async function keepNewest(scope: (typeof scopes)[number]): Promise<void> {
  const kept = await pagesKept(scope);
  if (kept === undefined) return;
  const letIn = () => kept.waiting?.postMessage('take over');
  letIn();
  kept.addEventListener('updatefound', () => kept.installing?.addEventListener('statechange', letIn));
}
