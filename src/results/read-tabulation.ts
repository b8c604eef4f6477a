/** The preview: what the cards that are signed so far come to, and what the rule still allows where a tie is open. */
import type { OpenTie } from '../engine/placing/types.ts';
import { classHead, didNotGoAnswer, resultAnswers, ruleAnswer, whoIsWho } from './answers.ts';
import { loadWithCards, type Reader } from './class-records.ts';
import { readClassState } from './read-board.ts';
import { rulingKinds } from './schemas.ts';
import { type Tabulation, tabulateClass } from './tabulate-class.ts';

/** Throws not_found, class_cannot_be_tabulated. */
export async function readTabulation(reader: Reader, classId: string) {
  const tabulation = tabulateClass(await loadWithCards(reader, classId));
  const state = await readClassState(reader.sql, classId);
  return { etag: `"${tabulation.bodyHash}"`, answer: { state, ...tabulationAnswer(tabulation) } };
}

function tabulationAnswer(tabulation: Tabulation) {
  const { records, body, cards, missing, changedSincePosting } = tabulation;
  return {
    practice: records.ofClass.practice,
    class: classHead(records),
    cardsMissing: missing.map(({ seat, why }) => ({
      seatId: seat.id,
      seatOrder: seat.seatOrder,
      judge: seat.personName,
      why,
    })),
    rule: ruleAnswer(records, body),
    results: resultAnswers(records, body),
    didNotGo: didNotGoAnswer(records, body),
    openTies: openTiesOf(tabulation),
    ownTies: cards.flatMap(({ seat, checked }) =>
      checked.openTies.map((tied) => ({
        seatId: seat.id,
        judge: seat.personName,
        backNumbers: tied.map(whoIsWho(records, body).backNumber),
      })),
    ),
    changedSincePosting,
    body,
  };
}

export function openTiesOf({ records, body }: Tabulation) {
  const { backNumber } = whoIsWho(records, body);
  return body.results.flatMap(({ judge, openTies }) =>
    openTies.map(({ entries, place, waitsFor }) => ({
      judge,
      place,
      classEntryIds: [...entries],
      backNumbers: entries.map(backNumber),
      waitsFor,
      sentence: sentenceOf({ entries, place, waitsFor }, entries.map(backNumber)),
      mayBeRuled:
        waitsFor === 'run-off' ? [...rulingKinds] : rulingKinds.filter((kind) => kind !== 'declined'),
    })),
  );
}

function sentenceOf({ place, waitsFor }: OpenTie, backNumbers: readonly number[]): string {
  const tied = backNumbers.join(', ');
  return waitsFor === 'run-off'
    ? `${tied} are tied for place ${place}. The rule of the class asks for a run-off: record how it ended, or that it was declined.`
    : `${tied} are tied for place ${place}, and no tie-break of the class splits them: record who decided and why, or that the place is shared.`;
}
