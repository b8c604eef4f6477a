/**
 * Several tabs of one phone: they tell each other what changed in the store, and one of them sends (Web Locks). A tab
 * that the phone put to sleep may hold the lock and do nothing, so who is looked at asks for it, and takes it if nobody
 * answers; two that send at once are harmless, since everything is sent with its version or its key.
 */
import type { SignalState } from './desk-types.ts';

export type Message =
  /** These classes changed in the store. */
  | { readonly kind: 'classes'; readonly classIds: readonly string[] }
  /** Anything may have changed. */
  | { readonly kind: 'all' }
  | { readonly kind: 'let-go' }
  | { readonly kind: 'sending'; readonly now: { readonly classId: string; readonly part: string } | null }
  | { readonly kind: 'signal'; readonly state: Omit<SignalState, 'unsent'> }
  | { readonly kind: 'marking'; readonly tab: string; readonly classId: string | null }
  | { readonly kind: 'try-now' }
  | { readonly kind: 'who-sends' }
  | { readonly kind: 'i-send' };

const name = 'ringledger-desk';
/** By then a tab that is awake has answered. */
const asleepAfterMilliseconds = 3_000;

export class Tabs {
  readonly tab = crypto.randomUUID();
  readonly #channel = new BroadcastChannel(name);
  readonly #ended = new AbortController();
  #sends = false;
  #releaseHeld: (() => void) | undefined;
  #stealing: ReturnType<typeof setTimeout> | undefined;

  constructor(hear: (message: Message) => void) {
    this.#channel.onmessage = ({ data }: MessageEvent<Message>) => {
      if (data.kind === 'who-sends') this.#answerWhoSends();
      else if (data.kind === 'i-send') clearTimeout(this.#stealing);
      else hear(data);
    };
  }

  tell(message: Message): void {
    if (!this.#ended.signal.aborted) this.#channel.postMessage(message);
  }

  /** Runs `work` while this tab is the one that sends, now or later; its signal ends it. */
  async sendWhenTurn(work: (ended: AbortSignal) => Promise<void>): Promise<void> {
    while (!this.#ended.signal.aborted) {
      if (document.visibilityState === 'visible') this.#askWhoSends(work);
      const turn = this.#turn(work, { signal: this.#ended.signal });
      await turn.catch(() => undefined);
    }
  }

  /** Whose lock is taken away stops as well. */
  async #turn(work: (ended: AbortSignal) => Promise<void>, options: LockOptions): Promise<void> {
    const turnEnded = new AbortController();
    try {
      await navigator.locks.request(name, options, async () => {
        clearTimeout(this.#stealing);
        this.#releaseHeld = () => turnEnded.abort();
        this.#sends = true;
        await work(AbortSignal.any([turnEnded.signal, this.#ended.signal]));
      });
    } finally {
      turnEnded.abort();
      this.#sends = false;
    }
  }

  #askWhoSends(work: (ended: AbortSignal) => Promise<void>): void {
    this.tell({ kind: 'who-sends' });
    clearTimeout(this.#stealing);
    this.#stealing = setTimeout(() => {
      if (!this.#sends && !this.#ended.signal.aborted) {
        void this.#turn(work, { steal: true }).catch(() => undefined);
      }
    }, asleepAfterMilliseconds);
  }

  /** Who is not looked at makes way. */
  #answerWhoSends(): void {
    if (!this.#sends) return;
    this.tell({ kind: 'i-send' });
    if (document.visibilityState === 'hidden') this.#releaseHeld?.();
  }

  /** This tab is looked at now. */
  wake(work: (ended: AbortSignal) => Promise<void>): void {
    if (!this.#sends && document.visibilityState === 'visible') this.#askWhoSends(work);
  }

  close(): void {
    clearTimeout(this.#stealing);
    this.#ended.abort();
    this.#channel.close();
  }
}
