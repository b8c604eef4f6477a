/** What stands beside the figures: the faults in words, the rulings, the remarks, each with whose it is. */
import { figureText } from '../shared/figure-words.ts';
import type { Words } from '../shared/words.tsx';
import type { Card, Marks, Sheet } from './number-answer.ts';

export interface Note {
  readonly key: string;
  readonly judge: string;
  /** `remark`: in her own words, which may hold the time of a video. */
  readonly kind: 'fault-note' | 'remark';
  readonly text: string;
}

interface Marked {
  readonly sheet: Sheet;
  readonly cards: readonly Card[];
  readonly words: Words;
}

export function notesOnManeuver({ sheet, cards, words }: Marked, position: number): Note[] {
  return cards.flatMap((card) => {
    const marks = card.go?.marks;
    const one = marks?.maneuvers.find((maneuver) => maneuver.position === position);
    const faults = [
      ...(one?.penalties ?? []),
      ...(marks?.penalties ?? []).filter((penalty) => penalty.position === position),
    ];
    return [
      ...faults.map((fault, at) => noteOf(card, `f${at}`, faultText(fault, { sheet, words }))),
      ...(one?.remark == null ? [] : [remarkOf(card, 'r', one.remark)]),
    ];
  });
}

/** What no maneuver holds. Where a judge only ranked, her remarks are all that there is. */
export function notesOnGo({ sheet, cards, words }: Marked): Note[] {
  return cards.flatMap((card) => {
    if (card.go === null) return [];
    const { marks, remarks } = card.go;
    if (marks === null) return remarks.map((remark, at) => remarkOf(card, `r${at}`, remark));
    const faults = marks.penalties.filter(({ position }) => position === null);
    return [
      ...faults.map((fault, at) => noteOf(card, `g${at}`, faultText(fault, { sheet, words }))),
      ...rulingOf(card, marks, words),
      ...(marks.remark === null ? [] : [remarkOf(card, 'go', marks.remark)]),
    ];
  });
}

function rulingOf(card: Card, { ruling, lowerLimit }: Marks, { t, language }: Words): Note[] {
  const limit =
    lowerLimit === null ? [] : [t('board-lower-limit', { points: figureText(lowerLimit, language) })];
  const ruled = ruling === null ? [] : [t(`board-ruling-${ruling.code}`)];
  const notes = [...limit, ...ruled].map((text, at) => noteOf(card, `n${at}`, text));
  return ruling?.remark == null ? notes : [...notes, remarkOf(card, 'ruling', ruling.remark)];
}

const noteOf = ({ judge, seatId }: Card, key: string, text: string): Note => ({
  ...{ key: `${seatId}-${key}`, judge, kind: 'fault-note', text },
});

const remarkOf = (card: Card, key: string, text: string): Note => ({
  ...noteOf(card, key, text),
  kind: 'remark',
});

function faultText(
  { code, points }: { readonly code: string; readonly points: string },
  { sheet, words: { t, language } }: Pick<Marked, 'sheet' | 'words'>,
): string {
  const label = sheet.penalties.find((one) => one.code === code)?.label ?? code;
  return t('board-fault', { label, points: figureText(points, language) });
}
