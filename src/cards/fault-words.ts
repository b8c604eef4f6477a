/** What the engine finds wrong with a go or a card, in an answer or a problem: by back number and maneuver. */
import { cardFaultSentence, goFaultSentence } from '../engine/sentences/fault-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import { maneuverName, plainNames, type Teller } from '../engine/sentences/words.ts';
import type { CardFault } from '../engine/sheets/card-types.ts';
import type { GoFault, SheetManeuver } from '../engine/sheets/types.ts';
import { told } from '../language/index.ts';
import type { FieldFault } from '../platform/problems/index.ts';
import type { EntryRecord } from './card-record.ts';

export interface NamedOnCard {
  readonly maneuvers: readonly SheetManeuver[];
  readonly entries: readonly EntryRecord[];
}

/** `maneuver 3 (Lope to C)`, and entries by their back number; an id that is not of the class stays an id. */
export function cardTeller({ maneuvers, entries }: NamedOnCard, speech: Speech): Teller {
  const back = new Map(entries.map(({ id, backNumber }) => [id, String(backNumber)]));
  const called = new Map(maneuvers.map(({ position, name }) => [position, name]));
  const entry = (id: string) => back.get(id) ?? id;
  const maneuver = (position: number) => maneuverName(position, called.get(position), speech);
  return { speech, names: { ...plainNames(speech), entry, maneuver } };
}

/** A fault as it stands in an answer. */
export interface ShownFault {
  readonly field: string;
  readonly message: string;
}

export const goFaultsShown = (faults: readonly GoFault[], teller: Teller): ShownFault[] =>
  faults.map((fault) => ({ field: fault.at, message: goFaultSentence(fault, teller) }));

export const cardFaultsShown = (faults: readonly CardFault[], teller: Teller): ShownFault[] =>
  faults.map((fault) => ({ field: fault.at, message: cardFaultSentence(fault, teller) }));

/** The same as fields of a problem. */
export const goFaultFields = (faults: readonly GoFault[], named: NamedOnCard): FieldFault[] =>
  faults.map((fault) => ({
    field: fault.at,
    message: told((speech) => goFaultSentence(fault, cardTeller(named, speech))),
  }));

/** `under`: where the content stands in the body. */
export const cardFaultFields = (faults: readonly CardFault[], named: NamedOnCard, under = ''): FieldFault[] =>
  faults.map((fault) => ({
    field: under + fault.at,
    message: told((speech) => cardFaultSentence(fault, cardTeller(named, speech))),
  }));

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
