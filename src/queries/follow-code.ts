/**
 * The code with which a family follows its query without an account: 160 bits, 27 signs of base64url. It is made from
 * the id of the query under a key that is not in the database (HMAC-SHA-256), so that a request which was sent twice on a
 * bad connection is given the same code, and no copy of it has to be kept for that.
 */
import { createHash, createHmac } from 'node:crypto';
import { z } from 'zod';
import { keyFor } from '../access/index.ts';

const bytes = 20;

export const followCode = z
  .string()
  .regex(/^[A-Za-z0-9_-]{27}$/, 'it must be the code of 27 signs that was given when the query was sent');

export function followCodeOf(tokenKey: Uint8Array, queryId: string): string {
  const whole = createHmac('sha256', keyFor(tokenKey, 'follow code')).update(queryId).digest();
  return whole.subarray(0, bytes).toString('base64url');
}

/** What is kept of a code. A plain hash is enough: nobody tries 2^160 of them. */
export const hashOfFollowCode = (code: string): string => createHash('sha256').update(code).digest('hex');
