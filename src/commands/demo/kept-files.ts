/** What the demo keeps between two starts: the log-ins of its office, and the keys of its phones. */
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

const logIn = z.strictObject({
  accountId: z.string(),
  name: z.string(),
  duty: z.string(),
  signIn: z.string(),
  /** Drawn when the account was made; every installation has its own. */
  password: z.string(),
  /** Of the authenticator app, in base 32. */
  totpSecret: z.string(),
  /** Token of the last session. */
  session: z.string(),
});
export type LogIn = z.infer<typeof logIn>;

const logIns = z.strictObject({
  /** Where the demo listened last. */
  address: z.string(),
  /** By name: manager, secretary, points. */
  accounts: z.record(z.string(), logIn),
});
export type LogIns = z.infer<typeof logIns>;

const phoneKey = z.strictObject({
  kty: z.literal('EC'),
  crv: z.literal('P-256'),
  x: z.string(),
  y: z.string(),
  d: z.string(),
});
export type KeptPhoneKey = z.infer<typeof phoneKey>;

const phones = z.strictObject({
  showId: z.string(),
  /** By name: judge-1, scribe-2, gate. A real phone never lets its private key out. */
  keys: z.record(z.string(), phoneKey),
});
export type KeptPhones = z.infer<typeof phones>;

/** Two files that nobody else may read. */
export class KeptFiles {
  readonly logInsFile: string;
  readonly phonesFile: string;

  readonly folder: string;

  /** `folder`: of the demo, e.g. `.ringledger/demo`. */
  constructor(folder: string) {
    this.folder = folder;
    this.logInsFile = join(folder, 'log-ins.json');
    this.phonesFile = join(folder, 'phones.json');
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  }

  logIns = (): LogIns | undefined => read(this.logInsFile, logIns);
  keepLogIns = (kept: LogIns): void => write(this.logInsFile, kept);

  phones = (): KeptPhones | undefined => read(this.phonesFile, phones);
  keepPhones = (kept: KeptPhones): void => write(this.phonesFile, kept);
}

function read<Kept>(file: string, form: z.ZodType<Kept>): Kept | undefined {
  return existsSync(file) ? form.parse(JSON.parse(readFileSync(file, 'utf8'))) : undefined;
}

function write(file: string, kept: unknown): void {
  writeFileSync(file, `${JSON.stringify(kept, null, 2)}\n`, { mode: 0o600 });
  chmodSync(file, 0o600);
}
