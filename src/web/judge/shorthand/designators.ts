/** How shorthand names the penalties of a sheet: by their points, and by a letter where several take as many. */
import type { Penalty } from '../../../engine/sheets/types.ts';

export interface Designator {
  readonly penalty: Penalty;
  /** `null`: no other penalty of the sheet takes as many points. */
  readonly letter: string | null;
}

/** In the order of the sheet: 3a, 3b, 5a, 5b, 10. */
export function designatorsOf(penalties: readonly Penalty[]): readonly Designator[] {
  return penalties.map((penalty) => {
    const alike = penalties.filter(({ points }) => points === penalty.points);
    if (alike.length < 2) return { penalty, letter: null };
    return { penalty, letter: letterOf(alike.indexOf(penalty)) };
  });
}

/** a to z, and then no more: a sheet with 27 penalties of the same size is read by their names. */
const letterOf = (index: number): string | null =>
  index < 26 ? String.fromCharCode('a'.charCodeAt(0) + index) : null;

export const designatorText = ({ penalty, letter }: Designator): string => `${penalty.points}${letter ?? ''}`;
