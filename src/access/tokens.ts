/**
 * Passes: bearer tokens (JWT, RFC 7519, signed by HS256 and nothing else). The registry `access_token` knows
 * each by its number, so that the office can take one back; the token itself is not kept.
 */
import { errors, jwtVerify, SignJWT } from 'jose';
import { z } from 'zod';
import type { AppParts } from '../platform/app-parts.ts';
import type { SqlTransaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import type { Actor, Role } from './actor.ts';

const issuer = 'ringledger';
const algorithm = 'HS256';

export interface NewToken {
  readonly role: Role;
  /** `null`: the whole service, for an office only. */
  readonly showId: string | null;
  /** For a judge, and for the scribe who writes for her. */
  readonly seatId: string | null;
  readonly label: string | null;
  readonly expiresAt: Date;
}

export interface IssuedToken {
  readonly jti: string;
  readonly token: string;
  readonly issuedAt: Date;
  readonly expiresAt: Date;
}

const register: Statement = {
  name: 'access.register-token',
  text: `INSERT INTO access_token (jti, role, show_id, seat_id, label, issued_at, expires_at)
         VALUES ($1, $2, $3, $4, $5, $6, $7)`,
};

/** Whole seconds, as a JWT has them. */
const seconds = (at: Date) => Math.floor(at.getTime() / 1_000);

/** Signs a token and enters it in the registry. */
export async function issueToken(
  parts: Pick<AppParts, 'clock' | 'ids' | 'tokenKey'>,
  tx: SqlTransaction,
  asked: NewToken,
): Promise<IssuedToken> {
  const { role, showId, seatId, label, expiresAt } = asked;
  const jti = parts.ids.next();
  const issuedAt = parts.clock.now();
  const claims = {
    role,
    ...(showId === null ? {} : { show: showId }),
    ...(seatId === null ? {} : { seat: seatId }),
  };
  const token = await new SignJWT(claims)
    .setProtectedHeader({ alg: algorithm, typ: 'JWT' })
    .setIssuer(issuer)
    .setAudience(issuer)
    .setJti(jti)
    .setIssuedAt(seconds(issuedAt))
    .setExpirationTime(seconds(expiresAt))
    .sign(parts.tokenKey);
  await tx.sql.rows(register, [jti, role, showId, seatId, label, issuedAt, expiresAt]);
  return { jti, token, issuedAt, expiresAt };
}

const claimsOfAll = { jti: z.uuid(), show: z.uuid() };
const claims = z.discriminatedUnion('role', [
  z.object({ ...claimsOfAll, role: z.literal('office'), show: z.uuid().optional() }),
  z.object({ ...claimsOfAll, role: z.literal('judge'), seat: z.uuid() }),
  z.object({ ...claimsOfAll, role: z.literal('scribe'), seat: z.uuid() }),
  z.object({ ...claimsOfAll, role: z.literal('gate') }),
  z.object({ ...claimsOfAll, role: z.literal('public') }),
]);

const findToken: Statement = {
  name: 'access.find-token',
  text: 'SELECT revoked_at IS NOT NULL AS revoked FROM access_token WHERE jti = $1',
};

/** Whose token it is. Throws token_invalid, token_expired or token_revoked. */
export async function readToken(
  parts: Pick<AppParts, 'clock' | 'tokenKey' | 'db'>,
  token: string,
): Promise<Actor> {
  const actor = actorOfClaims(await verifiedClaims(parts, token));
  const known = await parts.db.sql.row<{ revoked: boolean }>(findToken, [actor.jti]);
  if (known === undefined) throw problem('token_invalid');
  if (known.revoked) throw problem('token_revoked');
  return actor;
}

async function verifiedClaims(parts: Pick<AppParts, 'clock' | 'tokenKey'>, token: string) {
  try {
    const { payload } = await jwtVerify(token, parts.tokenKey, {
      algorithms: [algorithm],
      issuer,
      audience: issuer,
      requiredClaims: ['jti', 'exp', 'iat'],
      currentDate: parts.clock.now(),
    });
    return claims.parse(payload);
  } catch (error) {
    if (error instanceof errors.JWTExpired) throw problem('token_expired');
    if (error instanceof errors.JOSEError || error instanceof z.ZodError) throw problem('token_invalid');
    throw error;
  }
}

function actorOfClaims(read: z.infer<typeof claims>): Actor {
  const { jti } = read;
  switch (read.role) {
    case 'office':
      return { role: read.role, showId: read.show ?? null, jti };
    case 'judge':
    case 'scribe':
      return { role: read.role, showId: read.show, seatId: read.seat, jti };
    case 'gate':
    case 'public':
      return { role: read.role, showId: read.show, jti };
  }
}
