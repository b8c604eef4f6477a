/** The store as the screen sees it: signals that change after the store has, never before. */
import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import {
  type ClassOnDesk,
  cardStateOf,
  conflictsOf,
  contentOnDesk,
  goOnDesk,
  orderOnDesk,
} from './class-view.ts';
import type { DayClass } from './day-types.ts';
import type { CardState, Conflict, GoOnDesk, OrderOnDesk } from './desk-types.ts';
import type { KeptAmendment, KeptLeftBehind, KeptPhone, KeptSignature, Writing } from './records.ts';
import { thisPhone } from './records.ts';
import { isUnsent, type Store } from './store.ts';

interface OneClass {
  readonly day: Signal<DayClass>;
  readonly parts: Map<string, Signal<Writing | undefined>>;
  /** Goes up with every change of any part. */
  readonly changes: Signal<number>;
  readonly signatures: Signal<readonly KeptSignature[]>;
  readonly amendment: Signal<KeptAmendment | undefined>;
  readonly views: Map<string, ReadonlySignal<unknown>>;
}

export class Mirror {
  readonly phone = signal<KeptPhone | undefined>(undefined);
  readonly leftBehind = signal<readonly KeptLeftBehind[]>([]);
  /** Ids in the order of the program. */
  readonly classIds = signal<readonly string[]>([]);
  /** What is being sent this very moment. */
  readonly sending = signal<{ readonly classId: string; readonly part: string } | null>(null);
  readonly #classes = new Map<string, OneClass>();
  readonly #store: Store;

  constructor(store: Store) {
    this.#store = store;
  }

  readonly classes = computed(() =>
    this.classIds.value.flatMap((classId) => this.#classes.get(classId)?.day.value ?? []),
  );

  readonly conflicts: ReadonlySignal<readonly Conflict[]> = computed(() =>
    this.classIds.value
      .flatMap((classId) => {
        const one = this.#onDesk(classId, 'all');
        return one === undefined ? [] : conflictsOf(one);
      })
      .sort((a, b) => a.foundAt.localeCompare(b.foundAt)),
  );

  readonly unsent = computed(() =>
    this.classIds.value.reduce((sum, classId) => {
      const one = this.#onDesk(classId, 'all');
      if (one === undefined) return sum;
      const waiting = one.signatures.filter(({ state }) => state === 'waiting').length;
      return sum + waiting + [...one.writings.values()].filter(isUnsent).length;
    }, 0),
  );

  async loadAll(): Promise<void> {
    const kept = await this.#store.getAll('classes');
    kept.sort((a, b) => a.at - b.at);
    const here = new Set(kept.map(({ classId }) => classId));
    for (const classId of this.#classes.keys()) if (!here.has(classId)) this.#classes.delete(classId);
    for (const { classId } of kept) await this.loadClass(classId);
    this.classIds.value = kept.map(({ classId }) => classId);
    this.leftBehind.value = await this.#store.getAll('leftBehind');
    this.phone.value = await this.#store.get('phone', thisPhone);
  }

  /** After any change of a class that was not one part's alone. */
  async loadClass(classId: string): Promise<void> {
    const transaction = this.#store.transaction(['classes', 'writings', 'signatures', 'amendments']);
    const [kept, writings, signatures, amendment] = await Promise.all([
      transaction.objectStore('classes').get(classId),
      transaction.objectStore('writings').index('ofClass').getAll(classId),
      transaction.objectStore('signatures').index('ofClass').getAll(classId),
      transaction.objectStore('amendments').get(classId),
    ]);
    if (kept === undefined) return;
    const one = this.#classFor(classId, kept.day);
    if (!isSame(one.day.peek(), kept.day)) one.day.value = kept.day;
    signatures.sort((a, b) => a.madeAt - b.madeAt);
    if (!isSame(one.signatures.peek(), signatures)) one.signatures.value = signatures;
    one.amendment.value = amendment;
    const written = new Set(writings.map(({ part }) => part));
    for (const [part, gone] of one.parts) if (!written.has(part)) gone.value = undefined;
    for (const writing of writings) {
      // What is as it was is not told anew: a class has sixty rows.
      if (!isSame(partIn(one, writing.part).peek(), writing)) this.setPart(writing);
    }
    one.changes.value += 1;
  }

  setPart(writing: Writing): void {
    const one = this.#classes.get(writing.classId);
    if (one === undefined) return;
    partIn(one, writing.part).value = writing;
    one.changes.value += 1;
  }

  /** As it is now. */
  onDesk(classId: string): ClassOnDesk | undefined {
    const one = this.#classes.get(classId);
    if (one === undefined) return undefined;
    const writings = new Map<string, Writing>();
    for (const [part, written] of one.parts) {
      const writing = written.peek();
      if (writing !== undefined) writings.set(part, writing);
    }
    return { day: one.day.peek(), writings, signatures: one.signatures.peek(), sending: null };
  }

  readonly classOf = (classId: string): ReadonlySignal<DayClass | undefined> =>
    this.#view(classId, 'class', undefined, () => this.#classes.get(classId)?.day.value);

  readonly goOf = (classId: string, classEntryId: string): ReadonlySignal<GoOnDesk> =>
    this.#view(classId, `go ${classEntryId}`, blankGo, () => {
      const one = this.#onDesk(classId, classEntryId);
      return one === undefined ? blankGo : goOnDesk(one, classEntryId);
    });

