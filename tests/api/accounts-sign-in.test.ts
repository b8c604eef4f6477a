import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { isPassword } from '../../src/access/accounts/password-hash.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import {
  type Answer,
  type Colleague,
  call,
  codeNow,
  colleague,
  firstManager,
  lastLine,
  linesAfter,
  password,
  refusal,
  signIn,
  waitForNextCode,
} from './accounts-client.ts';

let service: TestApp;
let ada: Colleague;
let count = 0;
const someone = () => colleague(service, ada, { signIn: `colleague.${++count}` });

beforeAll(async () => {
  service = await buildTestApp();
  ada = await firstManager(service);
});
afterAll(() => service.close());
beforeEach(() => waitForNextCode(service));

const refused = { status: 401, code: 'sign_in_refused' };
const slowed = { status: 429, code: 'sign_in_slowed' };
const session = (token: string) => call(service, 'get', '/sessions/current', { token });

describe('signing in', () => {
  it('by name, password and code opens a session that says whose it is', async () => {
    const answer = await signIn(service, ada, { signIn: ' ADA ' });
    expect(answer.status).toBe(201);
    expect(answer.headers['cache-control']).toBe('no-store');
    expect(answer.body.token).toMatch(/^rls_[\w-]{43}$/);
    const current = await session(answer.body.token);
    expect(current.body).toEqual({
      sessionId: answer.body.sessionId,
      endsAt: answer.body.endsAt,
      account: {
        ...{ id: ada.accountId, name: 'Ada Brandt', signIn: 'ada', duty: 'manager' },
        ...{ wholeService: true, showIds: [] },
      },
    });
  });

  it('is answered the same, but for the number of the request, whichever of the three is wrong', async () => {
    const bo = await someone();
    waitForNextCode(service);
    const body = { name: 'Cy Okafor', signIn: `invited.${++count}`, duty: 'secretary', wholeService: true };
    await call(service, 'post', '/accounts', { token: ada.token, body });
    const answers = [
      await signIn(service, bo, { signIn: 'nobody.here' }),
      await signIn(service, bo, { password: `${password}!` }),
      await signIn(service, bo, { totpCode: '000000' }),
      await signIn(service, bo, { password: 'x', totpCode: '000000' }),
      await signIn(service, bo, { signIn: body.signIn }),
    ];
    const told = ({ status, body: { requestId, ...rest }, headers }: Answer) => {
      const { date, 'x-request-id': id, ...others } = headers;
      return { status, rest, others, requestId: typeof requestId, named: [typeof date, id === requestId] };
    };
    for (const answer of answers) expect(told(answer)).toEqual(told(answers[0] as Answer));
    expect(refusal(answers[0] as Answer)).toEqual(refused);
    expect((await signIn(service, bo)).status).toBe(201);
  });

  it('takes one hash of work for a name that nobody has as for one that somebody has', async () => {
    const bo = await someone();
    const milliseconds = async (typed: object) => {
      const start = performance.now();
      expect(refusal(await signIn(service, bo, { password: 'a wrong one', ...typed }))).toEqual(refused);
      return performance.now() - start;
    };
    await isPassword('warm up', null);
    const [known, unknown]: [number[], number[]] = [[], []];
    // By turns, and of each the fastest, because other tests run beside this one.
    for (let tries = 0; tries < 4; tries += 1) {
      known.push(await milliseconds({}));
      unknown.push(await milliseconds({ signIn: 'nobody.by.that.name' }));
    }
    const [fastest, slowest] = [Math.min(...known), Math.min(...unknown)].sort((a, b) => a - b);
    // A refusal without the hash would be some ten times as fast.
    expect((slowest ?? 0) / (fastest ?? 0)).toBeLessThan(3);
  });

  it('takes a code once, and none of an earlier step', async () => {
    const bo = await someone();
    const early = codeNow(service, bo.secret);
    waitForNextCode(service);
    const code = codeNow(service, bo.secret);
    expect((await signIn(service, bo, { totpCode: code })).status).toBe(201);
    expect(refusal(await signIn(service, bo, { totpCode: code }))).toEqual(refused);
    expect(refusal(await signIn(service, bo, { totpCode: early }))).toEqual(refused);
  });

  it('with one code at two places at once lets one of them in', async () => {
    const bo = await someone();
    waitForNextCode(service);
    const totpCode = codeNow(service, bo.secret);
    const answers = await Promise.all([1, 2, 3].map(() => signIn(service, bo, { totpCode })));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 401, 401]);
  });

  it('bears a clock that is one step late', async () => {
    const bo = await someone();
    waitForNextCode(service, 60);
    const totpCode = codeNow(service, bo.secret);
    waitForNextCode(service);
    expect((await signIn(service, bo, { totpCode })).status).toBe(201);
  });

  it('asks for six digits, a password and a name, and names what is not in form', async () => {
    const body = { signIn: '', password: '', totpCode: '12345', more: true };
    const answer = await call(service, 'post', '/sessions', { body });
    expect(refusal(answer)).toEqual({ status: 400, code: 'invalid_request' });
    const fields = answer.body.errors.map(({ field }: { field: string }) => field).sort();
    expect(fields).toEqual(['/more', '/password', '/signIn', '/totpCode']);
    const control = await signIn(service, ada, { signIn: 'a\u0000da' });
    expect(refusal(control)).toEqual({ status: 400, code: 'invalid_request' });
  });
});

