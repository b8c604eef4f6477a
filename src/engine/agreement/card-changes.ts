/** One card as it would be with one mark, or one place, changed; nothing else of it is touched. */
import { type Exact, exact } from '../numbers/exact.ts';
import { nextPlace } from '../placing/panel-card.ts';
import type { CardLine, EntryId, PanelCard } from '../placing/types.ts';

/** A change of a place: `size` counts the entries whose order against the moved one it changes. */
export interface Move {
  readonly size: number;
  readonly card: () => PanelCard;
}

/**
 * All moves of an entry up (or down) one card, the smallest first; the others close up. It comes to stand alone
 * between two places: of (a), (b, c), (d) entry d can move up by 2 (above b and c) and by 3 (above all), and b can
 * move up by 1 (parted from c) and by 2. An entry left off moves up by 1 onto the end of the card, and so on. Nobody
 * moves past the line between those who kept the pattern and those placed below, and nobody who was ruled out moves.
 */
export function movesOf(card: PanelCard, entry: EntryId, direction: 'up' | 'down'): Move[] {
  if (card.ruledOut.has(entry)) return [];
  const groups = groupsOf(card);
  const own = groups.findIndex((group) => group.includes(entry));
  if (own < 0 && direction === 'down') return [];
  const tier = card.lines.get(entry)?.tier ?? 'kept-pattern';
  const others = groups
    .map((group) => group.filter((other) => other !== entry))
    .filter((group) => group.length > 0);
  const inTier = others.filter(
    (group) => group[0] !== undefined && card.lines.get(group[0])?.tier === tier,
  ).length;
  const above = tier === 'kept-pattern' ? 0 : others.length - inTier;
  const tiedWith = own < 0 ? 0 : (groups[own]?.length ?? 1) - 1;
  // Where the entry stands now among the others: before `at`, or with the group `at` where it is tied.
  const at = own < 0 ? above + inTier : own;
  const spots =
    direction === 'up' ? upward(at, above, tiedWith > 0 || own < 0) : downward(at, above + inTier);
  const passed = (spot: number) => {
    const between =
      direction === 'up' ? others.slice(spot, tiedWith > 0 ? at + 1 : at) : others.slice(at, spot);
    return between.flat().length + (own < 0 ? 1 : 0);
  };
  return spots.map((spot) => ({
    size: passed(spot),
    card: () => regrouped(card, [...others.slice(0, spot), [entry], ...others.slice(spot)]),
  }));
}

/** Spots before which the entry can be put, nearest first; a tied entry begins by parting from its group, one left off at the end. */
function upward(at: number, highest: number, parts: boolean): number[] {
  const nearest = parts ? at : at - 1;
  return Array.from({ length: Math.max(0, nearest - highest + 1) }, (_, index) => nearest - index);
}

const downward = (at: number, lowest: number) =>
  Array.from({ length: Math.max(0, lowest - at) }, (_, index) => at + 1 + index);

/** The entries of the card, best first, tied ones together. */
function groupsOf(card: PanelCard): EntryId[][] {
  const ordered = [...card.lines].sort(([, a], [, b]) => a.place.compare(b.place));
  const groups: { readonly place: Exact; readonly entries: EntryId[] }[] = [];
  for (const [entry, { place }] of ordered) {
    const last = groups.at(-1);
    if (last?.place.equals(place)) last.entries.push(entry);
    else groups.push({ place, entries: [entry] });
  }
  return groups.map(({ entries }) => entries);
}

/** The card in another order, on the same places: gaps of a larger field stay where they were. */
function regrouped(card: PanelCard, groups: readonly (readonly EntryId[])[]): PanelCard {
  const slots = groupsOf(card).flatMap((group) =>
    group.map((entry, index) => (card.lines.get(entry)?.place ?? exact(0)).add(index)),
  );
  slots.push(nextPlace(card));
  const lines = new Map<EntryId, CardLine>();
  for (const group of groups) {
    const place = slots[lines.size] ?? nextPlace(card);
    for (const entry of group)
      lines.set(entry, { ...(card.lines.get(entry) ?? blank), place, holders: group.length });
  }
  return { ...card, lines };
}

const blank: CardLine = {
  tier: 'kept-pattern',
  place: exact(0),
  holders: 1,
  score: undefined,
  parts: undefined,
  flags: [],
};

/**
 * The card with another score for one entry, ranked anew. How the judge broke ties among the others stands; where
 * the new score equals another's, the two are tied on the card. `undefined`: the card has no score for the entry.
 */
export function rescored(card: PanelCard, entry: EntryId, score: Exact): PanelCard | undefined {
  if (card.lines.get(entry)?.score === undefined) return undefined;
  const sign = card.better === 'higher' ? -1 : 1;
  const lines = [...card.lines].map(([one, line]) => ({
    one,
    line: one === entry ? { ...line, score } : line,
  }));
  const order = (a: CardLine, b: CardLine) =>
    Number(a.tier === 'placed-below') - Number(b.tier === 'placed-below') ||
    sign * (a.score ?? exact(0)).compare(b.score ?? exact(0));
  // The judge's own order within one score: by the places held until now; the changed entry has none and is level.
  const within = (one: EntryId, line: CardLine) => (one === entry ? undefined : line.place);
  lines.sort((a, b) => order(a.line, b.line) || comparePlaces(within(a.one, a.line), within(b.one, b.line)));
  const isTied = (a: (typeof lines)[number], b: (typeof lines)[number]) =>
    order(a.line, b.line) === 0 && isLevel(within(a.one, a.line), within(b.one, b.line));
  return { ...card, lines: renumbered(lines, isTied) };
}

/** An entry without a place of its own comes first, level with the best of the same score. */
function comparePlaces(a: Exact | undefined, b: Exact | undefined): number {
  if (a !== undefined && b !== undefined) return a.compare(b);
  return Number(a !== undefined) - Number(b !== undefined);
}

const isLevel = (a: Exact | undefined, b: Exact | undefined) =>
  a === undefined || b === undefined || a.equals(b);

function renumbered<T extends { readonly one: EntryId; readonly line: CardLine }>(
  ordered: readonly T[],
  isTied: (a: T, b: T) => boolean,
): Map<EntryId, CardLine> {
  const groups: T[][] = [];
  for (const next of ordered) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group !== undefined && last !== undefined && isTied(last, next)) group.push(next);
    else groups.push([next]);
  }
  const lines = new Map<EntryId, CardLine>();
  for (const group of groups) {
    const place = exact(lines.size + 1);
    for (const { one, line } of group) lines.set(one, { ...line, place, holders: group.length });
  }
  return lines;
}
