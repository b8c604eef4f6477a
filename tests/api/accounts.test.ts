import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { makeFirstAccount } from '../../src/access/index.ts';
import type { Problem } from '../../src/platform/problems/index.ts';
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
  setUp,
  signIn,
  waitForNextCode,
} from './accounts-client.ts';

let service: TestApp;
let ada: Colleague;
let count = 0;
const someone = (asked: object = {}) => colleague(service, ada, { signIn: `colleague.${++count}`, ...asked });

beforeAll(async () => {
  service = await buildTestApp();
  ada = await firstManager(service);
});
afterAll(() => service.close());
beforeEach(() => waitForNextCode(service));

const by = (who: Colleague) => ({
  get: (path: string) => call(service, 'get', path, { token: who.token }),
  post: (path: string, body: object = {}) => call(service, 'post', path, { token: who.token, body }),
  patch: (path: string, version: number, body: object) =>
    call(service, 'patch', path, { token: who.token, version, body }),
});
const current = (token: string) => call(service, 'get', '/sessions/current', { token });
const begin = (setupCode: string) => call(service, 'post', '/account-setups', { body: { setupCode } });
const complete = (body: object) => call(service, 'post', '/account-setups/completions', { body });
const newName = () => `colleague.${++count}`;
const notFound = { status: 404, code: 'not_found' };

async function addShow(): Promise<string> {
  const show = {
    ...{ id: service.parts.ids.next(), name: 'Aspen Hollow Open', place: 'Aspen Hollow' },
    ...{ timeZone: 'America/Chicago', firstDay: new Date('2026-10-31'), lastDay: new Date('2026-11-01') },
  };
  await service.parts.db.prisma.show.create({ data: { ...show, createdAt: service.clock.now() } });
  return show.id;
}

describe('a new account', () => {
  it('is made by a manager, with a code that is shown once and kept as a fingerprint', async () => {
    const asked = { name: ' Bo Lindqvist ', signIn: `Bo.${++count}`, duty: 'secretary', wholeService: true };
    const answer = await by(ada).post('/accounts', asked);
    expect(answer.status).toBe(201);
    expect(answer.headers['cache-control']).toBe('no-store');
    const { account, setupCode, setupEndsAt } = answer.body;
    expect(answer.headers.location).toBe(`/v1/accounts/${account.id}`);
    expect(account).toMatchObject({
      ...{ name: 'Bo Lindqvist', signIn: `bo.${count}`, duty: 'secretary', wholeService: true },
      ...{ showIds: [], state: 'invited', version: 1, closedAt: null },
    });
    expect(Date.parse(setupEndsAt) - Date.parse(account.createdAt)).toBe(24 * 3_600_000);
    const kept = await service.parts.db.prisma.account.findUniqueOrThrow({ where: { id: account.id } });
    expect(JSON.stringify({ ...kept, totpLastStep: null })).not.toContain(setupCode);
    expect((await by(ada).get(`/accounts/${account.id}`)).body).toEqual(account);
    expect((await by(ada).get('/accounts?limit=200')).body.items).toContainEqual(account);
  });

  it('needs a sign-in name that nobody has, also nobody whose account was closed', async () => {
    const bo = await someone();
    await by(ada).post(`/accounts/${bo.accountId}/closings`);
    const asked = { name: 'Bo', signIn: bo.signIn.toUpperCase(), duty: 'secretary', wholeService: true };
    const answer = await by(ada).post('/accounts', asked);
    expect(refusal(answer)).toEqual({ status: 409, code: 'already_exists' });
    expect(answer.body.errors[0].field).toBe('/signIn');
  });

  it('names shows that are there, or the whole service, and not both', async () => {
    const showId = await addShow();
    const post = (asked: object) =>
      by(ada).post('/accounts', { name: 'Cy', signIn: newName(), duty: 'secretary', ...asked });
    const bad = [{}, { wholeService: true, showIds: [showId] }];
    for (const asked of bad) {
      const answer = await post(asked);
      expect(answer.status).toBe(400);
      expect(answer.body.errors[0].field).toBe('/showIds');
    }
    const missing = await post({ showIds: [showId, ada.accountId] });
    expect(refusal(missing)).toEqual({ status: 422, code: 'unknown_reference' });
    expect(missing.body.errors).toEqual([{ field: '/showIds/1', message: 'there is no such show' }]);
    const made = await post({ showIds: [showId, showId] });
    expect(made.body.account).toMatchObject({ wholeService: false, showIds: [showId] });
  });

  it('takes no field that is not asked for, and no name that could turn a line around', async () => {
    const asked = { name: 'Cy', signIn: newName(), duty: 'secretary', wholeService: true };
    for (const more of [
      ...[{ demo: true }, { passwordHash: 'x' }, { version: 9 }, { duty: 'judge' }, { signIn: 'a b' }],
      ...[{ signIn: '' }, { signIn: '.cy' }, { name: 'C\u202Ey' }, { name: '' }],
    ]) {
      expect(refusal(await by(ada).post('/accounts', { ...asked, ...more }))).toEqual({
        ...{ status: 400, code: 'invalid_request' },
      });
    }
  });

  it('is not made, seen, changed, reset or closed by a secretary or points secretary, nor without a session', async () => {
    const path = `/accounts/${ada.accountId}`;
    const asks = (token?: string) => {
      const pass = token === undefined ? {} : { token };
      return Promise.all([
        call(service, 'get', '/accounts', pass),
        call(service, 'post', '/accounts', { ...pass, body: { nonsense: true } }),
        call(service, 'get', path, pass),
        call(service, 'patch', path, { ...pass, version: 1, body: {} }),
        call(service, 'post', `${path}/resets`, pass),
        call(service, 'post', `${path}/closings`, pass),
      ]);
    };
    for (const duty of ['secretary', 'points-secretary']) {
      const { token } = await someone({ duty });
      expect((await asks(token)).map(refusal)).toEqual(Array(6).fill({ status: 403, code: 'not_allowed' }));
    }
    expect((await asks()).map(refusal)).toEqual(Array(6).fill({ status: 401, code: 'token_missing' }));
  });
});

