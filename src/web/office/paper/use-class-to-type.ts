/** All that is needed to type a card of a class: its sheet, its maneuvers, and who goes. */
import { useMemo } from 'preact/hooks';
import type { ScoreSheet } from '../../../engine/sheets/types.ts';
import type { Answer } from '../../shared/api.ts';
import type { Refused } from '../ask.ts';
import { concernsClass } from '../office-state.ts';
import { type AskedFor, useAsked } from '../use-asked.ts';
import type { CardToType } from './typed-card.ts';

type ClassBody = Answer<'/v1/shows/{showId}/classes/{classId}'>;
type Entries = Answer<'/v1/shows/{showId}/classes/{classId}/entries'>;
type Pattern = Answer<'/v1/shows/{showId}/patterns/{patternId}'>;
type Sheet = Answer<'/v1/score-sheets/{code}/{version}'>;

export interface ClassToType {
  readonly ofClass: ClassBody | undefined;
  readonly card: CardToType | undefined;
  readonly refused: Refused | undefined;
  readonly again: () => void;
}

export function useClassToType(showId: string, classId: string | undefined): ClassToType {
  const base = classId === undefined ? undefined : `/v1/shows/${showId}/classes/${classId}`;
  const on = concernsClass(classId ?? '');
  const ofClass = useAsked<ClassBody>(base, { on });
  const entries = useAsked<Entries>(base && `${base}/entries`, { on });
  const { sheet: ref, patternId } = ofClass.body ?? { sheet: undefined, patternId: null };
  const sheet = useAsked<Sheet>(ref && `/v1/score-sheets/${ref.code}/${ref.version}`, never);
  const pattern = useAsked<Pattern>(
    patternId === null ? undefined : `/v1/shows/${showId}/patterns/${patternId}`,
    never,
  );
  const parts = [ofClass, entries, sheet, pattern];
  const card = useMemo(
    () => cardToType({ entries, sheet, pattern, hasPattern: patternId !== null }),
    [entries.body, sheet.body, pattern.body, patternId],
  );
  return {
    ...{ ofClass: ofClass.body, card },
    refused: parts.find(({ refused }) => refused !== undefined)?.refused,
    again: () => {
      for (const part of parts) void part.again();
    },
  };
}

/** Neither changes while a card can be typed. */
const never = { on: () => false };

interface Parts {
  readonly entries: AskedFor<Entries>;
  readonly sheet: AskedFor<Sheet>;
  readonly pattern: AskedFor<Pattern>;
  readonly hasPattern: boolean;
}

function cardToType({ entries, sheet, pattern, hasPattern }: Parts): CardToType | undefined {
  if (entries.body === undefined || sheet.body === undefined) return undefined;
  if (hasPattern && pattern.body === undefined) return undefined;
  return {
    // A stored sheet was checked when it was stored; the generated type only spells it more loosely.
    sheet: sheet.body.definition as unknown as ScoreSheet,
    maneuvers: pattern.body?.maneuvers ?? [],
    entries: entries.body.items
      .filter(({ status }) => status === 'entered' || status === 'checked-in')
      .map(({ id, backNumber }) => ({ id, backNumber })),
  };
}
