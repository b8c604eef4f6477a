/** Making the faults of a card. */
import type { CardFault, CardFaultCode } from './card-types.ts';
import type { Allowed } from './types.ts';

/** A fault about an entry, or about the whole card. */
export function cardFault(
  code: CardFaultCode,
  entry: string | undefined,
  { at, written, allowed }: { at: string; written?: string; allowed?: Allowed },
): CardFault {
  return { code, entry, at, position: undefined, written, allowed };
}
