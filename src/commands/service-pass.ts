/** The first pass of all: whoever runs the service is its office, and hands out the others through the API. */
import { issueToken } from '../access/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import { inSqlTransaction } from '../platform/database.ts';

/** A pass of the office of the whole service. */
export async function issueServicePass(
  parts: AppParts,
  { label, hours }: { readonly label: string; readonly hours: number },
): Promise<string> {
  const expiresAt = new Date(parts.clock.now().getTime() + hours * 3_600_000);
  const asked = { role: 'office', showId: null, seatId: null, label, expiresAt } as const;
  return (await inSqlTransaction(parts.db, (tx) => issueToken(parts, tx, asked))).token;
}
