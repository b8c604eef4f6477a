/** The archive of a show, signed by the service. */
import { evidenceTypes } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { canonicalText, fingerprint } from '../../platform/canonical-json.ts';
import { inSqlTransaction } from '../../platform/database.ts';
import { archiveForm, type SignedArchive, signedArchiveForm } from '../form/archive.ts';
import { readShow, type ShowRecords } from './read-show.ts';
import { withoutNames } from './without-names.ts';

export interface WantedArchive {
  readonly showId: string;
  readonly names: 'full' | 'none';
}

/**
 * The whole archive as canonical JSON (RFC 8785). That it was taken out with its names is a line of the ledger, behind
 * the head of the archive. Throws not_found.
 */
export async function exportShow(parts: AppParts, { showId, names }: WantedArchive): Promise<string> {
  const records = await inSqlTransaction(parts.db, (tx) => readShow(tx, showId));
  const exportedAt = parts.clock.now();
  const kept = names === 'full' ? records : withoutNames(records);
  const unsigned = {
    form: archiveForm,
    names,
    exportedAt: exportedAt.toISOString(),
    ...withOwnKeys(parts, kept),
  };
  const statement: SignedArchive = {
    form: signedArchiveForm,
    ...{ showId, names, exportedAt: unsigned.exportedAt, head: unsigned.head },
    archiveHash: fingerprint(unsigned),
  };
  const jws = await parts.keys.sign(evidenceTypes.archive, canonicalText(statement));
  if (names === 'full') {
    const body = { showId, head: unsigned.head.sequence };
    await inSqlTransaction(parts.db, (tx) =>
      appendLine(parts, tx, { showId, type: 'show.exported', body, at: exportedAt }),
    );
  }
  return canonicalText({ ...unsigned, jws });
}

/**
 * The service's own are those of its key file, whatever the database says: what somebody put into the table counts as
 * brought from elsewhere. The key that signs the archive may not have signed anything of the show yet.
 */
function withOwnKeys({ keys, clock }: AppParts, records: ShowRecords): ShowRecords {
  const own = new Set(keys.publicKeys.map(({ kid }) => kid));
  const named = records.keys.map((key) => ({
    ...key,
    source: own.has(key.kid) ? ('own' as const) : ('imported' as const),
  }));
  const addedAt = clock.now().toISOString();
  const known = new Set(records.keys.map(({ kid }) => kid));
  const added = keys.publicKeys
    .filter(({ kid }) => kid === keys.kid && !known.has(kid))
    .map(({ kid, jwk: { x = '', y = '' } }) => {
      return {
        kid,
        jwk: { kty: 'EC' as const, crv: 'P-256' as const, x, y },
        source: 'own' as const,
        addedAt,
      };
    });
  return { ...records, keys: [...named, ...added] };
}
