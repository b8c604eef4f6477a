/** What the merge of the cards gave an entry, in one clause. */
import { fromRecordText } from '../numbers/number-text.ts';
import type { Basis, Compared, EntryId, Reason, ReasonPart } from '../placing/types.ts';
import { count, figure, list, type Names, ordinal, placeFigure } from './words.ts';

/**
 * The clause for `line` in a reason of the merge; `behind` is the nearest entry that the reason placed behind it.
 * `undefined` for steps that are no merge.
 */
export function mergeClause(
  reason: Reason,
  line: Compared,
  { behind, names }: { readonly behind: Compared | undefined; readonly names: Names },
): string | undefined {
  const { basis } = reason;
  const parts = line.parts ?? [];
  switch (basis.step) {
    case 'card-place':
      return cardPlace(basis.judge, line, names);
    case 'total':
    case 'place-points':
      return `${addition(parts, valueText(line))}${basis.step === 'place-points' ? ' points' : ''}${aside(parts, names)}`;
    case 'mean':
      return `${meanOf(parts, valueText(line))}${aside(parts, names)}`;
    case 'rank-sum':
      return `${placesOf(parts, valueText(line))}${aside(parts, names)}`;
    case 'majority-place':
      return majorityPlace(basis, line, { behind, names });
    case 'pairwise-wins':
      return pairwiseWins(Number(line.value), names.entry(line.entry));
    case 'referee':
      return refereeCall(basis, line.entry, { compared: reason.compared, names });
    default:
      return undefined;
  }
}

const valueText = ({ value }: Compared) => (value === null ? 'none' : figure(value));
const isOut = ({ note }: ReasonPart) => note === 'discarded-high' || note === 'discarded-low';
const counted = (parts: readonly ReasonPart[]) => parts.filter((part) => !isOut(part));
/** `72`, or `0.5 x 72` on a card that counts half. */
const counting = ({ value, weight }: ReasonPart) =>
  weight === undefined ? figure(value) : `${figure(weight)} x ${figure(value)}`;
const figures = (parts: readonly ReasonPart[]) => counted(parts).map(counting);

/** `70 + 71 = 141`; a single score stands for itself. */
function addition(parts: readonly ReasonPart[], total: string): string {
  const given = figures(parts);
  return given.length === 1 && given[0] === total ? total : `${given.join(' + ')} = ${total}`;
}

function meanOf(parts: readonly ReasonPart[], value: string): string {
  const given = figures(parts);
  return given.length === 1 ? value : `mean of ${list(given)} = ${value}`;
}

function placesOf(parts: readonly ReasonPart[], total: string): string {
  const given = figures(parts);
  return given.length === 1 && given[0] === total
    ? `place ${total}`
    : `places ${list(given)} add up to ${total}`;
}

function pairwiseWins(wins: number, entry: string): string {
  if (wins === 0) return `compared one by one, the judges had ${entry} behind every other entry`;
  const others = wins === 1 ? 'one other entry' : `${count(wins)} other entries`;
  return `compared one by one, the judges had ${entry} ahead of or level with ${others}`;
}

function cardPlace(judge: string, line: Compared, names: Names): string {
  const [score] = line.parts ?? [];
  const place = line.value === null ? 'off the card' : placeFigure(line.value);
  return `${names.judge(judge)} had it ${place}${score === undefined ? '' : ` with ${figure(score.value)}`}`;
}

/** What does not meet the eye in the numbers: who was discarded, left the entry off, gave no score. */
function aside(parts: readonly ReasonPart[], names: Names): string {
  const by = (note: ReasonPart['note']) => parts.filter((part) => part.note === note);
  const notes = [
    ...by('discarded-high').map(
      (part) => `${names.judge(part.judge)}'s ${figure(part.value)}, the highest, discarded`,
    ),
    ...by('discarded-low').map(
      (part) => `${names.judge(part.judge)}'s ${figure(part.value)}, the lowest, discarded`,
    ),
    ...by('left-off').map((part) => `left off by ${names.judge(part.judge)}: counts ${figure(part.value)}`),
    ...by('no-score').map((part) => `no score from ${names.judge(part.judge)}: counts ${figure(part.value)}`),
  ];
  return notes.length === 0 ? '' : ` (${notes.join('; ')})`;
}

function majorityPlace(
  { needed, judges }: Extract<Basis, { step: 'majority-place' }>,
  line: Compared,
  { behind, names }: { readonly behind: Compared | undefined; readonly names: Names },
): string {
  if (line.value === null)
    return `${count((line.parts ?? []).filter(({ note }) => note !== 'left-off').length)} of ${count(judges)} judges placed ${names.entry(line.entry)}, and a majority needs ${count(needed)}`;
  const column = Number(line.value);
  const had = judgesAtOrBetter(line, column);
  const place = column === 1 ? 'first' : `${ordinal(column)} or better`;
  const clause = `${judgesCounted(had, judges)} had ${names.entry(line.entry)} ${place}`;
  if (behind === undefined) return clause;
  const others = judgesAtOrBetter(behind, column);
  if (others >= needed) return clause;
  return `${clause}; ${names.entry(behind.entry)} had ${others === 0 ? 'none' : `only ${count(others)}`}`;
}

/** `the judge`, `both judges`, `all three judges`, `two of three judges`. */
function judgesCounted(had: number, judges: number): string {
  if (had < judges) return `${count(had)} of ${count(judges)} judges`;
  if (judges === 1) return 'the judge';
  return judges === 2 ? 'both judges' : `all ${count(judges)} judges`;
}

function judgesAtOrBetter({ parts = [] }: Compared, column: number): number {
  return parts.filter(({ value, note }) => note !== 'left-off' && fromRecordText(value).compare(column) <= 0)
    .length;
}

function refereeCall(
  { tops, agreed }: Extract<Basis, { step: 'referee' }>,
  entry: EntryId,
  { compared, names }: { readonly compared: readonly Compared[]; readonly names: Names },
): string {
  const called = names.entry(entry);
  if (tops.length === 1) return `${called} stood next on the one judge's card that still had entries`;
  if (agreed) return `both judges had ${called} next`;
  const others = compared.filter((one) => one.entry !== entry);
  const differed = `the judges differed between ${called} and ${list(others.map((one) => names.entry(one.entry)))}`;
  const [best] = [...compared].sort(byPlace);
  const chosen = compared.filter((one) => best !== undefined && byPlace(one, best) === 0);
  if (chosen.length > 1) return `${differed}, and the referee had none of them higher`;
  return `${differed}, and the referee had ${names.entry(best?.entry ?? entry)} higher`;
}

const byPlace = (a: Compared, b: Compared) =>
  fromRecordText(a.value ?? '0').compare(fromRecordText(b.value ?? '0'));
