/** The role that the service works as, against the database itself: what it may not do is refused for want of a right. */
import { createHash, createHmac, randomBytes } from 'node:crypto';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { ensureDatabase, migrate, mustBeMigrated } from '../../src/platform/migrate.ts';
import { scramVerifier } from '../../src/platform/postgres/scram-verifier.ts';
import { ensureServiceLogin, mustBeConfined, serviceUrl } from '../../src/platform/postgres/service-role.ts';
import { withClient } from '../../src/platform/postgres/with-client.ts';
import { createTestDatabase, type TestDatabase } from '../support/test-database.ts';

const evidence = [
  'card_revision',
  'class_relation',
  'ledger_line',
  'order_draw',
  'posting',
  'ruling',
  'score_sheet',
  'signing_key',
];

/** Of its own, because roles belong to the whole server. */
const newKey = () => randomBytes(32);
const key = newKey();
let database: TestDatabase;
let service: pg.Client;
let serviceName: string;

beforeAll(async () => {
  database = await createTestDatabase();
  const url = await ensureServiceLogin(database.url, key);
  serviceName = new URL(url).username;
  service = new pg.Client({ connectionString: url });
  await service.connect();
});
afterAll(async () => {
  await service.end();
  await database.drop();
  await asAdministrator(`DROP ROLE ${serviceName}`);
});

const asAdministrator = (statement: string) =>
  withClient(inject('serverUrl'), (client) => client.query(statement));
const asOwner = (text: string) => withClient(database.url, async (client) => (await client.query(text)).rows);

/** PostgreSQL's code and message of a refusal. */
async function answerTo(statement: string, client: pg.Client = service) {
  try {
    await client.query(statement);
  } catch (error) {
    const { code, message } = error as { code: string; message: string };
    return { code, message };
  }
  return { code: 'taken', message: '' };
}

/** 42501 insufficient_privilege (PostgreSQL, appendix A); the trigger would say 23001. */
const forWantOfARight = { code: '42501', message: expect.not.stringContaining('evidence is never changed') };

