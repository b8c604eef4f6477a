/** Does a rule fit the sheet and the panel of a class? Asked when a class is set up and before it is placed. */
import { parseDecimal } from '../numbers/exact.ts';
import type { ScoreSheet } from '../sheets/types.ts';
import { addsScores } from './merges/reads.ts';
import type { JudgeId, MergeRule, PlacingRule, TieBreak } from './types.ts';

/** What does not fit, where (JSON pointer into the rule), and what would. */
export interface RuleFault {
  readonly code:
    | 'needs_scores'
    | 'needs_maneuvers'
    | 'needs_form'
    | 'needs_penalties'
    | 'needs_discard'
    | 'needs_seed'
    | 'needs_judges'
    | 'needs_referee'
    | 'judge_not_on_panel'
    | 'missing_time_is_no_zero'
    | 'not_a_decimal'
    | 'after_share'
    | 'maneuver_unknown';
  readonly at: string;
}

export interface RuleSetting {
  readonly sheet: ScoreSheet;
  /** How many maneuvers the pattern has. */
  readonly maneuvers: number;
  /** Seats in their order; `undefined` while the panel is not named yet. */
  readonly seats: readonly { readonly judge: JudgeId; readonly seat: 'judge' | 'referee' }[] | undefined;
}

/** All faults at once; none: the rule can place the class. */
export function checkRule(rule: PlacingRule, setting: RuleSetting): RuleFault[] {
  return [
    ...mergeFaults(rule.merge, setting),
    ...rule.ties.flatMap((tie, index) =>
      tieFaults(tie, rule.merge, setting).map((code): RuleFault => ({ code, at: `/ties/${index}` })),
    ),
    ...afterShare(rule.ties),
  ];
}

function mergeFaults(merge: MergeRule, { sheet, seats }: RuleSetting): RuleFault[] {
  const faults: RuleFault[] = [];
  const fault = (code: RuleFault['code'], at: string) => faults.push({ code, at: `/merge/${at}` });
  if (addsScores(merge)) {
    if (sheet.kind === 'places') fault('needs_scores', 'method');
    if (sheet.kind === 'measured' && merge.noScore === 'zero') fault('missing_time_is_no_zero', 'noScore');
  }
  if (merge.method === 'place-points') {
    if (merge.points.length === 0) fault('not_a_decimal', 'points');
    merge.points.forEach((points, index) => {
      if (parseDecimal(points) === undefined) fault('not_a_decimal', `points/${index}`);
    });
    if (parseDecimal(merge.unplaced) === undefined) fault('not_a_decimal', 'unplaced');
  }
  if (
    'unlisted' in merge &&
    !['next', 'mean'].includes(merge.unlisted) &&
    parseDecimal(merge.unlisted) === undefined
  ) {
    fault('not_a_decimal', 'unlisted');
  }
  if (merge.method === 'two-judges-and-referee' && seats !== undefined) {
    const referees = seats.filter(({ seat }) => seat === 'referee').length;
    if (referees !== 1 || seats.length !== 3) fault('needs_referee', 'method');
  }
  return faults;
}

function tieFaults(tie: TieBreak, merge: MergeRule, setting: RuleSetting): RuleFault['code'][] {
  const { sheet, maneuvers, seats } = setting;
  const marksManeuvers = sheet.kind === 'pattern' || sheet.kind === 'percentage';
  switch (tie.code) {
    case 'maneuvers':
      if (!marksManeuvers || tie.order.length === 0) return ['needs_maneuvers'];
      return tie.order.some((position) => position < 1 || position > maneuvers) ? ['maneuver_unknown'] : [];
    case 'count-back':
      return marksManeuvers ? [] : ['needs_maneuvers'];
    case 'form':
      return hasExtras(sheet) ? [] : ['needs_form'];
    case 'penalties':
      return 'penalties' in sheet && sheet.penalties.length > 0 ? [] : ['needs_penalties'];
    case 'discarded':
      return 'discard' in merge && merge.discard !== 'none' ? [] : ['needs_discard'];
    case 'draw':
      return tie.seed === '' ? ['needs_seed'] : [];
    case 'tie-judge':
      if (seats === undefined) return [];
      if (tie.judges.length === 0) return ['needs_judges'];
      return tie.judges.every((judge) => seats.some((seat) => seat.judge === judge))
        ? []
        : ['judge_not_on_panel'];
    case 'head-to-head':
    case 'best-single-place':
    case 'most-firsts':
    case 'run-off':
    case 'share':
      return [];
  }
}

function hasExtras(sheet: ScoreSheet): boolean {
  if (sheet.kind === 'pattern') return sheet.extras.length > 0;
  return sheet.kind === 'percentage' && sheet.collectives.length > 0;
}

/** A shared place is final: a step after it could never be reached. */
function afterShare(ties: readonly TieBreak[]): RuleFault[] {
  const share = ties.findIndex(({ code }) => code === 'share');
  return share >= 0 && share < ties.length - 1 ? [{ code: 'after_share', at: `/ties/${share + 1}` }] : [];
}
