/** What is wrong with a score sheet or the maneuvers of a pattern, in words for who writes them. */
import type { SheetFault } from '../sheets/sheet-fault.ts';
import type { Speech } from './speech.ts';
import { quoted } from './words.ts';

export const sheetFaultSentence = ({ code, written = '' }: SheetFault, speech: Speech): string =>
  speech.say(`sheet-fault-${code}`, { written: quoted(written) });
