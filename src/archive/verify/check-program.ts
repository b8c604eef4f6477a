/** What the ledger says of the show itself: official or practice, when its classes were opened, whose name is public. */

import { missingFrom } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { onlyLine, type Reading } from './reading.ts';

export function checkProgram(reading: Reading): Fault[] {
  return [...showFaults(reading), ...classFaults(reading), ...consentFaults(reading), ...nameFaults(reading)];
}

function showFaults(reading: Reading): Fault[] {
  const { id, kind } = reading.archive.show;
  const line = onlyLine(reading, { types: ['show.created'], member: 'showId', id });
  return line?.body.kind === kind ? [] : [fault('show_line_differs', `show ${id}`, 'kind')];
}

function classFaults(reading: Reading): Fault[] {
  return reading.archive.classes
    .filter(({ id, openedAt }) => {
      const line = onlyLine(reading, { types: ['class.opened'], member: 'classId', id });
      return (line?.at ?? null) !== openedAt;
    })
    .map(({ id }) => fault('class_line_differs', `class ${id}`));
}

function consentFaults(reading: Reading): Fault[] {
  return reading.archive.consents.flatMap(({ id, exhibitorId, publicName, recordedAt }) => {
    const line = onlyLine(reading, { types: ['consent.recorded'], member: 'consentId', id });
    const wrong = missingFrom({ ...line?.body, at: line?.at }, { exhibitorId, publicName, at: recordedAt });
    return wrong === undefined ? [] : [fault('consent_line_differs', `consent ${id}`, wrong)];
  });
}

/** The last word of the family holds; an erased name is public as a back number. */
function nameFaults({ archive, linesNaming }: Reading): Fault[] {
  return archive.exhibitors
    .filter(({ id, publicName, erasedAt }) => {
      const said = linesNaming('exhibitorId', id).findLast(({ type }) => type === 'consent.recorded');
      const allowed = erasedAt === null ? (said?.body.publicName ?? null) : 'back-number';
      // Nobody is harmed by less than was allowed: a rehearsal shows back numbers alone.
      return publicName !== allowed && publicName !== 'back-number';
    })
    .map(({ id }) => fault('public_name_without_consent', `exhibitor ${id}`));
}
