/** A phone takes up an invitation with its own key: once, even where two phones send one code at the same moment. */
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inSqlTransaction, type SqlTransaction } from '../../platform/database.ts';
import { problem } from '../../platform/problems/index.ts';
import { json, type Statement } from '../../platform/sql.ts';
import { hashOfCode } from './pairing-code.ts';
import type { PairedPhone, PhoneRole } from './phone-schemas.ts';
import type { CheckedProof } from './proofs.ts';

interface Pairing {
  /** As it is written: `XK7P-4M2Q`. */
  readonly code: string;
  /** By the key that is to be paired: it shows that the phone holds the private half. */
  readonly proof: CheckedProof;
}

interface TakenInvitation {
  readonly id: string;
  readonly showId: string;
  readonly role: PhoneRole;
  readonly personId: string | null;
  readonly label: string | null;
}

const spendProof: Statement = {
  name: 'phones.spend-proof',
  text: 'INSERT INTO spent_proof (hash, spent_at) VALUES ($1, $2) ON CONFLICT (hash) DO NOTHING RETURNING hash',
};

/** Of two that send the same code, the second waits here for the first and then finds it used. */
const takeUp: Statement = {
  name: 'phones.take-up-invitation',
  text: `
    UPDATE invitation SET used_at = $2
    WHERE code_hash = $1 AND used_at IS NULL AND revoked_at IS NULL AND ends_at > $2
    RETURNING id, show_id AS "showId", role, person_id AS "personId", label`,
};

const lookUp: Statement = {
  name: 'phones.look-up-invitation',
  text: `
    SELECT invitation.used_at IS NOT NULL AS used, phone.id, phone.show_id AS "showId", phone.role, phone.label,
           phone.person_id AS "personId", phone.thumbprint, phone.paired_at AS "pairedAt"
    FROM invitation LEFT JOIN phone ON phone.invitation_id = invitation.id AND phone.revoked_at IS NULL
    WHERE invitation.code_hash = $1`,
};

const addPhone: Statement = {
  name: 'phones.add',
  text: `
    INSERT INTO phone (id, show_id, role, person_id, label, public_key, thumbprint, invitation_id, paired_at)
    VALUES ($1, $2, $3, $4, $5, $6::jsonb, $7, $8, $9)
    ON CONFLICT (thumbprint) DO NOTHING RETURNING id`,
};

/**
 * Throws proof_replayed, pairing_code_unknown, pairing_code_used, pairing_code_ended, key_already_paired. A phone that
 * did not hear the answer may send the code again, with a new proof by the same key, and is paired no second time.
 */
export function pairPhone(parts: AppParts, { code, proof }: Pairing): Promise<PairedPhone> {
  const at = parts.clock.now();
  const codeHash = hashOfCode(parts.tokenKey, code);
  return inSqlTransaction(parts.db, async (tx) => {
    if ((await tx.sql.row(spendProof, [proof.hash, at])) === undefined) throw problem('proof_replayed');
    const invitation = await tx.sql.row<TakenInvitation>(takeUp, [codeHash, at]);
    if (invitation === undefined) return pairedBefore(tx, { codeHash, thumbprint: proof.thumbprint });
    const { id: invitationId, showId, role, personId, label } = invitation;
    const { publicKey, thumbprint } = proof;
    const id = parts.ids.next();
    const row = [id, showId, role, personId, label, json(publicKey), thumbprint, invitationId, at];
    if ((await tx.sql.row(addPhone, row)) === undefined) throw problem('key_already_paired');
    const body = { phoneId: id, invitationId, role, personId, thumbprint };
    await appendLine(parts, tx, { showId, type: 'phone.paired', body, at });
    return { id, showId, role, personId, label, thumbprint, pairedAt: at.toISOString() };
  });
}

interface LookedUp extends Omit<PairedPhone, 'pairedAt'> {
  readonly used: boolean;
  readonly pairedAt: Date;
}

async function pairedBefore(
  tx: SqlTransaction,
  { codeHash, thumbprint }: { readonly codeHash: string; readonly thumbprint: string },
): Promise<PairedPhone> {
  const found = await tx.sql.row<LookedUp>(lookUp, [codeHash]);
  if (found === undefined)
    throw problem('pairing_code_unknown', { errors: [{ field: '/code', message: 'there is no such code' }] });
  const { used, pairedAt, ...phone } = found;
  if (!used) throw problem('pairing_code_ended');
  if (phone.thumbprint !== thumbprint) throw problem('pairing_code_used');
  return { ...phone, pairedAt: pairedAt.toISOString() };
}
