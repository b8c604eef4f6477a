/** What `npm run demo` prints when the show is there. */
import type { LogIn } from './kept-files.ts';
import type { OwnPhones } from './own-phone.ts';
import { ownPhoneWords, pageWords } from './page-words.ts';
import { codeNow } from './sign-in.ts';
import type { TourStop } from './tour-commands.ts';
import type { Places } from './tour-places.ts';

export interface Printed {
  readonly places: Places;
  readonly accounts: Readonly<Record<string, LogIn>>;
  /** Where the log-ins are kept. */
  readonly logInsFile: string;
  readonly ownPhones: OwnPhones;
  readonly stops: readonly TourStop[];
}

export function printed({ places, accounts, logInsFile, ownPhones, stops }: Printed): string {
  const { address } = places;
  const tour = stops.flatMap(({ what, commands }, index) => [
    `${index + 1}. ${what}`,
    ...commands.map((command) => `     ${command}`),
  ]);
  const sessions = Object.entries(accounts).map(([who, { session }]) => `${who.toUpperCase()}=${session}`);
  return [
    '',
    `The show is at ${address}; its API is described at ${address}/docs`,
    'Ctrl-C stops it, and the data stays for the next start.',
    '',
    ...pageWords(places, ownPhones),
    '',
    ...ownPhoneWords(ownPhones),
    '',
    `The office. These log-ins were drawn for this installation alone and are kept in ${logInsFile}:`,
    '',
    ...Object.values(accounts).map(logInWords),
    '',
    'Their sessions, good for half a day. Paste them into a shell, and the commands below work as they stand:',
    '',
    ...sessions,
    '',
    'Things to look at over the API',
    '',
    ...tour,
    '',
    'Ringledger records and adds up; it does not rule. The governing body and the decisions of judges, steward and',
    'ground jury stand over it. Everyone in this show is invented.',
  ].join('\n');
}

function logInWords({ name, duty, signIn, password, totpSecret }: LogIn): string {
  const code = codeNow(totpSecret);
  return `  ${signIn.padEnd(10)} ${password}   code now ${code}, secret ${totpSecret}   ${name}, ${duty}`;
}
