/** The whole service over a database of its own, at a port of its own, with a clock that a test may set. */

import { buildApp } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import { type App, type AppParts, randomIds } from '../../src/platform/app-parts.ts';
import { openDatabase } from '../../src/platform/database.ts';
import { listenToLedger } from '../../src/platform/live-lines.ts';
import { ensureServiceLogin } from '../../src/platform/postgres/service-role.ts';
import { firstSigningKeys, type ServiceKeys, serviceKeys } from '../../src/platform/service-keys.ts';
import { createTestDatabase } from './test-database.ts';

export interface TestClock {
  readonly now: () => Date;
  /** Goes on from there, a millisecond with every look. */
  readonly set: (at: string) => void;
}

export interface TestApp {
  readonly app: App;
  readonly parts: AppParts;
  readonly clock: TestClock;
  /** Where it listens, e.g. http://127.0.0.1:41234 */
  readonly address: string;
  /** The database as its owner, for what the service itself may not do; `parts.db` is as the service works. */
  readonly ownerUrl: string;
  /** Closes the app and drops its database. */
  readonly close: () => Promise<void>;
}

export const testSecret = 'a secret for tests that is long enough for a key';

/** The same for all apps of a file, as processes of one service have them. */
export const testKeys: Promise<ServiceKeys> = firstSigningKeys().then(serviceKeys);

interface Wanted {
  /** Another app over the database of this one. */
  readonly beside?: TestApp;
  readonly environment?: NodeJS.ProcessEnv;
  /** That of one that was closed, for a service that starts again; left out: any. */
  readonly port?: number;
  /** Left out: those of all apps of the file. */
  readonly keys?: ServiceKeys;
}

export async function buildTestApp({
  beside,
  environment = {},
  port = 0,
  keys,
}: Wanted = {}): Promise<TestApp> {
  const database =
    beside === undefined ? await createTestDatabase() : { url: beside.ownerUrl, drop: async () => undefined };
  const tokenKey = new TextEncoder().encode(testSecret);
  const url = await ensureServiceLogin(database.url, tokenKey);
  const db = openDatabase(url, { connections: 8 });
  const live = await listenToLedger(url);
  const clock = testClock();
  const config = readConfig({
    NODE_ENV: 'test',
    LOG_LEVEL: 'silent',
    REQUESTS_PER_MINUTE: '0',
    SENDER_REQUESTS_PER_MINUTE: '0',
    SIGN_INS_PER_MINUTE: '0',
    BROWSABLE_DOCS: 'no',
    TOKEN_SECRET: testSecret,
    ...environment,
  });
  const parts: AppParts = {
    config,
    db,
    clock,
    ids: randomIds,
    tokenKey,
    keys: keys ?? (await testKeys),
    live,
  };
  const app = await buildApp(parts);
  // So that the address of a request is known when a phone makes its proof for it.
  const address = await app.listen({ host: '127.0.0.1', port });
  const close = async () => {
    await app.close();
    await live.close();
    await db.close();
    await database.drop();
  };
  return { app, parts, clock, address, ownerUrl: database.url, close };
}

/** Begins at the present, because a pass must not have ended; each look is a millisecond later than the one before. */
function testClock(): TestClock {
  let next = Date.now();
  return {
    now: () => {
      next += 1;
      return new Date(next);
    },
    set: (at) => {
      next = Date.parse(at);
    },
  };
}
