/** The phone of a proof, and the proof spent: one round trip to the database, because every request of a phone takes it. */
import type { LineActor } from '../../evidence/index.ts';
import { problem } from '../../platform/problems/index.ts';
import type { Sql, Statement } from '../../platform/sql.ts';
import type { PhoneRole } from './phone-schemas.ts';
import type { CheckedProof } from './proofs.ts';

export interface FoundPhone {
  readonly id: string;
  readonly showId: string;
  readonly role: PhoneRole;
  /** The judge, or the judge that the scribe writes for; `null`: the gate. */
  readonly personId: string | null;
  /** All seats of that judge at the show, withdrawn ones too. */
  readonly seatIds: readonly string[];
}

/**
 * A phone that came with an archive was paired elsewhere and is no phone of this service. Nothing is written for a key
 * that is not paired, so a stranger cannot fill the table.
 */
const spendAndFind: Statement = {
  name: 'phones.spend-and-find',
  text: `
    WITH found AS (
      SELECT id, show_id, role, person_id, revoked_at FROM phone
      WHERE thumbprint = $1 AND invitation_id IS NOT NULL
    ), spent AS (
      INSERT INTO spent_proof (hash, spent_at) SELECT $2, $3::timestamptz FROM found WHERE revoked_at IS NULL
      ON CONFLICT (hash) DO NOTHING RETURNING hash
    )
    SELECT id, show_id AS "showId", role, person_id AS "personId",
           ARRAY(SELECT seat.id::text FROM panel_seat seat
                 WHERE seat.person_id = found.person_id AND seat.show_id = found.show_id) AS "seatIds",
           revoked_at IS NOT NULL AS revoked, EXISTS (SELECT FROM spent) AS fresh
    FROM found`,
};

interface FoundRow extends FoundPhone {
  readonly revoked: boolean;
  readonly fresh: boolean;
}

/** Throws phone_unknown, phone_revoked, proof_replayed. */
export async function findPhone(sql: Sql, { thumbprint, hash }: CheckedProof, at: Date): Promise<FoundPhone> {
  const row = await sql.row<FoundRow>(spendAndFind, [thumbprint, hash, at]);
  if (row === undefined) throw problem('phone_unknown');
  const { revoked, fresh, ...phone } = row;
  const refused = { actor: refusedActor(phone) };
  if (revoked) throw problem('phone_revoked', { refused });
  if (!fresh) throw problem('proof_replayed', { refused });
  return phone;
}

/** A phone that is turned away is known all the same: the refusal is a line under its id. */
const refusedActor = ({ id: phone, role, personId: person }: FoundPhone): LineActor =>
  role === 'gate' || person === null ? { as: 'gate', phone } : { as: role, phone, person };

const forget: Statement = {
  name: 'phones.forget-proofs',
  text: 'DELETE FROM spent_proof WHERE spent_at < $1',
};

/** Proofs that were used before `time`. */
export async function forgetProofs(sql: Sql, time: Date): Promise<void> {
  await sql.rows(forget, [time]);
}
