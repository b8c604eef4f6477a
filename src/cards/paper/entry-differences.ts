/** Two people typed one paper card: where they differ, field by field. Nothing is averaged, and neither is right. */
import type { CardContent } from '../../engine/sheets/card-types.ts';
import type { Go } from '../../engine/sheets/types.ts';

export const cardParts = [
  'maneuver',
  'maneuver-remark',
  'extra',
  'penalty',
  'errors-of-course',
  'mark',
  'measure',
  'ruling',
  'ruling-remark',
  'remark',
  'own-order',
  'ranking',
] as const;
export type CardPart = (typeof cardParts)[number];

/** One field of a paper card. */
export interface CardField {
  readonly classEntryId: string;
  readonly part: CardPart;
  /** Maneuver; `null` where the field belongs to no maneuver. */
  readonly position: number | null;
  /** Of the extra mark or the penalty. */
  readonly code: string | null;
}

/** `null`: nothing stands there. */
export interface EntryDifference extends CardField {
  readonly mine: string | null;
  readonly other: string | null;
}

type BackNumbers = ReadonlyMap<string, number>;
type Fields = ReadonlyMap<string, CardField & { readonly text: string }>;

interface TwoEntries {
  /** Both settled (`settledContent`). */
  readonly mine: CardContent;
  readonly other: CardContent;
  /** In the order of go, in which the differences are given. */
  readonly backNumbers: BackNumbers;
}

/** Empty exactly where both say the same. */
export function entryDifferences({ mine, other, backNumbers }: TwoEntries): EntryDifference[] {
  const here = fieldsOf(mine, backNumbers);
  const there = fieldsOf(other, backNumbers);
  const keys = [...new Set([...here.keys(), ...there.keys()])];
  const found = keys.flatMap((key): EntryDifference[] => {
    const field = here.get(key) ?? there.get(key);
    const [a, b] = [here.get(key)?.text ?? null, there.get(key)?.text ?? null];
    if (field === undefined || a === b) return [];
    const { classEntryId, part, position, code } = field;
    return [{ classEntryId, part, position, code, mine: a, other: b }];
  });
  const rank = new Map([...backNumbers.keys()].map((id, index) => [id, index] as const));
  const goOf = ({ classEntryId }: CardField) => rank.get(classEntryId) ?? rank.size;
  return found.sort((a, b) => goOf(a) - goOf(b) || compareWithinGo(a, b));
}

const compareWithinGo = (a: CardField, b: CardField) =>
  cardParts.indexOf(a.part) - cardParts.indexOf(b.part) || (a.position ?? 0) - (b.position ?? 0);

function fieldsOf({ goes, ownOrder = [], ranking = [] }: CardContent, backNumbers: BackNumbers): Fields {
  const fields = new Map<string, CardField & { readonly text: string }>();
  const write: Write = (field, text) => {
    if (text === undefined) return;
    const whole = { position: null, code: null, ...field };
    fields.set(JSON.stringify([whole.classEntryId, whole.part, whole.position, whole.code]), {
      ...whole,
      text,
    });
  };
  for (const [classEntryId, go] of Object.entries(goes)) writeGo(classEntryId, go, write);
  for (const tie of ownOrder) writeTie(tie, backNumbers, write);
  writeRanking(ranking, write);
  return fields;
}

type Write = (
  field: Pick<CardField, 'classEntryId' | 'part'> & Partial<CardField>,
  text: string | undefined,
) => void;

function writeGo(classEntryId: string, go: Go, write: Write): void {
  for (const one of go.maneuvers ?? []) {
    const { position } = one;
    write({ classEntryId, part: 'maneuver', position }, 'notSeen' in one ? 'not seen' : one.mark);
    write({ classEntryId, part: 'maneuver-remark', position }, one.remark);
  }
  for (const [code, mark] of Object.entries(go.extras ?? {})) {
    write({ classEntryId, part: 'extra', code }, mark);
  }
  writePenalties(classEntryId, go.penalties ?? [], write);
  write({ classEntryId, part: 'errors-of-course' }, go.errorsOfCourse?.toString());
  write({ classEntryId, part: 'mark' }, go.mark);
  write({ classEntryId, part: 'measure' }, go.measure);
  write({ classEntryId, part: 'ruling' }, go.ruling?.code);
  write({ classEntryId, part: 'ruling-remark' }, go.ruling?.remark);
  write({ classEntryId, part: 'remark' }, go.remark);
}

/** How often each was taken: twice a late lead in maneuver 3 is `2`. */
function writePenalties(classEntryId: string, penalties: NonNullable<Go['penalties']>, write: Write): void {
  for (const { code, position } of penalties) {
    const same = penalties.filter((one) => one.code === code && one.position === position);
    write({ classEntryId, part: 'penalty', code, position: position ?? null }, String(same.length));
  }
}

/** `2 of 101, 104`: second of the tie of these two. */
function writeTie(tie: readonly string[], backNumbers: BackNumbers, write: Write): void {
  const tied = [...tie].sort((a, b) => (backNumbers.get(a) ?? 0) - (backNumbers.get(b) ?? 0));
  const names = tied.map((id) => backNumbers.get(id) ?? id).join(', ');
  for (const [index, classEntryId] of tie.entries()) {
    write({ classEntryId, part: 'own-order' }, `${index + 1} of ${names}`);
  }
}

/** The place of each, as it is counted: of (a), (b, c), (d) entry d stands fourth. */
function writeRanking(ranking: NonNullable<CardContent['ranking']>, write: Write): void {
  let above = 0;
  for (const group of ranking) {
    for (const classEntryId of group) write({ classEntryId, part: 'ranking' }, String(above + 1));
    above += group.length;
  }
}
