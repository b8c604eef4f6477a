/** Brings up what the service stands on: the database, migrated, the live lines, the keys. */
import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Config } from '../config.ts';
import { type AppParts, randomIds, systemClock } from './app-parts.ts';
import { openDatabase } from './database.ts';
import { listenToLedger } from './live-lines.ts';
import { ensureDatabase, migrate, mustBeMigrated } from './migrate.ts';
import { startPostgres } from './postgres/embedded-postgres.ts';
import { ensureServiceLogin, mustBeConfined } from './postgres/service-role.ts';
import { mustBePrivateFile, mustHoldNoDemo, mustNotBeOfTheDemo } from './production.ts';
import { ensureSigningKey, readKeyFile, type ServiceKeys, serviceKeys } from './service-keys.ts';

export interface StartedParts {
  readonly parts: AppParts;
  /** Lets go of everything, in the opposite order. */
  readonly stop: () => Promise<void>;
}

export type Say = (line: string) => void;

/** A database to connect to, and how to let go of its server. */
interface Place {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

/**
 * Throws an Error in plain words where the database cannot be reached or brought to the present shape, where the
 * service would have more rights in it than it should, or where a start in production finds something of the demo.
 */
export async function startParts(config: Config, say: Say): Promise<StartedParts> {
  const keys = await keysOf(config);
  const passKey = tokenKey(config);
  const { url, stop: stopPostgres } = await startWork(config, { passKey, say });
  const db = openDatabase(url, { connections: 20 });
  try {
    await mustHoldNoDemo(config, db.sql);
    const live = await listenToLedger(url);
    const parts: AppParts = {
      ...{ config, db, live, keys, tokenKey: passKey },
      ...{ clock: systemClock, ids: randomIds },
    };
    const stop = async () => {
      await live.close();
      await db.close();
      await stopPostgres();
    };
    return { parts, stop };
  } catch (error) {
    await db.close();
    await stopPostgres();
    throw error;
  }
}

/** The database as the service works in it: migrated by its owner, under a role that cannot change evidence. */
async function startWork(
  config: Config,
  { passKey, say }: { readonly passKey: Uint8Array; readonly say: Say },
): Promise<Place> {
  const { databaseUrl, serviceDatabaseUrl } = config;
  if (databaseUrl === undefined && serviceDatabaseUrl !== undefined) {
    // Who migrates is not known to this process, and need not be.
    await mustBeMigrated(serviceDatabaseUrl);
    await mustBeConfined(serviceDatabaseUrl);
    return { url: serviceDatabaseUrl, stop: async () => undefined };
  }
  const owner = await startDatabase(config, say);
  try {
    await migrate(owner.url, say);
    const url = serviceDatabaseUrl ?? (await ensureServiceLogin(owner.url, passKey));
    await mustBeConfined(url);
    return { url, stop: owner.stop };
  } catch (error) {
    await owner.stop();
    throw error;
  }
}

/** The database of the settings, or the embedded one, as its owner; made where it is missing, but not filled. */
export async function startDatabase(config: Config, say: Say): Promise<Place> {
  if (config.databaseUrl !== undefined) {
    await ensureDatabase(config.databaseUrl);
    return { url: config.databaseUrl, stop: async () => undefined };
  }
  const server = await startPostgres({ folder: join(config.folder, 'postgres'), say });
  const url = new URL(server.url);
  url.pathname = '/ringledger';
  await ensureDatabase(url.href);
  return { url: url.href, stop: server.stop };
}

/** Where the keys stand that sign postings and seal the ledger. */
export const signingKeysFile = ({ signingKeysFile, folder }: Config): string =>
  signingKeysFile ?? join(folder, 'signing-keys.json');

/** Outside production a first key is made where there is none. */
async function keysOf(config: Config): Promise<ServiceKeys> {
  const file = signingKeysFile(config);
  if (config.production) mustBePrivateFile(file);
  const stored = config.production ? readKeyFile(file) : await ensureSigningKey(file);
  if (config.production) mustNotBeOfTheDemo(file, stored);
  return serviceKeys(stored);
}

/** Made once and kept beside the data, so that passes stay good over a restart. */
export function tokenKey({ tokenSecret, folder }: Config): Uint8Array {
  if (tokenSecret !== undefined) return new TextEncoder().encode(tokenSecret);
  const file = join(folder, 'token-secret');
  if (!existsSync(file)) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, randomBytes(32).toString('hex'), { mode: 0o600 });
  }
  return new TextEncoder().encode(readFileSync(file, 'utf8').trim());
}