describe('setting an account up', () => {
  const invite = async () => {
    const asked = { name: 'Cy Okafor', signIn: newName(), duty: 'points-secretary', wholeService: true };
    return (await by(ada).post('/accounts', asked)).body;
  };

  it('hands out the second factor, as a secret, an address and a QR code, the same as often as it is asked', async () => {
    const { setupCode, account } = await invite();
    const answer = await begin(setupCode.toLowerCase().replaceAll('-', ' '));
    expect(answer.status).toBe(201);
    expect(answer.headers['cache-control']).toBe('no-store');
    const { totp, ...who } = answer.body;
    expect(who).toEqual({ name: 'Cy Okafor', signIn: account.signIn, duty: 'points-secretary' });
    expect(totp.uri).toBe(
      `otpauth://totp/Ringledger:${account.signIn}?issuer=Ringledger&secret=${totp.secret}&algorithm=SHA1&digits=6&period=30`,
    );
    expect(totp.qrSvg).toMatch(/^<svg [\s\S]*<\/svg>\s*$/);
    expect((await begin(setupCode)).body).toEqual(answer.body);
    const kept = await service.parts.db.prisma.account.findUniqueOrThrow({ where: { id: account.id } });
    expect(kept.totpSecret).not.toContain(totp.secret);
  });

  it('is done with a password and a code of the app, signs in, and uses the set-up code up', async () => {
    const { setupCode, account } = await invite();
    const { secret } = (await begin(setupCode)).body.totp;
    const before = await lastLine(service);
    const done = await complete({ setupCode, password, totpCode: codeNow(service, secret) });
    expect(done.status).toBe(201);
    expect((await current(done.body.token)).body.account.id).toBe(account.id);
    const invalid = { status: 422, code: 'setup_code_invalid' };
    expect(refusal(await begin(setupCode))).toEqual(invalid);
    expect(refusal(await complete({ setupCode, password, totpCode: '123456' }))).toEqual(invalid);
    expect((await by(ada).get(`/accounts/${account.id}`)).body.state).toBe('active');
    const kept = await service.parts.db.prisma.account.findUniqueOrThrow({ where: { id: account.id } });
    expect(kept).toMatchObject({ setupHash: null, setupEndsAt: null });
    expect(kept.passwordHash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    const accountId = account.id;
    expect((await linesAfter(service, before)).map(({ type, body }) => ({ type, body }))).toEqual([
      { type: 'account.set-up', body: { accountId } },
      { type: 'session.begun', body: { accountId, sessionId: done.body.sessionId } },
    ]);
  });

  it('with one code at two places at once is done once', async () => {
    const { setupCode } = await invite();
    const { secret } = (await begin(setupCode)).body.totp;
    const body = { setupCode, password, totpCode: codeNow(service, secret) };
    const answers = await Promise.all([complete(body), complete(body)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 422]);
  });

  it('is refused with a wrong code of the app, or before the second factor was handed out, and can go on', async () => {
    const { setupCode } = await invite();
    const early = await complete({ setupCode, password, totpCode: '123456' });
    expect(refusal(early)).toEqual({ status: 409, code: 'setup_not_begun' });
    const { secret } = (await begin(setupCode)).body.totp;
    const right = codeNow(service, secret);
    const wrong = await complete({ setupCode, password, totpCode: right === '111111' ? '222222' : '111111' });
    expect(refusal(wrong)).toEqual({ status: 422, code: 'totp_code_wrong' });
    expect(wrong.body.errors[0].field).toBe('/totpCode');
    expect((await complete({ setupCode, password, totpCode: right })).status).toBe(201);
  });

  it('takes no password that is short or that a guesser tries early, the own name among them', async () => {
    const { setupCode } = await invite();
    const { secret } = (await begin(setupCode)).body.totp;
    const tryOne = (tried: string) =>
      complete({ setupCode, password: tried, totpCode: codeNow(service, secret) });
    expect((await tryOne('short 123')).body.errors).toEqual([
      { field: '/password', message: 'it must have at least 12 characters' },
    ]);
    for (const common of ['qwertyuiop123', 'cyokafor2026', 'ringledger12']) {
      const answer = await tryOne(common);
      expect(refusal(answer)).toEqual({ status: 422, code: 'password_too_common' });
      expect(answer.body.errors[0].field).toBe('/password');
    }
    // Twelve characters, each of which JavaScript counts as two.
    expect((await tryOne('🐴🐎🏇🥕🎪🏆🌾🧲🪣🧤🥇🚜')).status).toBe(201);
  });

  it('ends after a day, and with a code that nobody was given it never begins', async () => {
    const { setupCode, account } = await invite();
    waitForNextCode(service, 24 * 3_600 + 1);
    const invalid = { status: 422, code: 'setup_code_invalid' };
    expect(refusal(await begin(setupCode))).toEqual(invalid);
    expect(refusal(await begin('00000-00000-00000-00000-00000'))).toEqual(invalid);
    expect((await begin('no code at all')).status).toBe(400);
    ada = { ...ada, token: (await signIn(service, ada)).body.token };
    expect((await by(ada).get(`/accounts/${account.id}`)).body.state).toBe('set-up-ended');
  });
});

describe('changing an account', () => {
  it('holds at once, for the session that is under way, and says so in the ledger by ids', async () => {
    const showId = await addShow();
    const bo = await someone();
    const before = await lastLine(service);
    const change = { name: 'Bo L.', duty: 'points-secretary', wholeService: false, showIds: [showId] };
    const answer = await by(ada).patch(`/accounts/${bo.accountId}`, 2, change);
    expect(answer.body).toMatchObject({ ...change, version: 3, state: 'active' });
    expect(answer.headers.etag).toBe('"3"');
    expect((await current(bo.token)).body.account).toMatchObject({ ...change, id: bo.accountId });
    const { name, ...told } = change;
    expect((await linesAfter(service, before)).map(({ type, body }) => ({ type, body }))).toEqual([
      { type: 'account.changed', body: { accountId: bo.accountId, version: 3, ...told } },
    ]);
    const whole = await by(ada).patch(`/accounts/${bo.accountId}`, 3, { wholeService: true });
    expect(whole.body).toMatchObject({ wholeService: true, showIds: [] });
    const nowhere = await by(ada).patch(`/accounts/${bo.accountId}`, 4, { wholeService: false });
    expect(refusal(nowhere)).toEqual({ status: 400, code: 'invalid_request' });
  });

  it('needs the version that was read, and keeps the sign-in name', async () => {
    const bo = await someone();
    const path = `/accounts/${bo.accountId}`;
    expect(refusal(await by(ada).patch(path, 1, { name: 'B' }))).toEqual({
      ...{ status: 412, code: 'stale_version' },
    });
    const without = await call(service, 'patch', path, { token: ada.token, body: { name: 'B' } });
    expect(refusal(without)).toEqual({ status: 428, code: 'if_match_required' });
    expect((await by(ada).patch(path, 2, { signIn: 'other' })).status).toBe(400);
    expect((await by(ada).patch(path, 2, {})).status).toBe(400);
  });
});

describe('a reset', () => {
  it('makes password, second factor and sessions void; the account is set up anew with another code', async () => {
    const bo = await someone();
    const before = await lastLine(service);
    const answer = await by(ada).post(`/accounts/${bo.accountId}/resets`);
    expect(answer.status).toBe(201);
    expect(answer.body.account.state).toBe('invited');
    expect(refusal(await current(bo.token))).toEqual({ status: 401, code: 'token_revoked' });
    waitForNextCode(service);
    expect(refusal(await signIn(service, bo))).toEqual({ status: 401, code: 'sign_in_refused' });
    const { accountId, signIn: name } = bo;
    const again = await setUp(service, { accountId, signIn: name, setupCode: answer.body.setupCode });
    expect(again.secret).not.toBe(bo.secret);
    waitForNextCode(service);
    expect(refusal(await signIn(service, bo))).toEqual({ status: 401, code: 'sign_in_refused' });
    expect((await signIn(service, again)).status).toBe(201);
    const told = await linesAfter(service, before);
    expect(told.map(({ type }) => type).slice(0, 2)).toEqual(['session.ended', 'account.reset']);
    expect(told[1]).toMatchObject({ body: { accountId }, actor: { as: 'office', account: ada.accountId } });
  });

  it('lets a slowed account try again, and makes an earlier code void', async () => {
    const bo = await someone();
    for (let tries = 0; tries < 5; tries += 1) await signIn(service, bo, { password: 'wrong' });
    const first = (await by(ada).post(`/accounts/${bo.accountId}/resets`)).body;
    const second = (await by(ada).post(`/accounts/${bo.accountId}/resets`)).body;
    expect(refusal(await begin(first.setupCode))).toEqual({ status: 422, code: 'setup_code_invalid' });
    await setUp(service, { ...bo, setupCode: second.setupCode });
  });

  it('is never of the own account: it takes another manager', async () => {
    const answer = await by(ada).post(`/accounts/${ada.accountId}/resets`);
    expect(refusal(answer)).toEqual({ status: 403, code: 'own_account' });
    expect((await current(ada.token)).status).toBe(200);
  });
});

describe('closing an account', () => {
  it('is for good: sessions end, nobody signs in, nothing of its factors is kept; twice does no harm', async () => {
    const bo = await someone();
    const path = `/accounts/${bo.accountId}`;
    const closed = await by(ada).post(`${path}/closings`);
    expect(closed.body).toMatchObject({ state: 'closed', name: 'Bo Lindqvist' });
    expect(refusal(await current(bo.token))).toEqual({ status: 401, code: 'token_revoked' });
    waitForNextCode(service);
    expect(refusal(await signIn(service, bo))).toEqual({ status: 401, code: 'sign_in_refused' });
    expect((await by(ada).post(`${path}/closings`)).body).toEqual(closed.body);
    const isClosed = { status: 409, code: 'account_closed' };
    expect(refusal(await by(ada).post(`${path}/resets`))).toEqual(isClosed);
    expect(refusal(await by(ada).patch(path, closed.body.version, { name: 'B' }))).toEqual(isClosed);
    const kept = await service.parts.db.prisma.account.findUniqueOrThrow({ where: { id: bo.accountId } });
    expect(kept).toMatchObject({ passwordHash: null, totpSecret: null, setupHash: null });
    const lines = (await linesAfter(service)).filter(({ type }) => type === 'account.closed');
    expect(lines.filter(({ body }) => JSON.stringify(body).includes(bo.accountId))).toHaveLength(1);
  });
});

describe('the last manager of the whole service', () => {
  const last = { status: 409, code: 'last_manager' };

  it('cannot be closed, made less, or reset away, however many others there are who cannot sign in', async () => {
    const asked = { name: 'Di', signIn: newName(), duty: 'manager', wholeService: true };
    await by(ada).post('/accounts', asked);
    const path = `/accounts/${ada.accountId}`;
    const { version } = (await by(ada).get(path)).body;
    const showId = await addShow();
    expect(refusal(await by(ada).post(`${path}/closings`))).toEqual(last);
    expect(refusal(await by(ada).patch(path, version, { duty: 'secretary' }))).toEqual(last);
    const less = { wholeService: false, showIds: [showId] };
    expect(refusal(await by(ada).patch(path, version, less))).toEqual(last);
    expect((await by(ada).patch(path, version, { name: 'Ada B.' })).status).toBe(200);
  });

  it('is left when two managers close, or reset, each other at the same moment', async () => {
    for (const verb of ['closings', 'resets']) {
      const alone = await buildTestApp();
      try {
        const one = await firstManager(alone);
        const two = await colleague(alone, one, { signIn: 'two', duty: 'manager' });
        const at = (who: Colleague, whom: Colleague) =>
          call(alone, 'post', `/accounts/${whom.accountId}/${verb}`, { token: who.token });
        const answers = await Promise.all([at(one, two), at(two, one)]);
        const statuses = answers.map(({ status }) => status).sort();
        // The one that came later meets the rule, or has no session any more.
        expect([200, 201]).toContain(statuses[0]);
        expect([401, 409]).toContain(statuses[1]);
        const managers = await alone.parts.db.prisma.account.count({
          where: { passwordHash: { not: null } },
        });
        expect(managers).toBe(1);
      } finally {
        await alone.close();
      }
    }
  });
});

describe('a manager of some shows', () => {
  it('looks after the accounts of those shows, and the others are not there for her', async () => {
    const [here, there] = [await addShow(), await addShow()];
    const manager = await someone({ duty: 'manager', wholeService: false, showIds: [here] });
    const both = await someone({ wholeService: false, showIds: [here, there] });
    const hers = await colleague(service, manager, {
      ...{ signIn: newName(), wholeService: false, showIds: [here] },
    });
    const listed = (await by(manager).get('/accounts')).body.items.map(({ id }: { id: string }) => id);
    expect(listed.sort()).toEqual([manager.accountId, hers.accountId].sort());
    for (const { accountId } of [both, ada]) {
      const path = `/accounts/${accountId}`;
      const answers: Answer[] = [
        await by(manager).get(path),
        await by(manager).patch(path, 2, { name: 'X' }),
        await by(manager).post(`${path}/resets`),
        await by(manager).post(`${path}/closings`),
        await by(manager).get(`${path}/sessions`),
      ];
      expect(answers.map(refusal)).toEqual(Array(5).fill(notFound));
    }
    expect((await by(manager).post(`/accounts/${hers.accountId}/resets`)).status).toBe(201);
  });

  it('gives nobody more than she has, not herself either', async () => {
    const [here, there] = [await addShow(), await addShow()];
    const manager = await someone({ duty: 'manager', wholeService: false, showIds: [here] });
    const notAllowed = { status: 403, code: 'not_allowed' };
    for (const reach of [{ wholeService: true }, { showIds: [there] }, { showIds: [here, there] }]) {
      const asked = { name: 'X', signIn: newName(), duty: 'secretary', ...reach };
      expect(refusal(await by(manager).post('/accounts', asked))).toEqual(notAllowed);
      const own = await by(manager).patch(`/accounts/${manager.accountId}`, 2, reach);
      expect(refusal(own)).toEqual(notAllowed);
    }
  });
});

describe('the first account', () => {
  const make = (asked: { name: string; signIn: string }) =>
    makeFirstAccount(service.parts, asked).catch((error: Problem) => error.code);

  it('is refused while a manager of the whole service can sign in', async () => {
    expect(await make({ name: 'Eve', signIn: 'eve' })).toBe('manager_exists');
  });

  it('gets a new code when it is asked for again before it is set up, and the old one is void', async () => {
    const alone = await buildTestApp();
    try {
      const asked = { name: 'Ada Brandt', signIn: 'ada' };
      const first = await makeFirstAccount(alone.parts, asked);
      const second = await makeFirstAccount(alone.parts, asked);
      expect(second.account.id).toBe(first.account.id);
      const old = await call(alone, 'post', '/account-setups', { body: { setupCode: first.setupCode } });
      expect(refusal(old)).toEqual({ status: 422, code: 'setup_code_invalid' });
      const { account, setupCode } = second;
      await setUp(alone, { accountId: account.id, signIn: 'ada', setupCode });
      const lines = await linesAfter(alone);
      expect(lines.map(({ type }) => type)).toEqual([
        ...['account.created', 'account.reset', 'account.set-up', 'session.begun'],
      ]);
      expect(lines[0]).toMatchObject({
        actor: { as: 'service' },
        body: { duty: 'manager', wholeService: true, showIds: [] },
      });
    } finally {
      await alone.close();
    }
  });

  it('is set up anew at the server where TOKEN_SECRET was changed, since then nobody can sign in', async () => {
    const alone = await buildTestApp();
    try {
      const manager = await firstManager(alone);
      const { parts } = alone;
      const changed = { ...parts, tokenKey: new TextEncoder().encode('another secret that is long enough') };
      const { account, setupCode } = await makeFirstAccount(changed, { name: 'Ada Brandt', signIn: 'ada' });
      expect(account).toMatchObject({ id: manager.accountId, state: 'invited' });
      expect(setupCode).toMatch(/^.{29}$/);
      const old = await call(alone, 'get', '/sessions/current', { token: manager.token });
      expect(refusal(old)).toEqual({ status: 401, code: 'token_revoked' });
    } finally {
      await alone.close();
    }
  });
});
