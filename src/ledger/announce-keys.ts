/** Which keys the service signs with stands in its own ledger, so that one that turns up without a line is noticed. */
import { ofTheService } from '../evidence/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { inSqlTransaction } from '../platform/database.ts';
import type { PublicKey } from '../platform/service-keys.ts';
import { json, type Statement } from '../platform/sql.ts';
import { appendLine } from './append-line.ts';

const add: Statement = {
  name: 'ledger.add-signing-key',
  text: `INSERT INTO signing_key (kid, jwk, source, added_at) VALUES ($1, $2::jsonb, 'own', $3)
         ON CONFLICT (kid) DO NOTHING RETURNING kid`,
};

/**
 * Says once of each key that it is one of the service's. A new key is announced before it signs: then the key before
 * it seals the line, and whoever trusts that one may trust the new one.
 */
export async function announceKeys(
  parts: Pick<AppParts, 'db' | 'clock' | 'keys'>,
  publicKeys: readonly PublicKey[] = parts.keys.publicKeys,
): Promise<void> {
  await inSqlTransaction(parts.db, async (tx) => {
    for (const { kid, jwk } of publicKeys.toReversed()) {
      const at = parts.clock.now();
      if ((await tx.sql.row(add, [kid, json(jwk), at])) === undefined) continue;
      await appendLine(parts, tx, { showId: ofTheService, type: 'signing-key.added', body: { kid }, at });
    }
  });
}

const strange: Statement = {
  name: 'ledger.strange-signing-keys',
  text: `SELECT kid FROM signing_key WHERE source = 'own' AND kid <> ALL ($1::text[]) ORDER BY kid`,
};

/** Keys that the database calls the service's own and the file does not hold: it was exchanged, or somebody added them. */
export async function strangeKeys({ db, keys }: Pick<AppParts, 'db' | 'keys'>): Promise<string[]> {
  const known = keys.publicKeys.map(({ kid }) => kid);
  return (await db.sql.rows<{ kid: string }>(strange, [known])).map(({ kid }) => kid);
}
