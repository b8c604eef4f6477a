/**
 * `npm run --silent first-account -- --sign-in ada --name "Ada Brandt"`: makes the first manager of the whole service and
 * prints the one-time code with which she sets up password and second factor. Refused while such a manager can sign in:
 * she makes the others. Asked again before the account is set up it prints a new code.
 */
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { makeFirstAccount, signInName } from '../access/index.ts';
import { readConfig } from '../config.ts';
import { nameText } from '../platform/http/text.ts';
import { Problem, problemCatalogue } from '../platform/problems/index.ts';
import { startParts } from '../platform/start-parts.ts';

const say = (line: string) => console.error(line);
const given = z.string('it is missing');
const wanted = z.object({ 'sign-in': given.pipe(signInName), name: given.pipe(nameText) });

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { 'sign-in': { type: 'string' }, name: { type: 'string' } } });
  const read = wanted.safeParse(values);
  if (!read.success) {
    const faults = read.error.issues.map(({ path, message }) => `--${path.join('.')}: ${message}`);
    throw new Error(`${faults.join('; ')}. For example: --sign-in ada --name "Ada Brandt"`);
  }
  const { name, 'sign-in': signIn } = read.data;
  const { parts, stop } = await startParts(readConfig(process.env), say);
  try {
    const { setupCode, setupEndsAt } = await makeFirstAccount(parts, { name, signIn });
    say(`The set-up code of ${signIn}, good once and until ${setupEndsAt}; send it to /v1/account-setups:`);
    console.log(setupCode);
  } finally {
    await stop();
  }
}

main().catch((error: unknown) => {
  say(words(error));
  process.exitCode = 1;
});

function words(error: unknown): string {
  if (!(error instanceof Problem)) return error instanceof Error ? error.message : String(error);
  const { title, whatToDo } = problemCatalogue[error.code];
  const faults = (error.details.errors ?? []).map(({ message }) =>
    typeof message === 'string' ? message : message('en'),
  );
  return [[title, ...faults].join(': '), whatToDo].join('. ');
}
