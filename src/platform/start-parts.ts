/** Brings up what the service stands on: the database, migrated, the live lines, the key of the passes. */
import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Config } from '../config.ts';
import { type AppParts, randomIds, systemClock } from './app-parts.ts';
import { openDatabase } from './database.ts';
import { listenToLedger } from './live-lines.ts';
import { ensureDatabase, migrate } from './migrate.ts';
import { startPostgres } from './postgres/embedded-postgres.ts';

export interface StartedParts {
  readonly parts: AppParts;
  /** Lets go of everything, in the opposite order. */
  readonly stop: () => Promise<void>;
}

export type Say = (line: string) => void;

/** Throws an Error in plain words where the database cannot be reached or brought to the present shape. */
export async function startParts(config: Config, say: Say): Promise<StartedParts> {
  const { url, stop: stopPostgres } = await startDatabase(config, say);
  try {
    await migrate(url, say);
    const db = openDatabase(url, { connections: 20 });
    const live = await listenToLedger(url);
    const parts: AppParts = {
      config,
      db,
      clock: systemClock,
      ids: randomIds,
      tokenKey: tokenKey(config),
      live,
    };
    const stop = async () => {
      await live.close();
      await db.close();
      await stopPostgres();
    };
    return { parts, stop };
  } catch (error) {
    await stopPostgres();
    throw error;
  }
}

/** The database of the settings, or the embedded one; it is made where it is missing, but not filled. */
export async function startDatabase(
  config: Config,
  say: Say,
): Promise<{ readonly url: string; readonly stop: () => Promise<void> }> {
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

/** Made once and kept beside the data, so that passes stay good over a restart. */
function tokenKey({ tokenSecret, folder }: Config): Uint8Array {
  if (tokenSecret !== undefined) return new TextEncoder().encode(tokenSecret);
  const file = join(folder, 'token-secret');
  if (!existsSync(file)) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, randomBytes(32).toString('hex'), { mode: 0o600 });
  }
  return new TextEncoder().encode(readFileSync(file, 'utf8').trim());
}
