import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const src = fileURLToPath(new URL('../../src', import.meta.url));

/** These run on a phone, in a browser, or in the hand of whoever types the command: they call the service. */
const mayCall = ['phone/', 'web/', 'commands/'];

const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith('.ts') && !path.includes('generated/'))
  .filter((path) => !mayCall.some((room) => path.startsWith(room)));

/** Code without comments, in which addresses may be named. */
const codeOf = (path: string): string =>
  readFileSync(join(src, path), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/.*$/gm, '');

/** What opens a connection to somewhere: in Node.js, and the clients that are much in use. */
const callsOut = [
  /\bfetch\s*\(/,
  /\bnew\s+(WebSocket|EventSource|XMLHttpRequest)\b/,
  /from\s+['"](node:)?(https|http2|dgram|tls|dns)(\/promises)?['"]/,
  /\bhttps?\.(get|request)\s*\(/,
  /\{[^}]*\b(get|request|connect|createConnection)\b[^}]*\}\s*from\s+['"](node:)?(http|net)['"]/,
  /from\s+['"](undici|axios|got|node-fetch|ky|superagent|nodemailer|ws|ssh2)['"]/,
  /\bcreateRemoteJWKSet\b/,
];

// OWASP, "Server Side Request Forgery Prevention": the surest rule is to fetch nothing that a request names.
// Its database is the only place the service connects to, and that address comes from its settings.
describe('the service', () => {
  test('is looked through whole', () => {
    expect(files.length).toBeGreaterThan(100);
    expect(files).toContain('app.ts');
  });

  test('fetches no address from anywhere, so no request can make it fetch one', () => {
    const found = files.flatMap((path) => {
      const code = codeOf(path);
      return callsOut.filter((call) => call.test(code)).map((call) => `${path}: ${call.source}`);
    });
    expect(found, 'a request could make the service call an address of its choice').toEqual([]);
  });

  test('starts no other program on behalf of a request', () => {
    const starters = files.filter((path) => /from\s+['"](node:)?child_process['"]/.test(codeOf(path)));
    // PostgreSQL and its migrations, before the service listens.
    const atStart = /^platform\/(postgres\/|migrate\.ts$)/;
    expect(starters.filter((path) => !atStart.test(path))).toEqual([]);
  });

  test('builds no code out of text', () => {
    const builders = files.filter((path) =>
      /\beval\s*\(|\bnew\s+Function\s*\(|from\s+['"]node:vm['"]/.test(codeOf(path)),
    );
    expect(builders).toEqual([]);
  });

  // OWASP, "SQL Injection Prevention": statements are fixed texts with parameters.
  test('puts no value from a request into the text of a statement', () => {
    const unsafe = files.filter((path) => /\$(queryRawUnsafe|executeRawUnsafe)\b/.test(codeOf(path)));
    expect(unsafe).toEqual([]);
  });
});
