/** Do the maneuvers of a pattern fit a sheet? */
import { type SheetFault, SheetFaults } from './sheet-fault.ts';
import type { ScoreSheet, SheetManeuver } from './types.ts';

/** All faults at once; `at` points into the list. One-mark, places and measured sheets need no maneuvers. */
export function checkManeuvers(sheet: ScoreSheet, maneuvers: readonly SheetManeuver[]): SheetFault[] {
  const faults = new SheetFaults();
  const positions = maneuvers.map(({ position }) => position);
  for (const [index, { position, name, coefficient }] of maneuvers.entries()) {
    faults.whole(position, `/${index}/position`);
    if (positions.indexOf(position) !== index) faults.add('position_twice', `/${index}/position`, position);
    else if (position > maneuvers.length) faults.add('position_gap', `/${index}/position`, position);
    if (name.trim() === '') faults.add('name_empty', `/${index}/name`);
    faults.positive(coefficient, `/${index}/coefficient`);
  }
  const marked = sheet.kind === 'pattern' || sheet.kind === 'percentage';
  if (marked && maneuvers.length === 0) faults.add('no_maneuvers', '');
  return faults.found;
}
