/**
 * The lines of a go as it was marked: the base, each maneuver, the marks beside them, what was taken off, the score and
 * the place. Every judge has a cell in each line, so that they can be read beside each other and added up downwards.
 */
import type { ComponentChildren } from 'preact';
import { Mark } from '../board/class/mark.tsx';
import { PenaltyPoints } from '../board/class/penalty-points.tsx';
import { scoreText } from '../board/class/score-text.ts';
import { figureText } from '../shared/figure-words.ts';
import type { Words } from '../shared/words.tsx';
import { type Note, notesOnGo, notesOnManeuver } from './marks-notes.ts';
import type { Card, Marks, Sheet } from './number-answer.ts';

export interface Line {
  readonly key: string;
  readonly kind: 'base' | 'maneuver' | 'extra' | 'off' | 'score' | 'place';
  /** Number of the maneuver, or nothing. */
  readonly number?: number;
  readonly name: string;
  readonly cell: (card: Card) => ComponentChildren;
  readonly notes: readonly Note[];
}

export interface Marked {
  readonly sheet: Sheet;
  readonly cards: readonly Card[];
  readonly words: Words;
}

const marksOf = ({ go }: Card): Marks | undefined => go?.marks ?? undefined;

export const linesOf = (marked: Marked): Line[] => [
  ...baseLine(marked),
  ...maneuverLines(marked),
  ...extraLines(marked),
  ...offLines(marked),
  ...endLines(marked),
];

/** On a sheet with one mark, or a time, that mark is the line of the score less what was taken off. */
function baseLine({ sheet: { kind }, cards, words: { t, language } }: Marked): Line[] {
  if (cards.every((card) => (marksOf(card)?.base ?? null) === null)) return [];
  const name = kind === 'pattern' ? t('exhibitor-base') : t(`exhibitor-its-score-${kind}`);
  const cell = (card: Card) => {
    const base = marksOf(card)?.base ?? null;
    return base === null ? '–' : scoreText(base, { language });
  };
  return [{ key: 'base', kind: 'base', name, cell, notes: [] }];
}

function maneuverLines({ sheet, cards, words }: Marked): Line[] {
  if (cards.every((card) => (marksOf(card)?.maneuvers ?? []).length === 0)) return [];
  const { kind, maneuvers } = sheet;
  return maneuvers.map(({ position, name, coefficient }) => ({
    ...{ key: `m${position}`, kind: 'maneuver', number: position },
    name: coefficient === '1' ? name : `${name} ${words.t('exhibitor-times', { coefficient })}`,
    cell: (card) => {
      const one = marksOf(card)?.maneuvers.find((maneuver) => maneuver.position === position);
      if (one === undefined) return '–';
      return (
        <>
          <Mark mark={one.mark} kind={kind} /> <PenaltyPoints penalties={one.penalties} />
        </>
      );
    },
    notes: notesOnManeuver({ sheet, cards, words }, position),
  }));
}

function extraLines({ sheet: { extras, kind }, words: { t } }: Marked): Line[] {
  return extras.map(({ code, label, coefficient }) => ({
    ...{ key: code, kind: 'extra', notes: [] },
    name: coefficient === '1' ? label : `${label} ${t('exhibitor-times', { coefficient })}`,
    cell: (card: Card) => {
      const one = marksOf(card)?.extras.find((extra) => extra.code === code);
      return one === undefined ? '–' : <Mark mark={one.mark} kind={kind} />;
    },
  }));
}

function offLines({ cards, words }: Marked): Line[] {
  const { t, language } = words;
  const lines: Line[] = [];
  if (cards.some((card) => (marksOf(card)?.penalties.length ?? 0) > 0)) {
    const cell = (card: Card) => {
      const penalties = marksOf(card)?.penalties ?? [];
      return penalties.length === 0 ? '–' : <PenaltyPoints penalties={penalties} />;
    };
    lines.push({ key: 'off', kind: 'off', name: t('exhibitor-whole-go'), cell, notes: [] });
  }
  if (cards.some((card) => (marksOf(card)?.errorsOfCourse ?? null) !== null)) {
    const cell = (card: Card) => {
      const errors = marksOf(card)?.errorsOfCourse ?? null;
      return errors === null ? '–' : `−${figureText(errors, language)}`;
    };
    lines.push({ key: 'errors', kind: 'off', name: t('exhibitor-errors-of-course'), cell, notes: [] });
  }
  return lines;
}

function endLines(marked: Marked): Line[] {
  const { sheet, cards, words } = marked;
  const { t, language } = words;
  const { kind } = sheet;
  const score: Line = {
    ...{ key: 'score', kind: 'score', name: t(`exhibitor-its-score-${kind}`), notes: [] },
    cell: ({ go }) => (go?.score == null ? '–' : scoreText(go.score, { language })),
  };
  const place: Line = {
    ...{ key: 'place', kind: 'place', name: t('exhibitor-place-on-card'), notes: notesOnGo(marked) },
    cell: ({ go }) => go?.place ?? '–',
  };
  return cards.some(({ go }) => go?.score != null) ? [score, place] : [place];
}
