/** The engine placing a class, beside a bare sort of as many numbers as the class has entries x judges. */
import { readFileSync } from 'node:fs';
import { largeCard, largeClass } from '../../seed/large-show/large-show.ts';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromRanking, cardFromScores, panelCard } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { MergeRule, PanelCard, PlacingInput } from '../../src/engine/placing/types.ts';
import { checkCard } from '../../src/engine/sheets/check-card.ts';
import type { ScoreSheet } from '../../src/engine/sheets/types.ts';
import { type Compared, compare, printTable } from './compare.ts';

const sizes = [
  { entries: 12, judges: 3, turns: 200, calls: { ours: 20, yardstick: 500 } },
  { entries: 60, judges: 5, turns: 100, calls: { ours: 5, yardstick: 200 } },
  { entries: 300, judges: 9, turns: 25, calls: { ours: 1, yardstick: 20 } },
] as const;

const rules: readonly MergeRule[] = [
  { method: 'rank-sum', cardTies: 'better', unlisted: 'next', discard: 'none' },
  { method: 'total', discard: 'none', noScore: 'zero' },
  { method: 'majority', cardTies: 'better', unlisted: 'next', equalMajorities: 'totals' },
  { method: 'pairwise' },
];

export async function placeClasses(): Promise<void> {
  const rows: Compared[] = [];
  for (const { entries, judges, turns, calls } of sizes) {
    const sort = sortOf(entries * judges);
    const yardstickName = `sort ${entries * judges} numbers`;
    for (const merge of rules) {
      const input = inputFor(merge, { entries, judges });
      const name = `${merge.method}, ${entries} x ${judges}`;
      rows.push(
        await compare({ name, yardstickName, ours: () => placeClass(input), yardstick: sort, turns, calls }),
      );
    }
    const name = `read cards of marks and total, ${entries} x ${judges}`;
    const ours = fromMarks({ entries, judges });
    const fewer = { ours: Math.max(1, Math.floor(calls.ours / 5)), yardstick: calls.yardstick };
    rows.push(await compare({ name, yardstickName, ours, yardstick: sort, turns, calls: fewer }));
  }
  printTable(
    'Placing a class',
    'One call of placeClass (places, totals, every reason; ties by head-to-head, then shared) in one thread, in turns\n' +
      'with Array.sort of the same number of random numbers. "Read cards of marks" checks six maneuvers and form of each go too.',
    rows,
  );
}

type Size = { readonly entries: number; readonly judges: number };

function inputFor(merge: MergeRule, size: Size): PlacingInput {
  const { entries, cards } = largeClass(size);
  const onPanel = cards.map(({ halfPoints, ranking }, index): PanelCard => {
    const head = { judge: `judge ${index + 1}` };
    if (merge.method !== 'total')
      return cardFromRanking(
        head,
        ranking.map((entry) => [entry]),
      );
    const scores = [...halfPoints].map(
      ([entry, halves]) => [entry, { tier: 'kept-pattern' as const, score: exact(halves).div(2) }] as const,
    );
    return cardFromScores(head, new Map(scores));
  });
  return placing(entries, onPanel, merge);
}

const placing = (
  entries: readonly string[],
  cards: readonly PanelCard[],
  merge: MergeRule,
): PlacingInput => ({
  entries,
  cards,
  rule: {
    merge,
    ties: [{ code: 'head-to-head' }, { code: 'share' }],
    afterSplit: 'go-on',
    placesGiven: null,
    rulingHolds: null,
  },
  decisions: [],
  classNumber: 1,
});

/** From what stands in the database to the placing: every mark read and checked again. */
function fromMarks(size: Size): () => unknown {
  const sheet = JSON.parse(
    readFileSync(new URL('../../seed/sheets/horsemanship.json', import.meta.url), 'utf8'),
  ) as ScoreSheet;
  const maneuvers = [1, 2, 3, 4, 5, 6].map((position) => ({
    position,
    name: `${position}`,
    coefficient: '1',
  }));
  const { entries } = largeClass(size);
  const contents = Array.from({ length: size.judges }, (_, judge) =>
    largeCard({ sheet, maneuvers, entries, seed: String(judge) }),
  );
  const inClass = entries.map((id) => ({ id, going: true }));
  return () => {
    const cards = contents.map((content, index) => {
      const check = checkCard({ sheet, maneuvers, entries: inClass, content });
      if (!check.ok) throw new Error('the card made for timing has faults');
      return panelCard({ judge: `judge ${index + 1}` }, check.card);
    });
    return placeClass(placing(entries, cards, { method: 'total', discard: 'none', noScore: 'zero' }));
  };
}

function sortOf(count: number): () => unknown {
  const numbers = Array.from({ length: count }, (_, index) => (index * 7_919) % 10_007);
  return () => [...numbers].sort((a, b) => a - b);
}
