/** What did not work, in words, with what to do about it. */
import { cardFaultSentence } from '../../engine/sentences/fault-sentences.ts';
import type { Speech } from '../../engine/sentences/speech.ts';
import { maneuverName } from '../../engine/sentences/words.ts';
import type { Words } from '../shared/words.tsx';
import type { DayClass } from './desk/day-types.ts';
import type { WriteOutcome } from './desk/desk-types.ts';

export interface Called {
  readonly words: Words;
  readonly speech: Speech;
  readonly dayClass: DayClass;
}

/** How entries and maneuvers of a class are called in a sentence. */
export const namesIn = ({ speech, dayClass }: Pick<Called, 'speech' | 'dayClass'>) => ({
  entry: (id: string) =>
    String(dayClass.entries.find(({ classEntryId }) => classEntryId === id)?.backNumber ?? '?'),
  maneuver: (position: number) =>
    maneuverName(
      position,
      dayClass.pattern?.maneuvers.find((one) => one.position === position)?.name,
      speech,
    ),
});

export function outcomeWords(outcome: Exclude<WriteOutcome, { ok: true }>, called: Called): string {
  if (outcome.why !== 'not-on-sheet') return called.words.t(`judge-not-written-${outcome.why}`);
  const { speech } = called;
  return outcome.faults
    .map((fault) => cardFaultSentence({ ...fault, entry: undefined }, { speech, names: namesIn(called) }))
    .join(' ');
}
