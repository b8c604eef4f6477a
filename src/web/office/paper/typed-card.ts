/** A whole card as it is typed, and as the content that is sent. Pure. */
import type { CardContent, CheckedCard } from '../../../engine/sheets/card-types.ts';
import { checkCard } from '../../../engine/sheets/check-card.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import { goKeys, type MarkedSheet } from './sheet-fields.ts';
import { type GoRead, goOfTyped, type TypedGo, typedOfGo } from './typed-go.ts';

/** An entry that goes, in the order of go. The typist works by back numbers: no name is needed. */
export interface TypedEntry {
  readonly id: string;
  readonly backNumber: number;
}

export interface CardToType extends MarkedSheet {
  readonly entries: readonly TypedEntry[];
}

export interface TypedCard {
  /** By class entry. The place within a tie stands with the go (`tie-place`). */
  readonly goes: Readonly<Record<string, TypedGo>>;
  /** Sheets of places: back numbers, the first place first. */
  readonly ranking: readonly string[];
}

export const blankCard: TypedCard = { goes: {}, ranking: [] };

/** A piece that was not understood; `entry` is `undefined` in the ranking, where `key` is the place. */
export interface Unread {
  readonly entry: string | undefined;
  readonly key: string;
  readonly pieces: readonly string[];
}

export interface CardRead {
  readonly content: CardContent;
  readonly unread: readonly Unread[];
  /** Ties on this card, by class entry: the paper says who stood before whom. */
  readonly ties: readonly (readonly string[])[];
}

export function cardOfTyped(card: CardToType, typed: TypedCard): CardRead {
  const read = card.entries.map(({ id }) => ({ id, ...goOfTyped(card, typed.goes[id] ?? {}) }));
  const goes = Object.fromEntries(
    read.flatMap(({ id, go }): [string, Go][] => (Object.keys(go).length === 0 ? [] : [[id, go]])),
  );
  const ranked = rankingOf(card, typed.ranking);
  const ranking = ranked.groups.length === 0 ? {} : { ranking: ranked.groups };
  const ties = tiesOn(card, { goes, ...ranking });
  const ownOrder = ties.flatMap((tie) => orderOfTie(tie, typed));
  const content = { goes, ...ranking, ...(ownOrder.length === 0 ? {} : { ownOrder }) };
  return { content, ties, unread: [...read.flatMap(unreadOf), ...ranked.unread] };
}

const unreadOf = ({ id, unread }: GoRead & { readonly id: string }): Unread[] =>
  [...unread].map(([key, pieces]) => ({ entry: id, key, pieces }));

/** One place, one field; several numbers in it share the place. Empty fields behind the last number do not count. */
function rankingOf({ sheet, entries }: CardToType, ranking: readonly string[]) {
  const groups: string[][] = [];
  const unread: Unread[] = [];
  if (sheet.kind !== 'places') return { groups, unread };
  for (const [index, text] of ranking.entries()) {
    const pieces = text.split(/[\s,;/]+/).filter((piece) => piece !== '');
    const found = pieces.map((piece) => entries.find(({ backNumber }) => String(backNumber) === piece));
    const ids = found.flatMap((entry) => entry?.id ?? []);
    const unknown = pieces.filter((_, at) => found[at] === undefined);
    if (unknown.length > 0) unread.push({ entry: undefined, key: String(index + 1), pieces: unknown });
    if (ids.length > 0) groups.push(ids);
  }
  return { groups, unread };
}

/** Known once every go stands; a card that is not whole has none yet. */
function tiesOn(card: CardToType, content: CardContent): readonly (readonly string[])[] {
  if (card.sheet.kind === 'places') return [];
  return checked(card, content)?.openTies ?? [];
}

function checked({ sheet, maneuvers, entries }: CardToType, content: CardContent): CheckedCard | undefined {
  const going = entries.map(({ id }) => ({ id, going: true }));
  const check = checkCard({ sheet, maneuvers, entries: going, content });
  return check.ok ? check.card : undefined;
}

/** Where each of the tie has a place of its own: 1, 2, 3. */
function orderOfTie(tie: readonly string[], { goes }: TypedCard): readonly (readonly string[])[] {
  const placed = tie.map((id) => ({ id, place: (goes[id]?.[goKeys.tiePlace] ?? '').trim() }));
  const ordered = tie.map((_, index) => placed.find(({ place }) => place === String(index + 1))?.id);
  return ordered.every((id) => id !== undefined) ? [ordered] : [];
}

/** What is kept of hers, to be mended. */
export function typedOfCard(card: CardToType, { goes, ranking = [], ownOrder = [] }: CardContent): TypedCard {
  const numberOf = (id: string) => String(card.entries.find((entry) => entry.id === id)?.backNumber ?? '');
  const typed = Object.entries(goes).map(([id, go]): [string, TypedGo] => [id, typedOfGo(card, go)]);
  const tied = ownOrder.flatMap((tie) => tie.map((id, index): [string, string] => [id, String(index + 1)]));
  const places = new Map(tied);
  return {
    goes: Object.fromEntries(
      typed.map(([id, go]) => {
        const place = places.get(id);
        return [id, place === undefined ? go : { ...go, [goKeys.tiePlace]: place }];
      }),
    ),
    ranking: ranking.map((group) => group.map(numberOf).join(' ')),
  };
}
