/** What the engine finds wrong with a go or a card, as fields of a problem: by back number and maneuver. */
import { cardFaultSentence, goFaultSentence } from '../engine/sentences/fault-sentences.ts';
import { type Names, plainNames } from '../engine/sentences/words.ts';
import type { CardFault } from '../engine/sheets/card-types.ts';
import type { GoFault, SheetManeuver } from '../engine/sheets/types.ts';
import type { FieldFault } from '../platform/problems/index.ts';
import type { EntryRecord } from './card-record.ts';

export interface NamedOnCard {
  readonly maneuvers: readonly SheetManeuver[];
  readonly entries: readonly EntryRecord[];
}

/** `maneuver 3 (Lope to C)`, and entries by their back number; an id that is not of the class stays an id. */
export function namesOnCard({ maneuvers, entries }: NamedOnCard): Names {
  const back = new Map(entries.map(({ id, backNumber }) => [id, String(backNumber)]));
  const called = new Map(maneuvers.map(({ position, name }) => [position, name]));
  return {
    ...plainNames,
    entry: (entry) => back.get(entry) ?? entry,
    maneuver: (position) => {
      const name = called.get(position);
      return name === undefined ? `maneuver ${position}` : `maneuver ${position} (${name})`;
    },
  };
}

export const goFaultFields = (faults: readonly GoFault[], names: Names): FieldFault[] =>
  faults.map((fault) => ({ field: fault.at, message: goFaultSentence(fault, names) }));

/** `under`: where the content stands in the body. */
export const cardFaultFields = (faults: readonly CardFault[], names: Names, under = ''): FieldFault[] =>
  faults.map((fault) => ({ field: under + fault.at, message: cardFaultSentence(fault, names) }));

const missingCodes: ReadonlySet<CardFault['code']> = new Set([
  'entry_missing',
  'ranking_too_short',
  'mark_missing',
  'extra_missing',
  'measure_missing',
  'ruling_missing',
]);

/** Not written yet, as against wrong: whatever is added, what is wrong stays wrong. */
export const isStillMissing = ({ code }: Pick<CardFault, 'code'>): boolean => missingCodes.has(code);
