/** Where an entry stands in a class. */
export const classEntryStatuses = [
  'entered',
  'checked-in',
  'scratched',
  'no-show',
  'excused',
  'moved',
] as const;
export type ClassEntryStatus = (typeof classEntryStatuses)[number];

export const isGoing = (status: string): boolean => status === 'entered' || status === 'checked-in';
