/** Parts that this kind of sheet does not have: they are refused, never dropped in silence. */
import { fault } from './reading.ts';
import type { Go, GoFault } from './types.ts';

type GoPart = 'maneuvers' | 'extras' | 'penalties' | 'errorsOfCourse' | 'mark' | 'measure';

const allParts: readonly GoPart[] = ['maneuvers', 'extras', 'penalties', 'errorsOfCourse', 'mark', 'measure'];

/** One fault for each part that was written and that the sheet does not have. Empty lists say nothing. */
export function notOnSheet(go: Go, parts: readonly GoPart[]): readonly GoFault[] {
  return allParts
    .filter((part) => !parts.includes(part) && isWritten(go[part]))
    .map((part) => fault('not_on_this_sheet', `/${part}`, { allowed: { kind: 'codes', codes: parts } }));
}

function isWritten(value: Go[GoPart]): boolean {
  if (value === undefined) return false;
  return typeof value !== 'object' || Object.keys(value).length > 0;
}
