import { createHmac } from 'node:crypto';
import { SignJWT } from 'jose';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp, testSecret } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';
import { bundle, type Made, type Office, openOffice, send } from './office-client.ts';

let service: TestApp;
let office: Office;
let seatIds: readonly string[];
let classId: string;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  office = await openOffice(service);
  classId = (await office.addClass(1)).id;
  const people = await Promise.all(['A', 'B'].map((name) => office.done('post', '/people', { name })));
  const seats = people.map(({ id }) => ({ personId: id }));
  const panel = await office.done('put', `/classes/${classId}/panel`, { seats }, { 'if-match': '"1"' });
  seatIds = panel.seats.map(({ id }: Made) => id);
});
afterAll(() => service.close());

const refusal = (answer: { status: number; body: Made }) => ({
  status: answer.status,
  code: answer.body.code,
});
const panelWith = (authorization: string) =>
  send(service, 'get', `/v1/shows/${office.showId}/classes/${classId}/panel`, { pass: authorization });
const key = new TextEncoder().encode(testSecret);
const part = (value: object) => Buffer.from(JSON.stringify(value)).toString('base64url');

/** As the service makes them, but for what is changed. */
function forged(claims: object, secret = key): Promise<string> {
  return new SignJWT({ role: 'office', jti: '0199d7a8-5f10-7c3e-8d6b-2f4a1c9e7b30', ...claims })
    .setProtectedHeader({ alg: 'HS256' })
    .setIssuer('ringledger')
    .setAudience('ringledger')
    .setIssuedAt()
    .setExpirationTime('1h')
    .sign(secret);
}

describe('a pass', () => {
  it('is handed out by the office for its show, and opens what its role may see', async () => {
    const answer = await office.call('post', '/tokens', {
      body: { role: 'judge', seatId: seatIds[0], label: 'Ring 1' },
    });
    expect(answer.status).toBe(201);
    expect(answer.headers['cache-control']).toBe('no-store');
    expect((await panelWith(`Bearer ${answer.body.token}`)).status).toBe(200);
    const { items } = await office.done('get', '/tokens');
    expect(items[0]).toMatchObject({
      jti: answer.body.jti,
      role: 'judge',
      seatId: seatIds[0],
      revokedAt: null,
    });
    expect(JSON.stringify(items)).not.toContain(answer.body.token);
  });

  it('is needed: without one the request is refused before its body is looked at', async () => {
    const answer = await office.call('post', '/exhibitors', { pass: '', body: { nonsense: true } });
    expect(refusal(answer)).toEqual({ status: 401, code: 'token_missing' });
  });

  it('ends when it is taken back, and taking it back twice does no harm', async () => {
    const { jti, token } = await office.done('post', '/tokens', { role: 'gate' });
    const revoke = () => office.call('delete', `/tokens/${jti}`);
    expect((await panelWith(`Bearer ${token}`)).status).toBe(200);
    expect([(await revoke()).status, (await revoke()).status]).toEqual([204, 204]);
    expect(refusal(await panelWith(`Bearer ${token}`))).toEqual({ status: 401, code: 'token_revoked' });
  });

  it('ends by itself when its time is over', async () => {
    const { token } = await office.done('post', '/tokens', { role: 'gate', hours: 1 });
    const now = service.clock.now().getTime();
    service.clock.set(new Date(now + 2 * 3_600_000).toISOString());
    expect(refusal(await panelWith(`Bearer ${token}`))).toEqual({ status: 401, code: 'token_expired' });
    service.clock.set(new Date(now).toISOString());
  });

  it('of an unknown number is refused, even when it is signed with the right key', async () => {
    expect(refusal(await panelWith(`Bearer ${await forged({})}`))).toEqual({
      status: 401,
      code: 'token_invalid',
    });
  });

  it('is refused when it was altered, signed with another key, by another algorithm, or by none', async () => {
    const { token, jti } = await office.done('post', '/tokens', { role: 'gate' });
    const [head = '', body = '', signature = ''] = token.split('.');
    const claims = JSON.parse(Buffer.from(body, 'base64url').toString());
    const raised = part({ ...claims, role: 'office' });
    const hs512 = part({ alg: 'HS512', typ: 'JWT' });
    const signed512 = createHmac('sha512', testSecret).update(`${hs512}.${body}`).digest('base64url');
    const bad = [
      `${head}.${raised}.${signature}`,
      `${hs512}.${body}.${signed512}`,
      `${part({ alg: 'none' })}.${body}.`,
      `${part({ alg: 'none' })}.${body}.x`,
      await forged({ jti }, new TextEncoder().encode('another secret that is long enough for it')),
      await forged({ jti, role: 'steward' }),
      await forged({ jti, role: 'judge', show: office.showId }),
      'x',
    ];
    for (const one of bad)
      expect(refusal(await panelWith(`Bearer ${one}`))).toEqual({ status: 401, code: 'token_invalid' });
    for (const header of ['Basic abc', `Bearer  ${token}`, token]) {
      expect(refusal(await panelWith(header))).toEqual({ status: 401, code: 'token_invalid' });
    }
  });

  it('that is bad is refused even where none is needed', async () => {
    const answer = await send(service, 'get', `/v1/shows/${office.showId}`, { pass: 'Bearer a.b.c' });
    expect(refusal(answer)).toEqual({ status: 401, code: 'token_invalid' });
  });
});

