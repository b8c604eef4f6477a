/**
 * The id of a card follows from its seat (RFC 9562, UUID version 5). A signature names the card, and a phone with no
 * signal must be able to write and to sign one that the service has not heard of yet: so both come to the same id
 * without asking each other, and so do two phones of one seat. It is no secret: what may be done with a card is decided
 * by the seat that a phone holds.
 *
 * Cards that were opened before this rule keep their id: a phone believes the id that the service names first.
 */
import { v5 } from 'uuid';

/** Ours, drawn once; it never changes, or the same seat would have two cards. */
const namespace = '5f0c1a52-8d5e-4b0e-9a37-2f6b7c1d9e84';

/** `seatId` in small letters, as the service writes it, or not: it is the same seat. */
export const cardIdOf = (seatId: string): string => v5(seatId.toLowerCase(), namespace);
