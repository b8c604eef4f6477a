/** The pages of the demo, printed so that each can be opened with a click. */
import type { OwnPhones } from './own-phone.ts';
import type { Places } from './tour-places.ts';

/** A browser keeps one phone: a second one needs a second browser, or a private window. */
const oneEach =
  'Each phone is a browser of its own: open the links in different browsers or private windows.';

export function pageWords({ address, showId }: Pick<Places, 'address' | 'showId'>, own: OwnPhones): string[] {
  const show = `${address}/shows/${showId}`;
  return [
    'The pages',
    '',
    `  families       ${show}`,
    `                 ${show}/classes/2          why each entry stands where it does`,
    `                 ${show}/numbers/157        one entry: every class, judge, maneuver`,
    `  at the ring    ${show}/screen             for a big screen`,
    `  the office     ${address}/office          sign in as below`,
    ...own.phones.map(({ role, here }) => `  ${roleWords[role].padEnd(14)} ${here}`),
    '',
    `${oneEach}`,
    'Class 19 waits for the card of judge 3: mark it on her phone, with the network off if you like, sign it, and let',
    'the office look at the preview and post it while the page of the families is open.',
  ];
}

const roleWords = { judge: 'judge 3', scribe: 'her scribe', gate: 'the gate' } as const;

export function ownPhoneWords({ phones, qr, reachable }: OwnPhones): string[] {
  const elsewhere = reachable
    ? 'Scan it with a phone in this network. A phone makes its key only on a page that came over https: without\n' +
      'https it says so, and the links above work on this computer all the same.'
    : 'For a phone in this network start the demo with HOST=0.0.0.0. A phone makes its key only on a page that came\n' +
      'over https (PUBLIC_ADDRESS=https://...); on this computer the links above work as they are.';
  return [
    'A phone of your own as that of judge 3',
    '',
    qr.trimEnd(),
    '',
    ...phones.map(
      ({ role, link, code }) => `  ${roleWords[role].padEnd(14)} ${link}   or type the code ${code}`,
    ),
    '',
    'Each code is good once, for eight hours.',
    elsewhere,
  ];
}
