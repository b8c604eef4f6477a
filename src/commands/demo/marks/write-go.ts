/** What a judge writes for a go that she finds so good: the marks of a sheet, made to come to a wanted score. */
import type {
  Go,
  MeasuredSheet,
  PatternSheet,
  Penalty,
  PercentageSheet,
  ScoreSheet,
  SheetManeuver,
} from '../../../engine/sheets/types.ts';
import { type Chance, swing, wholeBelow } from './chance.ts';

export interface WantedGo {
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
  /** -1 (poor) to 1 (excellent): what this judge sees in this go. */
  readonly quality: number;
  /** The score that it must come to exactly; left out: what follows from the quality. */
  readonly score?: string | undefined;
  readonly chance: Chance;
}

/** Rail classes are ranked, not scored: there is nothing to write. */
export function writeGo(wanted: WantedGo): Go {
  const { sheet, quality, score, chance } = wanted;
  switch (sheet.kind) {
    case 'pattern':
      return patternGo(sheet, wanted);
    case 'percentage':
      return percentageGo(sheet, wanted);
    case 'one-mark':
      return { mark: score ?? halvesText(Math.round(2 * (74 + 14 * quality))) };
    case 'measured':
      return measuredGo(sheet, { quality, score, chance });
    case 'places':
      return {};
  }
}

/** Everything is counted in half points, so that the parts come to the score exactly. */
const toHalves = (decimal: string): number => Math.round(2 * Number(decimal));
const halvesText = (halves: number): string => String(halves / 2);

const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

function patternGo(sheet: PatternSheet, { maneuvers, quality, score, chance }: WantedGo): Go {
  const base = toHalves(sheet.base);
  const spread = maneuvers.length * toHalves(sheet.maneuver.high) * 0.5;
  const wanted = score === undefined ? base + Math.round(quality * spread) : toHalves(score);
  const extras: Record<string, string> = {};
  let left = wanted - base;
  for (const { code, range } of sheet.extras) {
    const mark = within(
      Math.round(4 + 5 * quality + 2 * swing(chance)),
      toHalves(range.low),
      toHalves(range.high),
    );
    extras[code] = halvesText(mark);
    left -= mark;
  }
  const penalties = penaltiesFor(sheet.penalties, quality, chance).map((penalty) => {
    left += toHalves(penalty.points);
    return { code: penalty.code, position: 1 + wholeBelow(chance, maneuvers.length) };
  });
  const marks = marksThatSumTo(left, { sheet, count: maneuvers.length, chance });
  return {
    maneuvers: maneuvers.map(({ position }, index) => ({ position, mark: halvesText(marks[index] ?? 0) })),
    ...(sheet.extras.length === 0 ? {} : { extras }),
    ...(penalties.length === 0 ? {} : { penalties }),
  };
}

/** Weak goes carry a penalty more often; severe ones are rare. */
function penaltiesFor(known: readonly Penalty[], quality: number, chance: Chance): Penalty[] {
  const weight = chance() < 0.75 ? 'minor' : 'major';
  const likely = known.filter((penalty) => penalty.weight === weight);
  const given = chance() < 0.3 - 0.5 * quality ? likely[wholeBelow(chance, likely.length)] : undefined;
  return given === undefined ? [] : [given];
}

interface Marks {
  readonly sheet: PatternSheet;
  readonly count: number;
  readonly chance: Chance;
}

/** `count` marks in half points that add up to `total`, some better and some worse. */
function marksThatSumTo(total: number, { sheet, count, chance }: Marks): number[] {
  const low = toHalves(sheet.maneuver.low);
  const high = toHalves(sheet.maneuver.high);
  if (total < low * count || total > high * count) {
    throw new RangeError(`${count} maneuvers cannot come to ${halvesText(total)}`);
  }
  const marks = Array.from({ length: count }, (_, index) => Math.floor((total + index) / count));
  for (let turn = 0; turn < 2 * count; turn += 1) {
    const up = wholeBelow(chance, count);
    const down = wholeBelow(chance, count);
    const [more, less] = [marks[up], marks[down]];
    if (up === down || more === undefined || less === undefined || more >= high || less <= low) continue;
    marks[up] = more + 1;
    marks[down] = less - 1;
  }
  return marks;
}

function percentageGo(sheet: PercentageSheet, { maneuvers, quality, chance }: WantedGo): Go {
  const mark = () => halvesText(within(Math.round(2 * (6.5 + 1.6 * quality + 0.8 * swing(chance))), 0, 20));
  const errors = chance() < 0.12 ? { errorsOfCourse: 1 } : {};
  return {
    maneuvers: maneuvers.map(({ position }) => ({ position, mark: mark() })),
    extras: Object.fromEntries(sheet.collectives.map(({ code }) => [code, mark()])),
    ...errors,
  };
}

/** Seconds to the thousandth; a barrel down now and then. */
function measuredGo(
  sheet: MeasuredSheet,
  { quality, score, chance }: Pick<WantedGo, 'quality' | 'score' | 'chance'>,
): Go {
  const thousandths = Math.round(18_400 - 1_500 * quality + 400 * swing(chance));
  const down = chance() < 0.2 ? sheet.penalties[0] : undefined;
  if (score !== undefined) return { measure: score };
  const measure = `${Math.floor(thousandths / 1000)}.${String(thousandths % 1000).padStart(3, '0')}`;
  return {
    measure: measure.replace(/\.?0+$/, ''),
    ...(down === undefined ? {} : { penalties: [{ code: down.code }] }),
  };
}
