/** The card of one class as it stands on this phone, and whether it may be signed. The engine judges, as at the service. */
import type { CardContent, CardFault } from '../../../engine/sheets/card-types.ts';
import { checkCard } from '../../../engine/sheets/check-card.ts';
import { contentFromDrafts } from '../../../engine/sheets/content-from-drafts.ts';
import type { Go, SheetManeuver } from '../../../engine/sheets/types.ts';
import type { CardOrder, DayClass, DayEntry } from './day-types.ts';
import type { SignCheck } from './desk-types.ts';
import { type KeptSignature, orderPart, type Writing } from './records.ts';

/** Entered or checked in. */
export const isGoing = ({ status }: Pick<DayEntry, 'status'>): boolean =>
  status === 'entered' || status === 'checked-in';

export const maneuversOf = ({ pattern }: DayClass): readonly SheetManeuver[] => pattern?.maneuvers ?? [];

export function contentFromWritings(day: DayClass, writings: Iterable<Writing>): CardContent {
  const all = [...writings];
  const order = all.find(({ part }) => part === orderPart)?.content as CardOrder | undefined;
  return contentFromDrafts({
    going: new Set(day.entries.filter(isGoing).map(({ classEntryId }) => classEntryId)),
    goes: all
      .filter(({ part }) => part !== orderPart)
      .map(({ part, content }) => ({ classEntryId: part, content: content as Go })),
    order,
  });
}

/** The last signature of this phone that counts and is not received; `undefined`: there is none. */
export const waitingSignature = (signatures: readonly KeptSignature[]): KeptSignature | undefined =>
  signatures.findLast(({ state }) => state === 'waiting');

const missingOnCard: readonly CardFault['code'][] = [
  ...(['entry_missing', 'ranking_too_short', 'mark_missing'] as const),
  ...(['extra_missing', 'measure_missing', 'ruling_missing'] as const),
];

/** Not written yet, as against wrong. */
export const isStillMissing = ({ code }: Pick<CardFault, 'code'>): boolean => missingOnCard.includes(code);

/** What signing or amending with this content would be refused for. */
export function checkContent(day: DayClass, content: CardContent, conflicts: number): SignCheck {
  const check = checkCard({
    sheet: day.sheet,
    maneuvers: maneuversOf(day),
    entries: day.entries.map((entry) => ({ id: entry.classEntryId, going: isGoing(entry) })),
    content,
  });
  const found = check.ok ? [] : check.faults;
  const card = check.ok ? check.card : undefined;
  const openTies = card?.openTies ?? [];
  const tiesInTheWay = day.tiesMustBeBroken && openTies.length > 0;
  return {
    mayBeSigned: check.ok && !tiesInTheWay && conflicts === 0,
    content,
    missing: found.filter(isStillMissing),
    faults: found.filter((fault) => !isStillMissing(fault)),
    openTies,
    tiesMustBeBroken: day.tiesMustBeBroken,
    conflicts,
    card,
  };
}
