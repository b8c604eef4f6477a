/** What `npm run demo` prints when the show is there. */
import type { LogIn } from './kept-files.ts';
import type { OwnPhone } from './own-phone.ts';
import { codeNow } from './sign-in.ts';
import type { TourStop } from './tour-commands.ts';

export interface Printed {
  readonly address: string;
  readonly accounts: Readonly<Record<string, LogIn>>;
  /** Where the log-ins are kept. */
  readonly logInsFile: string;
  readonly ownPhone: OwnPhone;
  readonly stops: readonly TourStop[];
}

export function printed({ address, accounts, logInsFile, ownPhone, stops }: Printed): string {
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
    ...ownPhoneWords(ownPhone),
    '',
    `The office. These log-ins were drawn for this installation alone and are kept in ${logInsFile}:`,
    '',
    ...Object.values(accounts).map(logInWords),
    '',
    'Their sessions, good for half a day. Paste them into a shell, and the commands below work as they stand:',
    '',
    ...sessions,
    '',
    'Things to look at',
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

function ownPhoneWords({ code, here, link, qr, reachable }: OwnPhone): string[] {
  const elsewhere = reachable
    ? 'Scan it with a phone in this network. A phone makes its key only on a page that came over https: without\n' +
      'https it says so, and the link for this computer works all the same.'
    : 'For a phone in this network start the demo with HOST=0.0.0.0. A phone makes its key only on a page that came\n' +
      'over https (PUBLIC_ADDRESS=https://...); on this computer it works as it is: open the link in its browser.';
  return [
    'Pair a phone of your own, as the scribe of judge 3',
    '',
    qr.trimEnd(),
    '',
    `  ${link}`,
    ...(link === here ? [] : [`  on this computer: ${here}`]),
    `  or type the code ${code}; it is good once, for eight hours`,
    '',
    elsewhere,
  ];
}
