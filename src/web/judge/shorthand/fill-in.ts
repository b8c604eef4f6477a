/**
 * Puts a line of shorthand into a go: marks from the maneuver in hand on, penalties against the maneuver that was marked
 * last in the line. Either all of it, or nothing.
 */
import { exact, onStep, parseDecimal } from '../../../engine/numbers/exact.ts';
import type { MarkRange, Penalty } from '../../../engine/sheets/types.ts';
import type { ExtraStep, Step } from '../go/steps.ts';
import { type Change, inTurn, withMark, withNotSeen, withPenalty } from '../go/write-go.ts';
import { type Designator, designatorsOf } from './designators.ts';
import type { ReadItem } from './types.ts';

interface Sheeted {
  readonly steps: readonly Step[];
  readonly penalties: readonly Penalty[];
  /** Index of the step in hand. */
  readonly inHand: number;
  /** A penalty's name in the reader's language. */
  readonly called: (penalty: Penalty) => string;
}

type FilledIn =
  | { readonly ok: true; readonly change: Change /** Of the last mark. */; readonly last: number }
  | { readonly ok: false; readonly faults: readonly LineFault[] };

export type LineFault = { readonly text: string } & (
  | { readonly why: 'no-maneuver-left' | 'not-seen-here' | 'no-form' | 'penalty-unknown' | 'nothing' }
  | { readonly why: 'not-on-scale'; readonly range: MarkRange }
  | { readonly why: 'which-penalty'; readonly choices: readonly Designator[] }
);

/** `items` that were all understood. */
export function fillIn(items: readonly ReadItem[], sheeted: Sheeted): FilledIn {
  const pen = new Pen(sheeted);
  for (const item of items) pen.write(item);
  return pen.filled();
}

class Pen {
  readonly #sheeted: Sheeted;
  readonly #changes: Change[] = [];
  readonly #faults: LineFault[] = [];
  readonly #extras: readonly ExtraStep[];
  /** Where the next mark goes. */
  #next: number;
  /** Where the last one went; before it, what is in hand. */
  #last: number;
  #forms = 0;

  constructor(sheeted: Sheeted) {
    this.#sheeted = sheeted;
    this.#next = sheeted.inHand;
    this.#last = sheeted.inHand;
    this.#extras = sheeted.steps.filter((step) => step.kind === 'extra');
  }

  filled(): FilledIn {
    if (this.#faults.length > 0) return { ok: false, faults: this.#faults };
    if (this.#changes.length === 0) return { ok: false, faults: [{ text: '', why: 'nothing' }] };
    return { ok: true, change: inTurn(this.#changes), last: this.#last };
  }

  write(item: ReadItem): void {
    const { text } = item;
    switch (item.kind) {
      case 'mark':
        this.#mark(item.mark, text);
        break;
      case 'not-seen':
        this.#notSeen(text);
        break;
      case 'penalty':
        this.#penalty(text, ({ penalty: { points }, letter }) => {
          return points === item.points && (item.letter === null || letter === item.letter);
        });
        break;
      case 'penalty-called':
        this.#penalty(text, ({ penalty }) => {
          const name = this.#sheeted
            .called(penalty)
            .toLowerCase()
            .split(/[^\p{L}\d]+/u);
          return item.words.split(' ').every((word) => name.includes(word));
        });
        break;
      case 'form':
        this.#form(item.mark, text);
    }
  }

  #mark(mark: string, text: string): void {
    const step = this.#takeStep(text);
    if (step === undefined) return;
    if (!isOnScale(mark, step.range)) this.#faults.push({ text, why: 'not-on-scale', range: step.range });
    else this.#changes.push(withMark(step, mark));
  }

  #notSeen(text: string): void {
    const step = this.#takeStep(text);
    if (step === undefined) return;
    if (step.kind === 'maneuver') this.#changes.push(withNotSeen(step.position));
    else this.#faults.push({ text, why: 'not-seen-here' });
  }

  /** Marks do not run over from the maneuvers into what stands beside them: that has a sign of its own. */
  #takeStep(text: string): Step | undefined {
    const { steps, inHand } = this.#sheeted;
    const step = steps[this.#next];
    const runsOver = step?.kind === 'extra' && steps[inHand]?.kind !== 'extra';
    if (step === undefined || runsOver) {
      this.#faults.push({ text, why: 'no-maneuver-left' });
      return undefined;
    }
    this.#last = this.#next;
    this.#next += 1;
    return step;
  }

  #form(mark: string, text: string): void {
    const step = this.#extras[this.#forms];
    if (step === undefined) {
      this.#faults.push({ text, why: 'no-form' });
      return;
    }
    this.#forms += 1;
    if (!isOnScale(mark, step.range)) this.#faults.push({ text, why: 'not-on-scale', range: step.range });
    else this.#changes.push(withMark(step, mark));
  }

  #penalty(text: string, fits: (one: Designator) => boolean): void {
    const found = designatorsOf(this.#sheeted.penalties).filter(fits);
    const [only] = found;
    if (only === undefined) this.#faults.push({ text, why: 'penalty-unknown' });
    else if (found.length > 1) this.#faults.push({ text, why: 'which-penalty', choices: found });
    else this.#changes.push(withPenalty(only.penalty.code, this.#position()));
  }

  /** Beside the maneuvers a penalty is against the whole go. */
  #position(): number | undefined {
    const step = this.#sheeted.steps[this.#last];
    return step?.kind === 'maneuver' ? step.position : undefined;
  }
}

export function isOnScale(mark: string, { low, high, step }: MarkRange): boolean {
  const value = parseDecimal(mark);
  if (value === undefined || value.compare(exact(low)) < 0 || value.compare(exact(high)) > 0) return false;
  return onStep(value, exact(step), exact(low));
}
