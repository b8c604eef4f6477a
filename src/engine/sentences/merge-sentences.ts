/** What the merge of the cards gave an entry, in one clause. */
import { fromRecordText } from '../numbers/number-text.ts';
import type { Basis, Compared, EntryId, Reason, ReasonPart } from '../placing/types.ts';
import type { Speech } from './speech.ts';
import { clauses, figure, list, placeFigure, type Teller } from './words.ts';

/**
 * The clause for `line` in a reason of the merge; `behind` is the nearest entry that the reason placed behind it.
 * `undefined` for steps that are no merge.
 */
export function mergeClause(
  reason: Reason,
  line: Compared,
  { behind, teller }: { readonly behind: Compared | undefined; readonly teller: Teller },
): string | undefined {
  const { basis } = reason;
  const { speech } = teller;
  const parts = line.parts ?? [];
  switch (basis.step) {
    case 'card-place':
      return cardPlace(basis.judge, line, teller);
    case 'total':
      return withAside(addition(line, speech), parts, teller);
    case 'place-points':
      return withAside(speech.say('merge-points', { sum: addition(line, speech) }), parts, teller);
    case 'mean':
      return withAside(meanOf(line, speech), parts, teller);
    case 'rank-sum':
      return withAside(placesOf(line, speech), parts, teller);
    case 'majority-place':
      return majorityPlace(basis, line, { behind, teller });
    case 'pairwise-wins':
      return speech.say('merge-pairwise', {
        wins: Number(line.value),
        entry: teller.names.entry(line.entry),
      });
    case 'referee':
      return refereeCall(basis, line.entry, { compared: reason.compared, teller });
    default:
      return undefined;
  }
}

const valueText = ({ value }: Compared, speech: Speech) =>
  value === null ? speech.say('merge-nothing') : figure(value, speech);
const isOut = ({ note }: ReasonPart) => note === 'discarded-high' || note === 'discarded-low';

/** What each card counts: `72`, or `0.5 × 72` on a card that counts half. */
const figuresOf = ({ parts = [] }: Compared, speech: Speech) =>
  parts
    .filter((part) => !isOut(part))
    .map(({ value, weight }) =>
      weight === undefined
        ? figure(value, speech)
        : speech.say('merge-times', { weight: figure(weight, speech), value: figure(value, speech) }),
    );

/** `70 + 71 = 141`; a single score stands for itself. */
function addition(line: Compared, speech: Speech): string {
  const [given, total] = [figuresOf(line, speech), valueText(line, speech)];
  if (given.length === 1 && given[0] === total) return total;
  const sum = given.reduce(
    (first, next) => (first === '' ? next : speech.say('merge-plus', { first, next })),
    '',
  );
  return speech.say('merge-equals', { sum, total });
}

function meanOf(line: Compared, speech: Speech): string {
  const [given, value] = [figuresOf(line, speech), valueText(line, speech)];
  return given.length === 1 ? value : speech.say('merge-mean', { values: list(given, speech), value });
}

function placesOf(line: Compared, speech: Speech): string {
  const [given, total] = [figuresOf(line, speech), valueText(line, speech)];
  return given.length === 1 && given[0] === total
    ? speech.say('merge-one-place', { total })
    : speech.say('merge-places', { values: list(given, speech), total });
}

function cardPlace(judgeId: string, { value, parts }: Compared, { speech, names }: Teller): string {
  const judge = names.judge(judgeId);
  const score = parts?.[0]?.value;
  if (value === null) return speech.say('merge-card-off', { judge });
  const place = placeFigure(value, speech);
  return score === undefined
    ? speech.say('merge-card-place', { judge, place })
    : speech.say('merge-card-place-scored', { judge, place, score: figure(score, speech) });
}

/** In this order. */
const asides = ['discarded-high', 'discarded-low', 'left-off', 'no-score'] as const;

/** With what does not meet the eye in the numbers: who was discarded, left the entry off, gave no score. */
function withAside(clause: string, parts: readonly ReasonPart[], { speech, names }: Teller): string {
  const notes = asides.flatMap((kind) =>
    parts
      .filter(({ note }) => note === kind)
      .map(({ judge, value }) =>
        speech.say(`aside-${kind}`, { judge: names.judge(judge), value: figure(value, speech) }),
      ),
  );
  return notes.length === 0 ? clause : speech.say('merge-aside', { clause, notes: clauses(notes, speech) });
}

function majorityPlace(
  { needed, judges }: Extract<Basis, { step: 'majority-place' }>,
  line: Compared,
  { behind, teller: { speech, names } }: { readonly behind: Compared | undefined; readonly teller: Teller },
): string {
  const entry = names.entry(line.entry);
  if (line.value === null) {
    const had = (line.parts ?? []).filter(({ note }) => note !== 'left-off').length;
    return speech.say('merge-majority-short', { had, judges, entry, needed });
  }
  const column = Number(line.value);
  const had = judgesAtOrBetter(line, column);
  const clause =
    had < judges
      ? speech.say('merge-majority-part', { had, judges, entry, column })
      : speech.say('merge-majority-all', { judges, entry, column });
  const others = behind && judgesAtOrBetter(behind, column);
  if (behind === undefined || others === undefined || others >= needed) return clause;
  return speech.say('merge-majority-behind', { clause, entry: names.entry(behind.entry), had: others });
}

function judgesAtOrBetter({ parts = [] }: Compared, column: number): number {
  return parts.filter(({ value, note }) => note !== 'left-off' && fromRecordText(value).compare(column) <= 0)
    .length;
}

function refereeCall(
  { tops, agreed }: Extract<Basis, { step: 'referee' }>,
  called: EntryId,
  {
    compared,
    teller: { speech, names },
  }: { readonly compared: readonly Compared[]; readonly teller: Teller },
): string {
  const entry = names.entry(called);
  if (tops.length === 1) return speech.say('merge-referee-only', { entry });
  if (agreed) return speech.say('merge-referee-agreed', { entry });
  const others = list(
    compared.filter((one) => one.entry !== called).map((one) => names.entry(one.entry)),
    speech,
  );
  const [best] = [...compared].sort(byPlace);
  const chosen = compared.filter((one) => best !== undefined && byPlace(one, best) === 0);
  if (chosen.length > 1) return speech.say('merge-referee-none', { entry, others });
  const higher = names.entry(best?.entry ?? called);
  return speech.say('merge-referee-higher', { entry, others, higher });
}

const byPlace = (a: Compared, b: Compared) =>
  fromRecordText(a.value ?? '0').compare(fromRecordText(b.value ?? '0'));
