/** Does a score sheet make sense? Asked before it is taken in, so that no card ever meets a sheet that cannot be scored. */
import { onStep, zero } from '../numbers/exact.ts';
import { type SheetFault, SheetFaults } from './sheet-fault.ts';
import {
  type ExtraMark,
  type MarkRange,
  type PatternSheet,
  type Penalty,
  type PercentageSheet,
  type RulingEffect,
  rulingCodes,
  type ScoreSheet,
  type SheetKind,
} from './types.ts';

/** All faults at once; none: the sheet can be marked and scored. */
export function checkSheet(sheet: ScoreSheet): SheetFault[] {
  const faults = new SheetFaults();
  if (sheet.code === '') faults.add('name_empty', '/code');
  if (sheet.title === '') faults.add('name_empty', '/title');
  if (sheet.source === '') faults.add('name_empty', '/source');
  faults.whole(sheet.version, '/version');
  checkRulings(faults, sheet);
  checkParts(faults, sheet);
  return faults.found;
}

function checkParts(faults: SheetFaults, sheet: ScoreSheet): void {
  switch (sheet.kind) {
    case 'pattern':
      checkPattern(faults, sheet);
      break;
    case 'percentage':
      checkPercentage(faults, sheet);
      break;
    case 'one-mark':
      checkRange(faults, sheet.mark, '/mark');
      checkPenalties(faults, sheet.penalties);
      break;
    case 'places':
      faults.whole(sheet.first, '/first');
      break;
    case 'measured':
      checkRange(faults, sheet.measure, '/measure');
      notBelowZero(faults, sheet.measure, '/measure');
      checkPenalties(faults, sheet.penalties);
      break;
  }
}

/** On a places sheet nothing can be taken off, and who stands below whom is the ranking itself. */
const effects: Readonly<Record<SheetKind, readonly RulingEffect['kind'][]>> = {
  pattern: ['takes-points-off', 'placed-below', 'not-placed', 'score-stands'],
  percentage: ['takes-points-off', 'placed-below', 'not-placed', 'score-stands'],
  'one-mark': ['takes-points-off', 'placed-below', 'not-placed', 'score-stands'],
  measured: ['takes-points-off', 'placed-below', 'not-placed', 'score-stands'],
  places: ['not-placed', 'score-stands'],
};

function checkRulings(faults: SheetFaults, sheet: ScoreSheet): void {
  const known: readonly string[] = rulingCodes;
  for (const [code, effect] of Object.entries(sheet.rulings)) {
    const at = `/rulings/${code}`;
    if (!known.includes(code)) faults.add('ruling_unknown', at, code);
    if (!effects[sheet.kind].includes(effect.kind)) faults.add('effect_not_on_this_sheet', at, effect.kind);
    if (effect.kind === 'takes-points-off') faults.positive(effect.points, `${at}/points`);
  }
  const absent = 'notSeen' in sheet && sheet.notSeen === 'absent';
  if (absent && Object.keys(sheet.rulings).length === 0) faults.add('absent_needs_rulings', '/notSeen');
}

function checkRange(faults: SheetFaults, range: MarkRange, at: string): void {
  const low = faults.decimal(range.low, `${at}/low`);
  const high = faults.decimal(range.high, `${at}/high`);
  const step = faults.positive(range.step, `${at}/step`);
  if (low === undefined || high === undefined) return;
  if (low.compare(high) > 0) faults.add('range_upside_down', at, `${range.low} to ${range.high}`);
  else if (step !== undefined && step.compare(zero) > 0 && !onStep(high, step, low)) {
    faults.add('high_off_step', `${at}/high`, range.high);
  }
}

/** Marks out of a maximum, and times, begin at zero at the least. */
function notBelowZero(faults: SheetFaults, range: MarkRange, at: string): void {
  if (range.low.startsWith('-')) faults.add('below_zero', `${at}/low`, range.low);
}

function checkExtras(faults: SheetFaults, extras: readonly ExtraMark[], at: string): void {
  for (const [index, { range, coefficient }] of extras.entries()) {
    checkRange(faults, range, `${at}/${index}/range`);
    faults.positive(coefficient, `${at}/${index}/coefficient`);
  }
  faults.unique(
    extras.map(({ code }) => code),
    (index) => `${at}/${index}/code`,
  );
}

function checkPenalties(faults: SheetFaults, penalties: readonly Penalty[]): void {
  for (const [index, { points }] of penalties.entries())
    faults.positive(points, `/penalties/${index}/points`);
  faults.unique(
    penalties.map(({ code }) => code),
    (index) => `/penalties/${index}/code`,
  );
}

function checkPattern(faults: SheetFaults, sheet: PatternSheet): void {
  const base = faults.decimal(sheet.base, '/base');
  checkRange(faults, sheet.maneuver, '/maneuver');
  checkExtras(faults, sheet.extras, '/extras');
  checkPenalties(faults, sheet.penalties);
  const lowest = sheet.lowest === null ? undefined : faults.decimal(sheet.lowest, '/lowest');
  if (base !== undefined && lowest !== undefined && lowest.compare(base) > 0) {
    faults.add('lowest_above_base', '/lowest', sheet.lowest);
  }
  if (sheet.totalRange === null) return;
  const low = faults.decimal(sheet.totalRange.low, '/totalRange/low');
  const high = faults.decimal(sheet.totalRange.high, '/totalRange/high');
  if (low === undefined || high === undefined) return;
  if (low.compare(high) > 0) faults.add('range_upside_down', '/totalRange');
  if (lowest !== undefined && (lowest.compare(low) < 0 || lowest.compare(high) > 0)) {
    faults.add('lowest_outside_total_range', '/lowest', sheet.lowest);
  }
  if (base !== undefined && base.compare(high) > 0)
    faults.add('base_outside_total_range', '/base', sheet.base);
}

function checkPercentage(faults: SheetFaults, sheet: PercentageSheet): void {
  checkRange(faults, sheet.maneuver, '/maneuver');
  notBelowZero(faults, sheet.maneuver, '/maneuver');
  faults.positive(sheet.maneuver.high, '/maneuver/high');
  checkExtras(faults, sheet.collectives, '/collectives');
  for (const [index, { range }] of sheet.collectives.entries()) {
    notBelowZero(faults, range, `/collectives/${index}/range`);
    faults.positive(range.high, `/collectives/${index}/range/high`);
  }
  checkErrors(faults, sheet.errorsOfCourse);
  if (sheet.roundJudge !== null && !Number.isSafeInteger(sheet.roundJudge.places)) {
    faults.add('not_a_whole_number', '/roundJudge/places', sheet.roundJudge.places);
  } else if (sheet.roundJudge !== null && sheet.roundJudge.places < 0) {
    faults.add('below_zero', '/roundJudge/places', sheet.roundJudge.places);
  }
}

function checkErrors(faults: SheetFaults, { takes, cumulative }: PercentageSheet['errorsOfCourse']): void {
  const read = takes.map((each, index) => faults.positive(each, `/errorsOfCourse/takes/${index}`));
  for (const [index, each] of read.entries()) {
    const before = read[index - 1];
    if (cumulative || each === undefined || before === undefined || each.compare(before) >= 0) continue;
    faults.add('errors_go_down', `/errorsOfCourse/takes/${index}`, takes[index]);
  }
}