describe('the role of the service', () => {
  it.each(evidence)('reads and adds to %s, and can do nothing else to it', async (table) => {
    expect((await answerTo(`SELECT FROM ${table}`)).code).toBe('taken');
    const column = (
      await asOwner(
        `SELECT column_name FROM information_schema.columns WHERE table_name = '${table}' LIMIT 1`,
      )
    )[0].column_name;
    for (const statement of [
      `UPDATE ${table} SET ${column} = ${column}`,
      `UPDATE ${table} SET ${column} = ${column} WHERE false`,
      `DELETE FROM ${table}`,
      `DELETE FROM ${table} WHERE false`,
      `INSERT INTO ${table} SELECT * FROM ${table} ON CONFLICT ON CONSTRAINT ${table}_pkey DO UPDATE SET ${column} = NULL`,
      `TRUNCATE ${table}`,
      `TRUNCATE ${table} CASCADE`,
      `ALTER TABLE ${table} DISABLE TRIGGER ${table}_stays`,
      `ALTER TABLE ${table} DISABLE TRIGGER ALL`,
      `ALTER TABLE ${table} DROP CONSTRAINT ${table}_pkey CASCADE`,
      `ALTER TABLE ${table} OWNER TO ${serviceName}`,
      `DROP TRIGGER ${table}_stays ON ${table}`,
      `CREATE TRIGGER another BEFORE INSERT ON ${table} EXECUTE FUNCTION refuse_change_of_evidence()`,
      `CREATE RULE another AS ON INSERT TO ${table} DO INSTEAD NOTHING`,
      `DROP TABLE ${table}`,
      `DROP TABLE ${table} CASCADE`,
    ]) {
      expect({ statement, ...(await answerTo(statement)) }).toEqual({ statement, ...forWantOfARight });
    }
  });

  it('cannot grant itself what it lacks', async () => {
    await answerTo(`GRANT UPDATE ON ledger_line TO ${serviceName}`);
    const { message } = await answerTo('UPDATE ledger_line SET type = type');
    expect(message).toBe('permission denied for table ledger_line');
  });

  it('cannot put the triggers to sleep, become someone else, or give roles', async () => {
    const owner = new URL(database.url).username;
    for (const statement of [
      'SET session_replication_role = replica',
      `SELECT set_config('session_replication_role', 'replica', false)`,
      `SET ROLE ${owner}`,
      `SET SESSION AUTHORIZATION ${owner}`,
      `ALTER ROLE ${serviceName} SUPERUSER`,
      'CREATE ROLE another LOGIN',
      `GRANT ${owner} TO ${serviceName}`,
      'DROP ROLE ringledger_service',
      "COPY ledger_line FROM PROGRAM 'true'",
      "SELECT pg_read_file('PG_VERSION')",
    ]) {
      expect({ statement, ...(await answerTo(statement)) }).toEqual({ statement, ...forWantOfARight });
    }
  });

  it('makes and changes nothing but rows', async () => {
    for (const statement of [
      'CREATE TABLE another (id integer)',
      'CREATE SCHEMA another',
      'CREATE FUNCTION another() RETURNS integer LANGUAGE sql AS $$ SELECT 1 $$',
      `CREATE OR REPLACE FUNCTION refuse_change_of_evidence() RETURNS trigger LANGUAGE plpgsql
         AS $$ BEGIN RETURN NULL; END $$`,
      'DROP FUNCTION refuse_change_of_evidence() CASCADE',
      'DROP SCHEMA public CASCADE',
      'ALTER TABLE show ADD COLUMN another integer',
      'SELECT grant_service_rights()',
      'DELETE FROM _prisma_migrations',
      `UPDATE _prisma_migrations SET checksum = ''`,
    ]) {
      expect({ statement, ...(await answerTo(statement)) }).toEqual({ statement, ...forWantOfARight });
    }
  });

  it('empties no table at all', async () => {
    const tables = await asOwner(`SELECT relname AS name FROM pg_class
      WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace ORDER BY 1`);
    expect(tables.length).toBeGreaterThan(25);
    for (const { name } of tables) {
      expect({ name, ...(await answerTo(`TRUNCATE ${name} CASCADE`)) }).toEqual({ name, ...forWantOfARight });
    }
  });

  it('has the rights that the migration grants: all of a table that is no evidence, two where it is', async () => {
    const rights = await asOwner(`
      SELECT relname AS name, ARRAY(
        SELECT privilege_type::text FROM aclexplode(relacl) WHERE grantee = 'ringledger_service'::regrole ORDER BY 1) AS may
      FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace ORDER BY 1`);
    const all = ['DELETE', 'INSERT', 'SELECT', 'UPDATE'];
    const wanted = (name: string) => {
      if (name === '_prisma_migrations') return ['SELECT'];
      return evidence.includes(name) ? ['INSERT', 'SELECT'] : all;
    };
    expect(rights).toEqual(rights.map(({ name }) => ({ name, may: wanted(name) })));
  });
});

describe('making the role', () => {
  it('gives every process of one key the same, and every key another', async () => {
    expect(serviceUrl(database.url, key)).toBe(serviceUrl(database.url, Uint8Array.from(key)));
    expect(serviceUrl(database.url, key)).not.toBe(serviceUrl(database.url, newKey()));
    expect(() => serviceUrl('postgresql:///ringledger?host=/run/postgresql', key)).toThrow(
      /it must name a host/,
    );
  });

  it('works for many processes that start at once, and puts right what was changed', async () => {
    const own = newKey();
    const urls = await Promise.all(Array.from({ length: 6 }, () => ensureServiceLogin(database.url, own)));
    expect(new Set(urls).size).toBe(1);
    const [url = ''] = urls;
    const { username } = new URL(url);
    for (const spoilt of [
      `ALTER ROLE ${username} PASSWORD 'another'`,
      `ALTER ROLE ${username} NOLOGIN`,
      `REVOKE ringledger_service FROM ${username}`,
    ]) {
      await asOwner(spoilt);
      await expect(withClient(url, (client) => client.query('SELECT FROM show'))).rejects.toThrow();
      await ensureServiceLogin(database.url, own);
      await withClient(url, (client) => client.query('SELECT FROM show'));
    }
    await asAdministrator(`DROP ROLE ${username}`);
  });

  it('keeps the password from the server: only its verifier is sent', async () => {
    const password = new URL(serviceUrl(database.url, key)).password;
    const [{ rolpassword }] = await asOwner(
      `SELECT rolpassword FROM pg_authid WHERE rolname = '${serviceName}'`,
    );
    expect(rolpassword).toMatch(/^SCRAM-SHA-256\$4096:/);
    expect(rolpassword).not.toContain(password);
  });

  it('refuses to work as a role that could change evidence', async () => {
    await mustBeConfined(serviceUrl(database.url, key));
    await expect(mustBeConfined(database.url)).rejects.toThrow(
      /must not work as the role .* commands the server/,
    );
    const own = newKey();
    const url = await ensureServiceLogin(database.url, own);
    const { username } = new URL(url);
    await asOwner(`GRANT UPDATE (type) ON ledger_line TO ${username}`);
    await asOwner(`GRANT DELETE ON posting TO ${username}`);
    await expect(mustBeConfined(url)).rejects.toThrow(/may change evidence \(ledger_line, posting\)/);
    await asOwner(`DROP OWNED BY ${username}; DROP ROLE ${username}`);
  });
});

