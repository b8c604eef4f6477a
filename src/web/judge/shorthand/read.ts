/**
 * Reads a line of shorthand: "+1/2, +1, +2 p5, 0, ns, f4", and as dictation writes it: "plus half, minus two penalty
 * five, zero, not seen". Pure and total: whatever stands in the line, it answers what it read and what it did not.
 */
import { type Token, tokensOf } from './tokens.ts';
import type { Item, Lexicon, ReadItem, ShorthandRead } from './types.ts';

/** Longer lines are no shorthand; reading stays quick whatever is pasted. */
const longestLine = 2_000;

export function readShorthand(line: string, lexicon: Lexicon): ShorthandRead {
  if (line.length > longestLine) return { items: [], notUnderstood: [`${line.slice(0, 60)}…`] };
  const reader = new Reader(tokensOf(line, lexicon));
  return reader.read();
}

class Reader {
  readonly #tokens: readonly Token[];
  readonly #items: ReadItem[] = [];
  readonly #notUnderstood: string[] = [];
  #at = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  read(): ShorthandRead {
    while (this.#at < this.#tokens.length) this.#readOne();
    return { items: this.#items, notUnderstood: this.#notUnderstood };
  }

  #readOne(): void {
    const from = this.#at;
    const token = this.#next();
    const item = token === undefined || token.kind === 'between' ? undefined : this.#itemFrom(token);
    if (token === undefined || token.kind === 'between') return;
    const text = this.#tokens
      .slice(from, this.#at)
      .map((one) => one.text)
      .join(' ');
    if (item === undefined) this.#notUnderstood.push(text);
    else this.#items.push({ ...item, text });
  }

  #itemFrom(token: Token): Item | undefined {
    switch (token.kind) {
      case 'plus':
      case 'minus': {
        const mark = this.#amount(token.kind);
        return mark === undefined ? undefined : { kind: 'mark', mark };
      }
      case 'amount':
        this.#at -= 1;
        return this.#markOf(this.#amount('plus'));
      case 'not-seen':
        return { kind: 'not-seen' };
      case 'form': {
        const mark = this.#signedAmount();
        return mark === undefined ? undefined : { kind: 'form', mark };
      }
      case 'penalty':
        return this.#penalty();
      case 'and-half':
      case 'letter':
      case 'between':
      case 'unknown':
        return undefined;
    }
  }

  #markOf(mark: string | undefined): Item | undefined {
    // A letter behind an amount belongs to a penalty; on a mark it means something that is not known.
    if (mark === undefined || this.#peek()?.kind === 'letter') {
      this.#next();
      return undefined;
    }
    return { kind: 'mark', mark };
  }

  #penalty(): Item | undefined {
    const points = this.#amount('plus');
    if (points === undefined) return this.#calledPenalty();
    const letter = this.#peek();
    const isLetter = letter?.kind === 'letter' || (letter?.kind === 'unknown' && /^[a-z]$/.test(letter.text));
    if (isLetter) this.#next();
    return { kind: 'penalty', points, letter: isLetter ? letter.text : null };
  }

  #calledPenalty(): Item | undefined {
    const words: string[] = [];
    for (let next = this.#peek(); next?.kind === 'unknown'; next = this.#peek()) {
      words.push(next.text);
      this.#next();
    }
    return words.length === 0 ? undefined : { kind: 'penalty-called', words: words.join(' ') };
  }

  #signedAmount(): string | undefined {
    const sign = this.#peek()?.kind;
    if (sign === 'plus' || sign === 'minus') this.#next();
    return this.#amount(sign === 'minus' ? 'minus' : 'plus');
  }

  #amount(sign: 'plus' | 'minus'): string | undefined {
    const token = this.#peek();
    if (token?.kind !== 'amount') return undefined;
    this.#next();
    const size = this.#peek()?.kind === 'and-half' ? this.#withHalf(token.value) : token.value;
    if (size === undefined) return undefined;
    return sign === 'minus' && size !== '0' ? `-${size}` : size;
  }

  /** "two and a half"; "1.5 and a half" is nothing. */
  #withHalf(value: string): string | undefined {
    this.#next();
    return value.includes('.') ? undefined : `${value}.5`;
  }

  #peek(): Token | undefined {
    return this.#tokens[this.#at];
  }

  #next(): Token | undefined {
    const token = this.#tokens[this.#at];
    this.#at += 1;
    return token;
  }
}
