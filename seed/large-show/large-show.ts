/**
 * A large show for timing, made from a fixed seed: every run times the same cards. Nobody in it is real, and
 * nothing in it is meant to look like a show; it is only as large as one may get.
 */

import type { DemoClass, DemoShow } from '../../src/commands/demo/demo-files.ts';
import { type Chance, chanceFrom, swing } from '../../src/commands/demo/marks/chance.ts';
import { writeGo } from '../../src/commands/demo/marks/write-go.ts';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import type { ScoreSheet, SheetManeuver } from '../../src/engine/sheets/types.ts';

export interface LargeClass {
  /** Back numbers, as texts. */
  readonly entries: readonly string[];
  /** One for each judge: an entry's score in half points (143 is 71.5), and everyone best first. */
  readonly cards: readonly LargeCard[];
}

export interface LargeCard {
  readonly halfPoints: ReadonlyMap<string, number>;
  readonly ranking: readonly string[];
}

export interface ClassSize {
  readonly entries: number;
  readonly judges: number;
}

/** Judges who agree about as far as judges do; scores tie often, the rankings never. */
export function largeClass({ entries, judges }: ClassSize): LargeClass {
  const chance = chanceFrom(`large-show:${entries}x${judges}`);
  const field = Array.from({ length: entries }, (_, index) => ({
    entry: String(101 + index),
    skill: swing(chance),
  }));
  const cards = Array.from({ length: judges }, () => cardOf(field, chance));
  return { entries: field.map(({ entry }) => entry), cards };
}

function cardOf(field: readonly { entry: string; skill: number }[], chance: Chance): LargeCard {
  const seen = field.map(({ entry, skill }) => ({ entry, quality: 0.8 * skill + 0.4 * swing(chance) }));
  const ranking = [...seen].sort((a, b) => b.quality - a.quality).map(({ entry }) => entry);
  const halfPoints = new Map(
    seen.map(({ entry, quality }) => [entry, 140 + Math.round(14 * quality)] as const),
  );
  return { halfPoints, ranking };
}

export interface WholeCard {
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
  /** Class entry ids. */
  readonly entries: readonly string[];
  readonly seed: string;
}

/** One judge's whole card on a sheet of marks, as her phone sends it. */
export function largeCard({ sheet, maneuvers, entries, seed }: WholeCard): CardContent {
  const chance = chanceFrom(`large-show:${seed}`);
  const goes = entries.map(
    (entry) => [entry, writeGo({ sheet, maneuvers, quality: 0.8 * swing(chance), chance })] as const,
  );
  return { goes: Object.fromEntries(goes) };
}

export interface LargeShow {
  readonly entries: number;
  /** Each class has the first so many of the entries, before so many judges. */
  readonly classes: readonly ClassSize[];
}

/** In the form of the demo, so that the same code sets it up through the API. */
export function largeShow({ entries, classes }: LargeShow): DemoShow {
  const backNumbers = Array.from({ length: entries }, (_, index) => 101 + index);
  const mostJudges = Math.max(...classes.map(({ judges }) => judges));
  return {
    show: {
      name: 'Large show for timing',
      place: 'Nowhere',
      timeZone: 'America/Chicago',
      firstDay: '2026-08-15',
      lastDay: '2026-08-16',
    },
    rings: ['Ring'],
    judges: Array.from({ length: mostJudges }, (_, index) => `Judge ${index + 1}`),
    patterns: [
      {
        name: 'Six maneuvers',
        maneuvers: [1, 2, 3, 4, 5, 6].map((position) => ({ name: `Maneuver ${position}`, gait: 'walk' })),
      },
    ],
    drawings: {},
    classes: classes.map((size, index) => classOf(index + 1, size, backNumbers)),
    marksSeed: 'large-show',
    // Whoever sets it up has an account already.
    office: [],
    exhibitors: backNumbers.map((number) => ({
      key: `rider-${number}`,
      name: `Rider ${number}`,
      group: 'all',
    })),
    entries: backNumbers.map((backNumber) => ({
      backNumber,
      exhibitor: `rider-${backNumber}`,
      horse: `Horse ${backNumber}`,
      owner: 'All of them',
    })),
  };
}

const classOf = (number: number, { entries, judges }: ClassSize, field: readonly number[]): DemoClass => ({
  number,
  name: `Class of ${entries} before ${judges}`,
  discipline: 'horsemanship',
  division: 'open',
  youth: false,
  sheet: 'horsemanship',
  pattern: 'Six maneuvers',
  placingRule: {
    merge: { method: 'total', discard: 'none', noScore: 'zero' },
    ties: [{ code: 'share' }],
    afterSplit: 'go-on',
    placesGiven: null,
    rulingHolds: null,
  },
  ring: 'Ring',
  at: '2026-08-15T08:00',
  judges: Array.from({ length: judges }, (_, index) => index + 1),
  field: field.slice(0, entries),
  state: 'cards-in',
  tales: [],
});
