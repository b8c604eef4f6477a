import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

const nobody = '0198f0a0-0000-7000-8000-000000000000';

/** `default-src 'none'; base-uri 'none'` -> its directives. */
const directives = (policy: string): Record<string, string> =>
  Object.fromEntries(
    policy.split(';').map((part) => {
      const [name = '', ...values] = part.trim().split(/\s+/);
      return [name, values.join(' ')];
    }),
  );

describe('what every answer says to a browser', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp({ environment: { BROWSABLE_DOCS: 'yes' } });
  });
  afterAll(() => service.close());
  const http = () => request(service.app.server);

  // OWASP ASVS 5.0, 3.4.1 (a year, subdomains too), 3.4.3 (object-src and base-uri 'none'), 3.4.4, 3.4.5, 3.4.6.
  test.each([
    ['a record', '/health/live'],
    ['a refusal', '/v1/nowhere'],
    ['the description', '/openapi.json'],
    ['a bad id', '/v1/shows/seven/board'],
    ['an address that cannot be read', '/v1/shows/%ff'],
    ['an address that is too long', `/v1/shows/${'a'.repeat(300)}`],
    ['no such class', `/v1/classes/${nobody}/result`],
  ])('%s may not be loaded into, framed by or sniffed as anything', async (_what, address) => {
    const { headers } = await http().get(address);
    expect(directives(headers['content-security-policy'] ?? '')).toEqual({
      'default-src': "'none'",
      'object-src': "'none'",
      'base-uri': "'none'",
      'form-action': "'none'",
      'frame-ancestors': "'none'",
    });
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'strict-transport-security': 'max-age=31536000; includeSubDomains',
    });
  });

  test('no other site shares a window with it or takes it in, and no power of the phone is asked for', async () => {
    for (const address of ['/health/live', '/v1/nowhere']) {
      expect((await http().get(address)).headers).toMatchObject({
        'x-frame-options': 'DENY',
        'cross-origin-opener-policy': 'same-origin',
        'cross-origin-resource-policy': 'same-origin',
        'permissions-policy': expect.stringContaining('geolocation=()'),
      });
    }
  });

  test('an address that cannot be read is a problem like any other', async () => {
    const answer = await http().get('/v1/shows/%ff').expect(404);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(answer.body).toMatchObject({ code: 'route_not_found', requestId: answer.headers['x-request-id'] });
  });

  test('an answer is kept by nobody unless its route says otherwise', async () => {
    for (const address of ['/health/live', '/v1/nowhere', '/openapi.json']) {
      expect((await http().get(address)).headers['cache-control'], address).toBe('no-store');
    }
  });

  test('no banner tells what the service is built of', async () => {
    for (const address of ['/health/live', '/v1/nowhere', '/docs/errors']) {
      const { headers } = await http().get(address);
      expect(Object.keys(headers)).not.toContain('x-powered-by');
      expect(headers.server, address).toBeUndefined();
    }
  });

  // Fetch standard, 3.2 (CORS protocol): without these headers no page of another site reads an answer.
  test('no page of another site may read an answer', async () => {
    const asked = await http().get('/health/live').set('origin', 'https://elsewhere.example');
    const preflight = await http()
      .options('/v1/shows')
      .set({ origin: 'https://elsewhere.example', 'access-control-request-method': 'POST' });
    for (const { headers } of [asked, preflight]) {
      expect(Object.keys(headers).filter((name) => name.startsWith('access-control-'))).toEqual([]);
    }
  });

  test('the pages run their own scripts and no other: no unsafe-inline, no unsafe-eval', async () => {
    for (const address of ['/docs/', '/docs/errors']) {
      const { headers } = await http().get(address).redirects(1).expect(200);
      const policy = directives(headers['content-security-policy'] ?? '');
      expect(policy['default-src'], address).toBe("'none'");
      expect(policy['script-src'] ?? "'none'", address).not.toMatch(/unsafe|\*|http/);
      expect(policy['frame-ancestors'], address).toBe("'none'");
    }
  });

  // RFC 9110, 9.3.2: the same headers as GET, without content; 9.3.7 and 9.3.8 leave OPTIONS and TRACE to the server.
  test('HEAD answers like GET without a body; OPTIONS and TRACE are refused and echo nothing', async () => {
    const head = await http().head('/health/live').expect(200);
    expect(head.text ?? '').toBe('');
    const options = await http().options('/v1/shows').expect(405);
    expect(options.headers.allow).toBe('GET, HEAD, POST');
    const traced = await http().trace('/v1/shows').set('x-secret', 'do-not-echo').expect(405);
    expect(JSON.stringify(traced.body)).not.toContain('do-not-echo');
  });
});
