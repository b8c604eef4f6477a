/**
 * `npm run --silent verify -- archive.json [--keys jwks.json] [--head 812:3f9c...]`: checks the archive of a show on
 * any machine, without a database and without the service. Exits with 1 where a fault is found, 2 where it cannot check.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { JWK } from 'jose';
import { verifyArchive } from '../archive/offline.ts';
import { report } from './verify/report.ts';

/** What the command cannot begin with; said in one line. */
class Unusable extends Error {}

interface Order {
  readonly file: string;
  readonly trustedKeys: readonly JWK[] | undefined;
  readonly head: { readonly sequence: number; readonly hash: string } | undefined;
}

function orderOf(args: string[]): Order {
  const { values, positionals } = parsed(args);
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new Unusable('name one file: the archive of a show');
  const trustedKeys = values.keys?.flatMap(keysIn);
  return { file, trustedKeys, head: values.head === undefined ? undefined : headOf(values.head) };
}

function parsed(args: string[]) {
  const options = { keys: { type: 'string', multiple: true }, head: { type: 'string' } } as const;
  try {
    return parseArgs({ args, options, allowPositionals: true });
  } catch (error) {
    throw new Unusable(error instanceof Error ? error.message : String(error));
  }
}

/** RFC 7517, section 5: as it is published at /.well-known/jwks.json. */
function keysIn(file: string): JWK[] {
  const set = jsonIn(file);
  const keys = typeof set === 'object' && set !== null && 'keys' in set ? set.keys : undefined;
  if (Array.isArray(keys) && keys.length > 0) return keys as JWK[];
  throw new Unusable(`${file} is not a set of keys (JWKS)`);
}

function headOf(text: string): Order['head'] {
  const [, sequence, hash] = /^(\d{1,9}):([0-9a-f]{64})$/.exec(text) ?? [];
  if (sequence !== undefined && hash !== undefined) return { sequence: Number(sequence), hash };
  throw new Unusable('--head is the number of a line, a colon and its hash: 64 digits of small hex');
}

function jsonIn(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    const why = error instanceof SyntaxError ? 'it is not JSON' : 'there is no such file to read';
    throw new Unusable(`${file}: ${why}`);
  }
}

async function main(args: string[]): Promise<number> {
  try {
    const { file, ...asked } = orderOf(args);
    const verified = await verifyArchive(jsonIn(file), asked);
    console.log(report(verified, asked));
    return verified.faults.length === 0 ? 0 : 1;
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    console.error(`verify: ${error.message}`);
    return 2;
  }
}

process.exitCode = await main(process.argv.slice(2));
