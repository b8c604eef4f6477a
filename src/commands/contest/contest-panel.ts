/** A contest's cards and options as the engine takes them. */

import { exact } from '../../engine/numbers/exact.ts';
import { readsOffCard } from '../../engine/placing/merges/reads.ts';
import {
  cardFromGoes,
  cardFromPlaces,
  cardFromRanking,
  cardFromScores,
} from '../../engine/placing/panel-card.ts';
import type { MergeRule, PanelCard, PlacingInput, TieBreak } from '../../engine/placing/types.ts';
import { type Contest, type ContestCard, ContestFault } from './contest-form.ts';
import { contestGoes } from './contest-sheet.ts';

/** Throws a `ContestFault` where the parts do not fit each other. */
export function placingInput(contest: Contest): PlacingInput {
  const { placing } = contest;
  const cards = contest.cards.map((card, index) => panelCard(contest, card, index));
  checkJudges(contest);
  checkMethod(contest);
  const entries = [...new Set(cards.flatMap(({ lines, ruledOut }) => [...lines.keys(), ...ruledOut.keys()]))];
  return {
    entries,
    cards,
    decisions: [],
    classNumber: 1,
    rule: {
      merge: mergeRule(contest),
      ties: placing.ties.map((code, index) => tieBreak(contest, code, index)),
      afterSplit: placing.afterSplit,
      placesGiven: placing.places ?? null,
      rulingHolds: placing.rulingHolds ?? null,
    },
  };
}

function panelCard(contest: Contest, card: ContestCard, index: number): PanelCard {
  const head = { judge: card.judge, seat: seatOf(contest, card, index), weight: exact(card.weight) };
  const { ranking, places, scores, sheets } = card;
  if (ranking !== undefined) {
    const groups = ranking.map((group) => (Array.isArray(group) ? group : [group]));
    const twice = groups.flat().find((entry, at, all) => all.indexOf(entry) !== at);
    if (twice !== undefined)
      throw new ContestFault(`cards[${index}].ranking`, `entry "${twice}" stands in it twice`);
    return cardFromRanking(head, groups);
  }
  if (places !== undefined) {
    return cardFromPlaces(
      head,
      new Map(Object.entries(places).map(([entry, place]) => [entry, exact(place)])),
    );
  }
  if (scores !== undefined) {
    const lines = Object.entries(scores).map(
      ([entry, score]) => [entry, { tier: 'kept-pattern', score: exact(score) }] as const,
    );
    return cardFromScores(head, new Map(lines));
  }
  return cardFromGoes(
    head,
    contestGoes({ sheet: contest.placing.sheet, goes: sheets ?? {}, at: `cards[${index}].sheets` }),
  );
}

/** Of three cards with no seat named, the last is the referee's. */
function seatOf({ placing, cards }: Contest, card: ContestCard, index: number): PanelCard['seat'] {
  if (placing.method !== 'two-judges-and-referee') return 'judge';
  if (cards.some(({ seat }) => seat === 'referee')) return card.seat ?? 'judge';
  return index === 2 ? 'referee' : 'judge';
}

function checkJudges({ cards, placing }: Contest): void {
  const judges = cards.map(({ judge }) => judge);
  const twice = judges.findIndex((judge, index) => judges.indexOf(judge) !== index);
  if (twice >= 0) throw new ContestFault(`cards[${twice}].judge`, `"${judges[twice]}" has a card already`);
  const stranger = placing.tieJudges?.findIndex((judge) => !judges.includes(judge)) ?? -1;
  if (stranger >= 0) {
    throw new ContestFault(
      `placing.tieJudges[${stranger}]`,
      `"${placing.tieJudges?.[stranger]}" has no card in this contest`,
    );
  }
}

const discards = ['total', 'mean', 'rank-sum', 'place-points'];

function checkMethod({ placing, cards }: Contest): void {
  const { method } = placing;
  const unscored = cards.findIndex((card) => card.scores === undefined && card.sheets === undefined);
  if (readsOffCard(method) === 'scores' && unscored >= 0) {
    throw new ContestFault(`cards[${unscored}]`, `${method} adds scores; this card needs scores or sheets`);
  }
  if (placing.discard !== 'none' && !discards.includes(method)) {
    throw new ContestFault(
      'placing.discard',
      `${method} discards no card; it goes with ${discards.join(', ')}`,
    );
  }
  if (method === 'two-judges-and-referee') {
    const referees = cards.filter(({ seat }) => seat === 'referee').length;
    if (cards.length !== 3 || referees > 1)
      throw new ContestFault('cards', `${method} needs two judges and one referee`);
  }
}

function mergeRule({ placing }: Contest): MergeRule {
  const { method, discard, cardTies, unlisted, noScore, equalMajorities, unplaced } = placing;
  switch (method) {
    case 'total':
      return { method, discard, noScore };
    case 'mean':
      return { method, discard, noScore, round: null };
    case 'rank-sum':
      return { method, discard, cardTies, unlisted };
    case 'place-points': {
      const { points } = placing;
      if (points === undefined)
        throw new ContestFault('placing.points', 'place-points needs the points for each place');
      return { method, discard, cardTies, points, unplaced };
    }
    case 'majority':
      return { method, cardTies, unlisted, equalMajorities };
    case 'two-judges-and-referee':
    case 'pairwise':
    case 'separate':
      return { method };
  }
}

function tieBreak({ placing }: Contest, code: Contest['placing']['ties'][number], index: number): TieBreak {
  const need = <T>(value: T | undefined, field: string, what: string): T => {
    if (value === undefined)
      throw new ContestFault(`placing.${field}`, `the tie-break ${code} (ties[${index}]) needs ${what}`);
    return value;
  };
  switch (code) {
    case 'tie-judge':
      return {
        code,
        judges: need(placing.tieJudges, 'tieJudges', 'the judges in their order'),
        alternate: false,
      };
    case 'maneuvers':
      return { code, order: need(placing.maneuverOrder, 'maneuverOrder', 'the maneuvers in their order') };
    case 'draw':
      return { code, seed: need(placing.seed, 'seed', 'the announced seed') };
    case 'penalties':
      return { code, count: 'points' };
    case 'best-single-place':
    case 'most-firsts':
    case 'head-to-head':
    case 'count-back':
    case 'form':
    case 'discarded':
      return { code };
  }
}
