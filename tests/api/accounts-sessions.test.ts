import { createHash } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import {
  type Colleague,
  call,
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
const someone = (asked: object = {}) => colleague(service, ada, { signIn: `colleague.${++count}`, ...asked });

beforeAll(async () => {
  service = await buildTestApp();
  ada = await firstManager(service);
});
afterAll(() => service.close());
beforeEach(async () => {
  // Each begins with a session of ada's that has its day before it.
  waitForNextCode(service);
  ada = { ...ada, token: (await signIn(service, ada)).body.token };
});

const current = (token: string) => call(service, 'get', '/sessions/current', { token });
const listOf = (accountId: string, token: string) =>
  call(service, 'get', `/accounts/${accountId}/sessions`, { token });
const end = (sessionId: string, token: string) =>
  call(service, 'delete', `/sessions/${sessionId}`, { token });
const revoked = { status: 401, code: 'token_revoked' };

describe('a session', () => {
  it('is kept as a fingerprint of its token only', async () => {
    const rows = await service.parts.db.prisma.session.findMany({ where: { accountId: ada.accountId } });
    const hash = createHash('sha256').update(ada.token).digest('hex');
    expect(rows.map(({ tokenHash }) => tokenHash)).toContain(hash);
    expect(JSON.stringify(rows)).not.toContain(ada.token);
  });

  it('ends when its owner signs out', async () => {
    const bo = await someone();
    const signedOut = await call(service, 'delete', '/sessions/current', { token: bo.token });
    expect(signedOut.status).toBe(204);
    expect(refusal(await current(bo.token))).toEqual(revoked);
  });

  it('ends after twelve hours without a request, and after a day whatever is done', async () => {
    const [idle, busy] = [await someone(), await someone()];
    const hours = (number: number) => waitForNextCode(service, number * 3_600);
    for (let times = 0; times < 3; times += 1) {
      hours(7.9);
      expect((await current(busy.token)).status).toBe(200);
    }
    expect(refusal(await current(idle.token))).toEqual({ status: 401, code: 'token_expired' });
    hours(0.4);
    expect(refusal(await current(busy.token))).toEqual({ status: 401, code: 'token_expired' });
  });

  it('with a token that was altered or never given out is refused', async () => {
    const last = ada.token.endsWith('A') ? 'B' : 'A';
    for (const token of [`${ada.token.slice(0, -1)}${last}`, `rls_${'A'.repeat(43)}`, 'rls_', 'x']) {
      expect(refusal(await current(token))).toEqual({ status: 401, code: 'token_invalid' });
    }
  });
});

describe('the sessions of an account', () => {
  it('are listed for its owner, who can end each of them', async () => {
    const bo = await someone();
    waitForNextCode(service);
    const second = (await signIn(service, bo)).body;
    const { items } = (await listOf(bo.accountId, second.token)).body;
    expect(items).toHaveLength(2);
    expect(items.map(({ current: isIt }: { current: boolean }) => isIt)).toEqual([true, false]);
    expect(items[0]).toMatchObject({ id: second.sessionId, endsAt: second.endsAt });
    expect(JSON.stringify(items)).not.toContain('rls_');
    expect((await end(items[1].id, second.token)).status).toBe(204);
    expect(refusal(await current(bo.token))).toEqual(revoked);
    expect((await listOf(bo.accountId, second.token)).body.items).toHaveLength(1);
  });

  it('are seen and ended by a manager too; twice does no harm, and is told once', async () => {
    const bo = await someone();
    const { items } = (await listOf(bo.accountId, ada.token)).body;
    const before = await lastLine(service);
    expect((await end(items[0].id, ada.token)).status).toBe(204);
    expect((await end(items[0].id, ada.token)).status).toBe(204);
    expect(refusal(await current(bo.token))).toEqual(revoked);
    const lines = (await linesAfter(service, before)).filter(({ type }) => type !== 'request.refused');
    expect(lines.map(({ type, body }) => ({ type, body }))).toEqual([
      { type: 'session.ended', body: { sessionId: items[0].id, accountId: bo.accountId, why: 'ended' } },
    ]);
    expect(lines[0]?.actor).toMatchObject({ as: 'office', account: ada.accountId });
  });

  it('are hidden from everybody else, as if they were not there', async () => {
    const [bo, cy] = [await someone(), await someone()];
    const { items } = (await listOf(bo.accountId, bo.token)).body;
    const notFound = { status: 404, code: 'not_found' };
    expect(refusal(await listOf(bo.accountId, cy.token))).toEqual(notFound);
    expect(refusal(await end(items[0].id, cy.token))).toEqual(notFound);
    expect(refusal(await end(cy.accountId, cy.token))).toEqual(notFound);
    expect((await current(bo.token)).status).toBe(200);
    expect(refusal(await call(service, 'get', `/accounts/${bo.accountId}/sessions`))).toEqual({
      ...{ status: 401, code: 'token_missing' },
    });
  });
});

describe('changing the password', () => {
  const change = (token: string, body: object) =>
    call(service, 'post', '/accounts/current/passwords', {
      token,
      body: { currentPassword: password, newPassword: 'two ponies under a red tarp', ...body },
    });

  it('ends every session, goes on under a new one, and the old password is no good any more', async () => {
    const bo = await someone();
    waitForNextCode(service);
    const second = (await signIn(service, bo)).body;
    const changed = await change(bo.token, {});
    expect(changed.status).toBe(201);
    expect(changed.headers['cache-control']).toBe('no-store');
    for (const token of [bo.token, second.token]) expect(refusal(await current(token))).toEqual(revoked);
    expect((await current(changed.body.token)).status).toBe(200);
    waitForNextCode(service);
    expect((await signIn(service, bo)).status).toBe(401);
    waitForNextCode(service);
    expect((await signIn(service, bo, { password: 'two ponies under a red tarp' })).status).toBe(201);
    const types = (await linesAfter(service)).filter(({ body }) =>
      JSON.stringify(body).includes(bo.accountId),
    );
    expect(types.map(({ type }) => type)).toContain('account.password-changed');
  });

  it('needs the present one, and guesses at it count as failed sign-ins', async () => {
    const bo = await someone();
    const answers = [];
    for (let tries = 0; tries < 6; tries += 1)
      answers.push(refusal(await change(bo.token, { currentPassword: 'a guess' })));
    expect(answers).toEqual([
      ...Array(5).fill({ status: 422, code: 'password_wrong' }),
      { status: 429, code: 'sign_in_slowed' },
    ]);
    expect(refusal(await signIn(service, bo))).toEqual({ status: 429, code: 'sign_in_slowed' });
    expect((await current(bo.token)).status).toBe(200);
  });

  it('takes none that is short, long, or tried early, and changes nothing then', async () => {
    const bo = await someone();
    const short = await change(bo.token, { newPassword: 'eleven char' });
    expect(refusal(short)).toEqual({ status: 400, code: 'invalid_request' });
    expect(short.body.errors).toEqual([
      { field: '/newPassword', message: 'it must have at least 12 characters' },
    ]);
    expect((await change(bo.token, { newPassword: `${'x7Kp2mQ9'.repeat(16)}y` })).status).toBe(400);
    const common = await change(bo.token, { newPassword: 'password123456' });
    expect(refusal(common)).toEqual({ status: 422, code: 'password_too_common' });
    expect(common.body.errors[0].field).toBe('/newPassword');
    expect((await change(bo.token, { newPassword: `${'colleague'.repeat(2)}.${count}` })).status).toBe(422);
    expect((await current(bo.token)).status).toBe(200);
    expect((await change(bo.token, { newPassword: `${'x7Kp2mQ9'.repeat(15)}wjq!0v.z` })).status).toBe(201);
  });
});
