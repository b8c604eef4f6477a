/** How single values are spelled in an archive: exactly as they are kept, so that nothing is changed by reading it. */
import { z } from 'zod';

export const id = z
  .string()
  .regex(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/, 'it must be a UUID in small letters');

/** Calendar day at the show grounds. */
export const day = z.iso.date('it must be a day: yyyy-mm-dd');

/** A moment in UTC with milliseconds. */
export const instant = z
  .string()
  .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/, 'it must be a moment like 2026-05-02T14:03:05.000Z')
  .refine((text) => !Number.isNaN(Date.parse(text)), 'there is no such moment');

export const sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'it must be a SHA-256 in small hex');
/** RFC 7638, over SHA-256. */
export const thumbprint = z.string().regex(/^[A-Za-z0-9_-]{43}$/, 'it must be a thumbprint (RFC 7638)');
/** RFC 7515, section 7.1. */
export const jws = z
  .string()
  .regex(/^[A-Za-z0-9_-]+\.[A-Za-z0-9_-]+\.[A-Za-z0-9_-]+$/, 'it must be a compact JWS');
/** RFC 7515, appendix F. */
export const detachedJws = z
  .string()
  .regex(/^[A-Za-z0-9_-]+\.\.[A-Za-z0-9_-]+$/, 'it must be a JWS without its payload');
/** RFC 4648, section 4. */
export const base64 = z.base64();

/** Class numbers, back numbers, places, versions: they count from 1. */
export const ordinal = z.int().min(1).max(1_000_000);

const coordinate = z.string().regex(/^[A-Za-z0-9_-]{43}$/);
const point = { kty: z.literal('EC'), crv: z.literal('P-256'), x: coordinate, y: coordinate };

/** P-256 public key (RFC 7518, 6.2); a private part is refused. */
export const publicKey = z.strictObject(point);
/** The same with what a key set may say about it (RFC 7517, section 4). */
export const publishedKey = z.strictObject({
  ...point,
  kid: thumbprint.exactOptional(),
  alg: z.literal('ES256').exactOptional(),
  use: z.literal('sig').exactOptional(),
});

/** A text that is as the office's own form would keep it: what that form would still change is refused. */
export const asKept = (form: z.ZodType<string>) =>
  z.string().refine((text) => {
    const read = form.safeParse(text);
    return read.success && read.data === text;
  }, 'it is not a text that could have been entered');

const scalar = z.union([z.string().max(2_000), z.number(), z.boolean(), z.null()]);
const memberName = z.string().regex(/^[A-Za-z][\w-]{0,99}$/, 'it is not the name of a member');

/** Plain JSON, at most so many levels deep; the names of its members begin with a letter. */
export function plainJson(levels: number): z.ZodType {
  if (levels === 0) return scalar;
  const inner = plainJson(levels - 1);
  return z.union([scalar, z.array(inner), z.record(memberName, inner)]);
}
