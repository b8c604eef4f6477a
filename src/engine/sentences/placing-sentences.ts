/** Why an entry is where it is, in sentences that an exhibitor understands, out of the typed reasons. */
import { fromRecordText } from '../numbers/number-text.ts';
import type {
  Compared,
  EntryId,
  OpenTie,
  Placing,
  PlacingNote,
  Reason,
  StepCode,
  Unplaced,
} from '../placing/types.ts';
import { mergeClause } from './merge-sentences.ts';
import type { Speech } from './speech.ts';
import { type Side, tieSentence } from './tie-sentences.ts';
import { figure, list, series, type Teller } from './words.ts';

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
export function because(placing: Placing, entry: EntryId, teller: Teller): string[] {
  const placed = placing.placed.find((one) => one.entry === entry);
  if (placed === undefined) return [];
  const touching = placing.reasons.filter(({ compared }) => compared.some((one) => one.entry === entry));
  const merges = touching.filter(({ basis }) => opens[basis.step]);
  const merge = merges.at(0)?.basis.step === 'referee' ? merges.at(-1) : merges.at(0);
  const ties = touching.filter((reason) => !opens[reason.basis.step] && splits(reason, entry));
  // Alone on its side of the status an entry was compared with nobody: then the status says why it is where it is.
  const alone = merge === undefined && ties[0]?.basis.step === 'status' ? ties.shift() : undefined;
  return [
    lead({ placing, entry, place: placed.place, reason: merge ?? alone, teller }),
    ...ties
      .filter((reason) => tellsSomething(reason, entry))
      .map((reason) => splitSentence(reason, entry, teller)),
    ...(placed.tied ? [sharedSentence(placing, { entry, place: placed.place, teller })] : []),
    ...notesOn(placing, entry, teller),
  ];
}

/** Why an entry has no place. */
export function whyUnplaced({ entry: id, why }: Unplaced, { speech, names }: Teller): string {
  const entry = names.entry(id);
  switch (why.code) {
    case 'ruled-out': {
      const judges = list(why.judges.map(names.judge), speech);
      const rulings = list(
        why.rulings.map((code) => speech.say(`ruling-${code}`)),
        speech,
      );
      return rulings === ''
        ? speech.say('unplaced-ruled-out', { entry, judges })
        : speech.say('unplaced-ruled', { entry, rulings, judges });
    }
    case 'on-no-card':
      return speech.say('unplaced-on-no-card', { entry });
    case 'no-score':
      return speech.say('unplaced-no-score', { entry, judges: list(why.judges.map(names.judge), speech) });
    case 'beyond-places':
      return speech.say('unplaced-beyond-places', { given: why.placesGiven });
  }
}

/** Of an entry that was scratched, or never came. */
export const didNotGo = (speech: Speech): string => speech.say('unplaced-did-not-go');

/** What no result may be read without. */
export const caution = (speech: Speech): string => speech.say('caution');

/** What somebody must decide, for the office. */
export function openTieSentence(
  { entries, place, waitsFor }: OpenTie,
  { speech, names }: { readonly speech: Speech; readonly names: Pick<Teller['names'], 'entry'> },
): string {
  return speech.say(`open-tie-${waitsFor}`, { entries: series(entries.map(names.entry), speech), place });
}

/** What a judge's card says beside the numbers. */
export function noteSentence({ judge: id, flag }: PlacingNote, { speech, names }: Teller): string {
  const judge = names.judge(id);
  switch (flag.kind) {
    case 'not-seen':
      return speech.say(`note-${flag.treatedAs}`, { judge, maneuver: names.maneuver(flag.position) });
    case 'score-stands':
      return speech.say('note-score-stands', { judge, ruling: speech.say(`ruling-${flag.ruling}`) });
    case 'lower-limit':
      return speech.say('note-lower-limit', { judge, sum: figure(flag.sum, speech) });
  }
}

interface Lead {
  readonly placing: Placing;
  readonly entry: EntryId;
  readonly place: number;
  readonly reason: Reason | undefined;
  readonly teller: Teller;
}

function lead({ placing, entry, place, reason, teller }: Lead): string {
  const line = reason?.compared.find((one) => one.entry === entry);
  const clause =
    reason && line && leadClause(reason, line, { behind: behindIn(placing, reason, entry), teller });
  if (clause !== undefined) return teller.speech.say('lead', { place, clause });
  return teller.speech.say(`lead-only-${placing.placed.length === 1 ? 'placed' : 'left'}`, { place });
}

const leadClause = (reason: Reason, line: Compared, around: Parameters<typeof mergeClause>[2]) =>
  reason.basis.step === 'status' ? statusClause(line, around.teller) : mergeClause(reason, line, around);

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

function splitSentence(reason: Reason, entry: EntryId, teller: Teller): string {
  const line = reason.compared.find((one) => one.entry === entry);
  if (line === undefined) return '';
  if (reason.basis.step === 'status') {
    return teller.speech.say('status-sentence', { clause: statusClause(line, teller) });
  }
  return tieSentence(reason, line, { side: sideOf(reason, line), teller });
}

function sideOf({ compared, better }: Reason, line: Compared): Side {
  const against = compared.filter((one) => one !== line).map((one) => compareValues(one, line, better));
  const ahead = against.some((sign) => sign > 0);
  const behind = against.some((sign) => sign < 0);
  if (ahead && behind) return 'between';
  return ahead ? 'ahead' : 'behind';
}

/** Below zero: `a` stands before `b`. No value stands behind all that have one. */
function compareValues(a: Compared, b: Compared, better: Reason['better']): number {
  if (a.value === null || b.value === null) return Number(a.value === null) - Number(b.value === null);
  const difference = fromRecordText(a.value).compare(fromRecordText(b.value));
  return better === 'higher' ? -difference : difference;
}

function statusClause({ entry, value, parts = [] }: Compared, { speech, names }: Teller): string {
  if (value === '0') return speech.say('status-kept', { entry: names.entry(entry) });
  const judges = list(
    parts.map(({ judge }) => names.judge(judge)),
    speech,
  );
  return speech.say('status-below', { judges });
}

function sharedSentence(
  { placed, openTies }: Placing,
  {
    entry,
    place,
    teller: { speech, names },
  }: { readonly entry: EntryId; readonly place: number; readonly teller: Teller },
): string {
  const tied = placed.filter((one) => one.place === place && one.entry !== entry);
  const others = list(
    tied.map((one) => names.entry(one.entry)),
    speech,
  );
  const open = openTies.find((tie) => tie.entries.includes(entry));
  if (open?.waitsFor === 'run-off') return speech.say('shared-run-off', { others });
  return speech.say(open === undefined ? 'shared-for-good' : 'shared-unsplit', { others });
}

function notesOn({ notes }: Placing, entry: EntryId, teller: Teller): string[] {
  return notes.filter((note) => note.entry === entry).map((note) => noteSentence(note, teller));
}
