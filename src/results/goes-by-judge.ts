/** What each judge gave each go, in the order of go: what a drawing of how far they agree is made from. */
import { readingText, recordText } from '../engine/numbers/number-text.ts';
import type { EntryId, PanelCard } from '../engine/placing/types.ts';
import { judgeAnswer, whoIsWho } from './answers.ts';
import type { ClassRecords } from './class-records.ts';
import type { PostingBody } from './posting-body.ts';

interface Judged {
  readonly body: PostingBody;
  readonly cards: readonly PanelCard[];
  /** Entries as they went; those of a rail class have no order. */
  readonly orderOfGo: readonly EntryId[];
}

/** In the order of the panel; goes without a position come last, by back number. */
export function goesByJudge(records: ClassRecords, { body, cards, orderOfGo }: Judged) {
  const { backNumber } = whoIsWho(records, body);
  const positionOf = (entry: EntryId) => {
    const index = orderOfGo.indexOf(entry);
    return index < 0 ? null : index + 1;
  };
  return cards.flatMap((card) => {
    const judge = judgeAnswer(records, card.judge);
    if (judge === null) return [];
    const goes = [...card.lines].map(([entry, { place, score }]) => ({
      backNumber: backNumber(entry),
      goPosition: positionOf(entry),
      place: readingText(place),
      score: score === undefined ? null : recordText(score),
    }));
    return [{ ...judge, better: card.better, goes: goes.toSorted(asTheyWent) }];
  });
}

interface Went {
  readonly goPosition: number | null;
  readonly backNumber: number;
}

const asTheyWent = (a: Went, b: Went): number =>
  (a.goPosition ?? Number.MAX_SAFE_INTEGER) - (b.goPosition ?? Number.MAX_SAFE_INTEGER) ||
  a.backNumber - b.backNumber;
