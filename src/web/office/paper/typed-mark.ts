/**
 * What stands in one field of a typist, as it is read. She types from the number keys: `05` is 0.5, `-15` is −1.5 where
 * the sheet marks by halves, `*3` behind the mark is penalty number 3 of the key beside the form, `/` is "not seen".
 * A comma is a point, ½ is .5, and what is not understood is kept as it was typed, for the check to name.
 */
import { type Decimal, exact, onStep, parseDecimal } from '../../../engine/numbers/exact.ts';
import { recordText } from '../../../engine/numbers/number-text.ts';
import type { MarkRange, Penalty } from '../../../engine/sheets/types.ts';

/** A mark, "not seen", or nothing yet. */
export type TypedMark =
  | { readonly is: 'nothing' }
  | { readonly is: 'not-seen' }
  /** `mark`: a decimal of the sheet where it was understood, otherwise the text. */
  | { readonly is: 'mark'; readonly mark: Decimal };

export interface TypedField {
  readonly mark: TypedMark;
  /** Codes, one for each time. */
  readonly penalties: readonly string[];
  /** Pieces that name no penalty: `*44`. */
  readonly unread: readonly string[];
}

const notSeenSigns = ['/', 'n', 'ns', 'n/s', 'ng', 'n/g'];

/** `"05*3*3"` -> 0.5, and penalty 3 twice. */
export function readField(text: string, range: MarkRange, penalties: readonly Penalty[]): TypedField {
  const [first = '', ...rest] = text.split(/[*#p]/i).map((piece) => piece.trim());
  const named = rest.map((piece) => ({ piece, penalty: penaltyAt(piece, penalties) }));
  return {
    mark: readTypedMark(first, range),
    penalties: named.flatMap(({ penalty }) => (penalty === undefined ? [] : [penalty.code])),
    unread: named.flatMap(({ piece, penalty }) => (penalty === undefined ? [`*${piece}`] : [])),
  };
}

/** `"3 3 1"` or `"*3*3*1"`, against the whole go. */
export function readPenaltyField(text: string, penalties: readonly Penalty[]) {
  const pieces = text.split(/[*#p\s,;]+/i).filter((piece) => piece !== '');
  const named = pieces.map((piece) => ({ piece, penalty: penaltyAt(piece, penalties) }));
  return {
    penalties: named.flatMap(({ penalty }) => (penalty === undefined ? [] : [penalty.code])),
    unread: named.flatMap(({ piece, penalty }) => (penalty === undefined ? [piece] : [])),
  };
}

const penaltyAt = (piece: string, penalties: readonly Penalty[]): Penalty | undefined =>
  /^[1-9]\d?$/.test(piece) ? penalties[Number(piece) - 1] : undefined;

export function readTypedMark(text: string, range: MarkRange): TypedMark {
  const plain = text.trim().toLowerCase();
  if (plain === '') return { is: 'nothing' };
  if (notSeenSigns.includes(plain)) return { is: 'not-seen' };
  return { is: 'mark', mark: markIn(plain, range) ?? text.trim() };
}

/** As it stands where the sheet allows that; else with its last digit behind the point, if the sheet allows this. */
function markIn(text: string, range: MarkRange): Decimal | undefined {
  const written = decimalOf(text);
  if (written !== undefined && isOnScale(written, range)) return written;
  const digits = /^(-?)(\d+)(\d)$/.exec(text.replace('−', '-').replace(/^\+/, ''));
  const [, sign = '', whole = '', last = ''] = digits ?? [];
  const moved = digits === null ? undefined : decimalOf(`${sign}${whole}.${last}`);
  if (moved !== undefined && isOnScale(moved, range)) return moved;
  return written;
}

/** `"+1½"` -> 1.5, `"-,5"` -> −0.5, `"1/2"` -> 0.5, `"1 1/2"` -> 1.5 */
function decimalOf(text: string): Decimal | undefined {
  const spelled = text
    .replace(/^[−–]/, '-')
    .replace(/^\+/, '')
    .replace(',', '.')
    .replace(/\s*(?:½|(?<![\d/])1\/2)$/, '.5');
  const [, sign = '', whole = '', after = ''] = /^(-?)0*(\d*)(?:\.(\d+))?$/.exec(spelled) ?? [];
  if (whole === '' && after === '' && !/^-?0+$/.test(spelled)) return undefined;
  const read = parseDecimal(`${whole === '' ? '0' : whole}${after === '' ? '' : `.${after}`}`);
  return read === undefined ? undefined : recordText(sign === '-' ? read.neg() : read);
}

function isOnScale(mark: Decimal, { low, high, step }: MarkRange): boolean {
  const value = exact(mark);
  return (
    value.compare(exact(low)) >= 0 &&
    value.compare(exact(high)) <= 0 &&
    onStep(value, exact(step), exact(low))
  );
}
