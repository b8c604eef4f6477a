/** A signed card as it comes from the judge's phone: a JWS that the service checks and keeps, and cannot make. */
import { type CryptoKey, importJWK, type JWK } from 'jose';
import type { Actor } from '../access/index.ts';
import {
  canonicalText,
  evidenceAlgorithm,
  evidenceTypes,
  type JwsFault,
  readCanonical,
  readJws,
  type SignedCard,
} from '../evidence/index.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { faultsOf } from '../platform/http/validation.ts';
import { type FieldFault, problem } from '../platform/problems/index.ts';
import type { CardRecord } from './card-record.ts';
import { signedCardSchema } from './card-schemas.ts';
import { findPhoneKey } from './card-statements.ts';
import type { PhoneSignature } from './revisions.ts';

export interface ReadSignature {
  readonly statement: SignedCard;
  readonly phone: PhoneSignature;
}

/**
 * The statement that the sender's own phone signed for this very card. Throws signature_invalid (with what is wrong),
 * signature_of_other_card (with the field), invalid_request (a fault in the card's form).
 */
export async function readSignature(
  tx: SqlTransaction,
  { jws, card, actor }: { readonly jws: string; readonly card: CardRecord; readonly actor: Actor },
): Promise<ReadSignature> {
  if (actor.as !== 'judge') throw new Error('only the phone of a judge signs');
  const { phoneId } = actor;
  const statement = statementIn(await signedText(tx, { jws, phoneId }));
  mustBeOf(card, statement);
  return { statement, phone: { phoneId, jws } };
}

const whatIsWrong: Readonly<Record<JwsFault, string>> = {
  'not-of-this-form': `It must be a compact JWS with the header members alg ${evidenceAlgorithm}, typ ${evidenceTypes.card} and kid, the thumbprint of this phone's key, and no others.`,
  'signature-wrong': "This phone's key did not sign it.",
};

async function signedText(tx: SqlTransaction, { jws, phoneId }: PhoneSignature): Promise<string> {
  const found = await tx.sql.row<{ jwk: JWK; thumbprint: string }>(findPhoneKey, [phoneId]);
  if (found === undefined) throw new Error('a phone without a key');
  const key = (await importJWK(found.jwk, evidenceAlgorithm)) as CryptoKey;
  const read = await readJws(jws, { key, kid: found.thumbprint, typ: evidenceTypes.card });
  if (!read.ok) throw problem('signature_invalid', { detail: whatIsWrong[read.fault] });
  return read.payload;
}

function statementIn(text: string): SignedCard {
  const value = readCanonical(text);
  if (value === undefined) {
    throw problem('signature_invalid', {
      detail: 'What is signed must be JSON in its canonical form (RFC 8785).',
    });
  }
  const read = signedCardSchema.safeParse(value);
  if (!read.success) throw problem('invalid_request', { errors: faultsOf(read.error.issues, '') });
  // The check of the form passes over a member `__proto__`: what is kept would not be what she signed.
  if (canonicalText(read.data) !== text) {
    throw problem('signature_invalid', { detail: 'It holds a member that no card has.' });
  }
  return read.data;
}

function mustBeOf(card: CardRecord, { showId, classId, seatId, cardId, sheet }: SignedCard): void {
  const signed = { showId, classId, seatId, cardId, ...under('sheet', sheet) };
  const ours: Readonly<Record<string, unknown>> = {
    ...{ showId: card.showId, classId: card.classId, seatId: card.seatId, cardId: card.id },
    ...under('sheet', { code: card.sheetCode, version: card.sheetVersion, hash: card.sheetHash }),
  };
  const errors: FieldFault[] = Object.entries(signed)
    .filter(([field, value]) => ours[field] !== value)
    .map(([field]) => ({ field: `/${field}`, message: `this card says ${String(ours[field])}` }));
  if (errors.length > 0) throw problem('signature_of_other_card', { errors });
}

const under = (name: string, members: object) =>
  Object.fromEntries(Object.entries(members).map(([member, value]) => [`${name}/${member}`, value]));
