import { execFile } from 'node:child_process';
import { createPublicKey, randomBytes, verify } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { type CryptoKey, importJWK, type JWK } from 'jose';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { attached, canonicalText, evidenceTypes, kidOf, ofTheService } from '../../src/evidence/index.ts';
import { announceKeys, firstBreak, readSealedLines, strangeKeys } from '../../src/ledger/index.ts';
import type { AppParts } from '../../src/platform/app-parts.ts';
import { createServer } from '../../src/platform/http/create-server.ts';
import { signingKeysRoute } from '../../src/platform/http/signing-keys-route.ts';
import { serviceUrl } from '../../src/platform/postgres/service-role.ts';
import { withClient } from '../../src/platform/postgres/with-client.ts';
import { ensureSigningKey } from '../../src/platform/service-keys.ts';
import { startParts } from '../../src/platform/start-parts.ts';
import { createTestDatabase, type TestDatabase } from '../support/test-database.ts';

const checkout = fileURLToPath(new URL('../..', import.meta.url));
const tokenSecret = randomBytes(24).toString('hex');
let database: TestDatabase;
let folder: string;
let environment: NodeJS.ProcessEnv;

beforeAll(async () => {
  database = await createTestDatabase();
  folder = mkdtempSync(join(tmpdir(), 'ringledger-keys-'));
  environment = {
    ...{ NODE_ENV: 'test', LOG_LEVEL: 'silent', DATABASE_URL: database.url, TOKEN_SECRET: tokenSecret },
    SIGNING_KEYS_FILE: join(folder, 'deep', 'keys.json'),
  };
});
afterAll(async () => {
  const { username } = new URL(serviceUrl(database.url, new TextEncoder().encode(tokenSecret)));
  await withClient(database.url, (owner) => owner.query(`DROP OWNED BY ${username}; DROP ROLE ${username}`));
  await database.drop();
  rmSync(folder, { recursive: true, force: true });
});

/** The command as npm runs it; what it prints. */
async function newSigningKey(): Promise<string> {
  const args = ['--import', 'tsx', 'src/commands/new-signing-key.ts'];
  const env = { ...process.env, ...environment };
  return (await promisify(execFile)(process.execPath, args, { cwd: checkout, env })).stdout.trim();
}

/** A process of the service, from its start to its end. */
async function running<T>(work: (parts: AppParts) => Promise<T>): Promise<T> {
  const { parts, stop } = await startParts(readConfig(environment), () => undefined);
  try {
    await announceKeys(parts);
    return await work(parts);
  } finally {
    await stop();
  }
}

async function published(parts: AppParts): Promise<request.Response> {
  const app = await createServer(parts);
  await app.register(signingKeysRoute, { parts });
  await app.ready();
  const answer = await request(app.server).get('/.well-known/jwks.json');
  await app.close();
  return answer;
}

/** ES256 by Node's own crypto (RFC 7518, section 3.4), not by the library that signed. */
function holds(jws: string, jwk: JWK): boolean {
  const [header, payload, signature = ''] = jws.split('.');
  const key = createPublicKey({ key: { ...jwk }, format: 'jwk' });
  const signed = Buffer.from(`${header}.${payload}`);
  return verify('sha256', signed, { key, dsaEncoding: 'ieee-p1363' }, Buffer.from(signature, 'base64url'));
}

const keyOf = (keys: readonly JWK[], jws: string): JWK => {
  const found = keys.find(({ kid }) => kid === kidOf(jws));
  if (found === undefined) throw new Error('the key of the signature is not published');
  return found;
};
const linesOfTheService = ({ db }: AppParts) =>
  readSealedLines(db.sql, { showId: ofTheService, after: 0, limit: 100 });
const signed = (parts: AppParts, what: string) =>
  parts.keys.sign(evidenceTypes.posting, canonicalText({ what }));

describe('signing keys', () => {
  it('are made by a command, published, renewed; what the old one signed stays good after a restart', async () => {
    const first = await newSigningKey();
    const before = await running(async (parts) => {
      const { status, headers, body } = await published(parts);
      expect([status, headers['content-type'], headers['cache-control']]).toEqual([
        ...[200, expect.stringMatching(/^application\/jwk-set\+json/), 'public, max-age=300'],
      ]);
      expect(body.keys).toEqual([
        {
          kty: 'EC',
          crv: 'P-256',
          alg: 'ES256',
          use: 'sig',
          kid: first,
          x: expect.any(String),
          y: expect.any(String),
        },
      ]);
      return signed(parts, 'before');
    });

    const second = await newSigningKey();
    expect(second).not.toBe(first);
    await running(async (parts) => {
      const { keys } = (await published(parts)).body;
      expect(keys.map(({ kid }: JWK) => kid)).toEqual([second, first]);
      const after = await signed(parts, 'after');
      expect([kidOf(before), kidOf(after)]).toEqual([first, second]);
      expect([holds(before, keyOf(keys, before)), holds(after, keyOf(keys, after))]).toEqual([true, true]);
      expect(holds(before, keyOf(keys, after))).toBe(false);
    });
  }, 120_000);

  it('are announced once each in the ledger of the service, the new one under the seal of the one before', async () => {
    await running(announceKeys);
    await running(async (parts) => {
      const [newest = '', oldest = ''] = parts.keys.publicKeys.map(({ kid }) => kid);
      const lines = await linesOfTheService(parts);
      expect(lines.map(({ type, body, seal }) => [type, body.kid, kidOf(attached(seal, ''))])).toEqual([
        ['signing-key.added', oldest, oldest],
        ['signing-key.added', newest, oldest],
      ]);
      const keys = new Map<string, CryptoKey>();
      for (const jwk of (await published(parts)).body.keys) {
        keys.set(jwk.kid, (await importJWK(jwk, 'ES256')) as CryptoKey);
      }
      expect(await firstBreak(lines, keys)).toBeUndefined();
    });
  });

  it('lie in a file that nobody else may read, with one private part, and never in the database', async () => {
    const file = environment.SIGNING_KEYS_FILE ?? '';
    expect((statSync(file).mode & 0o777).toString(8)).toBe('600');
    const { keys } = JSON.parse(readFileSync(file, 'utf8'));
    expect(keys.map((key: JWK) => Object.keys(key).includes('d'))).toEqual([true, false]);
    const stored = await withClient(database.url, (owner) => owner.query('SELECT * FROM signing_key'));
    expect(stored.rows).toHaveLength(2);
    expect(JSON.stringify(stored.rows)).not.toContain(keys[0].d);
  });

  it('that nobody announced are not published, and a start notices them in the database', async () => {
    const jwk = { kty: 'EC', crv: 'P-256', x: 'A'.repeat(43), y: 'A'.repeat(43) };
    await withClient(database.url, (owner) =>
      owner.query(`INSERT INTO signing_key (kid, jwk, source, added_at) VALUES ($1, $2, 'own', now())`, [
        ...['A'.repeat(43), jwk],
      ]),
    );
    await running(async (parts) => {
      expect((await published(parts)).body.keys).toHaveLength(2);
      expect(await strangeKeys(parts)).toEqual(['A'.repeat(43)]);
    });
  });

  it('are the same for processes that start at once without any', async () => {
    const file = join(folder, 'at-once.json');
    const made = await Promise.all(Array.from({ length: 5 }, () => ensureSigningKey(file)));
    expect(new Set(made.map((keys) => JSON.stringify(keys))).size).toBe(1);
  });
});
