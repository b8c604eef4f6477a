/** What the judges of a class write: riders differ, judges differ a little, and the class has its tales. */
import type { Go, ScoreSheet, SheetManeuver } from '../../../engine/sheets/types.ts';
import { type DemoClass, type TaleOf, talesOf } from '../demo-files.ts';
import { chanceFrom, swing } from './chance.ts';
import { writeGo } from './write-go.ts';

/** One judge's card, by back number. */
export interface WrittenCard {
  readonly goes: ReadonlyMap<number, Go>;
  /** Rail classes: best first. */
  readonly ranking: readonly number[] | undefined;
  /** Everyone, best first, as the judge feels about them: her order where two are tied on her card. */
  readonly liking: readonly number[];
}

export interface ClassToJudge {
  readonly demoClass: DemoClass;
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
  /** Back numbers of those who went. */
  readonly going: readonly number[];
  readonly seed: string;
}

/** The cards in the order of seats, as the judges meant them (`swapped` is for whoever hands them in). */
export function judgeClass(given: ClassToJudge): WrittenCard[] {
  const { demoClass } = given;
  const cards = demoClass.judges.map((_, index) => cardOf(given, index + 1));
  for (const { entries } of talesOf(demoClass, 'level')) makeLevel(cards, entries);
  for (const ruling of talesOf(demoClass, 'ruling')) rule(cards, ruling);
  for (const unseen of talesOf(demoClass, 'not-seen')) hide(cards, unseen);
  return cards;
}

interface Card extends WrittenCard {
  readonly goes: Map<number, Go>;
}

function cardOf({ demoClass, sheet, maneuvers, going, seed }: ClassToJudge, seat: number): Card {
  const person = demoClass.judges[seat - 1] ?? seat;
  const taste = swing(chanceFrom(`${seed}:judge:${person}`)) * 0.12;
  const seen = going.map((backNumber) => {
    const day = chanceFrom(`${seed}:class:${demoClass.number}:${backNumber}`);
    const chance = chanceFrom(`${seed}:class:${demoClass.number}:${backNumber}:seat:${seat}`);
    const skill = swing(chanceFrom(`${seed}:rider:${backNumber}`));
    return { backNumber, chance, quality: 0.7 * skill + 0.35 * swing(day) + taste + 0.4 * swing(chance) };
  });
  const scores = talesOf(demoClass, 'scores');
  const goes = seen.map(({ backNumber, chance, quality }) => {
    const score = scores.find(({ entry }) => entry === backNumber)?.byJudge[seat - 1];
    return [backNumber, writeGo({ sheet, maneuvers, quality, score, chance })] as const;
  });
  const liking = [...seen].sort((a, b) => b.quality - a.quality).map(({ backNumber }) => backNumber);
  if (sheet.kind !== 'places') return { goes: new Map(goes), ranking: undefined, liking };
  const told = talesOf(demoClass, 'ranking').find(({ judge }) => judge === seat)?.order;
  return { goes: new Map(), ranking: told ?? liking.slice(0, sheet.first), liking };
}

function makeLevel(cards: readonly Card[], [first, second]: readonly [number, number]): void {
  cards.forEach(({ goes }, index) => {
    const other = cards[(index + 1) % cards.length]?.goes.get(first);
    if (other !== undefined) goes.set(second, other);
  });
}

function rule(cards: readonly Card[], { entry, judges, ruling, remark }: TaleOf<'ruling'>): void {
  for (const seat of judges) {
    const goes = cards[seat - 1]?.goes;
    goes?.set(entry, { ...goes.get(entry), ruling: { code: ruling, remark } });
  }
}

function hide(cards: readonly Card[], { entry, judge, maneuver, remark }: TaleOf<'not-seen'>): void {
  const goes = cards[judge - 1]?.goes;
  const go = goes?.get(entry);
  if (goes === undefined || go === undefined) return;
  const maneuvers = (go.maneuvers ?? []).map((one) =>
    one.position === maneuver ? { position: maneuver, notSeen: true as const, remark } : one,
  );
  goes.set(entry, { ...go, maneuvers });
}

/** The card as it was handed in, with the goes of two entries under each other's number. */
export function swapGoes(card: WrittenCard, [first, second]: readonly [number, number]): WrittenCard {
  const goes = new Map(card.goes);
  const [one, other] = [goes.get(first), goes.get(second)];
  if (one !== undefined && other !== undefined) goes.set(first, other).set(second, one);
  return { ...card, goes };
}
