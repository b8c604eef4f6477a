/** Each ruling is the one whose fingerprint its line holds. */
import { rulingFingerprint } from '../../results/offline.ts';
import { missingFrom } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { onlyLine, type Reading } from './reading.ts';

export function checkRulings(reading: Reading): Fault[] {
  return reading.archive.rulings.flatMap((ruling) => {
    const at = `ruling ${ruling.id}`;
    const line = onlyLine(reading, { types: ['ruling.made'], member: 'rulingId', id: ruling.id });
    if (line === undefined)
      return [fault('ruling_line_differs', at, 'there is no such line, or more than one')];
    const { classId, kind, ruledAt } = ruling;
    const expected = { classId, kind, rulingHash: rulingFingerprint(ruling), at: ruledAt };
    const wrong = missingFrom({ ...line.body, at: line.at }, expected);
    return wrong === undefined ? [] : [fault('ruling_line_differs', at, wrong)];
  });
}
