/** A posting made again from what it was made of, by the code that made it. */
import type { CardContent } from '../engine/sheets/card-types.ts';
import { type PostingBody, placingInput, postingBody } from './posting-body.ts';
import { type MarkedOn, readCards } from './read-cards.ts';

export interface MadeOf extends MarkedOn {
  /** What each judge signed, by the id of the revision. */
  readonly contents: ReadonlyMap<string, CardContent>;
}

/**
 * The body with its results computed anew from the cards, the sheet, the rule, the panel, the entries and the
 * decisions that it names. `undefined`: a card that it names is not there, or cannot be read on that sheet.
 * The same parts give the same bytes in `canonicalText`.
 */
export function recompute(body: PostingBody, { contents, ...markedOn }: MadeOf): PostingBody | undefined {
  const { classId, classNumber, sheet, panel, entries, cards, rule, decisions } = body;
  const signed = cards.flatMap((card) => {
    const content = contents.get(card.revisionId);
    return content === undefined ? [] : [{ ...card, content }];
  });
  const seats = panel.map(({ seatId, role }) => ({ id: seatId, role }));
  const read = readCards(markedOn, { seats, entries, signed });
  if (read.missing.length > 0 || read.cards.length !== cards.length) return undefined;
  const onPanel = read.cards.map((card) => card.onPanel);
  const head = { classId, classNumber, sheet, panel, entries, cards };
  return postingBody(head, placingInput(head, { cards: onPanel, rule, decisions }));
}
