/** Cards as a merge sees them: made of a ranking, of places, or of scores; and what places on them count as. */
import { type Exact, exact, sum } from '../numbers/exact.ts';
import type { CheckedCard } from '../sheets/card-types.ts';
import type { JudgeScore, RulingCode } from '../sheets/types.ts';
import type { CardLine, CardTies, EntryId, JudgeId, LineParts, PanelCard, Unlisted } from './types.ts';

interface CardHead {
  readonly judge: JudgeId;
  readonly seat?: 'judge' | 'referee';
  readonly weight?: Exact;
  readonly ruledOut?: ReadonlyMap<EntryId, RulingCode | undefined>;
}

const head = ({ judge, seat = 'judge', weight = exact(1), ruledOut = new Map() }: CardHead) => ({
  judge,
  seat,
  weight,
  ruledOut,
});

/** A score with its status, as one line of a card of scores. */
export interface ScoredLine {
  readonly tier: CardLine['tier'];
  readonly score: Exact;
  readonly parts?: LineParts;
  readonly flags?: CardLine['flags'];
}

/** A line that says where the entry stands and nothing more. */
const placedLine = (place: Exact, holders: number): CardLine => ({
  tier: 'kept-pattern',
  place,
  holders,
  score: undefined,
  parts: undefined,
  flags: [],
});

/** A ranking, best first; an inner list is tied: (a), (b, c), (d) are places 1, 2, 2, 4. */
export function cardFromRanking(from: CardHead, ranking: readonly (readonly EntryId[])[]): PanelCard {
  const lines = new Map<EntryId, CardLine>();
  for (const group of ranking) {
    const place = exact(lines.size + 1);
    for (const entry of group) {
      lines.set(entry, placedLine(place, group.length));
    }
  }
  return { ...head(from), better: 'higher', lines };
}

/** Places as they were read off; gaps are allowed, since they may come out of a larger field. */
export function cardFromPlaces(from: CardHead, places: ReadonlyMap<EntryId, Exact>): PanelCard {
  const holders = new Map<string, number>();
  for (const place of places.values())
    holders.set(place.toFraction(), (holders.get(place.toFraction()) ?? 0) + 1);
  const lines = new Map<EntryId, CardLine>();
  for (const [entry, place] of places) {
    const tied = holders.get(place.toFraction()) ?? 1;
    lines.set(entry, placedLine(place, tied));
  }
  return { ...head(from), better: 'higher', lines };
}

/**
 * Scores, ranked by status first and score second; `ownOrder` is how the judge broke the ties on her own
 * card (each inner list best first, entries that are really tied), and changes places, never scores.
 */
export function cardFromScores(
  from: CardHead & {
    readonly better?: 'higher' | 'lower';
    readonly ownOrder?: readonly (readonly EntryId[])[];
  },
  scores: ReadonlyMap<EntryId, ScoredLine>,
): PanelCard {
  const better = from.better ?? 'higher';
  const ownRank = new Map(
    (from.ownOrder ?? []).flatMap((group) => group.map((entry, index) => [entry, index] as const)),
  );
  const order = ([a, x]: [EntryId, ScoredLine], [b, y]: [EntryId, ScoredLine]) =>
    Number(x.tier === 'placed-below') - Number(y.tier === 'placed-below') ||
    (better === 'higher' ? y.score.compare(x.score) : x.score.compare(y.score)) ||
    (ownRank.get(a) ?? 0) - (ownRank.get(b) ?? 0);
  const groups: [EntryId, ScoredLine][][] = [];
  for (const line of [...scores].sort(order)) {
    const last = groups.at(-1)?.[0];
    if (last !== undefined && order(last, line) === 0) groups.at(-1)?.push(line);
    else groups.push([line]);
  }
  const lines = new Map<EntryId, CardLine>();
  for (const group of groups) {
    const place = exact(lines.size + 1);
    for (const [entry, { tier, score, parts, flags = [] }] of group) {
      lines.set(entry, { tier, place, holders: group.length, score, parts, flags });
    }
  }
  return { ...head(from), better, lines };
}

