/** People of the office at work over the API: each with a name, a password and an authenticator app. */
import request from 'supertest';
import { codeAt } from '../../src/access/accounts/one-time-code.ts';
import { makeFirstAccount } from '../../src/access/index.ts';
import type { TestApp } from '../support/test-app.ts';

type Method = 'get' | 'post' | 'patch' | 'delete';

interface Call {
  readonly token?: string;
  readonly body?: object;
  readonly version?: number;
}

export type Answer = request.Response;

export interface Colleague {
  readonly accountId: string;
  readonly signIn: string;
  readonly password: string;
  /** Of the authenticator app, in base 32. */
  readonly secret: string;
  /** Of the session that setting up began. */
  readonly token: string;
}

export const password = 'a quiet lope to the far cone';

export function call(service: TestApp, method: Method, path: string, asked: Call = {}) {
  const sent = request(service.app.server)[method](`/v1${path}`);
  if (asked.token !== undefined) sent.set('authorization', `Bearer ${asked.token}`);
  if (asked.version !== undefined) sent.set('if-match', `"${asked.version}"`);
  return asked.body === undefined ? sent : sent.send(asked.body);
}

export const refusal = ({ status, body }: Answer) => ({ status, code: body.code });

/** What the app shows at the service's time. */
export const codeNow = ({ clock }: TestApp, secret: string): string => codeAt(secret, clock.now());

/** The app shows its next code: none is taken twice. */
export function waitForNextCode({ clock }: TestApp, seconds = 30): void {
  clock.set(new Date(clock.now().getTime() + seconds * 1_000).toISOString());
}

/** The first manager of the whole service, set up. */
export async function firstManager(service: TestApp, signIn = 'ada'): Promise<Colleague> {
  const { account, setupCode } = await makeFirstAccount(service.parts, { name: 'Ada Brandt', signIn });
  return setUp(service, { accountId: account.id, signIn, setupCode });
}

/** A colleague made by a manager, set up. */
export async function colleague(service: TestApp, manager: Colleague, asked: object): Promise<Colleague> {
  const body = { name: 'Bo Lindqvist', duty: 'secretary', wholeService: true, ...asked };
  const made = await call(service, 'post', '/accounts', { token: manager.token, body });
  if (made.status !== 201) throw new Error(JSON.stringify(made.body));
  const { account, setupCode } = made.body;
  return setUp(service, { accountId: account.id, signIn: account.signIn, setupCode });
}

interface Invitation {
  readonly accountId: string;
  readonly signIn: string;
  readonly setupCode: string;
}

export async function setUp(
  service: TestApp,
  { accountId, signIn, setupCode }: Invitation,
): Promise<Colleague> {
  const begun = await call(service, 'post', '/account-setups', { body: { setupCode } });
  if (begun.status !== 201) throw new Error(JSON.stringify(begun.body));
  const { secret } = begun.body.totp;
  const body = { setupCode, password, totpCode: codeNow(service, secret) };
  const done = await call(service, 'post', '/account-setups/completions', { body });
  if (done.status !== 201) throw new Error(JSON.stringify(done.body));
  return { accountId, signIn, password, secret, token: done.body.token };
}

/** With the code that the app shows, where nothing else is said. */
export function signIn(service: TestApp, who: Colleague, typed: object = {}) {
  const { signIn: name, password: known, secret } = who;
  const body = { signIn: name, password: known, totpCode: codeNow(service, secret), ...typed };
  return call(service, 'post', '/sessions', { body });
}

/** The lines of the service's own ledger from a line on. */
export async function linesAfter({ parts }: TestApp, sequence = 0) {
  const rows = await parts.db.prisma.ledgerLine.findMany({
    where: { ledgerId: '00000000-0000-0000-0000-000000000000', sequence: { gt: sequence } },
    orderBy: { sequence: 'asc' },
  });
  return rows.map(({ type, body, actor, sequence: number }) => ({ type, body, actor, sequence: number }));
}

export const lastLine = async (service: TestApp): Promise<number> =>
  (await linesAfter(service)).at(-1)?.sequence ?? 0;
