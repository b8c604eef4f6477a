/**
 * Tokens of phones (JWT, RFC 7519, signed by HS256 and nothing else): good for a quarter of an hour, and only together
 * with proofs by the key whose thumbprint stands in `cnf` (RFC 9449, section 6.1). They are not kept: whether the
 * phone may still come in is looked up with every request.
 */
import { errors, jwtVerify, SignJWT } from 'jose';
import { z } from 'zod';
import type { AppParts } from '../../platform/app-parts.ts';
import { problem } from '../../platform/problems/index.ts';

const algorithm = 'HS256';
/** RFC 9068, section 2.1: so that no other JWT of the service is taken for one. */
const type = 'at+jwt';
const issuer = 'ringledger';
const audience = 'ringledger phones';
const goodForSeconds = 15 * 60;

type Parts = Pick<AppParts, 'clock' | 'ids' | 'tokenKey'>;

/** Whose token it is. */
export interface TokenHolder {
  readonly phoneId: string;
  /** RFC 7638, of the key that proves each request. */
  readonly thumbprint: string;
}

export interface PhoneToken {
  readonly accessToken: string;
  readonly endsAt: Date;
  readonly endsInSeconds: number;
}

export async function issuePhoneToken(
  { clock, ids, tokenKey }: Parts,
  { phoneId, thumbprint }: TokenHolder,
): Promise<PhoneToken> {
  const issuedAt = Math.floor(clock.now().getTime() / 1_000);
  const ends = issuedAt + goodForSeconds;
  const accessToken = await new SignJWT({ cnf: { jkt: thumbprint } })
    .setProtectedHeader({ alg: algorithm, typ: type })
    .setIssuer(issuer)
    .setAudience(audience)
    .setSubject(phoneId)
    .setJti(ids.next())
    .setIssuedAt(issuedAt)
    .setExpirationTime(ends)
    .sign(tokenKey);
  return { accessToken, endsAt: new Date(ends * 1_000), endsInSeconds: goodForSeconds };
}

const claims = z.object({ sub: z.uuid(), cnf: z.object({ jkt: z.string() }) });

/** Throws token_invalid, token_expired. */
export async function readPhoneToken({ clock, tokenKey }: Parts, token: string): Promise<TokenHolder> {
  try {
    const { payload } = await jwtVerify(token, tokenKey, {
      algorithms: [algorithm],
      typ: type,
      issuer,
      audience,
      requiredClaims: ['exp', 'iat'],
      currentDate: clock.now(),
    });
    const { sub, cnf } = claims.parse(payload);
    return { phoneId: sub, thumbprint: cnf.jkt };
  } catch (error) {
    if (error instanceof errors.JWTExpired) throw refusal('token_expired');
    if (error instanceof errors.JOSEError || error instanceof z.ZodError) throw refusal('token_invalid');
    throw error;
  }
}

const refusal = (code: 'token_expired' | 'token_invalid') =>
  problem(code, { headers: { 'www-authenticate': 'DPoP error="invalid_token", algs="ES256"' } });
