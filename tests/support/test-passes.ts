/** Passes for tests, handed out by the service's own code. */
import { issueToken, type Role } from '../../src/access/index.ts';
import { inSqlTransaction } from '../../src/platform/database.ts';
import type { TestApp } from './test-app.ts';

interface Wanted {
  readonly role: Role;
  /** Left out: the whole service, for an office. */
  readonly showId?: string;
  readonly seatId?: string;
}

/** The value of the header `authorization`. */
export async function passFor({ parts }: TestApp, { role, showId, seatId }: Wanted): Promise<string> {
  const expiresAt = new Date(parts.clock.now().getTime() + 24 * 3_600_000);
  const asked = { role, showId: showId ?? null, seatId: seatId ?? null, label: null, expiresAt };
  const { token } = await inSqlTransaction(parts.db, (tx) => issueToken(parts, tx, asked));
  return `Bearer ${token}`;
}
