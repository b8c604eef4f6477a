/** How entries, judges, maneuvers and decisions are called in the sentences of a class. */
import type { Names } from '../engine/sentences/words.ts';
import type { ClassRecords } from './class-records.ts';

/** Entries go by their back numbers: a reason can be read aloud without naming a child. */
export function spokenNames({ ofClass, rulings }: ClassRecords): Names {
  const backNumbers = new Map(ofClass.entries.map(({ id, backNumber }) => [id, String(backNumber)]));
  const judges = new Map(ofClass.seats.map(({ id, seatOrder }) => [id, `judge ${seatOrder}`]));
  const maneuvers = new Map(ofClass.maneuvers.map(({ position, name }) => [position, name]));
  const decisions = new Map(
    rulings.map(({ id, decidedBy, why }) => [id, `ruled by ${decidedBy}: ${inSentence(why)}`]),
  );
  return {
    entry: (id) => backNumbers.get(id) ?? 'an entry that left the class',
    judge: (id) => judges.get(id) ?? 'a judge who left the panel',
    maneuver: (position) => {
      const name = maneuvers.get(position);
      return name === undefined ? `maneuver ${position}` : `maneuver ${position} (${name})`;
    },
    decision: (id) => decisions.get(id) ?? 'as recorded',
  };
}

/** It becomes the end of a sentence, which brings its own full stop. */
const inSentence = (why: string) => why.replace(/[.\s]+$/, '');
