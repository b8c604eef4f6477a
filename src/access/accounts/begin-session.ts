import { ofTheService } from '../../evidence/index.ts';
import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';
import type { BegunSession } from './session-schemas.ts';
import { openSession } from './sessions.ts';

/** A session for whoever has just shown both factors, with its line. */
export async function beginSession(
  parts: AppParts,
  tx: SqlTransaction,
  accountId: string,
): Promise<BegunSession> {
  const { id: sessionId, token, endsAt } = await openSession(parts, tx, accountId);
  const at = parts.clock.now();
  const body = { sessionId, accountId };
  await appendLine(parts, tx, { showId: ofTheService, type: 'session.begun', body, at });
  return { sessionId, token, endsAt: endsAt.toISOString() };
}
