/**
 * One judge's card of a class: is everything on it that must be, and nothing else? All faults come at once,
 * each with its entry (her own order of ties is looked at once the scores stand); a card without faults may be signed.
 */
import { cardFault } from './card-faults.ts';
import { cardOrder, openTiesOf } from './card-order.ts';
import type { CardCheck, CardFault, CardGroup, CardToCheck, CheckedCard } from './card-types.ts';
import { ownOrderFaults } from './own-order.ts';
import { rankingFaults } from './ranking.ts';
import { fault, pointer } from './reading.ts';
import { scoreGo } from './score-go.ts';
import type { JudgeScore } from './types.ts';

export function checkCard(given: CardToCheck): CardCheck {
  const { goes, faults } = scoreGoes(given);
  const around = given.sheet.kind === 'places' ? rankingFaults(given, goes) : scoredCardFaults(given);
  if (faults.length + around.length > 0) return { ok: false, faults: [...faults, ...around] };
  const ownOrder = given.content.ownOrder ?? [];
  const order = cardOrder(given.content.ranking, goes);
  const wrongOrder = ownOrderFaults(ownOrder, order);
  if (wrongOrder.length > 0) return { ok: false, faults: wrongOrder };
  return { ok: true, card: checked(given, { goes, order }) };
}

function checked(
  { sheet, content }: CardToCheck,
  { goes, order }: { goes: ReadonlyMap<string, JudgeScore>; order: readonly CardGroup[] },
): CheckedCard {
  const ownOrder = content.ownOrder ?? [];
  const kind = sheet.kind === 'places' ? 'ranking' : 'scores';
  return { kind, goes, order, openTies: openTiesOf(order, ownOrder), ownOrder };
}

/** Each go on its sheet; an entry that is not in the class, or does not go, may not have one. */
function scoreGoes({ sheet, maneuvers, entries, content }: CardToCheck) {
  const going = new Map(entries.map((entry) => [entry.id, entry.going]));
  const goes = new Map<string, JudgeScore>();
  const faults: CardFault[] = [];
  for (const [entry, go] of Object.entries(content.goes)) {
    const at = `/goes/${pointer(entry)}`;
    const goesHere = going.get(entry);
    if (goesHere !== true) {
      const code = goesHere === undefined ? 'entry_unknown' : 'entry_not_going';
      faults.push(cardFault(code, entry, { at, written: entry }));
      continue;
    }
    const scored = scoreGo(sheet, maneuvers, go);
    if (scored.ok) goes.set(entry, scored.score);
    else faults.push(...scored.faults.map((one) => ({ ...one, at: at + one.at, entry })));
  }
  return { goes, faults };
}

/** A scored card has a go for each entry that goes, and no ranking: the scores are the ranking. */
function scoredCardFaults({ entries, content }: CardToCheck): readonly CardFault[] {
  const missing = entries
    .filter(({ id, going }) => going && !Object.hasOwn(content.goes, id))
    .map(({ id }) => cardFault('entry_missing', id, { at: `/goes/${pointer(id)}` }));
  if (content.ranking === undefined) return missing;
  return [...missing, { ...fault('not_on_this_sheet', '/ranking'), entry: undefined }];
}
