/** Sheet, pattern, placing rule and panel of a class must fit together before anyone relies on them. */
import { appliedRule } from '../../engine/placing/applied-rule.ts';
import { checkRule, type RuleFault } from '../../engine/placing/check-rule.ts';
import type { PlacingRule } from '../../engine/placing/types.ts';
import { ruleFaultSentence } from '../../engine/sentences/rule-sentences.ts';
import { sheetFaultSentence } from '../../engine/sentences/sheet-fault-sentences.ts';
import { checkManeuvers } from '../../engine/sheets/check-maneuvers.ts';
import type { ScoreSheet, SheetManeuver } from '../../engine/sheets/types.ts';
import { told } from '../../language/index.ts';
import { problem } from '../../platform/problems/index.ts';

export interface FitSeat {
  readonly id: string;
  readonly role: 'judge' | 'referee';
  readonly callOrder: number | null;
  readonly tieOrder: number | null;
}

interface ClassParts {
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
  readonly rule: PlacingRule;
  readonly drawSeed: string;
  /** Who sits on the panel now; `undefined`: nobody was named yet. */
  readonly seats: readonly FitSeat[] | undefined;
}

/** Throws pattern_needed, sheet_invalid, rule_invalid. */
export function mustFit({ sheet, maneuvers, rule, drawSeed, seats }: ClassParts): void {
  const needsPattern = sheet.kind === 'pattern' || sheet.kind === 'percentage';
  if (needsPattern && maneuvers.length === 0) {
    throw problem('pattern_needed', {
      errors: [{ field: '/patternId', message: 'this sheet marks maneuvers' }],
    });
  }
  const patternFaults = checkManeuvers(sheet, maneuvers);
  if (patternFaults.length > 0) {
    const errors = patternFaults.map((fault) => ({
      field: `/patternId${fault.at}`,
      message: told((speech) => sheetFaultSentence(fault, speech)),
    }));
    throw problem('sheet_invalid', { errors });
  }
  const setting = {
    sheet,
    maneuvers: maneuvers.length,
    seats: seats?.map(({ id, role }) => ({ judge: id, seat: role })),
  };
  const applied = appliedRule({ rule, placesGiven: null, drawSeed, seats: seats ?? [] });
  const faults = checkRule(applied, setting);
  if (faults.length > 0) throw problem('rule_invalid', { errors: faults.map(fieldFault) });
}

const fieldFault = (fault: RuleFault) => ({
  field: `/placingRule${fault.at}`,
  message: told((speech) => ruleFaultSentence(fault, speech)),
});
