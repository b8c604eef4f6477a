import { type ChildProcess, spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { openEventStream } from '../support/event-stream.ts';

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
    [{ NODE_ENV: 'production' }, /TOKEN_SECRET: it must be set in production/],
    [{ LOG_LEVEL: 'loud', BROWSABLE_DOCS: 'maybe' }, /LOG_LEVEL.*; BROWSABLE_DOCS: it must be yes or no/],
  ])('%j are refused in a sentence', (environment, sentence) => {
    expect(() => readConfig(environment)).toThrow(sentence);
  });

  test('an empty setting is as good as none', () => {
    expect(readConfig({ PORT: '', DATABASE_URL: '' })).toMatchObject({ port: 4070, databaseUrl: undefined });
  });
});
