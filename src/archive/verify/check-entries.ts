/** Who rides which horse under which number, who goes in which class and who has left a panel: as the ledger's lines say. */
import { missingFrom } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { onlyLine, type Reading } from './reading.ts';

export const checkEntries = (reading: Reading): Fault[] => [
  ...entryFaults(reading),
  ...classEntryFaults(reading),
  ...seatFaults(reading),
];

/** The last line about an entry says what it is. A rehearsal is filled at once, and has no lines of its own for them. */
function entryFaults({ archive, linesNaming }: Reading): Fault[] {
  return archive.entries.flatMap((entry) => {
    const { id, backNumber, exhibitorId, horseId, ownerId, version } = entry;
    const told = linesNaming('entryId', id).findLast(({ type }) => entryLines.includes(type));
    if (told === undefined) return [];
    const wrong = missingFrom(told.body, { backNumber, exhibitorId, horseId, ownerId, version });
    return wrong === undefined ? [] : [fault('entry_line_differs', `entry ${id}`, wrong)];
  });
}

const entryLines: readonly string[] = ['entry.created', 'entry.changed'];

function classEntryFaults(reading: Reading): Fault[] {
  return reading.archive.classEntries.flatMap(({ id, classId, entryId }) => {
    const line = onlyLine(reading, { types: ['class-entry.added'], member: 'classEntryId', id });
    const wrong = line && missingFrom(line.body, { classId, entryId });
    return wrong === undefined ? [] : [fault('entry_line_differs', `class entry ${id}`, wrong)];
  });
}

/** A card of a judge who has left counts no more: when she left stands in a line. */
function seatFaults(reading: Reading): Fault[] {
  return reading.archive.seats.flatMap(({ id, withdrawnAt }) => {
    const line = onlyLine(reading, { types: ['panel.withdrawn'], member: 'seatId', id });
    return (line?.at ?? null) === withdrawnAt
      ? []
      : [fault('seat_line_differs', `seat ${id}`, 'withdrawnAt')];
  });
}
