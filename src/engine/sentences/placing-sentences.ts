/** Why an entry is where it is, in sentences that an exhibitor understands, out of the typed reasons. */
import { fromRecordText } from '../numbers/number-text.ts';
import type {
  Compared,
  EntryId,
  Placing,
  PlacingNote,
  Reason,
  StepCode,
  Unplaced,
} from '../placing/types.ts';
import { mergeClause } from './merge-sentences.ts';
import { tieClause, tiedWith } from './tie-sentences.ts';
import { capital, count, figure, list, type Names, ordinal } from './words.ts';

/** The steps that say what the cards came to, and so open an entry's sentences; all others split what they left. */
const opens: Readonly<Record<StepCode, boolean>> = {
  'card-place': true,
  total: true,
  mean: true,
  'rank-sum': true,
  'place-points': true,
  'majority-place': true,
  referee: true,
  'pairwise-wins': true,
  status: false,
  'majority-size': false,
  'majority-total': false,
  'total-of-all': false,
  'next-places': false,
  'judges-in-favor': false,
  maneuver: false,
  'count-back': false,
  form: false,
  'penalty-points': false,
  'penalty-count': false,
  'tie-judge': false,
  'head-to-head': false,
  'best-single-place': false,
  'most-places': false,
  discarded: false,
  decision: false,
  draw: false,
  share: false,
};

/** The sentences for one placed entry: the merge first, then each tie that it was in, then what its cards note. */
export function because(placing: Placing, entry: EntryId, names: Names): string[] {
  const placed = placing.placed.find((one) => one.entry === entry);
  if (placed === undefined) return [];
  const touching = placing.reasons.filter(({ compared }) => compared.some((one) => one.entry === entry));
  const merges = touching.filter(({ basis }) => opens[basis.step]);
  const merge = merges.at(0)?.basis.step === 'referee' ? merges.at(-1) : merges.at(0);
  const ties = touching.filter((reason) => !opens[reason.basis.step] && splits(reason, entry));
  // Alone on its side of the status an entry was compared with nobody: then the status says why it is where it is.
  const alone = merge === undefined && ties[0]?.basis.step === 'status' ? ties.shift() : undefined;
  return [
    lead({ placing, entry, place: placed.place, reason: merge ?? alone, names }),
    ...ties
      .filter((reason) => tellsSomething(reason, entry))
      .map((reason) => splitSentence(reason, entry, names)),
    ...(placed.tied ? [sharedSentence(placing, { entry, place: placed.place, names })] : []),
    ...notesOn(placing, entry, names),
  ];
}

/** Why an entry has no place. */
export function whyUnplaced({ entry, why }: Unplaced, names: Names): string {
  switch (why.code) {
    case 'ruled-out': {
      const rulings = list(why.rulings.map((code) => code.replace('-', ' ')));
      return `${names.entry(entry)} may not be placed: ruled ${rulings || 'out'} by ${list(why.judges.map(names.judge))}.`;
    }
    case 'on-no-card':
      return `${names.entry(entry)} is on no judge's card.`;
    case 'no-score':
      return `${names.entry(entry)} has no score from ${list(why.judges.map(names.judge))}, and every judge's score is needed.`;
    case 'beyond-places':
      return `Only ${count(why.placesGiven)} ${why.placesGiven === 1 ? 'place is' : 'places are'} given in this class.`;
  }
}

/** What a judge's card says beside the numbers. */
export function noteSentence({ judge, flag }: PlacingNote, names: Names): string {
  const by = capital(names.judge(judge));
  switch (flag.kind) {
    case 'not-seen':
      return flag.treatedAs === 'left-out'
        ? `${by} could not see ${names.maneuver(flag.position)}; it is left out of that score, neither a zero nor a fault.`
        : `${by} could not see ${names.maneuver(flag.position)}; it is judged as not shown, and the judge ruled on the pattern.`;
    case 'score-stands':
      return `${by} noted ${flag.ruling.replace('-', ' ')}; at the judge's discretion the score stands.`;
    case 'lower-limit':
      return `${by}'s marks add up to ${figure(flag.sum)}, which counts as the lowest score of the sheet.`;
  }
}

