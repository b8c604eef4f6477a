/** Which book a class is written in: the desk's, or its amendment while one is under way. */
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Desk } from '../desk/desk-types.ts';
import { AmendmentBook } from './amendment-book.ts';
import type { CardBook } from './book.ts';
import { deskBook } from './desk-book.ts';

export class Books {
  readonly #desk: Desk;
  readonly #books = new Map<string, ReadonlySignal<CardBook>>();

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  /** The same signal for the same class each time. */
  of(classId: string): ReadonlySignal<CardBook> {
    const known = this.#books.get(classId);
    if (known !== undefined) return known;
    const [onDesk, amending] = [deskBook(this.#desk, classId), new AmendmentBook(this.#desk, classId)];
    const amendment = this.#desk.amendmentOf(classId);
    const isUnderWay = computed(() => amendment.value !== undefined);
    const book = computed(() => (isUnderWay.value ? amending : onDesk));
    this.#books.set(classId, book);
    return book;
  }
}
