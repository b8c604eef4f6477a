/** The score sheets that come with the service: there from the first start, for every show. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { ScoreSheet } from '../../engine/sheets/types.ts';
import type { AppParts } from '../../platform/app-parts.ts';
import { inTransaction } from '../../platform/database.ts';
import { addScoreSheet } from './add-score-sheet.ts';

const folder = fileURLToPath(new URL('../../../seed/sheets', import.meta.url));

/**
 * Adds those that are not there yet; one that is there stays as it is. Throws sheet_version_taken where a show
 * has added its own sheet under the code and version of a bundled one.
 */
export async function addBundledSheets(parts: Pick<AppParts, 'clock' | 'ids' | 'db'>): Promise<void> {
  const sheets = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    // The test of the bundled sheets checks each against its type.
    .map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as ScoreSheet);
  await inTransaction(parts.db, async (tx) => {
    for (const sheet of sheets) await addScoreSheet(parts, tx, { sheet, origin: 'bundled' });
  });
}
