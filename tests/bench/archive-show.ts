/** The archive of a large show taken out and checked, beside one bare pass over the same file. */
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { JWK } from 'jose';
import { verifyArchive } from '../../src/archive/offline.ts';
import type { BenchService } from './bench-service.ts';
import { compare, printTable } from './compare.ts';
import type { PostedShow } from './posted-show.ts';
import { startProcess, whole } from './processes.ts';

const turns = 3;
const calls = { ours: 1, yardstick: 5 };

export async function archiveShow(bench: BenchService, { showId }: PostedShow): Promise<void> {
  const address = `${bench.address}/v1/shows/${showId}/archive`;
  const takeOut = async () => {
    const answer = await fetch(address, { headers: { authorization: `Bearer ${bench.session}` } });
    if (!answer.ok) throw new Error(`there is no archive: ${await answer.text()}`);
    return answer.text();
  };
  const text = await takeOut();
  const trustedKeys = await publicKeys(bench);
  const verify = async () => {
    const { faults } = await verifyArchive(JSON.parse(text), { trustedKeys });
    if (faults.length > 0) throw new Error(`the archive has faults: ${JSON.stringify(faults.slice(0, 3))}`);
  };
  const pass = () => [JSON.parse(text), createHash('sha256').update(text).digest('hex')];
  const yardstick = { yardstickName: 'JSON.parse and SHA-256', yardstick: pass, turns, calls };
  const command = commandOver(text, { keys: trustedKeys });
  const rows = [];
  try {
    rows.push(
      await compare({ name: 'verify', ours: verify, ...yardstick }),
      await compare({ name: 'verify as a command', ours: command.run, ...yardstick }),
      await compare({ name: 'export', ours: takeOut, ...yardstick }),
    );
  } finally {
    command.stop();
  }
  printTable(
    `The archive of a show, ${(Buffer.byteLength(text) / 1_048_576).toFixed(1)} MiB`,
    'A class of 300 entries before nine judges, signed and posted. Verifying reads the form, checks the chain and every\n' +
      'seal and signature, and computes the posting anew, in one thread; the second row is the whole command, with the\n' +
      'start of Node.js and the translation of the sources. Exporting is GET /v1/shows/:id/archive over the loopback.\n' +
      'In turns with one JSON.parse and one SHA-256 of the same text.',
    rows,
  );
}

async function publicKeys({ address }: BenchService): Promise<JWK[]> {
  const { keys } = (await (await fetch(`${address}/.well-known/jwks.json`)).json()) as { keys: JWK[] };
  return keys;
}

/** As `npm run verify` runs it, without npm. */
function commandOver(text: string, jwks: { readonly keys: readonly JWK[] }) {
  const folder = mkdtempSync(join(tmpdir(), 'ringledger-bench-'));
  const [archive, keys] = [join(folder, 'archive.json'), join(folder, 'keys.json')];
  writeFileSync(archive, text);
  writeFileSync(keys, JSON.stringify(jwks));
  const run = () => whole(startProcess('src/commands/verify.ts', { args: [archive, '--keys', keys] }));
  return { run, stop: () => rmSync(folder, { recursive: true }) };
}