describe('guessing', () => {
  const wrong = (who: Colleague, typed: object = {}) =>
    signIn(service, who, { password: 'not the one', ...typed });
  const failFiveTimes = async (who: Colleague, typed: object = {}) => {
    for (let tries = 1; tries <= 5; tries += 1) {
      expect(refusal(await wrong(who, typed))).toEqual(refused);
    }
  };

  it('is slowed after five failures in a row, for the owner too, and says for how long', async () => {
    const bo = await someone();
    await failFiveTimes(bo);
    waitForNextCode(service, 1);
    const answer = await signIn(service, bo);
    expect(refusal(answer)).toEqual(slowed);
    const seconds = Number(answer.headers['retry-after']);
    expect(seconds).toBeGreaterThan(0);
    expect(seconds).toBeLessThanOrEqual(15);
    waitForNextCode(service, 30);
    expect((await signIn(service, bo)).status).toBe(201);
  });

  it('costs twice as long after the next failure, and nothing for tries within the wait', async () => {
    const bo = await someone();
    await failFiveTimes(bo);
    for (let tries = 0; tries < 3; tries += 1) expect(refusal(await wrong(bo))).toEqual(slowed);
    waitForNextCode(service, 16);
    expect(refusal(await wrong(bo))).toEqual(refused);
    const answer = await wrong(bo);
    expect(Number(answer.headers['retry-after'])).toBeGreaterThan(15);
    expect(Number(answer.headers['retry-after'])).toBeLessThanOrEqual(30);
  });

  it('begins anew after a sign-in that went well', async () => {
    const bo = await someone();
    for (let tries = 1; tries <= 4; tries += 1) await wrong(bo);
    waitForNextCode(service, 60);
    expect((await signIn(service, bo)).status).toBe(201);
    await failFiveTimes(bo);
  });

  it('a name that nobody has is slowed the same', async () => {
    const typed = { signIn: 'nobody.at.all' };
    await failFiveTimes(ada, typed);
    expect(refusal(await wrong(ada, typed))).toEqual(slowed);
    waitForNextCode(service, 16);
    expect(refusal(await wrong(ada, typed))).toEqual(refused);
  });

  it('many at once is no more than some in a row: five are tried, whatever comes beside them', async () => {
    const bo = await someone();
    const answers = await Promise.all(Array.from({ length: 12 }, () => wrong(bo)));
    const statuses = answers.map(({ status }) => status).sort();
    expect(statuses).toEqual([...Array(5).fill(401), ...Array(7).fill(429)]);
  });

  it('does not end the sessions that the owner has', async () => {
    const bo = await someone();
    await failFiveTimes(bo);
    expect((await session(bo.token)).status).toBe(200);
  });
});

describe('what the ledger of the service says', () => {
  it('of a sign-in: the session and whose it is; of a failed one the account, or null, never what was typed', async () => {
    const bo = await someone();
    waitForNextCode(service);
    const before = await lastLine(service);
    await signIn(service, bo, { password: 'secret-of-bo' });
    await signIn(service, bo, { signIn: 'typed-secret-name', password: 'secret-of-bo' });
    const begun = await signIn(service, bo);
    const lines = await linesAfter(service, before);
    const { accountId } = bo;
    const { sessionId } = begun.body;
    expect(lines.map(({ type, body, actor }) => ({ type, body, actor }))).toEqual([
      { type: 'session.refused', body: { accountId }, actor: { as: 'everyone' } },
      { type: 'session.refused', body: { accountId: null }, actor: { as: 'everyone' } },
      { type: 'session.begun', body: { sessionId, accountId }, actor: { as: 'everyone' } },
    ]);
    const all = JSON.stringify(await linesAfter(service));
    for (const secret of ['typed-secret-name', 'secret-of-bo', password, bo.token, bo.secret, 'Lindqvist']) {
      expect(all).not.toContain(secret);
    }
  });
});
