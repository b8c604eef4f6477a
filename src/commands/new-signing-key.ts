/**
 * `npm run --silent new-signing-key [-- --file PATH]`: makes the key that postings are signed and ledger lines sealed
 * with, or the next one; what the ones before signed stays good. Prints the new key's thumbprint.
 */
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { type Config, readConfig } from '../config.ts';
import { announceKeys } from '../ledger/index.ts';
import { ensureSigningKey, nextSigningKeys, saveSigningKeys, serviceKeys } from '../platform/service-keys.ts';
import { signingKeysFile, startParts } from '../platform/start-parts.ts';

const say = (line: string) => console.error(line);

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { file: { type: 'string' } } });
  const chosen = values.file === undefined ? {} : { SIGNING_KEYS_FILE: values.file };
  const config = readConfig({ ...process.env, ...chosen });
  const file = signingKeysFile(config);
  const isFirst = !existsSync(file);
  const { kid } = await serviceKeys(isFirst ? await ensureSigningKey(file) : await addNext(config, file));
  console.log(kid);
  say(
    `${file} holds the ${isFirst ? 'first' : 'new'} key. Keep a copy of the file where nobody else reads it:`,
  );
  say('without it nobody can sign for this service, and with it everybody can.');
  if (!isFirst) say('Start every process of the service again: until then they sign with the key before.');
}

/** Announced first, and by the key before, which seals the line. */
async function addNext(config: Config, file: string) {
  const { parts, stop } = await startParts(config, say);
  try {
    const next = await nextSigningKeys(file);
    await announceKeys(parts);
    await announceKeys(parts, (await serviceKeys(next)).publicKeys);
    saveSigningKeys(file, next);
    return next;
  } finally {
    await stop();
  }
}

main().catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
});
