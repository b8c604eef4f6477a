/** What a start in production looks at beside the settings. Each refusal says what to do. */
import { existsSync, statSync } from 'node:fs';
import type { Config } from '../config.ts';
import type { Sql } from './sql.ts';

/** To be readable or changeable by other users of the machine, or changeable by the group (stat(2)). */
const openToOthers = 0o027;

/** Throws an Error where the file of the signing keys is not there, or others may read it. */
export function mustBePrivateFile(file: string): void {
  if (!existsSync(file)) {
    throw new Error(
      `SIGNING_KEYS_FILE: there is no ${file}. \`npm run --silent new-signing-key -- --file ${file}\` makes it.`,
    );
  }
  // Windows has no such bits.
  if (process.platform === 'win32' || (statSync(file).mode & openToOthers) === 0) return;
  throw new Error(
    `SIGNING_KEYS_FILE: other users of this machine may read or change ${file}, and so sign as this service. ` +
      `Run \`chmod 600 ${file}\`; if somebody may have read it, run \`npm run --silent new-signing-key\` too.`,
  );
}

/** Throws an Error for keys that the demo made. */
export function mustNotBeOfTheDemo(file: string, { demo }: { readonly demo?: boolean | undefined }): void {
  if (demo !== true) return;
  throw new Error(
    `SIGNING_KEYS_FILE: the keys in ${file} are the demo's. Set it to a path of its own and make keys there: ` +
      '`npm run --silent new-signing-key -- --file PATH`.',
  );
}

const demoAccounts = {
  name: 'production.demo-accounts',
  text: 'SELECT count(*)::integer AS count FROM account WHERE demo',
};

/** Throws an Error where the database holds accounts whose passwords the demo has printed. */
export async function mustHoldNoDemo({ production }: Config, sql: Sql): Promise<void> {
  if (!production) return;
  const count = (await sql.row<{ count: number }>(demoAccounts))?.count ?? 0;
  if (count === 0) return;
  throw new Error(
    `DATABASE_URL: the database holds ${count === 1 ? '1 account' : `${count} accounts`} of the demo, open to everyone. ` +
      'Set it to a database of its own; the one of the demo is for the demo.',
  );
}
