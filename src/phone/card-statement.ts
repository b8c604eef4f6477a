/** What a judge signs, out of her card as the service shows it (`GET /v1/cards/:cardId`) and what she wrote. */
import { type SheetName, type SignedCard, signedCardForm } from '../evidence/index.ts';

/** Of the card's members those that a signature names. */
export interface CardToSign {
  readonly id: string;
  readonly showId: string;
  readonly classId: string;
  readonly seatId: string;
  readonly sheet: SheetName;
}

/** The revision that is amended, and why. */
export interface Amending {
  readonly revision: number;
  readonly contentHash: string;
  readonly reason: string;
}

interface Written {
  readonly content: SignedCard['content'];
  /** By the phone's clock. */
  readonly signedAt: Date;
  /** Left out: it is the first signature. */
  readonly amending?: Amending;
}

export function cardStatement(
  { id: cardId, showId, classId, seatId, sheet: { code, version, hash } }: CardToSign,
  { content, signedAt, amending }: Written,
): SignedCard {
  return {
    ...{ form: signedCardForm, showId, classId, seatId, cardId, sheet: { code, version, hash } },
    revision: (amending?.revision ?? 0) + 1,
    previousHash: amending?.contentHash ?? null,
    reason: amending?.reason ?? null,
    signedAt: signedAt.toISOString(),
    content,
  };
}
