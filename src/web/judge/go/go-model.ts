/** One go on the screen: what is in hand, what a tap does, what is told of it. The card itself is in the book. */
import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Decimal } from '../../../engine/numbers/exact.ts';
import { type RunningScore, runningScore, scoreGo } from '../../../engine/sheets/score-go.ts';
import type { Go, RulingCode } from '../../../engine/sheets/types.ts';
import type { CardBook } from '../book/book.ts';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import type { WriteOutcome } from '../desk/desk-types.ts';
import { maneuversOf } from '../entries.ts';
import { changedStep, type ManeuverStep, nextStep, type Step, stepsOf } from './steps.ts';
import { keepRemark, waitingRemark } from './waiting-remarks.ts';
import {
  type Change,
  withErrors,
  withManeuverRemark,
  withMark,
  withNotSeen,
  withoutMark,
  withoutPenalty,
  withPenalty,
  withRemark,
  withRuling,
} from './write-go.ts';

type Refused = Exclude<WriteOutcome, { ok: true }>;

interface GoOf {
  readonly dayClass: DayClass;
  readonly entry: DayEntry;
  readonly book: CardBook;
}

export class GoModel {
  readonly dayClass: DayClass;
  readonly entry: DayEntry;
  readonly book: CardBook;
  readonly steps: readonly Step[];
  readonly go: ReadonlySignal<Go>;
  readonly undoable: ReadonlySignal<number>;
  readonly reading: ReadonlySignal<RunningScore>;
  /** May it stand on a card as it is? */
  readonly done: ReadonlySignal<boolean>;
  /** Index into `steps`; their length: nothing is left. */
  readonly inHand: Signal<number>;
  /** Goes up with each change that is kept: whoever listens hears the total then. */
  readonly kept: Signal<number>;
  readonly refused: Signal<Refused | null>;

  /** `before`: of the same go, which the class changed under; what is in hand stays in hand. */
  constructor({ dayClass, entry, book }: GoOf, before: GoModel | undefined) {
    this.dayClass = dayClass;
    this.entry = entry;
    this.book = book;
    const maneuvers = maneuversOf(dayClass);
    this.steps = stepsOf(dayClass.sheet, maneuvers);
    const written = book.goOf(entry.classEntryId);
    this.go = computed(() => written.value.content);
    this.undoable = computed(() => written.value.undoable);
    this.reading = computed(() => runningScore(dayClass.sheet, maneuvers, this.go.value));
    this.done = computed(
      () => isWritten(this.go.value) && scoreGo(dayClass.sheet, maneuvers, this.go.value).ok,
    );
    const same = before?.entry.classEntryId === entry.classEntryId ? before : undefined;
    this.inHand = same?.inHand ?? signal(nextStep(this.steps, this.go.value, -1));
    this.kept = same?.kept ?? signal(0);
    this.refused = same?.refused ?? signal(null);
  }

  get step(): Step | undefined {
    return this.steps[this.inHand.value];
  }

  /** Of the maneuver in hand; beside the maneuvers a penalty is against the whole go. */
  get position(): number | undefined {
    const step = this.step;
    return step?.kind === 'maneuver' ? step.position : undefined;
  }

  take(index: number): void {
    this.inHand.value = Math.max(0, Math.min(index, this.steps.length));
  }

  /** The next one comes by itself once the phone has the mark. */
  async mark(step: Step, mark: Decimal): Promise<void> {
    const index = this.steps.indexOf(step);
    const { change, settle } = this.#withWaiting(step, (remark) => withMark(step, mark, remark));
    if (!(await this.write(change))) return;
    settle();
    this.take(nextStep(this.steps, this.go.value, index));
  }

  async notSeen(step: ManeuverStep): Promise<void> {
    const index = this.steps.indexOf(step);
    const { change, settle } = this.#withWaiting(step, (remark) => withNotSeen(step.position, remark));
    if (!(await this.write(change))) return;
    settle();
    this.take(nextStep(this.steps, this.go.value, index));
  }

  /** A line of shorthand: afterwards the first that is still open is in hand. */
  async fill(change: Change, last: number): Promise<boolean> {
    const written = await this.write(change);
    if (written) this.take(nextStep(this.steps, this.go.value, last));
    return written;
  }

  unmark = (step: Step) => this.write(withoutMark(step));
  penalize = (code: string, position = this.position) => this.write(withPenalty(code, position));
  pardon = (code: string, position: number | undefined) => this.write(withoutPenalty(code, position));
  rule = (code: RulingCode | undefined, remark?: string) => this.write(withRuling(code, remark));
  err = (count: number) => this.write(withErrors(count));
  remark = (text: string) => this.write(withRemark(text));

  /** On a maneuver that is not marked yet it waits for the mark. */
  async remarkAt(position: number, text: string): Promise<boolean> {
    if (this.go.value.maneuvers?.some((one) => one.position === position) !== true) {
      keepRemark(this.entry.classEntryId, position, text);
      return true;
    }
    return this.write(withManeuverRemark(position, text));
  }

  /** Where a mark was taken back, its maneuver is in hand again. */
  async undo(): Promise<void> {
    const before = this.go.value;
    const outcome = await this.book.undo(this.entry.classEntryId);
    if (!this.#told(outcome)) return;
    const changed = changedStep(this.steps, before, this.go.value);
    if (changed !== undefined) this.take(changed);
  }

  async write(change: Change): Promise<boolean> {
    return this.#told(await this.book.writeGo(this.entry.classEntryId, change));
  }

  #told(outcome: WriteOutcome): boolean {
    this.refused.value = outcome.ok ? null : outcome;
    if (!outcome.ok) return false;
    this.kept.value += 1;
    // A glove feels it where the browser lets a page do so.
    navigator.vibrate?.(12);
    return true;
  }

  #withWaiting(step: Step, change: (remark: string | undefined) => Change) {
    const { classEntryId } = this.entry;
    const position = step.kind === 'maneuver' ? step.position : undefined;
    const remark = position === undefined ? undefined : waitingRemark(classEntryId, position);
    const settle = () => {
      if (position !== undefined && remark !== undefined) keepRemark(classEntryId, position, '');
    };
    return { change: change(remark), settle };
  }
}

/** A go of which nothing is written is never done, not even in a rail class. */
const isWritten = (go: Go): boolean => Object.keys(go).length > 0;