describe('what a pass reaches', () => {
  it('of the office of one show is that show, and no other is set up with it', async () => {
    const other = await openOffice(service);
    const answer = await other.call('get', '/exhibitors', { pass: office.pass });
    expect(refusal(answer)).toEqual({ status: 403, code: 'other_show' });
    const setUp = await send(service, 'post', '/v1/shows', { pass: office.pass, body: {} });
    expect(refusal(setUp)).toEqual({ status: 403, code: 'not_allowed' });
  });

  it('of the office of the whole service is every show', async () => {
    const whole = await passFor(service, { role: 'office' });
    expect((await office.call('get', '/exhibitors', { pass: whole })).status).toBe(200);
  });

  it('of judge, scribe and gate is never the exhibitors, the passes, or a change of the panel', async () => {
    const { showId } = office;
    const passes = [
      await passFor(service, { role: 'judge', showId, seatId: seatIds[0] ?? '' }),
      await passFor(service, { role: 'scribe', showId, seatId: seatIds[0] ?? '' }),
      await passFor(service, { role: 'gate', showId }),
      await passFor(service, { role: 'public', showId }),
    ];
    for (const pass of passes) {
      const answers = [
        await office.call('get', '/exhibitors', { pass }),
        await office.call('get', '/tokens', { pass }),
        await office.call('put', `/classes/${classId}/panel`, { pass, body: { seats: [] } }),
      ];
      expect(answers.map(refusal)).toEqual(Array(3).fill({ status: 403, code: 'not_allowed' }));
    }
  });
});

describe('handing out passes', () => {
  const post = (body: object) => office.call('post', '/tokens', { body });

  it('for a judge or a scribe needs a seat of this show', async () => {
    expect(refusal(await post({ role: 'judge' }))).toMatchObject({ status: 400 });
    expect(refusal(await post({ role: 'scribe', seatId: office.showId }))).toEqual({
      status: 422,
      code: 'unknown_reference',
    });
    expect(refusal(await post({ role: 'gate', seatId: seatIds[0] }))).toMatchObject({ status: 400 });
    const other = await openOffice(service);
    const foreign = await other.call('post', '/tokens', { body: { role: 'judge', seatId: seatIds[0] } });
    expect(refusal(foreign)).toEqual({ status: 422, code: 'unknown_reference' });
  });

  it('knows its roles and a longest time', async () => {
    expect((await post({ role: 'steward' })).status).toBe(400);
    for (const hours of [0, -1, 0.5, 721, '3'])
      expect((await post({ role: 'gate', hours })).status).toBe(400);
  });

  it('does not take back a pass of another show', async () => {
    const { jti } = await office.done('post', '/tokens', { role: 'gate' });
    const other = await openOffice(service);
    expect(refusal(await other.call('delete', `/tokens/${jti}`))).toEqual({ status: 404, code: 'not_found' });
  });
});
