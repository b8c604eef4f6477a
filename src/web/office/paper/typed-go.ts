/** One go as it is typed, field by field as text, and as a go of a card. */
import type { Go, ManeuverMark, RulingCode } from '../../../engine/sheets/types.ts';
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
import { readField, readPenaltyField, readTypedMark } from './typed-mark.ts';

/** Text by the key of its field; what is empty is left out. */
export type TypedGo = Readonly<Record<string, string>>;

export interface GoRead {
  readonly go: Go;
  /** Pieces that were not understood, by the key of the field. */
  readonly unread: ReadonlyMap<string, readonly string[]>;
}

type Penalties = NonNullable<Go['penalties']>[number][];

/** `maneuvers` stand in the order of the pattern. An empty go is `{}`. */
export function goOfTyped(marked: MarkedSheet, typed: TypedGo): GoRead {
  const unread = new Map<string, readonly string[]>();
  const penalties: Penalties = [];
  const maneuvers: ManeuverMark[] = [];
  const extras: Record<string, string> = {};
  let rest: Pick<Go, 'mark' | 'measure' | 'errorsOfCourse'> = {};
  for (const field of fieldsOf(marked)) {
    const text = typed[field.key] ?? '';
    if (field.kind === 'maneuver') {
      const read = readField(text, field.range, penaltiesOf(marked.sheet));
      const { position } = field.maneuver;
      penalties.push(...read.penalties.map((code) => ({ code, position })));
      if (read.unread.length > 0) unread.set(field.key, read.unread);
      const words = wordsIn(typed[maneuverWordsKey(position)]);
      if (read.mark.is === 'mark') maneuvers.push({ position, mark: read.mark.mark, ...words });
      if (read.mark.is === 'not-seen') maneuvers.push({ position, notSeen: true, ...words });
    } else if (field.kind === 'penalties') {
      const read = readPenaltyField(text, penaltiesOf(marked.sheet));
      penalties.push(...read.penalties.map((code) => ({ code })));
      if (read.unread.length > 0) unread.set(field.key, read.unread);
    } else if (field.kind === 'extra') {
      const mark = markIn(text, field);
      if (mark !== undefined) extras[field.extra.code] = mark;
    } else rest = { ...rest, ...singleIn(text, field) };
  }
  const ruling = rulingsOf(marked.sheet).find((code) => code === typed[goKeys.ruling]);
  const go: Go = {
    ...(maneuvers.length === 0 ? {} : { maneuvers }),
    ...(Object.keys(extras).length === 0 ? {} : { extras }),
    ...(penalties.length === 0 ? {} : { penalties }),
    ...rest,
    ...(ruling === undefined ? {} : { ruling: { code: ruling, ...wordsIn(typed[goKeys.rulingWords]) } }),
    ...wordsIn(typed[goKeys.words]),
  };
  return { go, unread };
}

function wordsIn(text = ''): { readonly remark?: string } {
  const remark = text.trim();
  return remark === '' ? {} : { remark };
}

/** "Not seen" is for maneuvers: elsewhere its sign is kept as it was typed, and the check names it. */
function markIn(text: string, field: Extract<SheetField, { range: unknown }>): string | undefined {
  const read = readTypedMark(text, field.range);
  switch (read.is) {
    case 'nothing':
      return undefined;
    case 'not-seen':
      return text.trim();
    case 'mark':
      return read.mark;
  }
}

function singleIn(
  text: string,
  field: Exclude<SheetField, { kind: 'maneuver' | 'extra' | 'penalties' }>,
): Pick<Go, 'mark' | 'measure' | 'errorsOfCourse'> {
  if (field.kind === 'errors') {
    const count = text.trim();
    return count === '' ? {} : { errorsOfCourse: /^\d{1,2}$/.test(count) ? Number(count) : -1 };
  }
  const mark = markIn(text, field);
  return mark === undefined ? {} : { [field.kind]: mark };
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
  write(goKeys.ruling, go.ruling?.code satisfies RulingCode | undefined);
  write(goKeys.rulingWords, go.ruling?.remark);
  write(goKeys.words, go.remark);
  return typed;
}
