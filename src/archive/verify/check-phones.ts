/** Each phone has the key that its pairing line names, was paired when that line says, and revoked when one says so. */
import { difference } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import { readKey } from './known-keys.ts';
import { onlyLine, type Reading } from './reading.ts';

export async function checkPhones(reading: Reading): Promise<Fault[]> {
  const faults: Fault[] = [];
  for (const phone of reading.archive.phones) {
    const at = `phone ${phone.id}`;
    const { thumbprint } = await readKey(phone.publicKey);
    if (thumbprint !== phone.thumbprint) faults.push(fault('phone_thumbprint_wrong', at));
    const wrong = lineDifference(reading, phone);
    if (wrong !== undefined) faults.push(fault('phone_line_differs', at, wrong));
  }
  return faults;
}

type Phone = Reading['archive']['phones'][number];

function lineDifference(reading: Reading, phone: Phone): string | undefined {
  const named = { member: 'phoneId', id: phone.id };
  const paired = onlyLine(reading, { ...named, types: ['phone.paired'] });
  const revoked = onlyLine(reading, { ...named, types: ['phone.revoked'] });
  return difference(
    {
      thumbprint: phone.thumbprint,
      role: phone.role,
      personId: phone.personId,
      pairedAt: phone.pairedAt,
      revokedAt: phone.revokedAt,
    },
    {
      thumbprint: paired?.body.thumbprint ?? null,
      role: paired?.body.role ?? null,
      personId: paired?.body.personId ?? null,
      pairedAt: paired?.at ?? null,
      revokedAt: revoked?.at ?? null,
    },
  );
}
