/** How entries, judges, maneuvers and decisions are called in the sentences of a class. */
import type { Speech } from '../engine/sentences/speech.ts';
import { maneuverName, type Teller } from '../engine/sentences/words.ts';
import type { ClassRecords } from './class-records.ts';

/** Entries go by their back numbers: a reason can be read aloud without naming a child. */
export function tellerOf({ ofClass, rulings }: ClassRecords, speech: Speech): Teller {
  const backNumbers = new Map(ofClass.entries.map(({ id, backNumber }) => [id, String(backNumber)]));
  const judges = new Map(
    ofClass.seats.map(({ id, seatOrder }) => [id, speech.say('name-judge', { number: seatOrder })]),
  );
  const maneuvers = new Map(ofClass.maneuvers.map(({ position, name }) => [position, name]));
  const decisions = new Map(
    rulings.map(({ id, decidedBy, why }) => [
      id,
      speech.say('name-decision-by', { decidedBy, why: inSentence(why) }),
    ]),
  );
  return {
    speech,
    names: {
      entry: (id) => backNumbers.get(id) ?? speech.say('name-entry-gone'),
      judge: (id) => judges.get(id) ?? speech.say('name-judge-gone'),
      maneuver: (position) => maneuverName(position, maneuvers.get(position), speech),
      decision: (id) => decisions.get(id) ?? speech.say('name-decision'),
    },
  };
}

/** It becomes the end of a sentence, which brings its own full stop. */
const inSentence = (why: string) => why.replace(/[.\s]+$/, '');
