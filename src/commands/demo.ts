/** `npm run demo [-- --fresh]`: an invented show on a service that runs, filled through its own API. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import pg from 'pg';
import { readConfig } from '../config.ts';
import { type RunningService, startService, stopOnSignal } from '../main.ts';
import { startPostgres } from '../platform/postgres/embedded-postgres.ts';
import { ensureSigningKey } from '../platform/service-keys.ts';
import { apiAt } from './demo/api.ts';
import { readDemoShow } from './demo/demo-files.ts';
import { fillDemo, reopenDemo } from './demo/fill-demo.ts';
import { findDemo } from './demo/find-demo.ts';
import { KeptFiles } from './demo/kept-files.ts';
import { inviteOwnPhones } from './demo/own-phone.ts';
import { printed } from './demo/printed.ts';
import { findPlaces } from './demo/tour-places.ts';
import { resultStops } from './demo/tour-results.ts';
import { trustStops } from './demo/tour-trust.ts';

const say = (line: string) => console.error(line);

/** Beside the database of `npm start`, so that a fresh demo never takes a real show with it. */
const demoDatabase = 'ringledger_demo';

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { fresh: { type: 'boolean', default: false } } });
  process.env.LOG_LEVEL ??= 'warn';
  let running: RunningService | undefined;
  stopOnSignal(() => running, say);
  const files = new KeptFiles(join(readConfig(process.env).folder, 'demo'));
  const stopPostgres = await provideDatabase(values.fresh, files);
  try {
    await provideSigningKeys();
    const service = await startService(say);
    const stop = async () => {
      await service.stop();
      await stopPostgres();
    };
    running = { ...service, stop };
  } catch (error) {
    await stopPostgres();
    throw error;
  }
  try {
    console.log(await showAround(running, { files, fresh: values.fresh }));
  } catch (error) {
    await running.stop();
    throw error;
  }
}

/** Where no DATABASE_URL is set: the embedded PostgreSQL, with a database for the demo alone. */
async function provideDatabase(fresh: boolean, files: KeptFiles): Promise<() => Promise<void>> {
  const { databaseUrl, folder } = readConfig(process.env);
  if (databaseUrl !== undefined) {
    if (fresh)
      say('Nothing is removed from a database of your own: the fresh show is set up beside the old one.');
    return async () => undefined;
  }
  const server = await startPostgres({ folder: join(folder, 'postgres'), say });
  try {
    if (fresh) {
      await removeDemo(server.url);
      for (const file of [files.logInsFile, files.phonesFile]) rmSync(file, { force: true });
    }
  } catch (error) {
    await server.stop();
    throw error;
  }
  const url = new URL(server.url);
  url.pathname = `/${demoDatabase}`;
  process.env.DATABASE_URL = url.href;
  return server.stop;
}

async function removeDemo(serverUrl: string): Promise<void> {
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  try {
    await client.query(`DROP DATABASE IF EXISTS ${demoDatabase}`);
  } catch (cause) {
    throw new Error('The old show cannot be removed while another demo is running: stop that one first.', {
      cause,
    });
  } finally {
    await client.end();
  }
}

/** Marked as the demo's, so that no service in production takes them. */
async function provideSigningKeys(): Promise<void> {
  const { signingKeysFile, folder } = readConfig(process.env);
  if (signingKeysFile !== undefined) return;
  const file = join(folder, 'demo', 'signing-keys.json');
  await ensureSigningKey(file, { demo: true });
  process.env.SIGNING_KEYS_FILE = file;
}

interface Beginning {
  readonly files: KeptFiles;
  readonly fresh: boolean;
}

async function showAround({ address, parts }: RunningService, { files, fresh }: Beginning): Promise<string> {
  const show = readDemoShow();
  const office = { api: apiAt(address), parts, files, people: show.office };
  const found = fresh ? undefined : await findDemo(office.api, show);
  if (found !== undefined)
    say('The show of an earlier start is in place; `npm run demo -- --fresh` begins again.');
  const demo = await (found === undefined ? fillDemo(office, show, say) : reopenDemo(office, found));
  const places = await findPlaces(demo);
  const listensEverywhere = ['0.0.0.0', '::'].includes(parts.config.host);
  return printed({
    ...{ places, logInsFile: files.logInsFile, accounts: files.logIns()?.accounts ?? {} },
    ownPhones: await inviteOwnPhones(demo, listensEverywhere),
    stops: [...resultStops(places), ...trustStops(places, files.folder)],
  });
}

main().catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
  process.exit(1);
});
