/**
 * What a judge changes on a card that she signed, until she signs it again with a reason. The desk keeps it, so that a
 * reload loses nothing; it is sent only when it is signed.
 */
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import { draftFaults } from '../../../engine/sheets/score-go.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { Amendment, Desk, WriteOutcome } from '../desk/desk-types.ts';
import { maneuversOf } from '../entries.ts';
import type { CardBook, Written } from './book.ts';

const empty: Amendment = { content: { goes: {} }, reason: '' };

export class AmendmentBook implements CardBook {
  readonly amends = true;
  readonly shut = signal(null);
  readonly content: ReadonlySignal<CardContent>;
  readonly order: CardBook['order'];
  readonly #desk: Desk;
  readonly #classId: string;
  readonly #kept: ReadonlySignal<Amendment | undefined>;
  /** What `undo` goes back to; of this page only. */
  readonly #before = signal<readonly CardContent[]>([]);
  readonly #goes = new Map<string, ReadonlySignal<Written<Go>>>();

  constructor(desk: Desk, classId: string) {
    this.#desk = desk;
    this.#classId = classId;
    this.#kept = desk.amendmentOf(classId);
    this.content = computed(() => (this.#kept.value ?? empty).content);
    this.order = computed(() => {
      const { goes: _, ...order } = this.content.value;
      return { content: order, undoable: this.#before.value.length };
    });
  }

  goOf(classEntryId: string): ReadonlySignal<Written<Go>> {
    const known = this.#goes.get(classEntryId);
    if (known !== undefined) return known;
    const go = computed(() => ({
      content: this.content.value.goes[classEntryId] ?? {},
      undoable: this.#before.value.length,
    }));
    this.#goes.set(classEntryId, go);
    return go;
  }

  async writeGo(classEntryId: string, change: (kept: Go) => Go): Promise<WriteOutcome> {
    const { goes } = this.content.value;
    const go = change(goes[classEntryId] ?? {});
    const on = this.#desk.classOf(this.#classId).value;
    const faults = on === undefined ? [] : draftFaults(on.sheet, maneuversOf(on), go);
    if (faults.length > 0) {
      const ofEntry = faults.map((fault) => ({ ...fault, entry: classEntryId }));
      return { ok: false, why: 'not-on-sheet', faults: ofEntry };
    }
    return this.#put({ ...this.content.value, goes: { ...goes, [classEntryId]: go } });
  }

  async writeOrder(change: Parameters<CardBook['writeOrder']>[0]): Promise<WriteOutcome> {
    const { goes, ...order } = this.content.value;
    return this.#put({ ...change(order), goes });
  }

  undo = (): Promise<WriteOutcome> => this.undoOrder();

  async undoOrder(): Promise<WriteOutcome> {
    const last = this.#before.value.at(-1);
    if (last === undefined) return { ok: false, why: 'nothing-to-undo' };
    const outcome = await this.#keep(last);
    if (outcome.ok) this.#before.value = this.#before.value.slice(0, -1);
    return outcome;
  }

  async #put(content: CardContent): Promise<WriteOutcome> {
    const before = this.content.value;
    const outcome = await this.#keep(content);
    if (outcome.ok) this.#before.value = [...this.#before.value, before];
    return outcome;
  }

  #keep(content: CardContent): Promise<WriteOutcome> {
    const { reason } = this.#kept.value ?? empty;
    return this.#desk.keepAmendment(this.#classId, { content, reason });
  }
}
