import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp, testSecret } from '../support/test-app.ts';
import { call, setUp } from './accounts-client.ts';

let service: TestApp;
/** Its keys are not those of whoever runs the tests. */
const folder = mkdtempSync(join(tmpdir(), 'ringledger-first-account-'));
beforeAll(async () => {
  service = await buildTestApp();
});
afterAll(async () => {
  await service.close();
  rmSync(folder, { recursive: true });
});

const checkout = fileURLToPath(new URL('../..', import.meta.url));

interface Ran {
  readonly code: number;
  readonly printed: string;
  readonly said: string;
}

/** As `npm run --silent first-account -- ...` runs it, beside the running service. */
function firstAccount(...options: readonly string[]): Promise<Ran> {
  const env = {
    ...process.env,
    ...{ NODE_ENV: 'test', DATABASE_URL: service.ownerUrl, TOKEN_SECRET: testSecret },
    RINGLEDGER_FOLDER: folder,
  };
  const command = [
    '--disable-warning=DeprecationWarning',
    '--import',
    'tsx',
    'src/commands/first-account.ts',
  ];
  return new Promise((done) => {
    execFile(process.execPath, [...command, ...options], { cwd: checkout, env }, (error, printed, said) => {
      done({ code: typeof error?.code === 'number' ? error.code : 0, printed, said });
    });
  });
}

describe('the command for the first account', () => {
  it('names what is missing or not in form, and shows an example', async () => {
    const { code, printed, said } = await firstAccount('--sign-in', 'a b');
    expect({ code, printed }).toEqual({ code: 1, printed: '' });
    expect(said).toContain('--sign-in: it must have 1 to 100 letters');
    expect(said).toContain('--name: it is missing');
    expect(said).toContain('For example: --sign-in ada --name "Ada Brandt"');
    expect(said).not.toMatch(/^ {4}at /m);
  });

  it('prints a set-up code and nothing else, and is refused once that manager can sign in', async () => {
    const first = await firstAccount('--sign-in', 'Ada', '--name', 'Ada Brandt');
    expect(first).toMatchObject({ code: 0 });
    expect(first.printed).toMatch(/^([0-9A-HJKMNP-TV-Z]{5}-){4}[0-9A-HJKMNP-TV-Z]{5}\n$/);
    const { id } = await service.parts.db.prisma.account.findUniqueOrThrow({ where: { signIn: 'ada' } });
    const ada = await setUp(service, { accountId: id, signIn: 'ada', setupCode: first.printed });
    const current = await call(service, 'get', '/sessions/current', { token: ada.token });
    expect(current.body.account).toMatchObject({ name: 'Ada Brandt', duty: 'manager', wholeService: true });
    const second = await firstAccount('--sign-in', 'eve', '--name', 'Eve');
    expect({ code: second.code, printed: second.printed }).toEqual({ code: 1, printed: '' });
    expect(second.said).toContain('There is a manager of the whole service who can sign in');
  }, 180_000);
});
