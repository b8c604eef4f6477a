/**
 * Remarks on maneuvers that have no mark yet: a sheet has no place for them, so they wait in this browser and go onto
 * the card with the mark.
 */
const storedAs = 'ringledger-waiting-remarks';

type Waiting = Readonly<Record<string, string>>;

const placeOf = (classEntryId: string, position: number) => `${classEntryId}/${position}`;

/** By class entry and position: `<class entry>/<position>`. */
export function waitingRemarks(): Waiting {
  try {
    return JSON.parse(localStorage.getItem(storedAs) ?? '{}') as Waiting;
  } catch {
    return {};
  }
}

export const waitingRemark = (classEntryId: string, position: number): string | undefined =>
  waitingRemarks()[placeOf(classEntryId, position)];

/** An empty one is put away. */
export function keepRemark(classEntryId: string, position: number, remark: string): void {
  const { [placeOf(classEntryId, position)]: _, ...rest } = waitingRemarks();
  const next = remark.trim() === '' ? rest : { ...rest, [placeOf(classEntryId, position)]: remark };
  if (Object.keys(next).length === 0) forgetRemarks();
  else localStorage.setItem(storedAs, JSON.stringify(next));
}

export const forgetRemarks = (): void => localStorage.removeItem(storedAs);
