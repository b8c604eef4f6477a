/** What results are made of: the last signed revision of each seat that still counts. */
import type { CardContent } from '../engine/sheets/card-types.ts';
import type { SqlTransaction } from '../platform/database.ts';
import * as statements from './card-statements.ts';

export interface SignedCard {
  readonly seatId: string;
  readonly cardId: string;
  readonly revisionId: string;
  readonly revision: number;
  readonly contentHash: string;
  readonly content: CardContent;
  readonly signedAt: Date;
  readonly receivedAt: Date;
}

export interface SignedCards {
  /** In the order of the seats. */
  readonly signed: readonly SignedCard[];
  /** Seats whose card is not in yet. */
  readonly missingSeatIds: readonly string[];
}

/** Seats of judges who left the panel are in neither list. */
export async function signedCards(tx: SqlTransaction, classId: string): Promise<SignedCards> {
  const rows = await tx.sql.rows<SignedCard | UnsignedSeat>(statements.readSignedCards, [classId]);
  return {
    signed: rows.filter(isSigned),
    missingSeatIds: rows.filter((row) => !isSigned(row)).map(({ seatId }) => seatId),
  };
}

type UnsignedSeat = Pick<SignedCard, 'seatId'> & { readonly revisionId: null };

const isSigned = (row: SignedCard | UnsignedSeat): row is SignedCard => row.revisionId !== null;
