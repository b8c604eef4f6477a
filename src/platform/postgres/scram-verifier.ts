/** What PostgreSQL keeps of a password under SCRAM-SHA-256 (RFC 5802, section 3; RFC 7677). */
import { createHash, createHmac, pbkdf2Sync, randomBytes } from 'node:crypto';

interface Salted {
  readonly salt: Buffer;
  readonly iterations: number;
}

/**
 * `SCRAM-SHA-256$<iterations>:<salt>$<StoredKey>:<ServerKey>`, which CREATE ROLE ... PASSWORD takes as it is: the
 * password itself never reaches the server or its log. `password` is ASCII, so SASLprep leaves it alone.
 */
export function scramVerifier(
  password: string,
  salted: Salted = { salt: randomBytes(16), iterations: 4096 },
): string {
  const { salt, iterations } = salted;
  const saltedPassword = pbkdf2Sync(password, salt, iterations, 32, 'sha256');
  const keyed = (text: string) => createHmac('sha256', saltedPassword).update(text).digest();
  const storedKey = createHash('sha256').update(keyed('Client Key')).digest('base64');
  const serverKey = keyed('Server Key').toString('base64');
  return `SCRAM-SHA-256$${iterations}:${salt.toString('base64')}$${storedKey}:${serverKey}`;
}
