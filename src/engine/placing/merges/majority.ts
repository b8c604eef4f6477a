/**
 * Majority of places: an entry takes the best place that more than half of the judges give it or better.
 *
 * Source: figure skating to 1998 (http://www.sports-reference.com/olympics/winter/1998/FSK/mixed-pairs.html,
 * Washington Post 23 Feb. 1980): best majority place, then the size of the majority, the total of the places
 * that make it up, the total of all places. Dancesport rules 5-8 (http://www.fdo.fi/skating_system.htm): an
 * equal total of the majority goes on to the next lower places for those entries only (`next-places`). The
 * three-judge majority opinion of horse bodies: placed on the best two of three, ties by averaging the three
 * opinions (https://www.walkinghorsereport.com/news/equitation-judged-separate-panel-4202) (`average`).
 *
 *     places 1, 3, 2, 5, 2 of five judges: three have it 2 or better -> majority place 2, size 3, total 5, all 13
 */
import { type Exact, exact, sum } from '../../numbers/exact.ts';
import { recordText } from '../../numbers/number-text.ts';
import { allEqual, type Measure, type Step } from '../refine.ts';
import type { EntryId, ReasonPart } from '../types.ts';
import { type Contribution, reasonParts, totalOf } from './contributions.ts';
import { type Merge, once, type Panel, type RuleOf } from './merge.ts';
import { placesOf } from './ordinals.ts';

/** A majority at one place ("at `column` or better"). */
interface Majority {
  readonly column: number;
  readonly size: number;
  readonly total: Exact;
  readonly parts: readonly ReasonPart[];
}

export function mergeMajority(panel: Panel, rule: RuleOf<'majority'>): Merge {
  const judges = panel.cards.length;
  const needed = Math.floor(judges / 2) + 1;
  const places = placesOf(panel, rule);
  const majority = once((entry) => bestMajority(listed(places(entry)), needed));
  const totalOfAll = once((entry) => totalOf(places(entry)));

  const ofMajority = (step: 'majority-size' | 'majority-total', value: (found: Majority) => Exact): Step => ({
    of: 'merge',
    compare: ([first]) => {
      const column = first === undefined ? undefined : majority(first)?.column;
      if (column === undefined) return undefined;
      return {
        basis: { step, column },
        better: step === 'majority-size' ? 'higher' : 'lower',
        measure: (entry) => measureOf(majority(entry), value),
      };
    },
  });
  const place: Step = {
    of: 'merge',
    compare: () => ({
      basis: { step: 'majority-place', needed, judges },
      better: 'lower',
      measure: (entry) =>
        measureOf(majority(entry), ({ column }) => exact(column), reasonParts(places(entry))),
    }),
  };
  const size = ofMajority('majority-size', (found) => exact(found.size));
  const total = ofMajority('majority-total', (found) => found.total);
  const all: Step = {
    of: 'merge',
    compare: () => ({
      basis: { step: 'total-of-all' },
      better: 'lower',
      measure: (entry) => ({ value: totalOfAll(entry), parts: reasonParts(places(entry)) }),
    }),
  };
  const next = nextPlaces(
    (entry) => listed(places(entry)),
    (entry) => majority(entry)?.column,
  );

  const steps = {
    totals: [place, size, total, all],
    'next-places': [place, size, total, next],
    average: [place, size, all],
  }[rule.equalMajorities];
  return { steps, total: totalOfAll };
}

const listed = (contributions: readonly Contribution[]) =>
  contributions.filter(({ note }) => note !== 'left-off');

function measureOf(
  found: Majority | undefined,
  value: (found: Majority) => Exact,
  parts: readonly ReasonPart[] | undefined = found?.parts,
): Measure {
  return { value: found === undefined ? undefined : value(found), ...(parts === undefined ? {} : { parts }) };
}

/** The least place at which `needed` judges have the entry there or better; `undefined`: never that many. */
function bestMajority(given: readonly Contribution[], needed: number): Majority | undefined {
  const deciding = given.map(({ value }) => value).sort((a, b) => a.compare(b))[needed - 1];
  if (deciding === undefined) return undefined;
  const column = Number(deciding.ceil().n);
  return { column, ...atOrBetter(given, column) };
}

function atOrBetter(given: readonly Contribution[], column: number) {
  const within = given.filter(({ value }) => value.compare(column) <= 0);
  return {
    size: within.length,
    total: sum(within.map(({ value }) => value)),
    parts: within.map(({ judge, value }) => ({ judge, value: recordText(value) })),
  };
}

/** Rule 7b: the next lower places in turn, for the tied only: more judges first, then the lower total of their places. */
function nextPlaces(
  given: (entry: EntryId) => readonly Contribution[],
  columnOf: (entry: EntryId) => number | undefined,
): Step {
  return {
    of: 'merge',
    compare: (group) => {
      const [first] = group;
      const start = first === undefined ? undefined : columnOf(first);
      if (start === undefined) return undefined;
      for (const column of laterColumns(group.map(given), start)) {
        const at = new Map(group.map((entry) => [entry, atOrBetter(given(entry), column)]));
        const values = {
          judges: (entry: EntryId) => exact(at.get(entry)?.size ?? 0),
          total: (entry: EntryId) => at.get(entry)?.total,
        };
        const compares = (['judges', 'total'] as const).find((by) => !allEqual(group.map(values[by])));
        if (compares === undefined) continue;
        return {
          basis: { step: 'next-places', column, compares },
          better: compares === 'judges' ? 'higher' : 'lower',
          measure: (entry) => ({ value: values[compares](entry), parts: at.get(entry)?.parts ?? [] }),
        };
      }
      return undefined;
    },
  };
}

/** Only places that some judge gave one of them can change anything. */
function laterColumns(cards: readonly (readonly Contribution[])[], start: number): number[] {
  const columns = new Set(cards.flat().map(({ value }) => Number(value.ceil().n)));
  return [...columns].filter((column) => column > start).sort((a, b) => a - b);
}
