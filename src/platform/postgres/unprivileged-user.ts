/** PostgreSQL refuses to run as root. Whoever is root runs it as the user `postgres`, who must reach its files. */
import { execFileSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

export interface UnixUser {
  readonly uid: number;
  readonly gid: number;
}

/** The user to run PostgreSQL as; `undefined` where we are not root and run it ourselves. */
export function userForPostgres(say: (line: string) => void): UnixUser | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const known = unixUser('postgres');
  if (known !== undefined) return known;
  say('We are root, which PostgreSQL refuses to run as: adding the system user "postgres".');
  execFileSync('useradd', ['--system', '--no-create-home', '--user-group', 'postgres'], { stdio: 'ignore' });
  const made = unixUser('postgres');
  if (made === undefined) throw new Error('The system user "postgres" could not be added; set DATABASE_URL.');
  return made;
}

function unixUser(name: string): UnixUser | undefined {
  try {
    const ask = (flag: string) =>
      Number(execFileSync('id', [flag, name], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }));
    return { uid: ask('-u'), gid: ask('-g') };
  } catch {
    return undefined;
  }
}

/** May the user go through every folder down to `path`? Parts that do not exist yet are made enterable. */
export function mayReach(path: string, user: UnixUser | undefined): boolean {
  if (user === undefined) return true;
  const folder = resolve(path);
  const above = dirname(folder);
  if (existsSync(folder) && !mayEnter(folder, user)) return false;
  return above === folder || mayReach(above, user);
}

const execute = { owner: 0o100, group: 0o010, others: 0o001 };

function mayEnter(folder: string, user: UnixUser): boolean {
  const { mode, uid, gid } = statSync(folder);
  if (uid === user.uid) return (mode & execute.owner) !== 0;
  if (gid === user.gid) return (mode & execute.group) !== 0;
  return (mode & execute.others) !== 0;
}
