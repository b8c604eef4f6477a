/** Two or more posted classes combined with weights: phases of one test, or a high point over several classes. */
import { exact } from '../engine/numbers/exact.ts';
import { recordText } from '../engine/numbers/number-text.ts';
import { combinePhases, type Phase, type WithoutPlace } from '../engine/placing/combine-phases.ts';
import { placeClass } from '../engine/placing/place-class.ts';
import { because, whyUnplaced } from '../engine/sentences/placing-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import { plainNames, type Teller } from '../engine/sentences/words.ts';
import { problem } from '../platform/problems/index.ts';
import { placingOf, whoIsWho } from './answers.ts';
import { type ClassRecords, loadClassRecords, type Reader } from './class-records.ts';
import type { PostingBody } from './posting-body.ts';
import { mustBePosted } from './read-result.ts';

export interface Combination {
  readonly showId: string;
  /** In their order; the last one breaks ties. */
  readonly phases: readonly { readonly classId: string; readonly weight: string }[];
  readonly withoutPlace: WithoutPlace;
  readonly speech: Speech;
}

/** Nothing is stored: it follows the postings. Throws not_found, class_not_posted, class_cannot_be_tabulated. */
export async function readCombination(reader: Reader, { showId, phases, withoutPlace, speech }: Combination) {
  const posted = [];
  for (const { classId, weight } of phases) posted.push(await readPhase(reader, { showId, classId, weight }));
  const placing = placeClass(
    combinePhases(
      posted.map(({ phase }) => phase),
      withoutPlace,
    ),
  );
  const shown = new Map(posted.flatMap(({ people }) => [...people]));
  const teller = phaseTeller(
    posted.map(({ records }) => records),
    speech,
  );
  const line = (entry: string) =>
    shown.get(entry) ?? { backNumber: Number(entry), name: `No. ${entry}`, horse: null };
  return {
    practice: posted.some(({ records }) => records.ofClass.practice),
    phases: posted.map(({ records, phase }) => ({
      classId: records.ofClass.id,
      number: records.ofClass.number,
      name: records.ofClass.name,
      weight: recordText(exact(phase.weight)),
    })),
    placings: placing.placed.map(({ entry, place, tied, total }) => ({
      ...line(entry),
      place,
      tied,
      total: total === undefined ? null : recordText(total),
      because: because(placing, entry, teller),
    })),
    unplaced: placing.unplaced.map((one) => ({ ...line(one.entry), why: whyUnplaced(one, teller) })),
  };
}

async function readPhase(
  reader: Reader,
  { showId, classId, weight }: { showId: string; classId: string; weight: string },
) {
  const records = await loadClassRecords(reader, classId);
  if (records.ofClass.showId !== showId)
    throw problem('not_found', { detail: 'There is no such class in this show.' });
  const { body } = mustBePosted(records);
  const phase: Phase = { phase: classId, weight, placing: byBackNumber(body) };
  const { shown } = whoIsWho(records, body);
  const people = body.entries.map(({ id, backNumber }) => [String(backNumber), shown(id)] as const);
  return { records, phase, people };
}

/** Over several classes an entry is known by its back number. */
function byBackNumber(body: PostingBody): Phase['placing'] {
  const [result, ...others] = body.results;
  if (result === undefined || others.length > 0 || result.judge !== null) {
    throw problem('class_cannot_be_tabulated', {
      detail: 'Each judge of this class has a result of her own: there is no one placing to combine.',
    });
  }
  const { placed, unplaced } = placingOf(result);
  const numbers = new Map(body.entries.map(({ id, backNumber }) => [id, String(backNumber)]));
  const renamed = <Line extends { readonly entry: string }>(line: Line) => ({
    ...line,
    entry: numbers.get(line.entry) ?? line.entry,
  });
  return { placed: placed.map(renamed), unplaced: unplaced.map(renamed) };
}

/** In the place of judges stand the classes that are combined. */
function phaseTeller(classes: readonly ClassRecords[], speech: Speech): Teller {
  const titles = new Map(
    classes.map(({ ofClass }) => [ofClass.id, speech.say('name-class', { number: ofClass.number })]),
  );
  const judge = (id: string) => titles.get(id) ?? speech.say('name-class-other');
  return { speech, names: { ...plainNames(speech), judge } };
}
