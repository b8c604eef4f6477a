/** The preview: what the cards that are signed so far come to, and what the rule still allows where a tie is open. */
import { openTieSentence } from '../engine/sentences/placing-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import { english } from '../language/index.ts';
import { cardAnswers, classHead, didNotGoAnswer, resultAnswers, ruleAnswer, whoIsWho } from './answers.ts';
import { loadWithCards, type Reader } from './class-records.ts';
import { readClassState } from './read-board.ts';
import { rulingKinds } from './schemas.ts';
import { type Tabulation, tabulateClass } from './tabulate-class.ts';

/** Throws not_found, class_cannot_be_tabulated. */
export async function readTabulation(reader: Reader, classId: string, speech: Speech) {
  const tabulation = tabulateClass(await loadWithCards(reader, classId));
  const state = await readClassState(reader.sql, classId);
  return {
    etag: previewEtag(tabulation, speech),
    answer: { state, ...tabulationAnswer(tabulation, speech) },
  };
}

/**
 * It stands for what would be posted, told in one language; whoever posts by it has looked at the same in any of them.
 * English has the bare hash.
 */
function previewEtag({ bodyHash }: Tabulation, { language }: Speech): string {
  return language === english.language ? `"${bodyHash}"` : `"${bodyHash}-${language}"`;
}

/** Is this the ETag of the tabulation as it stands? */
export const isOfPreview = (etag: string, { bodyHash }: Tabulation): boolean =>
  /^"([0-9a-f]+)(?:-[\w-]+)?"$/.exec(etag)?.[1] === bodyHash;

function tabulationAnswer(tabulation: Tabulation, speech: Speech) {
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
    rule: ruleAnswer(records, body, speech),
    results: resultAnswers(records, body, speech),
    didNotGo: didNotGoAnswer(records, body),
    cards: cardAnswers(records, { body, cards, speech }),
    openTies: openTiesOf(tabulation, speech),
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

export function openTiesOf({ records, body }: Tabulation, speech: Speech) {
  const { backNumber } = whoIsWho(records, body);
  const names = { entry: (id: string) => String(backNumber(id)) };
  return body.results.flatMap(({ judge, openTies }) =>
    openTies.map((tie) => ({
      judge,
      place: tie.place,
      classEntryIds: [...tie.entries],
      backNumbers: tie.entries.map(backNumber),
      waitsFor: tie.waitsFor,
      sentence: openTieSentence(tie, { speech, names }),
      mayBeRuled:
        tie.waitsFor === 'run-off' ? [...rulingKinds] : rulingKinds.filter((kind) => kind !== 'declined'),
    })),
  );
}
