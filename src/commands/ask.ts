/**
 * `npm run --silent ask -- judge-1 GET /v1/cards/... ['{"mark": "7"}']`: asks the running demo as one of its phones, with
 * a proof signed by that phone's key, or as one of its office (manager, secretary, points).
 * `npm run --silent ask -- secretary log-in`: what she types to sign in, with the code of this moment.
 */
import { join } from 'node:path';
import { readConfig } from '../config.ts';
import type { PhoneRequest } from '../phone/index.ts';
import { apiAt, bare, type Sends } from './demo/api.ts';
import { KeptFiles, type LogIn } from './demo/kept-files.ts';
import { phoneWith } from './demo/phones.ts';
import { codeNow, sessionOf } from './demo/sign-in.ts';

const usage =
  "Write it like this: npm run --silent ask -- judge-1 GET /v1/phones/current, with a body as '{...}' behind it.";

interface Known {
  readonly address: string;
  readonly accounts: Readonly<Record<string, LogIn>>;
  readonly phones: NonNullable<ReturnType<KeptFiles['phones']>>['keys'];
}

function knownOf(files: KeptFiles): Known {
  const [logIns, phones] = [files.logIns(), files.phones()];
  if (logIns === undefined || phones === undefined) {
    throw new Error('There is no demo yet: start it with npm run demo, and ask from another window.');
  }
  return { ...logIns, phones: phones.keys };
}

async function senderCalled(who: string, { address, accounts, phones }: Known): Promise<Sends> {
  const [key, account] = [phones[who], accounts[who]];
  if (key !== undefined) return (await phoneWith(address, key)).sends;
  if (account !== undefined) return bare(address, await sessionOf(apiAt(address), account));
  const names = [...Object.keys(phones), ...Object.keys(accounts)].join(', ');
  throw new Error(`Nobody is called ${who}. There are ${names}.`);
}

function logInOf({ signIn, password, totpSecret }: LogIn): string {
  return JSON.stringify({ signIn, password, totpCode: codeNow(totpSecret) });
}

function requestOf([method, path, text]: readonly string[]): PhoneRequest {
  if (method === undefined || path === undefined || !path.startsWith('/v1/')) throw new Error(usage);
  return { method: method.toUpperCase(), path, ...(text === undefined ? {} : { body: JSON.parse(text) }) };
}

async function main(): Promise<void> {
  const [who, ...asked] = process.argv.slice(2);
  if (who === undefined) throw new Error(usage);
  const known = knownOf(new KeptFiles(join(readConfig(process.env).folder, 'demo')));
  const account = known.accounts[who];
  if (asked[0] === 'log-in' && account !== undefined) return console.log(logInOf(account));
  const sends = await senderCalled(who, known);
  const answer = await sends(requestOf(asked)).catch((cause: unknown) => {
    throw new Error(`Nobody answers at ${known.address}: is the demo running?`, { cause });
  });
  console.error(`${answer.status} ${answer.statusText}`);
  console.log(await answer.text());
  if (!answer.ok) process.exitCode = 1;
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 2;
});
