/** The state of a class follows from its records; nobody sets it. */

/** In the order in which a class goes through them; `cancelled` and `combined` end it. */
export const classStates = [
  'setting-up',
  'drawn',
  'called',
  'under-way',
  'cards-in',
  'provisional',
  'official',
  'corrected',
  'cancelled',
  'combined',
] as const;
export type ClassState = (typeof classStates)[number];

export interface ClassFacts {
  /** `open` until it was cancelled or combined into another class. */
  readonly status: string;
  readonly drawn: boolean;
  readonly called: boolean;
  /** Seats whose card counts. */
  readonly seats: number;
  readonly signed: number;
  /** Goes written on cards that are not signed yet. */
  readonly draftGoes: number;
  readonly lastPosting: 'provisional' | 'official' | 'corrected' | undefined;
}

export function classState(records: ClassFacts): ClassState {
  const { status, drawn, called, seats, signed, draftGoes, lastPosting } = records;
  if (status === 'cancelled' || status === 'combined') return status;
  if (lastPosting !== undefined) return lastPosting;
  if (seats > 0 && signed === seats) return 'cards-in';
  if (signed > 0 || draftGoes > 0) return 'under-way';
  if (called) return 'called';
  return drawn && seats > 0 ? 'drawn' : 'setting-up';
}
