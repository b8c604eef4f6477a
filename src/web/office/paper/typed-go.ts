/** One go as it is typed, field by field as text, and as a go of a card. */
import type { Go, ManeuverMark, MarkRange } from '../../../engine/sheets/types.ts';
import {
  extraKey,
  fieldsOf,
  goKeys,
  type MarkedSheet,
  maneuverKey,
  maneuverWordsKey,
  penaltiesOf,
  rulingsOf,
  type SheetField,
} from './sheet-fields.ts';
import { readField, readPenaltyField, readTypedMark, type TypedMark } from './typed-mark.ts';

/** Text by the key of its field; what is empty is left out. */
export type TypedGo = Readonly<Record<string, string>>;

export interface GoRead {
  readonly go: Go;
  /** Pieces that were not understood, by the key of the field. */
  readonly unread: ReadonlyMap<string, readonly string[]>;
}

/** `maneuvers` stand in the order of the pattern. An empty go is `{}`. */
export function goOfTyped(marked: MarkedSheet, typed: TypedGo): GoRead {
  const read = fieldsOf(marked).map((field) => ({ key: field.key, ...readOf(field, typed, marked) }));
  const maneuvers = read.flatMap((field) => field.maneuvers ?? []);
  const penalties = read.flatMap((field) => field.penalties ?? []);
  const extras = Object.fromEntries(read.flatMap((field) => field.extras ?? []));
  const ruling = rulingsOf(marked.sheet).find((code) => code === typed[goKeys.ruling]);
  const go: Go = {
    ...(maneuvers.length === 0 ? {} : { maneuvers }),
    ...(Object.keys(extras).length === 0 ? {} : { extras }),
    ...(penalties.length === 0 ? {} : { penalties }),
    ...Object.assign({}, ...read.map(({ single }) => single)),
    ...(ruling === undefined ? {} : { ruling: { code: ruling, ...wordsIn(typed[goKeys.rulingWords]) } }),
    ...wordsIn(typed[goKeys.words]),
  };
  const unread = read.flatMap(({ key, unread: pieces = [] }) =>
    pieces.length === 0 ? [] : [[key, pieces] as const],
  );
  return { go, unread: new Map(unread) };
}

/** What one field brings to the go. */
interface FieldRead {
  readonly maneuvers?: readonly ManeuverMark[];
  readonly extras?: readonly (readonly [code: string, mark: string])[];
  readonly penalties?: NonNullable<Go['penalties']>;
  readonly single?: Pick<Go, 'mark' | 'measure' | 'errorsOfCourse'>;
  readonly unread?: readonly string[];
}

function readOf(field: SheetField, typed: TypedGo, { sheet }: MarkedSheet): FieldRead {
  const text = typed[field.key] ?? '';
  switch (field.kind) {
    case 'maneuver': {
      const { position } = field.maneuver;
      const { mark, penalties, unread } = readField(text, field.range, penaltiesOf(sheet));
      const maneuvers = maneuverMark(mark, position, wordsIn(typed[maneuverWordsKey(position)]));
      return { maneuvers, unread, penalties: penalties.map((code) => ({ code, position })) };
    }
    case 'penalties': {
      const { penalties, unread } = readPenaltyField(text, penaltiesOf(sheet));
      return { unread, penalties: penalties.map((code) => ({ code })) };
    }
    case 'extra': {
      const mark = markIn(text, field.range);
      return mark === undefined ? {} : { extras: [[field.extra.code, mark]] };
    }
    case 'mark':
    case 'measure': {
      const mark = markIn(text, field.range);
      return mark === undefined ? {} : { single: { [field.kind]: mark } };
    }
    case 'errors':
      return errorsIn(text.trim());
  }
}

function maneuverMark(
  mark: TypedMark,
  position: number,
  words: { readonly remark?: string },
): readonly ManeuverMark[] {
  switch (mark.is) {
    case 'nothing':
      return [];
    case 'not-seen':
      return [{ position, notSeen: true, ...words }];
    case 'mark':
      return [{ position, mark: mark.mark, ...words }];
  }
}

/** "Not seen" is for maneuvers: elsewhere its sign is kept as it was typed, and the check names it. */
function markIn(text: string, range: MarkRange): string | undefined {
  const read = readTypedMark(text, range);
  if (read.is === 'nothing') return undefined;
  return read.is === 'mark' ? read.mark : text.trim();
}

function errorsIn(count: string): FieldRead {
  if (count === '') return {};
  return /^\d{1,2}$/.test(count) ? { single: { errorsOfCourse: Number(count) } } : { unread: [count] };
}

function wordsIn(text = ''): { readonly remark?: string } {
  const remark = text.trim();
  return remark === '' ? {} : { remark };
}

/** A go that is kept, as she would have typed it, so that she mends her own. */
export function typedOfGo(marked: MarkedSheet, go: Go): TypedGo {
  const typed: Record<string, string> = {};
  const write = (key: string, text: string | undefined) => {
    if (text !== undefined && text !== '') typed[key] = text;
  };
  const numbers = (position: number | undefined) =>
    (go.penalties ?? [])
      .filter((one) => one.position === position)
      .map(({ code }) => penaltiesOf(marked.sheet).findIndex((one) => one.code === code) + 1);
  for (const { position } of marked.maneuvers) {
    const mark = go.maneuvers?.find((one) => one.position === position);
    const written = mark === undefined ? '' : 'notSeen' in mark ? '/' : mark.mark;
    write(
      maneuverKey(position),
      written +
        numbers(position)
          .map((number) => `*${number}`)
          .join(''),
    );
    write(maneuverWordsKey(position), mark?.remark);
  }
  for (const [code, mark] of Object.entries(go.extras ?? {})) write(extraKey(code), mark);
  write(goKeys.penalties, numbers(undefined).join(' '));
  write(goKeys.mark, go.mark);
  write(goKeys.measure, go.measure);
  write(goKeys.errors, go.errorsOfCourse?.toString());
  write(goKeys.ruling, go.ruling?.code);
  write(goKeys.rulingWords, go.ruling?.remark);
  write(goKeys.words, go.remark);
  return typed;
}
