/** A judge's shorthand: what stands in a line, and the words of a language for it. */
import type { Decimal } from '../../../engine/numbers/exact.ts';

export type Item =
  | { readonly kind: 'mark'; readonly mark: Decimal }
  | { readonly kind: 'not-seen' }
  /** By its points; the letter tells apart those of the sheet that take as many: `p5b`. */
  | { readonly kind: 'penalty'; readonly points: Decimal; readonly letter: string | null }
  /** By words of its name: "penalty missed lead". */
  | { readonly kind: 'penalty-called'; readonly words: string }
  /** Form and effectiveness; the next collective mark where there are several. */
  | { readonly kind: 'form'; readonly mark: Decimal };

/** An item with what was written for it. */
export type ReadItem = Item & { readonly text: string };

export interface ShorthandRead {
  readonly items: readonly ReadItem[];
  /** What it did not understand, as it was written. Where there is anything, nothing is filled in. */
  readonly notUnderstood: readonly string[];
}

/** The file of a language, `words/<language>.json`. Phrases in lower case; of several that fit, the longest is read. */
export interface Lexicon {
  readonly plus: readonly string[];
  readonly minus: readonly string[];
  /** "half": one half by itself. */
  readonly half: readonly string[];
  /** "and a half", after a number. */
  readonly andHalf: readonly string[];
  /** Word -> decimal: "one" -> "1", "eineinhalb" -> "1.5". */
  readonly numbers: Readonly<Record<string, Decimal>>;
  readonly penalty: readonly string[];
  readonly notSeen: readonly string[];
  readonly form: readonly string[];
  /** Between two marks: "then". */
  readonly between: readonly string[];
  /** Beside the point, what a decimal is written with. */
  readonly decimalMarks: readonly string[];
}
