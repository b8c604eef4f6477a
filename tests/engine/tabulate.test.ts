/** The contest command: what it takes, what it prints, and what it says to a contest that is not of the form. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { ContestFault, readContest } from '../../src/commands/contest/contest-form.ts';
import { placingInput } from '../../src/commands/contest/contest-panel.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';

const checkout = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'contests-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Printed {
  readonly placings: readonly {
    entry: string;
    place: number;
    tied: boolean;
    total: string | null;
    because: string[];
    judge?: string;
  }[];
  readonly unplaced: readonly { entry: string; why: string }[];
}

function tabulate(contest: unknown): {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
} {
  const file = join(folder, 'contest.json');
  writeFileSync(file, typeof contest === 'string' ? contest : JSON.stringify(contest));
  return run(file);
}

function run(...args: readonly string[]) {
  return spawnSync(process.execPath, ['--import', 'tsx', 'src/commands/tabulate.ts', ...args], {
    cwd: checkout,
    encoding: 'utf8',
  });
}

const printed = (contest: unknown): Printed => JSON.parse(tabulate(contest).stdout);
const ranking = (...cards: unknown[][]) =>
  cards.map((one, index) => ({ judge: `judge ${index + 1}`, ranking: one }));
const scores = (...cards: Record<string, unknown>[]) =>
  cards.map((one, index) => ({ judge: `judge ${index + 1}`, scores: one }));
const sheets = (...cards: Record<string, unknown>[]) =>
  cards.map((one, index) => ({ judge: `judge ${index + 1}`, sheets: one }));

/** The same without starting the program: places as text. */
function places(contest: unknown): Record<string, number> {
  const { placed } = placeClass(placingInput(readContest(JSON.stringify(contest))));
  return Object.fromEntries(placed.map(({ entry, place }) => [entry, place]));
}