  readonly orderOf = (classId: string): ReadonlySignal<OrderOnDesk> =>
    this.#view(classId, 'order', blankOrder, () => {
      const one = this.#onDesk(classId, 'order');
      return one === undefined ? blankOrder : orderOnDesk(one);
    });

  readonly stateOf = (classId: string): ReadonlySignal<CardState> =>
    this.#view(classId, 'state', blankCard, () => {
      const one = this.#onDesk(classId, 'all');
      return one === undefined ? blankCard : cardStateOf(one);
    });

  readonly contentOf = (classId: string): ReadonlySignal<CardContent> =>
    this.#view(classId, 'content', emptyCard, () => {
      const one = this.#onDesk(classId, 'all');
      return one === undefined ? emptyCard : contentOnDesk(one);
    });

  readonly amendmentOf = (classId: string): ReadonlySignal<KeptAmendment | undefined> =>
    this.#view(classId, 'amendment', undefined, () => this.#classes.get(classId)?.amendment.value);

  /** The same signal each time; one of a class that is not here yet is asked for again with the next day. */
  #view<Value>(classId: string, name: string, none: Value, read: () => Value): ReadonlySignal<Value> {
    const views = this.#classes.get(classId)?.views;
    const found = views?.get(name) as ReadonlySignal<Value> | undefined;
    if (found !== undefined) return found;
    const made = computed(() => (this.classIds.value.includes(classId) ? read() : none));
    views?.set(name, made);
    return made;
  }

  /** Read inside `computed`, it follows one part, or all. */
  #onDesk(classId: string, part: string): ClassOnDesk | undefined {
    const one = this.#classes.get(classId);
    if (one === undefined) return undefined;
    const writings = new Map<string, Writing>();
    if (part === 'all') one.changes.value;
    const followed = part === 'all' ? one.parts.keys() : [part];
    for (const name of followed) {
      const written = partIn(one, name);
      const writing = part === 'all' ? written.peek() : written.value;
      if (writing !== undefined) writings.set(name, writing);
    }
    const now = this.sending.value;
    const sending = now?.classId === classId ? now.part : null;
    return { day: one.day.value, writings, signatures: one.signatures.value, sending };
  }

  #classFor(classId: string, day: DayClass): OneClass {
    const found = this.#classes.get(classId);
    if (found !== undefined) return found;
    const made: OneClass = {
      day: signal(day),
      parts: new Map(),
      changes: signal(0),
      signatures: signal([]),
      amendment: signal(undefined),
      views: new Map(),
    };
    this.#classes.set(classId, made);
    return made;
  }
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

function partIn({ parts }: OneClass, part: string): Signal<Writing | undefined> {
  const found = parts.get(part);
  if (found !== undefined) return found;
  const made = signal<Writing | undefined>(undefined);
  parts.set(part, made);
  return made;
}

const blank = { state: { is: 'blank' }, undoable: 0 } as const;
const blankGo: GoOnDesk = { go: {}, ...blank };
const blankOrder: OrderOnDesk = { order: {}, ...blank };
const blankCard: CardState = { is: 'blank' };
const emptyCard: CardContent = { goes: {} };
