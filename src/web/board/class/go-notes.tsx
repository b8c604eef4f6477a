/** What a card says of a go in words: which faults, what was ruled, what the judge remarked. */
import { figureText } from '../../shared/figure-words.ts';
import { useWords, type Words } from '../../shared/words.tsx';
import type { CardGo, Sheet } from './class-answer.ts';

type Marks = NonNullable<CardGo['marks']>;

interface NotesToShow {
  readonly go: CardGo;
  readonly sheet: Sheet;
}

export function hasNotes({ marks, remarks }: CardGo): boolean {
  if (marks === null) return remarks.length > 0;
  const onManeuvers = marks.maneuvers.some(
    ({ penalties, remark }) => penalties.length > 0 || remark !== null,
  );
  const onGo = [marks.ruling, marks.remark, marks.errorsOfCourse, marks.lowerLimit];
  return onManeuvers || marks.penalties.length > 0 || onGo.some((one) => one !== null);
}

export function GoNotes({ go, sheet }: NotesToShow) {
  const words = useWords();
  const notes = go.marks === null ? go.remarks : notesOf(go.marks, { sheet, words });
  return (
    <ul class="go-notes">
      {notes.map((note, at) => (
        <li key={at}>{note}</li>
      ))}
    </ul>
  );
}

interface Teller {
  readonly sheet: Sheet;
  readonly words: Words;
}

function notesOf(marks: Marks, teller: Teller): string[] {
  return [
    ...marks.maneuvers.flatMap((one) => [
      ...one.penalties.map((penalty) => faultText(penalty, one.position, teller)),
      ...(one.remark === null
        ? []
        : [teller.words.t('board-remark-at', { position: one.position, remark: one.remark })]),
    ]),
    ...marks.penalties.map((penalty) => faultText(penalty, penalty.position ?? undefined, teller)),
    ...aboutTheGo(marks, teller.words),
  ];
}

function faultText(
  { code, points }: Pick<Marks['penalties'][number], 'code' | 'points'>,
  position: number | undefined,
  { sheet, words: { t, language } }: Teller,
): string {
  const label = sheet.penalties.find((one) => one.code === code)?.label ?? code;
  const fault = { label, points: figureText(points, language) };
  return position === undefined ? t('board-fault', fault) : t('board-fault-at', { ...fault, position });
}

function aboutTheGo({ errorsOfCourse, ruling, lowerLimit, remark }: Marks, { t, language }: Words): string[] {
  const points = (number: string) => ({ points: figureText(number, language) });
  return [
    ...(errorsOfCourse === null ? [] : [t('board-errors-of-course', points(errorsOfCourse))]),
    ...(ruling === null
      ? []
      : [[t(`board-ruling-${ruling.code}`), ruling.remark].filter(Boolean).join(': ')]),
    ...(lowerLimit === null ? [] : [t('board-lower-limit', points(lowerLimit))]),
    ...(remark === null ? [] : [t('board-remark', { remark })]),
  ];
}
