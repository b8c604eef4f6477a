/** The documents of `api-docs/` that are written from the code. */
import { buildApp } from '../app.ts';
import { archiveJsonSchema } from '../archive/offline.ts';
import { readConfig } from '../config.ts';
import { eventDocument } from '../ledger/index.ts';
import { type AppParts, randomIds, systemClock } from '../platform/app-parts.ts';
import { openDatabase } from '../platform/database.ts';
import { errorDocument } from '../platform/docs/error-page.ts';
import { openApiOf } from '../platform/docs/openapi.ts';

/** Text of each document by its name in `api-docs/`. Needs no database: none is asked. */
export async function apiDocuments(): Promise<Readonly<Record<string, string>>> {
  const db = openDatabase('postgresql://nowhere.invalid/ringledger');
  const config = readConfig({ BROWSABLE_DOCS: 'no', LOG_LEVEL: 'silent' });
  const live: AppParts['live'] = { subscribe: () => () => undefined, close: async () => undefined };
  const keys: AppParts['keys'] = {
    ...{ kid: '', publicKeys: [] },
    sign: () => Promise.reject(new Error('nothing is signed while the documents are written')),
  };
  const app = await buildApp({
    config,
    keys,
    db,
    clock: systemClock,
    ids: randomIds,
    tokenKey: new Uint8Array(32),
    live,
  });
  const openApi = `${JSON.stringify(openApiOf(app), null, 2)}\n`;
  await app.close();
  await db.close();
  return {
    'openapi.json': openApi,
    'errors.md': errorDocument(),
    'events.md': eventDocument(),
    'archive.schema.json': archiveJsonSchema(),
  };
}
