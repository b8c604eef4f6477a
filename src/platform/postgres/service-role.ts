/**
 * The service does not work as the owner of its tables: it signs in as a login role of its own, which may add to
 * the evidence and never change it, whatever goes wrong in the code above. The owner (DATABASE_URL) only migrates
 * and makes that role. Its rights are those of the group, and stand in the migration `service_role`.
 */
import { hkdfSync } from 'node:crypto';
import pg from 'pg';
import { scramVerifier } from './scram-verifier.ts';
import { withClient } from './with-client.ts';

/** The group that all login roles of services on one PostgreSQL server belong to. */
export const serviceGroup = 'ringledger_service';

interface ServiceLogin {
  readonly name: string;
  readonly password: string;
}

/** From the key of the passes (HKDF, RFC 5869), so that several processes of one service agree without asking. */
function serviceLogin(tokenKey: Uint8Array): ServiceLogin {
  const derive = (what: string, bytes: number) =>
    Buffer.from(hkdfSync('sha256', tokenKey, '', `ringledger database role: ${what}`, bytes));
  const name = `${serviceGroup}_${derive('name', 6).toString('hex')}`;
  return { name, password: derive('password', 32).toString('base64url') };
}

/**
 * The owner's address with the name and password of the service's own role.
 * Throws an Error for an address without a host, such as that of a socket.
 */
export function serviceUrl(ownerUrl: string, tokenKey: Uint8Array): string {
  const { name, password } = serviceLogin(tokenKey);
  const url = new URL(ownerUrl);
  url.searchParams.delete('user');
  url.searchParams.delete('password');
  url.username = name;
  url.password = password;
  if (url.username === name) return url.href;
  throw new Error(
    'DATABASE_URL: it must name a host, or SERVICE_DATABASE_URL must say as whom the service works.',
  );
}

/** Before the migrations, which grant to it. Throws an Error in plain words where the owner may not make it. */
export async function ensureServiceGroup(ownerUrl: string): Promise<void> {
  await asOwner(ownerUrl, async (owner) => {
    if (await roleExists(owner, serviceGroup)) return;
    await owner.query(`CREATE ROLE ${serviceGroup} NOLOGIN`);
  });
}

/**
 * The address as which the service works. The role is made, or its password renewed, only where it cannot sign in
 * yet. Throws an Error in plain words where the owner may not do that.
 */
export async function ensureServiceLogin(ownerUrl: string, tokenKey: Uint8Array): Promise<string> {
  const url = serviceUrl(ownerUrl, tokenKey);
  if (await mayWork(url)) return url;
  const login = serviceLogin(tokenKey);
  await asOwner(ownerUrl, async (owner) => {
    const verb = (await roleExists(owner, login.name)) ? 'ALTER' : 'CREATE';
    // As a verifier, because the statement itself may stand in the server's log.
    const password = pg.escapeLiteral(scramVerifier(login.password));
    await owner.query(`${verb} ROLE ${login.name} LOGIN PASSWORD ${password}`);
    await owner.query(`GRANT ${serviceGroup} TO ${login.name}`);
  });
  return url;
}

const roleExists = async (client: pg.Client, name: string) =>
  (await client.query('SELECT FROM pg_roles WHERE rolname = $1', [name])).rowCount === 1;

const isMember = `SELECT pg_has_role(current_user, '${serviceGroup}', 'USAGE') AS member`;

/** 28P01 wrong password, 28000 no such role, 42704 no such group (PostgreSQL, appendix A). */
const notYet = ['28P01', '28000', '42704'];

async function mayWork(url: string): Promise<boolean> {
  try {
    return await withClient(url, async (client) => {
      const { rows } = await client.query<{ member: boolean }>(isMember);
      return rows[0]?.member === true;
    });
  } catch (error) {
    if (notYet.includes(codeOf(error))) return false;
    throw error;
  }
}

/**
 * Roles belong to the whole server, and another process may be making the same one: 42710 and 23505, it was
 * quicker; XX000, both changed it at once.
 */
const raced = ['42710', '23505', 'XX000'];

async function asOwner(
  ownerUrl: string,
  work: (owner: pg.Client) => Promise<void>,
  tries = 10,
): Promise<void> {
  try {
    await withClient(ownerUrl, work);
  } catch (error) {
    if (codeOf(error) === '42501') throw new Error(mayNotMakeRoles, { cause: error });
    if (tries <= 1 || !raced.includes(codeOf(error))) throw error;
    await new Promise((done) => setTimeout(done, 20 + Math.random() * 80));
    await asOwner(ownerUrl, work, tries - 1);
  }
}

const mayNotMakeRoles = [
  'The user of DATABASE_URL may not make the role that the service works as. Let whoever administers this PostgreSQL run',
  `  CREATE ROLE ${serviceGroup} NOLOGIN;`,
  "  CREATE ROLE ringledger_web LOGIN PASSWORD '...';",
  `  GRANT ${serviceGroup} TO ringledger_web;`,
  'and set SERVICE_DATABASE_URL to the same database with that name and password. (Or: ALTER ROLE ... CREATEROLE for',
  'the user of DATABASE_URL.)',
].join('\n');

interface Rights {
  readonly name: string;
  readonly member: boolean;
  readonly commands: boolean;
  readonly changes: readonly string[];
}

const readRights = `
  SELECT rolname AS name, pg_has_role(rolname, '${serviceGroup}', 'USAGE') AS member,
    rolsuper OR rolcreaterole OR rolcreatedb OR rolreplication OR rolbypassrls AS commands,
    ARRAY(
      SELECT evidence.relname::text FROM pg_class evidence
      WHERE EXISTS (SELECT FROM pg_trigger
          WHERE tgrelid = evidence.oid AND tgfoid = 'refuse_change_of_evidence'::regproc)
        AND (has_table_privilege(rolname, evidence.oid, 'UPDATE, DELETE, TRUNCATE, TRIGGER')
          OR has_any_column_privilege(rolname, evidence.oid, 'UPDATE')
          OR pg_has_role(rolname, evidence.relowner, 'MEMBER'))
      ORDER BY 1) AS changes
  FROM pg_roles WHERE rolname = current_user`;

/** Throws an Error in plain words where the role of `url` may do too little, or more than add to the evidence. */
export async function mustBeConfined(url: string): Promise<void> {
  const { rows } = await withClient(url, (client) => client.query<Rights>(readRights));
  const [rights] = rows;
  if (rights === undefined) throw new Error('The database does not say who the service is.');
  const { name, member, commands, changes } = rights;
  if (commands || changes.length > 0) {
    const what = commands
      ? 'commands the server or its roles'
      : `may change evidence (${changes.join(', ')})`;
    throw new Error(
      `The service must not work as the role ${name}, which ${what}. Give it a role that belongs to ${serviceGroup} and to nothing else.`,
    );
  }
  if (!member) throw new Error(`Let the owner of the database run: GRANT ${serviceGroup} TO ${name};`);
}

const codeOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string'
    ? error.code
    : '';
