/** What goes on behind the desk: the store, the other tabs, and the one that sends. */
import { signal } from '@preact/signals';
import { PhoneClient, type PhoneKey } from '../../../phone/index.ts';
import type { KeyState } from './day-state.ts';
import type { DeskRoom } from './desk-room.ts';
import { Marking } from './marking.ts';
import { Mirror } from './mirror.ts';
import { PageUpdate } from './page-update.ts';
import { Sender } from './sender.ts';
import { Service } from './service.ts';
import { Hearing } from './signal-state.ts';
import type { Store } from './store.ts';
import { type Message, Tabs } from './tabs.ts';

export class DeskWorks {
  readonly key: PhoneKey | undefined;
  readonly keyState = signal<KeyState>('here');
  readonly mirror: Mirror;
  readonly hearing = new Hearing();
  readonly room: DeskRoom;
  readonly update: PageUpdate;
  readonly #tabs = new Tabs((message) => void this.#hear(message));
  readonly #marking = new Marking(this.#tabs);
  readonly #sender: Sender | undefined;
  readonly #ended = new AbortController();

  constructor(store: Store, key: PhoneKey | undefined) {
    this.key = key;
    this.mirror = new Mirror(store);
    this.update = new PageUpdate(this.#marking.any);
    const wake = () => {
      this.#sender?.bell.ring();
    };
    this.room = { store, mirror: this.mirror, tabs: this.#tabs, wake };
    if (key === undefined) this.keyState.value = 'none';
    else this.#sender = this.#senderFor(key);
  }

  async begin(): Promise<void> {
    await this.mirror.loadAll();
    const options = { signal: this.#ended.signal };
    document.addEventListener('visibilitychange', () => this.#seen(), options);
    addEventListener('online', () => this.tryNow(), options);
    addEventListener('offline', () => this.hearing.lost(), options);
    addEventListener('pagehide', () => this.#marking.set(null), options);
    void this.update.follow(this.#ended.signal);
    if (this.#sender !== undefined) void this.#tabs.sendWhenTurn(this.#turn);
  }

  tryNow(): void {
    this.#sender?.tryNow();
    this.#tabs.tell({ kind: 'try-now' });
  }

  mark(classId: string | null): void {
    this.#marking.set(classId);
    this.#sender?.lookAt();
  }

  /** The phone was let go, here or in another tab: nothing of it stays in view. */
  async letGo(): Promise<void> {
    this.keyState.value = 'none';
    await this.mirror.loadAll();
    this.close();
  }

  close(): void {
    this.#ended.abort();
    this.#tabs.close();
  }

  #senderFor(key: PhoneKey): Sender {
    const service = new Service(new PhoneClient(location.origin, key), (sign) => {
      this.hearing.take(sign);
      this.#tabs.tell({ kind: 'signal', state: this.hearing.state.peek() });
    });
    const { thumbprint } = key;
    return new Sender(
      { room: this.room, service, thumbprint },
      {
        isSeen: () => document.visibilityState === 'visible',
        marked: () => this.#marking.classes(),
        foundGate: () => {
          this.keyState.value = 'gate';
        },
      },
    );
  }

  readonly #turn = (ended: AbortSignal): Promise<void> => this.#sender?.run(ended) ?? Promise.resolve();

  #seen(): void {
    if (document.visibilityState !== 'visible') return;
    this.#tabs.wake(this.#turn);
    this.tryNow();
  }

  async #hear(message: Message): Promise<void> {
    switch (message.kind) {
      case 'classes':
        for (const classId of message.classIds) await this.mirror.loadClass(classId);
        return this.#sender?.bell.ring();
      case 'all':
        return this.mirror.loadAll();
      case 'let-go':
        return this.letGo();
      case 'sending':
        this.mirror.sending.value = message.now;
        return;
      case 'signal':
        this.hearing.state.value = message.state;
        return;
      case 'marking':
        this.#marking.hear(message);
        return this.#sender?.lookAt();
      case 'try-now':
        return this.#sender?.tryNow();
      case 'who-sends':
      case 'i-send':
        return;
    }
  }
}
