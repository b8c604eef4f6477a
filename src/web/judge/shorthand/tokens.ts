/** A line of shorthand, cut into what a judge writes and says: signs, amounts, words of her language. */
import type { Decimal } from '../../../engine/numbers/exact.ts';
import type { Lexicon } from './types.ts';

export type Token = { readonly text: string } & (
  | { readonly kind: 'plus' | 'minus' | 'and-half' | 'penalty' | 'not-seen' | 'form' | 'between' | 'unknown' }
  | { readonly kind: 'amount'; readonly value: Decimal }
  /** One letter at the end of an amount: the `b` of `p5b`. */
  | { readonly kind: 'letter' }
);

/** A phrase of the language, or a sign that every language has. */
interface Phrase {
  readonly text: string;
  readonly token: (written: string) => Token;
}

/** Signs of every language: a judge who changes the page's language keeps her shorthand. */
const signs = { penalty: ['p'], notSeen: ['ns'], form: ['f'] } as const;

const phrases = new WeakMap<Lexicon, readonly Phrase[]>();

/** The longest first, so that "ein halb" is read before "ein". */
function phrasesOf(lexicon: Lexicon): readonly Phrase[] {
  const known = phrases.get(lexicon);
  if (known !== undefined) return known;
  const plain = (texts: readonly string[], kind: 'plus' | 'minus' | 'and-half' | 'penalty' | 'not-seen') =>
    texts.map((text) => ({ text, token: (written: string): Token => ({ kind, text: written }) }));
  const made: Phrase[] = [
    ...plain(lexicon.plus, 'plus'),
    ...plain(lexicon.minus, 'minus'),
    ...plain([...signs.penalty, ...lexicon.penalty], 'penalty'),
    ...plain([...signs.notSeen, ...lexicon.notSeen], 'not-seen'),
    ...[...signs.form, ...lexicon.form].map((text) => ({
      text,
      token: (written: string): Token => ({ kind: 'form', text: written }),
    })),
    ...lexicon.between.map((text) => ({
      text,
      token: (written: string): Token => ({ kind: 'between', text: written }),
    })),
    ...Object.entries(lexicon.numbers).map(([text, value]) => amountPhrase(text, value)),
    ...lexicon.half.map((text) => amountPhrase(text, '0.5')),
  ].sort((a, b) => b.text.length - a.text.length);
  phrases.set(lexicon, made);
  return made;
}

const amountPhrase = (text: string, value: Decimal): Phrase => ({
  text,
  token: (written) => ({ kind: 'amount', text: written, value }),
});

/** Half as one sign, the several minuses, and what a keyboard writes for a space. */
const plainText = (line: string): string =>
  line
    .toLowerCase()
    .normalize('NFC')
    .replaceAll(/(\d)?\s*½/g, (_, whole?: string) => (whole === undefined ? '1/2' : `${whole} 1/2`))
    .replaceAll(/[−–—]/g, '-')
    .replaceAll(/\s/g, ' ');

/** Never throws: what it cannot read is a token `unknown`. */
export function tokensOf(line: string, lexicon: Lexicon): readonly Token[] {
  const text = plainText(line);
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const rest = text.slice(at);
    const spaces = /^ +/.exec(rest)?.[0].length ?? 0;
    if (spaces > 0) at += spaces;
    else {
      const token = nextToken(rest, {
        lexicon,
        before: at === 0 ? '' : text.charAt(at - 1),
        last: tokens.at(-1),
      });
      tokens.push(token);
      at += token.text.length;
    }
  }
  return tokens;
}

interface Around {
  readonly lexicon: Lexicon;
  /** The sign just before. */
  readonly before: string;
  readonly last: Token | undefined;
}

function nextToken(rest: string, { lexicon, before, last }: Around): Token {
  const sign = rest.charAt(0);
  if (sign === '+') return { kind: 'plus', text: sign };
  if (sign === '-') return { kind: 'minus', text: sign };
  const amount = amountAt(rest, lexicon);
  if (amount !== undefined) return amount;
  if (/^[,;.]/.test(rest)) return { kind: 'between', text: sign };
  const letter = /^[a-z](?![\p{L}\d])/u.exec(rest);
  if (letter !== null && last?.kind === 'amount' && /\d/.test(before))
    return { kind: 'letter', text: letter[0] };
  const half = lexicon.andHalf
    .filter((phrase) => startsWith(rest, phrase))
    .sort((a, b) => b.length - a.length)[0];
  if (half !== undefined && last?.kind === 'amount') return { kind: 'and-half', text: half };
  const phrase = phrasesOf(lexicon).find(({ text }) => startsWith(rest, text));
  if (phrase !== undefined) return phrase.token(rest.slice(0, phrase.text.length));
  return { kind: 'unknown', text: /^[\p{L}\p{M}'’-]+|^[^\s,;+-]+|^./u.exec(rest)?.[0] ?? sign };
}

/** A phrase ends where no letter follows; `p5` begins with the phrase `p`. */
const startsWith = (rest: string, phrase: string): boolean =>
  rest.startsWith(phrase) && !/^[\p{L}\p{M}]/u.test(rest.slice(phrase.length));

/** "1 1/2", "1/2", "1.5", ".5", "84", and with the decimal mark of the language. */
function amountAt(rest: string, { decimalMarks }: Lexicon): Token | undefined {
  const withHalf = /^(?:(\d{1,9}) +)?1\/2(?!\d|\/)/.exec(rest);
  if (withHalf !== null) return amountOf(withHalf[0], `${withHalf[1] ?? '0'}.5`);
  const decimal = /^(\d{0,9})([.,])(\d{1,9})(?!\d)/.exec(rest);
  const mark = decimal?.[2] ?? '';
  if (decimal !== null && (mark === '.' || (decimalMarks.includes(mark) && decimal[1] !== ''))) {
    return amountOf(decimal[0], `${decimal[1] === '' ? '0' : decimal[1]}.${decimal[3]}`);
  }
  const whole = /^\d{1,9}(?!\d|\/)/.exec(rest);
  return whole === null ? undefined : amountOf(whole[0], whole[0]);
}

/** As records have it: "01.50" is "1.5". */
function amountOf(text: string, written: string): Token {
  const [whole = '0', after = ''] = written.split('.');
  const digits = whole.replace(/^0+(?=\d)/, '');
  const rest = after.replace(/0+$/, '');
  return { kind: 'amount', text, value: rest === '' ? digits : `${digits}.${rest}` };
}
