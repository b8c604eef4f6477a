import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Pass, passFor } from '../support/test-passes.ts';

const someId = '0198f0a0-0000-7000-8000-000000000000';

describe('what the service says to any request', () => {
  let service: TestApp;
  let office: Pass;
  beforeAll(async () => {
    service = await buildTestApp({ environment: { BROWSABLE_DOCS: 'yes' } });
    office = await passFor(service, { role: 'office' });
  });
  afterAll(() => service.close());

  const http = () => request(service.app.server);
  const newInvitation = () => http().post(`/v1/shows/${someId}/invitations`).use(office);

  test('it is alive, and ready while the database answers', async () => {
    await http().get('/health/live').expect(200, { status: 'ok' });
    await http().get('/health/ready').expect(200, { status: 'ok' });
  });

  // RFC 9457, 3.1: type, status, title, detail; 4: application/problem+json.
  test('an address that leads nowhere is a problem with a code, what to do and the request id', async () => {
    const answer = await http().get('/v1/nowhere').set('x-request-id', 'phone-7.1').expect(404);
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(answer.headers['x-request-id']).toBe('phone-7.1');
    expect(answer.body).toEqual({
      type: '/docs/errors#route_not_found',
      title: 'There is nothing at this address',
      status: 404,
      code: 'route_not_found',
      whatToDo: 'Look up the address at /docs.',
      requestId: 'phone-7.1',
    });
  });

  test('a request id that could forge a log line is replaced', async () => {
    const answer = await http().get('/health/live').set('x-request-id', 'a b').expect(200);
    expect(answer.headers['x-request-id']).toMatch(/^[0-9a-f-]{36}$/);
  });

  // RFC 9110, 15.5.6: a 405 answer must name the methods in Allow.
  test('a method that the address does not take is refused with those that it takes', async () => {
    const answer = await http().put(`/v1/shows/${someId}/invitations`).expect(405);
    expect(answer.body.code).toBe('method_not_allowed');
    expect(answer.headers.allow).toBe('GET, HEAD, POST');
  });

  test('an unknown field is named, and so is every other fault', async () => {
    const answer = await newInvitation().send({ role: 'gate', minutes: 0, colour: 'red' }).expect(400);
    expect(answer.body.code).toBe('invalid_request');
    expect(answer.body.errors).toContainEqual({ field: '/colour', message: 'there is no such field' });
    expect(answer.body.errors).toContainEqual({ field: '/minutes', message: expect.stringContaining('1') });
  });

  test('a fault in the address is named as one', async () => {
    const answer = await http().get('/v1/shows/seven/events').expect(400);
    expect(answer.body.errors).toEqual([{ field: 'params/showId', message: expect.any(String) }]);
  });

  test.each([
    ['half a JSON', '{"role":', 'application/json', 400, 'malformed_json'],
    ['no JSON at all', 'NaN', 'application/json', 400, 'malformed_json'],
    ['an empty body', '', 'application/json', 400, 'empty_body'],
    [
      'a prototype in disguise',
      '{"__proto__": {"role": "office"}}',
      'application/json',
      400,
      'malformed_json',
    ],
    ['a form', 'role=gate', 'application/x-www-form-urlencoded', 415, 'unsupported_media_type'],
    [
      'more than a mebibyte',
      `{"label":"${'x'.repeat(1_100_000)}"}`,
      'application/json',
      413,
      'body_too_large',
    ],
  ])('%s is refused', async (_what, body, type, status, code) => {
    const answer = await newInvitation().set('content-type', type).send(body).expect(status);
    expect(answer.body.code).toBe(code);
    expect(answer.text).not.toContain('node_modules');
  });

  test('the database refusing a foreign id says which constraint, not which value', async () => {
    const write = service.parts.db.prisma.ring.create({
      data: { id: service.parts.ids.next(), showId: someId, name: 'Main', createdAt: new Date() },
    });
    const { problemFromDatabase } = await import('../../src/platform/problems/database-problems.ts');
    const refusal = problemFromDatabase(await write.catch((error: unknown) => error));
    expect(refusal?.code).toBe('still_referred_to');
    expect(refusal?.details.detail).toContain('ring_show_id_fkey');
  });

  test('the page at /docs and the description at /openapi.json are there, the errors too', async () => {
    const page = await http().get('/docs').redirects(1).expect(200);
    expect(page.text).toContain('/openapi.json');
    expect(page.headers['content-security-policy']).toContain("script-src 'self'");
    const described = await http().get('/openapi.json').expect(200);
    expect(described.body.openapi).toMatch(/^3\.1\./);
    expect(Object.keys(described.body.paths)).toContain('/v1/shows/{showId}/events');
    const errors = await http().get('/docs/errors').expect(200);
    expect(errors.text).toContain('id="card_incomplete"');
  });
});

describe('when something fails inside', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  test('a database that is gone is told as such, and readiness says so', async () => {
    await service.parts.db.pool.end();
    const ready = await request(service.app.server).get('/health/ready').expect(503);
    expect(ready.body.code).toBe('database_unavailable');
    const failed = await request(service.app.server).get(`/v1/shows/${someId}/events`);
    expect(failed.status).toBeGreaterThanOrEqual(500);
    expect(failed.text).not.toContain(' at ');
    await request(service.app.server).get('/health/live').expect(200);
  });
});
