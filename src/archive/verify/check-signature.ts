/** The service's signature over the whole archive. */
import { evidenceTypes, kidOf, readCanonical, readJws } from '../../evidence/index.ts';
import { fingerprint } from '../../platform/canonical-json.ts';
import { signedArchive } from '../form/archive.ts';
import { differing } from './differing.ts';
import { type Fault, fault } from './fault.ts';
import type { Reading } from './reading.ts';

const at = 'archive';

export async function checkSignature({ archive, keys }: Reading): Promise<Fault[]> {
  const { jws, ...unsigned } = archive;
  const kid = kidOf(jws);
  const key = kid === undefined ? undefined : keys.get(kid);
  if (kid === undefined || key === undefined) return [fault('archive_key_unknown', at)];
  const read = await readJws(jws, { key, kid, typ: evidenceTypes.archive });
  const signed = signedArchive.safeParse(read.ok ? readCanonical(read.payload) : undefined);
  if (!signed.success) return [fault('archive_signature_wrong', at)];
  const { form: _, showId, archiveHash, ...claims } = signed.data;
  const { names, exportedAt, head } = unsigned;
  const same =
    archiveHash === fingerprint(unsigned) &&
    showId === unsigned.show.id &&
    differing(claims, { names, exportedAt, head }).length === 0;
  return same ? [] : [fault('archive_altered', at)];
}