interface Lead {
  readonly placing: Placing;
  readonly entry: EntryId;
  readonly place: number;
  readonly reason: Reason | undefined;
  readonly names: Names;
}

function lead({ placing, entry, place, reason, names }: Lead): string {
  const line = reason?.compared.find((one) => one.entry === entry);
  const clause =
    reason && line && leadClause(reason, line, { behind: behindIn(placing, reason, entry), names });
  if (clause !== undefined) return `${capital(ordinal(place))}: ${clause}.`;
  const only = placing.placed.length === 1;
  return `${capital(ordinal(place))}: the only entry ${only ? 'placed' : 'left'}.`;
}

const leadClause = (reason: Reason, line: Compared, around: Parameters<typeof mergeClause>[2]) =>
  reason.basis.step === 'status' ? statusClause(line, around.names) : mergeClause(reason, line, around);

/** The entry placed directly behind, where the same reason compared both and put it behind. */
function behindIn({ placed }: Placing, { compared, better }: Reason, entry: EntryId): Compared | undefined {
  const at = placed.findIndex((one) => one.entry === entry);
  const next = placed.slice(at + 1).find((one) => one.place !== placed[at]?.place);
  const own = compared.find((one) => one.entry === entry);
  const other = compared.find((one) => one.entry === next?.entry);
  return own && other && compareValues(own, other, better) < 0 ? other : undefined;
}

function splits({ compared, better }: Reason, entry: EntryId): boolean {
  const line = compared.find((one) => one.entry === entry);
  return line !== undefined && compared.some((one) => compareValues(one, line, better) !== 0);
}

/** That an entry kept the pattern goes without saying beside its numbers; that it did not, does not. */
function tellsSomething({ basis, compared }: Reason, entry: EntryId): boolean {
  return basis.step !== 'status' || compared.some((one) => one.entry === entry && one.value !== '0');
}

function splitSentence(reason: Reason, entry: EntryId, names: Names): string {
  const line = reason.compared.find((one) => one.entry === entry);
  if (line === undefined) return '';
  if (reason.basis.step === 'status') return `${capital(statusClause(line, names))}.`;
  return `Tied with ${tiedWith(reason, line, names)}; ${sideOf(reason, line)}${tieClause(reason, line, names)}.`;
}

/** Where a split put the entry among those it was tied with; a lot and a decision speak for themselves. */
function sideOf({ basis, compared, better }: Reason, line: Compared): string {
  if (basis.step === 'draw' || basis.step === 'decision') return '';
  const against = compared.filter((one) => one !== line).map((one) => compareValues(one, line, better));
  const ahead = against.some((sign) => sign > 0);
  const behind = against.some((sign) => sign < 0);
  if (ahead && behind) return 'ahead of some by ';
  return ahead ? 'ahead by ' : 'behind by ';
}

/** Below zero: `a` stands before `b`. No value stands behind all that have one. */
function compareValues(a: Compared, b: Compared, better: Reason['better']): number {
  if (a.value === null || b.value === null) return Number(a.value === null) - Number(b.value === null);
  const difference = fromRecordText(a.value).compare(fromRecordText(b.value));
  return better === 'higher' ? -difference : difference;
}

function statusClause({ entry, value, parts = [] }: Compared, names: Names): string {
  if (value === '0') return `${names.entry(entry)} kept the pattern, and stands above all who did not`;
  return `placed below all who kept the pattern, as ruled by ${list(parts.map(({ judge }) => names.judge(judge)))}`;
}

function sharedSentence(
  { placed, openTies }: Placing,
  { entry, place, names }: { readonly entry: EntryId; readonly place: number; readonly names: Names },
): string {
  const others = list(
    placed.filter((one) => one.place === place && one.entry !== entry).map((one) => names.entry(one.entry)),
  );
  const open = openTies.find((tie) => tie.entries.includes(entry));
  if (open?.waitsFor === 'run-off')
    return `Tied with ${others}: a run-off will decide, unless it is declined.`;
  if (open === undefined) return `Tied with ${others}, and they share the place.`;
  return `Tied with ${others}: nothing in the rule of this class splits them, so they share the place.`;
}

function notesOn({ notes }: Placing, entry: EntryId, names: Names): string[] {
  return notes.filter((note) => note.entry === entry).map((note) => noteSentence(note, names));
}