describe('what is printed', () => {
  test('exactly the stated form, in order of place, with nothing on the error stream', () => {
    const { status, stdout, stderr } = tabulate({
      placing: { method: 'majority', ties: [] },
      cards: ranking(['19', ['13', '14'], '15']),
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({
      placings: [
        {
          entry: '19',
          place: 1,
          tied: false,
          total: '1',
          because: ['First: the judge had 19 first; 13 had none.'],
        },
        {
          entry: '13',
          place: 2,
          tied: true,
          total: '2',
          because: [expect.stringMatching(/^Second: /), expect.stringMatching(/^Tied with 14/)],
        },
        {
          entry: '14',
          place: 2,
          tied: true,
          total: '2',
          because: [expect.stringMatching(/^Second: /), expect.stringMatching(/^Tied with 13/)],
        },
        { entry: '15', place: 4, tied: false, total: '4', because: [expect.stringMatching(/^Fourth: /)] },
      ],
      unplaced: [],
    });
  });

  test('as `npm run --silent tabulate -- FILE` too', () => {
    const file = join(folder, 'by npm.json');
    writeFileSync(
      file,
      JSON.stringify({ placing: { method: 'rank-sum' }, cards: ranking(['A', 'B'], ['A', 'B']) }),
    );
    const { status, stdout } = spawnSync('npm', ['run', '--silent', 'tabulate', '--', file], {
      cwd: checkout,
      encoding: 'utf8',
    });
    expect(status).toBe(0);
    expect(
      (JSON.parse(stdout) as Printed).placings.map(({ entry, place, total }) => [entry, place, total]),
    ).toEqual([
      ['A', 1, '2'],
      ['B', 2, '4'],
    ]);
  });

  test('sheets: form, penalties, rulings, and a maneuver that was not seen', () => {
    const sheet = {
      base: '70',
      step: '0.5',
      limits: ['-3', '3'],
      rulings: { 'off-pattern': 'placed-below', disqualified: 'not-placed' },
    };
    const result = printed({
      placing: { method: 'total', ties: ['maneuvers', 'form', 'penalties'], maneuverOrder: [1], sheet },
      cards: sheets({
        '118': { maneuvers: ['0.5', '-1', 'ns'], penalties: [3, 5], form: '2' },
        '214': { maneuvers: ['1', '1', '1'], penalties: [], form: '5', ruling: 'off-pattern' },
        '300': { maneuvers: ['3', '3', '3'], ruling: 'disqualified', form: '5' },
      }),
    });
    expect(result.placings.map(({ entry, place, total }) => [entry, place, total])).toEqual([
      ['118', 1, '63.5'],
      ['214', 2, '78'],
    ]);
    expect(result.placings[0]?.because.join(' ')).toContain('could not see maneuver 3');
    expect(result.unplaced).toEqual([
      { entry: '300', why: '300 may not be placed: ruled disqualified by judge 1.' },
    ]);
  });

  test('each judge separately: every placing names its judge', () => {
    const result = printed({ placing: { method: 'separate' }, cards: ranking(['A', 'B'], ['B', 'A']) });
    expect(result.placings.map(({ entry, place, judge }) => [judge, entry, place])).toEqual([
      ['judge 1', 'A', 1],
      ['judge 2', 'B', 1],
      ['judge 1', 'B', 2],
      ['judge 2', 'A', 2],
    ]);
  });
});

describe('contests of every form', () => {
  test.each<[string, unknown, Record<string, number>]>([
    [
      'scores as strings and as numbers',
      { placing: { method: 'total' }, cards: scores({ A: '71.5', B: 71 }) },
      { A: 1, B: 2 },
    ],
    [
      'a tenth three times is 0.3',
      {
        placing: { method: 'total' },
        cards: scores({ A: 0.1, B: '0.3' }, { A: 0.1, B: 0 }, { A: 0.1, B: 0 }),
      },
      { A: 1, B: 1 },
    ],
    [
      'a mean',
      {
        placing: { method: 'mean', discard: 'high-and-low' },
        cards: scores({ A: '9', B: '5' }, { A: '4', B: '5' }, { A: '4', B: '5' }, { A: '4', B: '5' }),
      },
      { B: 1, A: 2 },
    ],
    [
      'places with gaps',
      { placing: { method: 'rank-sum' }, cards: [{ judge: 'x', places: { A: 4, B: 9 } }] },
      { A: 1, B: 2 },
    ],
    [
      'left off counts a number',
      { placing: { method: 'rank-sum', unlisted: 10 }, cards: ranking(['A', 'B'], ['B', 'C']) },
      { B: 1, A: 2, C: 3 },
    ],
    [
      'means of tied places',
      {
        placing: { method: 'rank-sum', cardTies: 'mean' },
        cards: ranking([['A', 'B'], 'C'], ['C', 'A', 'B']),
      },
      { A: 1, C: 2, B: 3 },
    ],
    [
      'points as numbers and strings',
      {
        placing: { method: 'place-points', points: [10, '9.5'], unplaced: 0 },
        cards: ranking(['A', 'B', 'C'], ['B', 'A', 'C']),
      },
      { A: 1, B: 1, C: 3 },
    ],
    [
      'tie judges in their order',
      {
        placing: { method: 'total', ties: ['tie-judge'], tieJudges: ['judge 2'] },
        cards: scores({ A: 70, B: 71 }, { A: 71, B: 70 }),
      },
      { A: 1, B: 2 },
    ],
    ['so many places', { placing: { method: 'rank-sum', places: 1 }, cards: ranking(['A', 'B']) }, { A: 1 }],
    [
      'entries as numbers',
      { placing: { method: 'pairwise' }, cards: ranking([7, [8, 9]]) },
      { '7': 1, '8': 2, '9': 2 },
    ],
    [
      'referee by seat',
      {
        placing: { method: 'two-judges-and-referee' },
        cards: [
          { judge: 'r', seat: 'referee', ranking: ['B', 'A'] },
          { judge: '1', ranking: ['A', 'B'] },
          { judge: '2', ranking: ['B', 'A'] },
        ],
      },
      { B: 1, A: 2 },
    ],
    [
      'an empty ranking beside a full one',
      { placing: { method: 'rank-sum' }, cards: ranking([], ['A', 'B']) },
      { A: 1, B: 2 },
    ],
  ])('%s', (_, contest, expected) => expect(places(contest)).toEqual(expected));
});

test('a card may tell more of itself than the form asks for, and that changes nothing', () => {
  const [first, ...others] = scores({ A: 70, B: 71 }, { A: 72, B: 70 });
  const plain = { placing: { method: 'total' }, cards: [first, ...others] };
  const told = { ...plain, cards: [{ ...first, seat: 'C', country: 'here' }, ...others] };
  expect(printed(told)).toEqual(printed(plain));
});

const sheetCard = (go: unknown) => ({ placing: { method: 'total' }, cards: sheets({ A: go }) });
const good = { placing: { method: 'total' }, cards: scores({ A: '70' }) };

/** Each: what is wrong, the contest, the field that must be named. */
const faults: [string, unknown, string][] = [
  ['an unknown method', { placing: { method: 'guess' }, cards: good.cards }, 'placing.method'],
  ['no method', { placing: {}, cards: good.cards }, 'placing.method'],
  ['no placing', { cards: good.cards }, 'placing'],
  ['no cards', { placing: good.placing }, 'cards'],
  ['an empty list of cards', { placing: good.placing, cards: [] }, 'cards'],
  ['a list instead of a contest', [], 'contest'],
  ['a number instead of a contest', 7, 'contest'],
  ['an unknown option', { placing: { method: 'total', fairness: true }, cards: good.cards }, 'placing'],
  [
    'a misspelled statement of a card',
    { placing: good.placing, cards: [{ judge: 'x', score: { A: 1 } }] },
    'cards[0]',
  ],
  ['a card that states nothing', { placing: good.placing, cards: [{ judge: 'x' }] }, 'cards[0]'],
  [
    'a card that states two things',
    { placing: good.placing, cards: [{ judge: 'x', scores: { A: 1 }, ranking: ['A'] }] },
    'cards[0]',
  ],
  [
    'a judge without a name',
    { placing: good.placing, cards: [{ judge: ' ', scores: { A: 1 } }] },
    'cards[0].judge',
  ],
  [
    'two cards of one judge',
    { placing: good.placing, cards: [...good.cards, ...good.cards] },
    'cards[1].judge',
  ],
  [
    'an entry twice on one card',
    { placing: { method: 'majority' }, cards: ranking(['A', ['B', 'A']]) },
    'cards[0].ranking',
  ],
  [
    'an entry twice, once as a number',
    { placing: { method: 'majority' }, cards: ranking(['7', 7]) },
    'cards[0].ranking',
  ],
  [
    'an entry with no name',
    { placing: { method: 'majority' }, cards: ranking(['A', '']) },
    'cards[0].ranking[1]',
  ],
  ['an empty tie', { placing: { method: 'majority' }, cards: ranking(['A', []]) }, 'cards[0].ranking[1]'],
  ['the score "½"', { placing: good.placing, cards: scores({ A: '½' }) }, 'cards[0].scores.A'],
  ['the score "NaN"', { placing: good.placing, cards: scores({ A: 'NaN' }) }, 'cards[0].scores.A'],
  [
    'the score NaN, which JSON has not',
    '{"placing":{"method":"total"},"cards":[{"judge":"x","scores":{"A":NaN}}]}',
    'contest',
  ],
  [
    'the score 1e309',
    '{"placing":{"method":"total"},"cards":[{"judge":"x","scores":{"A":1e309}}]}',
    'cards[0].scores.A',
  ],
  ['the score "1e3"', { placing: good.placing, cards: scores({ A: '1e3' }) }, 'cards[0].scores.A'],
  [
    'the score -0',
    '{"placing":{"method":"total"},"cards":[{"judge":"x","scores":{"A":-0}}]}',
    'cards[0].scores.A',
  ],
  ['the score "-0"', { placing: good.placing, cards: scores({ A: '-0' }) }, 'cards[0].scores.A'],
  ['an empty score', { placing: good.placing, cards: scores({ A: '' }) }, 'cards[0].scores.A'],
  ['a score that is null', { placing: good.placing, cards: scores({ A: null }) }, 'cards[0].scores.A'],
  [
    'a place 0',
    { placing: { method: 'rank-sum' }, cards: [{ judge: 'x', places: { A: 0 } }] },
    'cards[0].places.A',
  ],
  ['a total of rankings', { placing: { method: 'total' }, cards: ranking(['A']) }, 'cards[0]'],
  [
    'a mean of places',
    { placing: { method: 'mean' }, cards: [{ judge: 'x', places: { A: 1 } }] },
    'cards[0]',
  ],
  [
    'a tie judge who is not there',
    { placing: { method: 'total', ties: ['tie-judge'], tieJudges: ['nobody'] }, cards: good.cards },
    'placing.tieJudges[0]',
  ],
  [
    'no tie judge named',
    { placing: { method: 'total', ties: ['tie-judge'] }, cards: good.cards },
    'placing.tieJudges',
  ],
  [
    'no maneuvers named',
    { placing: { method: 'total', ties: ['maneuvers'] }, cards: good.cards },
    'placing.maneuverOrder',
  ],
  [
    'a draw without a seed',
    { placing: { method: 'total', ties: ['draw'] }, cards: good.cards },
    'placing.seed',
  ],
  [
    'an unknown tie-break',
    { placing: { method: 'total', ties: ['beauty'] }, cards: good.cards },
    'placing.ties[0]',
  ],
  [
    'place-points without points',
    { placing: { method: 'place-points' }, cards: ranking(['A']) },
    'placing.points',
  ],
  [
    'a discard that the method has not',
    { placing: { method: 'majority', discard: 'high-and-low' }, cards: ranking(['A']) },
    'placing.discard',
  ],
  [
    'an unknown discard',
    { placing: { method: 'total', discard: 'worst' }, cards: good.cards },
    'placing.discard',
  ],
  [
    'an unlisted that is no number',
    { placing: { method: 'rank-sum', unlisted: 'last' }, cards: ranking(['A']) },
    'placing.unlisted',
  ],
  [
    'half a place given',
    { placing: { method: 'rank-sum', places: 1.5 }, cards: ranking(['A']) },
    'placing.places',
  ],
  [
    'two judges and no referee',
    { placing: { method: 'two-judges-and-referee' }, cards: ranking(['A'], ['A']) },
    'cards',
  ],
  ['a mark off the step', sheetCard({ maneuvers: ['0.25'] }), 'cards[0].sheets.A'],
  ['a mark beyond the limit', sheetCard({ maneuvers: ['3.5'] }), 'cards[0].sheets.A'],
  ['a mark that is no number', sheetCard({ maneuvers: ['good'] }), 'cards[0].sheets.A.maneuvers[0]'],
  [
    'a penalty below zero',
    sheetCard({ maneuvers: ['0'], penalties: [-3] }),
    'cards[0].sheets.A.penalties[0]',
  ],
  ['an unknown ruling', sheetCard({ maneuvers: ['0'], ruling: 'lost' }), 'cards[0].sheets.A.ruling'],
  ['an unknown part of a sheet', sheetCard({ maneuvers: ['0'], smile: 3 }), 'cards[0].sheets.A'],
];

describe('a contest that is not of the form is refused with the field and the fault', () => {
  test.each(faults)('%s', (_, contest, field) => {
    const text = typeof contest === 'string' ? contest : JSON.stringify(contest);
    const refused = () => placingInput(readContest(text));
    expect(refused).toThrow(ContestFault);
    try {
      refused();
    } catch (error) {
      expect(error instanceof ContestFault && error.field.startsWith(field) ? field : error).toBe(field);
      expect(String((error as Error).message)).toMatch(/^\S+: \S.{8,}$/);
    }
  });

  test.each([
    ['an unknown method', { placing: { method: 'guess' }, cards: good.cards }],
    ['the score "½"', { placing: good.placing, cards: scores({ A: '½' }) }],
    ['no JSON', 'scores: 70'],
    ['a mark off the step', sheetCard({ maneuvers: ['0.25'] })],
  ])('and the program exits with 2 and one line: %s', (_, contest) => {
    const { status, stdout, stderr } = tabulate(contest);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^\S+: .+\n$/);
  });

  test('no file, and a file that is not there', () => {
    expect(run()).toMatchObject({ status: 2, stdout: '', stderr: expect.stringMatching(/^.+\n$/) });
    expect(run(join(folder, 'nowhere.json'))).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringMatching(/^.*nowhere\.json.*\n$/),
    });
  });
});
