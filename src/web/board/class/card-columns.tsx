/** The columns of a card by the kind of its sheet: maneuvers, extra marks, what was taken off, score, place. */
import type { ComponentChildren } from 'preact';
import type { Words } from '../../shared/words.tsx';
import type { CardGo, Sheet } from './class-answer.ts';
import { Mark } from './mark.tsx';
import { PenaltyPoints } from './penalty-points.tsx';
import { scoreText } from './score-text.ts';

export interface Column {
  readonly key: string;
  readonly kind: 'mark' | 'extra' | 'off' | 'score' | 'place';
  /** As it heads the column. */
  readonly short: string;
  /** As it is heard. */
  readonly label: string;
  readonly cell: (go: CardGo) => ComponentChildren;
}

interface CardToRead {
  readonly sheet: Sheet;
  readonly goes: readonly CardGo[];
  readonly words: Words;
}

export function cardColumns(card: CardToRead): Column[] {
  return [...maneuverColumns(card), ...extraColumns(card), ...offColumns(card), ...endColumns(card)];
}

function maneuverColumns({ sheet: { maneuvers, kind }, goes }: CardToRead): Column[] {
  if (goes.every(({ marks }) => marks === null || marks.maneuvers.length === 0)) return [];
  return maneuvers.map(({ position, name }) => ({
    ...{ key: `m${position}`, kind: 'mark' },
    ...{ short: String(position), label: `${position} ${name}` },
    cell: ({ marks }) => {
      const one = marks?.maneuvers.find((maneuver) => maneuver.position === position);
      if (one === undefined) return null;
      return (
        <>
          <Mark mark={one.mark} kind={kind} />
          <PenaltyPoints penalties={one.penalties} />
        </>
      );
    },
  }));
}

/** Form and effectiveness, collective marks: their names are long, so they are headed by their beginnings. */
function extraColumns({ sheet: { extras, kind } }: CardToRead): Column[] {
  return extras.map(({ code, label }) => ({
    ...{ key: code, kind: 'extra', short: label, label },
    cell: ({ marks }) => {
      const one = marks?.extras.find((extra) => extra.code === code);
      return one === undefined ? null : <Mark mark={one.mark} kind={kind} />;
    },
  }));
}

/** Against the go as a whole; the column is left out where nobody has any. */
function offColumns({ goes, words: { t } }: CardToRead): Column[] {
  if (goes.every(({ marks }) => marks === null || marks.penalties.length === 0)) return [];
  const label = t('board-taken-off');
  const cell = ({ marks }: CardGo) => <PenaltyPoints penalties={marks?.penalties ?? []} />;
  return [{ key: 'off', kind: 'off', short: label, label, cell }];
}

function endColumns({ sheet: { kind }, goes, words: { t, language } }: CardToRead): Column[] {
  const [score, place] = [t(`board-score-${kind}`), t('board-place')];
  const scored: Column = {
    ...{ key: 'score', kind: 'score', short: score, label: score },
    cell: (go) => (go.score === null ? '–' : scoreText(go.score, { language })),
  };
  const placed: Column = {
    ...{ key: 'place', kind: 'place', short: place, label: place },
    cell: (go) => go.place ?? '–',
  };
  return goes.some((go) => go.score !== null) ? [scored, placed] : [placed];
}
