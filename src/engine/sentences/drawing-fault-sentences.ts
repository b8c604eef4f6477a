/** What is wrong with the drawing of a pattern, in words for who drew it. */
import type { DrawingFault } from '../patterns/drawing-fault.ts';
import type { Speech } from './speech.ts';

export const drawingFaultSentence = ({ code, written }: DrawingFault, speech: Speech): string =>
  speech.say(`drawing-fault-${code}`, { written: String(written) });
