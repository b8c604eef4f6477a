import type { AddressInfo } from 'node:net';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openSession } from '../../src/access/index.ts';
import { inSqlTransaction } from '../../src/platform/database.ts';
import { sendRaw } from '../support/raw-request.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';

const nobody = '0198f0a0-0000-7000-8000-000000000000';

describe('requests that no honest program sends', () => {
  let service: TestApp;
  let port: number;
  beforeAll(async () => {
    service = await buildTestApp({ environment: { REQUEST_SECONDS: '1' } });
    port = (service.app.server.address() as AddressInfo).port;
  });
  afterAll(() => service.close());

  const head = (method: string, address: string, more: readonly string[] = []) =>
    [`${method} ${address} HTTP/1.1`, 'host: localhost', 'connection: close', ...more, '', ''].join('\r\n');
  const alive = () => request(service.app.server).get('/health/live').expect(200);

  // RFC 9110, 15.5.9: 408. A body that trickles in holds a connection; OWASP calls the attack "slow HTTP POST".
  test('a body that trickles in is cut off in time, and nothing is done with what came', async () => {
    // Signing in needs no pass, so the body is waited for.
    const post = head('POST', '/v1/sessions', ['content-type: application/json', 'content-length: 5000']);
    const trickle = Array.from({ length: 60 }, () => ({ text: ' ', afterMilliseconds: 200 }));
    const answer = await sendRaw(port, [{ text: post }, ...trickle]);
    expect(answer.milliseconds).toBeLessThan(8_000);
    expect(answer.text).toContain('"code":"request_too_slow"');
    await alive();
  });

  test('a head that never ends is cut off in time', async () => {
    const endless = Array.from({ length: 40 }, (_, at) => ({
      text: `x-${at}: y\r\n`,
      afterMilliseconds: 200,
    }));
    const begun = { text: 'GET /health/live HTTP/1.1\r\nhost: localhost\r\n' };
    const answer = await sendRaw(port, [begun, ...endless]);
    expect(answer.milliseconds).toBeLessThan(6_000);
    expect(answer).toMatchObject({ status: 408, body: { status: 408, code: 'request_too_slow' } });
    expect(answer.text).toContain('application/problem+json');
    await alive();
  });

  // RFC 6585, 5: 431.
  test('a head of more than 16 KiB is refused', async () => {
    const large = head('GET', '/health/live', [`x-large: ${'y'.repeat(20_000)}`]);
    const answer = await sendRaw(port, [{ text: large }]);
    expect(answer).toMatchObject({ status: 431, body: { code: 'head_too_large' } });
    await alive();
  });

  // RFC 9112, 6.1 and 6.3: both lengths at once, or two that differ, is how requests are smuggled.
  test.each([
    ['no request at all', 'hello\r\n\r\n'],
    ['two lengths', head('POST', '/v1/shows', ['content-length: 2', 'content-length: 3']).concat('{}')],
    [
      'a length beside chunks',
      head('POST', '/v1/shows', ['content-length: 2', 'transfer-encoding: chunked']).concat('0\r\n\r\n'),
    ],
    ['a method that is none', 'BREW /health/live HTTP/1.1\r\nhost: localhost\r\n\r\n'],
    ['a NUL in a header', head('GET', '/health/live', ['x-a: b\0c'])],
    ['no host', 'GET /health/live HTTP/1.1\r\nconnection: close\r\n\r\n'],
  ])('%s is refused as malformed', async (_what, text) => {
    const answer = await sendRaw(port, [{ text }]);
    expect(answer.status).toBe(400);
    expect(answer.text).not.toContain(' at ');
    await alive();
  });

  // OWASP "Path Traversal": no address becomes a path on the disk.
  test.each([
    '/docs/../../../../etc/passwd',
    '/docs/..%2f..%2f..%2fetc%2fpasswd',
    '/assets/..%2f..%2fpackage.json',
    '/assets/%2e%2e/%2e%2e/package.json',
    '/..%5c..%5cpackage.json',
    '/v1/score-sheets/..%2f..%2fetc%2fpasswd/1',
    `/v1/shows/${nobody}%00/board`,
    '/%c0%ae%c0%ae/etc/passwd',
    '//etc/passwd',
  ])('the address %s opens no file', async (address) => {
    const answer = await sendRaw(port, [{ text: head('GET', address) }]);
    expect([400, 401, 404]).toContain(answer.status);
    expect(answer.text).not.toMatch(/root:|"dependencies"/);
    await alive();
  });

  test('half a request that goes away leaves the service as it was', async () => {
    const post = head('POST', '/v1/shows', ['content-type: application/json', 'content-length: 500']);
    await Promise.all(Array.from({ length: 20 }, () => sendRaw(port, [{ text: post.slice(0, 60) }])));
    await alive();
  });
});

