import type { Words } from '../../shared/words.tsx';
import { type Changes, type LineOfChange, type Standing, shownNumber } from './changes.ts';

type Say = Words['t'];

/** "148 moves from place 3 to place 2." */
export function changeSentence(line: LineOfChange, t: Say): string {
  const number = String(line.backNumber);
  const [was, willBe] = [standingWords(line.was, t), standingWords(line.willBe, t)];
  if (line.moves) return t('office-change-moves', { number, was, willBe });
  return t('office-change-total', { number, was: totalWords(line.was), willBe: totalWords(line.willBe) });
}

export function standingWords(standing: Standing, t: Say): string {
  switch (standing.is) {
    case 'placed':
      return t(standing.tied ? 'office-standing-tied' : 'office-standing-placed', { place: standing.place });
    case 'unplaced':
      return t('office-standing-unplaced');
    case 'did-not-go':
      return t('office-standing-absent');
  }
}

export const totalWords = (standing: Standing): string =>
  standing.is === 'placed' && standing.total !== null ? shownNumber(standing.total) : '–';

/** What it comes from: amended cards, rulings. */
export function causeSentences({ cards, newRulings }: Changes, judgeOf: (seatId: string) => string, t: Say) {
  const ofCards = cards.map(({ seatId, from, to }) =>
    from === undefined
      ? t('office-change-card-new', { judge: judgeOf(seatId) })
      : t('office-change-card', { judge: judgeOf(seatId), from, to }),
  );
  return newRulings === 0 ? ofCards : [...ofCards, t('office-change-rulings', { count: newRulings })];
}