/** A signed card's scores, go by go, as a card of the panel. */
export function cardFromGoes(
  from: CardHead & { readonly ownOrder?: readonly (readonly EntryId[])[] },
  goes: ReadonlyMap<EntryId, JudgeScore>,
): PanelCard {
  const scores = new Map<EntryId, ScoredLine>();
  const ruledOut = new Map<EntryId, RulingCode | undefined>();
  let better: PanelCard['better'] = 'higher';
  for (const [entry, go] of goes) {
    better = go.better;
    if (go.tier === 'not-placed' || go.score === undefined) ruledOut.set(entry, go.parts.ruling?.code);
    else scores.set(entry, { tier: go.tier, score: go.score, parts: lineParts(go), flags: go.flags });
  }
  return cardFromScores({ ...from, ruledOut, better }, scores);
}

/** A checked card of any sheet as a card of the panel: its scores, or its ranking. */
export function panelCard(from: CardHead, card: CheckedCard): PanelCard {
  const { kind, goes, order, ownOrder } = card;
  if (kind === 'scores') return cardFromGoes({ ...from, ownOrder }, goes);
  const out = [...goes].filter(([, { tier }]) => tier === 'not-placed');
  const ruledOut = new Map(out.map(([entry, { parts }]) => [entry, parts.ruling?.code]));
  const ranking = order.filter(({ tier }) => tier !== 'not-placed').map(({ entries }) => entries);
  const ranked = cardFromRanking({ ...from, ruledOut }, inOwnOrder(ranking, ownOrder));
  const lines = [...ranked.lines].map(
    ([entry, line]) => [entry, { ...line, flags: goes.get(entry)?.flags ?? [] }] as const,
  );
  return { ...ranked, lines: new Map(lines) };
}

/** A tie that the judge broke becomes so many groups of one; `ownOrder` names whole ties only. */
function inOwnOrder(
  ranking: readonly (readonly EntryId[])[],
  ownOrder: readonly (readonly EntryId[])[],
): readonly (readonly EntryId[])[] {
  const broken = new Map(ownOrder.flatMap((tie) => tie.map((entry) => [entry, tie] as const)));
  return ranking.flatMap((group) => broken.get(group[0] ?? '')?.map((entry) => [entry]) ?? [group]);
}

function lineParts({ parts }: JudgeScore): LineParts {
  const form = parts.extras.map((extra) => extra.counts);
  return {
    maneuvers: new Map(
      parts.maneuvers.flatMap(({ position, mark }) => (mark === undefined ? [] : [[position, mark]])),
    ),
    form: form.length === 0 ? undefined : sum(form),
    penaltyPoints: sum(parts.penalties.map(({ points }) => points)),
    penaltyCount: parts.penalties.length,
  };
}

/** Place that an entry counts with on a card; `undefined`: left off. */
export function countedPlace(card: PanelCard, entry: EntryId, cardTies: CardTies): Exact | undefined {
  const line = card.lines.get(entry);
  if (line === undefined || cardTies === 'better') return line?.place;
  return line.place.add(exact(line.holders - 1).div(2));
}

/** One more than the places on the card. */
export function nextPlace(card: PanelCard): Exact {
  let next = exact(card.lines.size);
  for (const { place } of card.lines.values()) if (place.compare(next) > 0) next = place.floor();
  return next.add(1);
}

/** What an entry left off this card counts as, of `field` entries in all. */
export function unlistedPlace(card: PanelCard, unlisted: Unlisted, field: number): Exact {
  const next = nextPlace(card);
  if (unlisted === 'next') return next;
  if (unlisted !== 'mean') return exact(unlisted);
  const last = exact(field);
  return last.compare(next) > 0 ? next.add(last).div(2) : next;
}

/** Below zero: `a` stands higher on the card than `b`; zero: level, or both left off. */
export function compareOnCard(card: PanelCard, a: EntryId, b: EntryId): number {
  const first = card.lines.get(a)?.place;
  const second = card.lines.get(b)?.place;
  if (first !== undefined && second !== undefined) return first.compare(second);
  return Number(first === undefined) - Number(second === undefined);
}
