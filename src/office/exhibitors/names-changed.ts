import { appendLine } from '../../ledger/index.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import type { SqlTransaction } from '../../platform/database.ts';

/** Tells everyone who has names on a screen to read them again, and not whose it is about. */
export async function tellNamesChanged(
  parts: AppParts,
  tx: SqlTransaction,
  { showId, at }: { readonly showId: string; readonly at: Date },
): Promise<void> {
  await appendLine(parts, tx, { showId, type: 'names.changed', body: {}, at });
}