describe('an owner who may make no roles', () => {
  const owner = `ringledger_test_owner_${randomBytes(6).toString('hex')}`;
  const web = `${owner}_web`;
  const own = newKey();
  const addressOf = (name: string) => {
    const url = new URL(inject('serverUrl'));
    url.pathname = `/${owner}`;
    url.username = name;
    url.password = 'for-tests';
    return url.href;
  };

  beforeAll(async () => {
    await asAdministrator(`CREATE ROLE ${owner} LOGIN PASSWORD 'for-tests'`);
    await asAdministrator(`CREATE DATABASE ${owner} OWNER ${owner}`);
  });
  afterAll(async () => {
    await asAdministrator(`DROP DATABASE ${owner} WITH (FORCE)`);
    await asAdministrator(`DROP ROLE IF EXISTS ${web}`);
    await asAdministrator(`DROP ROLE ${owner}`);
  });

  it('migrates, is told what to do, and the service works as the role that an administrator made', async () => {
    await ensureDatabase(addressOf(owner));
    await migrate(addressOf(owner), () => undefined);
    const told = ensureServiceLogin(addressOf(owner), own);
    await expect(told).rejects.toThrow(
      /may not make the role[\s\S]*GRANT ringledger_service TO[\s\S]*SERVICE_DATABASE_URL/,
    );
    await asAdministrator(`CREATE ROLE ${web} LOGIN PASSWORD 'for-tests'`);
    await expect(mustBeConfined(addressOf(web))).rejects.toThrow(`GRANT ringledger_service TO ${web}`);
    await asAdministrator(`GRANT ringledger_service TO ${web}`);
    await mustBeConfined(addressOf(web));
    await mustBeMigrated(addressOf(web));
    await expect(mustBeConfined(addressOf(owner))).rejects.toThrow(/may change evidence \(card_revision, /);
  });
});

describe('the verifier of a password', () => {
  it('is the one of RFC 7677, section 3: it checks that client and proves itself as that server', () => {
    // RFC 7677, section 3: user "user", password "pencil".
    const salt = Buffer.from('W22ZaJ0SNY7soEsUEjb6gQ==', 'base64');
    const clientFirst = 'n=user,r=rOprNGfwEbeRWgbNEkqO';
    const nonce = 'r=rOprNGfwEbeRWgbNEkqO%hvYDpWUa2RaTCAfuxFIlj)hNlF$k0';
    const exchange = `${clientFirst},${nonce},s=W22ZaJ0SNY7soEsUEjb6gQ==,i=4096,c=biws,${nonce}`;
    const [, stored = '', server = ''] =
      /\$([^$:]+):([^$:]+)$/.exec(scramVerifier('pencil', { salt, iterations: 4096 })) ?? [];
    const hmac = (keyed: string) =>
      createHmac('sha256', Buffer.from(keyed, 'base64')).update(exchange).digest();
    expect(hmac(server).toString('base64')).toBe('6rriTRBi23WpRR/wtup+mMhUZUn/dB5nLTJRsjl95G4=');
    const proof = Buffer.from('dHzbZapWIk4jUhN+Ute9ytag9zjfMHgsqmmiz7AndVQ=', 'base64');
    const clientKey = proof.map((byte, at) => byte ^ (hmac(stored)[at] ?? 0));
    expect(createHash('sha256').update(clientKey).digest('base64')).toBe(stored);
  });
});
