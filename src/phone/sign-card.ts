/** A judge signs her card on the phone. Nobody else has the key, so nobody else can make what comes out. */
import { CompactSign } from 'jose';
import { canonicalText, evidenceAlgorithm, evidenceTypes, type SignedCard } from '../evidence/index.ts';
import type { PhoneKey } from './phone-key.ts';

/** A compact JWS over the canonical form (RFC 8785) of the statement. Keep it and send it as it is, also again. */
export function signCard(
  { privateKey, thumbprint }: Pick<PhoneKey, 'privateKey' | 'thumbprint'>,
  statement: SignedCard,
): Promise<string> {
  return new CompactSign(new TextEncoder().encode(canonicalText(statement)))
    .setProtectedHeader({ alg: evidenceAlgorithm, typ: evidenceTypes.card, kid: thumbprint })
    .sign(privateKey);
}
