/** `npm run demo [-- --fresh]`: an invented show on a service that runs, filled through its own API. */
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import pg from 'pg';
import { readConfig } from '../config.ts';
import { type RunningService, startService, stopOnSignal } from '../main.ts';
import { startPostgres } from '../platform/postgres/embedded-postgres.ts';
import { ensureSigningKey } from '../platform/service-keys.ts';
import { apiAt } from './demo/api.ts';
import { readDemoShow } from './demo/demo-files.ts';
import { fillDemo } from './demo/fill-demo.ts';
import { findDemo } from './demo/find-demo.ts';
import { planTour, type Tour } from './demo/look-around.ts';
import { issueServicePass } from './service-pass.ts';

const say = (line: string) => console.error(line);

/** Beside the database of `npm start`, so that a fresh demo never takes a real show with it. */
const demoDatabase = 'ringledger_demo';

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { fresh: { type: 'boolean', default: false } } });
  process.env.LOG_LEVEL ??= 'warn';
  await provideKeys();
  let running: RunningService | undefined;
  stopOnSignal(() => running, say);
  const stopPostgres = await provideDatabase(values.fresh);
  try {
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
  const tour = await showAround(running, values.fresh);
  console.log(printed(running.address, tour));
}

/** Of their own and marked as the demo's, so that no real service signs with them. */
async function provideKeys(): Promise<void> {
  const { signingKeysFile, folder } = readConfig(process.env);
  const file = signingKeysFile ?? join(folder, 'demo-signing-keys.json');
  await ensureSigningKey(file, { demo: true });
  process.env.SIGNING_KEYS_FILE = file;
}

/** Where no DATABASE_URL is set: the embedded PostgreSQL, with a database for the demo alone. */
async function provideDatabase(fresh: boolean): Promise<() => Promise<void>> {
  const { databaseUrl, folder } = readConfig(process.env);
  if (databaseUrl !== undefined) {
    if (fresh)
      say('Nothing is removed from a database of your own: the fresh show is set up beside the old one.');
    return async () => undefined;
  }
  const server = await startPostgres({ folder: join(folder, 'postgres'), say });
  try {
    if (fresh) await removeDemo(server.url);
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

async function showAround({ address, parts }: RunningService, fresh: boolean): Promise<Tour> {
  const api = apiAt(address);
  const servicePass = await issueServicePass(parts, { label: 'Demo', hours: 72 });
  const found = fresh ? undefined : await findDemo(api, readDemoShow());
  if (found !== undefined)
    say('The show of an earlier start is in place; `npm run demo -- --fresh` begins again.');
  const showId = found ?? (await fillDemo({ address, servicePass, say }));
  return planTour({ api, address, servicePass, showId });
}

function printed(address: string, { passes, stops }: Tour): string {
  const variables = [...passes].map(([name, token]) => `${name}=${token}`);
  const tour = stops.flatMap(({ what, commands }, index) => [
    `${index + 1}. ${what}`,
    ...commands.map((command) => `     ${command}`),
  ]);
  return [
    '',
    `The show is at ${address}; its API is described at ${address}/docs`,
    'Ctrl-C stops it, and the data stays for the next start.',
    '',
    'Passes, good for three days. Paste them into a shell, and the commands below work as they stand:',
    '',
    ...variables,
    '',
    'Things to look at',
    '',
    ...tour,
    '',
    'Ringledger records and adds up; it does not rule. The governing body and the decisions of judges, steward and',
    'ground jury stand over it. Everyone in this show is invented.',
  ].join('\n');
}

main().catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
  process.exit(1);
});
