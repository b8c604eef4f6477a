/**
 * `npm run drift`: do the migrations, applied to an empty database, make exactly what the schema says? What only
 * the migrations say (checks, triggers) is not the schema's business and is not looked at.
 */
import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { readConfig } from '../config.ts';
import { ensureDatabase, migrate, runPrisma } from '../platform/migrate.ts';
import { startDatabase } from '../platform/start-parts.ts';

const say = (line: string) => console.error(line);

async function drift(serverUrl: string): Promise<boolean> {
  const name = `ringledger_drift_${randomBytes(6).toString('hex')}`;
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  await ensureDatabase(url.href);
  try {
    await migrate(url.href, say);
    const compare = [
      '--from-config-datasource',
      '--to-schema',
      'prisma/schema.prisma',
      '--script',
      '--exit-code',
    ];
    const { status, said } = await runPrisma(['migrate', 'diff', ...compare], url.href);
    if (status === 0) say('The migrations make exactly what the schema says.');
    else say(`The migrations and the schema differ; this is missing in the migrations:\n${said}`);
    return status === 0;
  } finally {
    const client = new pg.Client({ connectionString: serverUrl });
    await client.connect();
    await client.query(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`);
    await client.end();
  }
}

try {
  const { url, stop } = await startDatabase(readConfig(process.env), say);
  try {
    if (!(await drift(url))) process.exitCode = 1;
  } finally {
    await stop();
  }
} catch (error) {
  say(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