describe('a network address that asks too much', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp({
      environment: { REQUESTS_PER_MINUTE: '5', TRUSTED_PROXIES: '127.0.0.1' },
    });
  });
  afterAll(() => service.close());
  const ask = (from: string, address = '/health/live') =>
    request(service.app.server).get(address).set('x-forwarded-for', from);

  // RFC 6585, 4: 429 with Retry-After.
  test('is refused, told how long to wait, and others are not', async () => {
    for (let asked = 0; asked < 5; asked += 1) await ask('192.0.2.1').expect(200);
    const refused = await ask('192.0.2.1').expect(429);
    expect(refused.body.code).toBe('too_many_requests');
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0);
    await ask('192.0.2.2').expect(200);
  });

  test('counts addresses that lead nowhere too', async () => {
    for (let asked = 0; asked < 5; asked += 1) await ask('192.0.2.3', `/.env${asked}`).expect(404);
    await ask('192.0.2.3').expect(429);
  });

  // RFC 6177: one site holds a /64 at least, so changing the last half of the address is changing nothing.
  test('is one sender however it changes the last half of an IPv6 address', async () => {
    for (let asked = 0; asked < 5; asked += 1) await ask(`2001:db8::${asked + 1}`).expect(200);
    await ask('2001:db8::ffff').expect(429);
    await ask('2001:db8:0:1::1').expect(200);
  });
});

describe('a known sender who asks too much', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp({
      environment: {
        SENDER_REQUESTS_PER_MINUTE: '4',
        SIGN_INS_PER_MINUTE: '3',
        TRUSTED_PROXIES: '127.0.0.1',
      },
    });
  });
  afterAll(() => service.close());
  const ask = (authorization: string, from: string) =>
    request(service.app.server).get('/v1/sessions/current').set({ authorization, 'x-forwarded-for': from });

  test('is refused wherever it asks from, and in whichever of its sessions; others are not', async () => {
    const { token, accountId } = await passFor(service, { role: 'manager' });
    const other = await passFor(service, { role: 'manager' });
    const second = await inSqlTransaction(service.parts.db, (tx) =>
      openSession(service.parts, tx, accountId),
    );
    for (let asked = 1; asked <= 4; asked += 1) await ask(`Bearer ${token}`, `192.0.2.${asked}`).expect(200);
    const refused = await ask(`Bearer ${token}`, '192.0.2.5').expect(429);
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0);
    await ask(`Bearer ${second.token}`, '192.0.2.6').expect(429);
    await ask(`Bearer ${other.token}`, '192.0.2.5').expect(200);
  });

  // OWASP ASVS 5.0, 6.3.1: guessing is slowed; doors are what needs no pass and changes something.
  test.each([
    [1, '/v1/sessions', { signIn: 'nobody', password: 'a guess', totpCode: '000000' }],
    [2, '/v1/account-setups', { setupCode: 'a guess' }],
    [3, '/v1/account-setups/completions', { setupCode: 'a guess' }],
    [4, '/v1/pairings', { code: 'AAAA-AAAA' }],
    [5, '/v1/phone-tokens', {}],
  ])('an address (%i) that guesses at %s is refused after some', async (place, address, body) => {
    const from = `198.51.100.${place}`;
    const guess = () => request(service.app.server).post(address).set('x-forwarded-for', from).send(body);
    for (let guessed = 0; guessed < 3; guessed += 1) expect((await guess()).status).not.toBe(429);
    expect((await guess().expect(429)).body.code).toBe('too_many_requests');
    await request(service.app.server).get('/health/live').set('x-forwarded-for', from).expect(200);
  });
});

describe('a service that no proxy stands before', () => {
  test('does not believe who says that he speaks for another', async () => {
    const service = await buildTestApp({ environment: { REQUESTS_PER_MINUTE: '3' } });
    const ask = (from: string) =>
      request(service.app.server).get('/health/live').set('x-forwarded-for', from);
    for (const from of ['192.0.2.1', '192.0.2.2', '192.0.2.3']) await ask(from).expect(200);
    await ask('192.0.2.4').expect(429);
    await service.close();
  });
});
