/** A newer version of the page waits until it is let in; the page that is open goes on with its own files. */
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { pagesKept } from '../../shared/keep-pages.ts';
import type { UpdateState } from './desk-types.ts';

const lookEvery = 60 * 60_000;

export class PageUpdate {
  readonly #waiting = signal<ServiceWorker | null>(null);
  readonly state: ReadonlySignal<UpdateState>;

  constructor(isMarking: ReadonlySignal<boolean>) {
    this.state = computed(() => {
      if (this.#waiting.value === null) return 'none';
      return isMarking.value ? 'waits' : 'ready';
    });
  }

  async follow(ended: AbortSignal): Promise<void> {
    const kept = await pagesKept('/judge');
    if (kept === undefined || ended.aborted) return;
    const look = () => {
      // The first version of all waits for nobody.
      this.#waiting.value = kept.active === null ? null : kept.waiting;
    };
    look();
    kept.addEventListener(
      'updatefound',
      () => {
        kept.installing?.addEventListener('statechange', look, { signal: ended });
      },
      { signal: ended },
    );
    navigator.serviceWorker.addEventListener('controllerchange', look, { signal: ended });
    const ask = () => void kept.update().catch(() => undefined);
    const timer = setInterval(ask, lookEvery);
    const onSeen = () => document.visibilityState === 'visible' && ask();
    document.addEventListener('visibilitychange', onSeen, { signal: ended });
    ended.addEventListener('abort', () => clearInterval(timer));
  }

  /** Lets the newer version in and begins again with it. */
  async take(): Promise<void> {
    const waiting = this.#waiting.peek();
    if (this.state.peek() !== 'ready' || waiting === null) return;
    const changed = new Promise<void>((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', () => resolve(), { once: true });
    });
    waiting.postMessage('take over');
    await changed;
    location.reload();
  }
}
