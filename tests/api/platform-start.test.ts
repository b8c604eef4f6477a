import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { randomIds } from '../../src/platform/app-parts.ts';
import { ensureServiceLogin } from '../../src/platform/postgres/service-role.ts';
import { withClient } from '../../src/platform/postgres/with-client.ts';
import { ensureSigningKey, nextSigningKeys, saveSigningKeys } from '../../src/platform/service-keys.ts';
import { startParts } from '../../src/platform/start-parts.ts';
import { openEventStream } from '../support/event-stream.ts';
import { createTestDatabase, type TestDatabase } from '../support/test-database.ts';

const checkout = fileURLToPath(new URL('../..', import.meta.url));

interface Running {
  readonly child: ChildProcess;
  readonly address: string;
  /** All that it said so far. */
  readonly said: () => string;
  readonly ended: Promise<number | null>;
}

/** Starts the service as whoever has just cloned it does: no DATABASE_URL, the embedded PostgreSQL. */
function start(folder: string): Promise<Running> {
  const { DATABASE_URL: _theirs, ...environment } = process.env;
  const env = {
    ...environment,
    NODE_ENV: 'development',
    PORT: '0',
    RINGLEDGER_FOLDER: folder,
    BROWSABLE_DOCS: 'no',
  };
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts'], { cwd: checkout, env });
  let text = '';
  const ended = new Promise<number | null>((done) => child.once('exit', done));
  return new Promise((done, failed) => {
    const hear = (chunk: Buffer) => {
      text += chunk.toString('utf8');
      const address = /listens at (\S+);/.exec(text)?.[1];
      if (address !== undefined) done({ child, address, said: () => text, ended });
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    void ended.then(() => failed(new Error(`the service did not start: ${text}`)));
  });
}

describe('starting and stopping, on a PostgreSQL that comes with it', () => {
  let folder: string;
  beforeAll(() => {
    const above = mkdtempSync(join(tmpdir(), 'ringledger-start-'));
    // PostgreSQL may run as another user, who must be able to enter.
    chmodSync(above, 0o711);
    folder = join(above, 'home');
  });
  afterAll(() => rmSync(join(folder, '..'), { recursive: true, force: true }));

  test('it sets itself up; killed in the middle it starts again on what it left; stopped it leaves nothing', async () => {
    const first = await start(folder);
    expect(first.said()).toContain('Setting up PostgreSQL');
    expect((await fetch(`${first.address}/health/ready`)).status).toBe(200);
    first.child.kill('SIGKILL');
    await first.ended;

    const second = await start(folder);
    expect(second.said()).toContain('running already');
    expect(second.said()).not.toContain('Bringing the database to the present shape');
    expect((await fetch(`${second.address}/health/ready`)).status).toBe(200);
    second.child.kill('SIGTERM');
    // Passed on twice, as npm and the terminal do; it is one and the same wish.
    second.child.kill('SIGTERM');
    expect(await second.ended).toBe(0);

    const third = await start(folder);
    expect(third.said()).toContain('Starting PostgreSQL');
    const unheard = await openEventStream(
      `${third.address}/v1/shows/0198f0a0-0000-7000-8000-000000000000/events`,
    );
    expect(unheard.status).toBe(404);
    third.child.kill('SIGINT');
    expect(await third.ended).toBe(0);
  }, 240_000);
});

describe('the settings', () => {
  test.each([
    [{ PORT: '99999' }, /PORT/],
    [{ PORT: 'eighty' }, /PORT: it must be a port number/],
    [{ DATABASE_URL: 'mysql://x/y' }, /DATABASE_URL: it must be an address like postgresql:/],
    [{ TOKEN_SECRET: 'short' }, /TOKEN_SECRET: it must have at least 32 characters/],
    [{ SERVICE_DATABASE_URL: 'x' }, /SERVICE_DATABASE_URL: it must be an address like postgresql:/],
    [{ LOG_LEVEL: 'loud', BROWSABLE_DOCS: 'maybe' }, /LOG_LEVEL.*; BROWSABLE_DOCS: it must be yes or no/],
  ])('%j are refused in a sentence', (environment, sentence) => {
    expect(() => readConfig(environment)).toThrow(sentence);
  });

  test('an empty setting is as good as none', () => {
    expect(readConfig({ PORT: '', DATABASE_URL: '' })).toMatchObject({ port: 4070, databaseUrl: undefined });
  });
});

/** As someone who makes it with `openssl rand -base64 48` has it. */
const ownSecret = randomBytes(48).toString('base64');

describe('a start in production', () => {
  let database: TestDatabase;
  let folder: string;
  let keysFile: string;
  beforeAll(async () => {
    database = await createTestDatabase();
    folder = mkdtempSync(join(tmpdir(), 'ringledger-production-'));
    keysFile = join(folder, 'keys.json');
    await ensureSigningKey(keysFile);
  });
  afterAll(async () => {
    await database.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  const start = (environment: NodeJS.ProcessEnv = {}) => {
    const given = { NODE_ENV: 'production', TOKEN_SECRET: ownSecret, SIGNING_KEYS_FILE: keysFile };
    const config = readConfig({ ...given, DATABASE_URL: database.url, ...environment });
    return startParts(config, () => undefined);
  };
  const asOwner = (text: string) => withClient(database.url, (owner) => owner.query(text));

  test('is made where everything is its own, and works as a role that cannot change evidence', async () => {
    const { parts, stop } = await start();
    const { rows } = await parts.db.pool.query('SELECT current_user AS name');
    expect(rows).toEqual([{ name: expect.stringMatching(/^ringledger_service_/) }]);
    await stop();
    await asOwner(`DROP ROLE ${rows[0].name}`);
  });

  test.each([
    [{ TOKEN_SECRET: '' }, /TOKEN_SECRET: it must be set in production; `openssl rand/],
    [{ TOKEN_SECRET: 'changeme'.repeat(4) }, /TOKEN_SECRET: it is too easy to guess; `openssl rand/],
    [{ SIGNING_KEYS_FILE: '' }, /SIGNING_KEYS_FILE: it must be set in production.*new-signing-key/],
    [{ TOKEN_SECRET: '', SIGNING_KEYS_FILE: '' }, /TOKEN_SECRET: .*; SIGNING_KEYS_FILE: /],
  ])('with %j is refused in a sentence', (environment, sentence) => {
    expect(() => start(environment)).toThrow(sentence);
  });

  test.each(publishedSecrets())('with the secret "%s" is refused: it stands in the source', (secret) => {
    expect(() => start({ TOKEN_SECRET: secret })).toThrow(
      /TOKEN_SECRET: it is one of the tests' or the demo's/,
    );
  });

  test('with signing keys that are not there is refused, and makes none', async () => {
    const file = join(folder, 'elsewhere.json');
    await expect(start({ SIGNING_KEYS_FILE: file })).rejects.toThrow(
      /there is no .*elsewhere\.json.*new-signing-key/,
    );
    expect(existsSync(file)).toBe(false);
  });

  test.each(['644', '640', '604', '620', '602'])(
    'with signing keys of mode %s is as the bits say',
    async (mode) => {
      const file = join(folder, `mode-${mode}.json`);
      await ensureSigningKey(file);
      chmodSync(file, Number.parseInt(mode, 8));
      const started = start({ SIGNING_KEYS_FILE: file });
      // The group may be let in to read, where a secret is mounted for it; nobody else, and nobody to change them.
      if (mode === '640') return (await started).stop();
      await expect(started).rejects.toThrow(/other users .* may read or change .*chmod 600/);
    },
  );

  test('with the signing keys of the demo is refused', async () => {
    const file = join(folder, 'demo.json');
    await ensureSigningKey(file, { demo: true });
    await expect(start({ SIGNING_KEYS_FILE: file })).rejects.toThrow(
      /demo\.json are the demo's.*new-signing-key/,
    );
    saveSigningKeys(file, await nextSigningKeys(file));
    await expect(start({ SIGNING_KEYS_FILE: file })).rejects.toThrow(/are the demo's/);
  });

  test('with a file that holds no keys is refused without showing what it holds', async () => {
    const file = join(folder, 'broken.json');
    writeFileSync(file, '{"keys": [{"d": "private"}]}', { mode: 0o600 });
    const refused = await start({ SIGNING_KEYS_FILE: file }).catch((error: Error) => error.message);
    expect(refused).toMatch(/signing keys in .*broken\.json cannot be read/);
    expect(refused).not.toContain('private');
  });

  test('on a database with accounts of the demo is refused, on one without them it is not', async () => {
    const id = randomIds.next();
    await asOwner(`INSERT INTO account (id, name, sign_in, duty, demo, created_at)
                   VALUES ('${id}', 'Show office', 'office', 'manager', true, now())`);
    await expect(start()).rejects.toThrow(/database holds 1 account of the demo.*database of its own/);
    await asOwner(`UPDATE account SET demo = false WHERE id = '${id}'`);
    await (await start()).stop();
  });

  test('without the owner: it neither migrates nor needs to, and refuses a role with too many rights', async () => {
    const url = await ensureServiceLogin(database.url, randomBytes(32));
    const { parts, stop } = await start({ DATABASE_URL: '', SERVICE_DATABASE_URL: url });
    expect(parts.db.url).toBe(url);
    await stop();
    const asTheOwner = start({ DATABASE_URL: '', SERVICE_DATABASE_URL: database.url });
    await expect(asTheOwner).rejects.toThrow(/must not work as the role/);
    await asOwner('DELETE FROM _prisma_migrations');
    const unmigrated = start({ DATABASE_URL: '', SERVICE_DATABASE_URL: url });
    await expect(unmigrated).rejects.toThrow(/does not have the present shape: run `npm run migrate`/);
    await asOwner(`DROP ROLE ${new URL(url).username}`);
  });
});

/** Every text of tests, benches and commands that calls itself a secret and is long enough for one. */
function publishedSecrets(): string[] {
  const files = ['tests', 'src/commands', '.ci', '.config'].flatMap((folder) =>
    readdirSync(join(checkout, folder), { recursive: true, withFileTypes: true })
      .filter((found) => found.isFile())
      .map((found) => readFileSync(join(found.parentPath, found.name), 'utf8')),
  );
  const texts = files.flatMap((text) => text.match(/(?<=')[^'\n]*\bsecret\b[^'\n]*(?=')/g) ?? []);
  return [...new Set(texts)].filter((text) => text.length >= 32 && /^an? |^another /.test(text));
}
