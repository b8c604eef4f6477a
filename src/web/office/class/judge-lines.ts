/** What the office knows of each judge of a class and her card, joined from several answers. */
import type { Panel, PaperCard, Phone, Preview, Progress, Seat } from './class-answers.ts';

/** Where a card is; the office sees counts until it is signed, never a mark. */
export type CardStand =
  | { readonly is: 'waiting'; readonly expected: number }
  | { readonly is: 'under-way'; readonly written: number; readonly expected: number }
  | { readonly is: 'signed'; readonly revision: number; readonly at: string; readonly onPaper: boolean }
  /** An entry was added, or taken back in, after she signed. */
  | { readonly is: 'to-be-amended'; readonly entriesToAdd: number }
  | { readonly is: 'on-paper'; readonly paperCardId: string; readonly enteredBy: number }
  | { readonly is: 'withdrawn' };

export interface JudgeLine {
  readonly seat: Seat;
  readonly stand: CardStand;
  readonly judgePhones: readonly Phone[];
  readonly scribePhones: readonly Phone[];
}

interface Known {
  readonly panel: Panel;
  readonly cards: readonly Progress[];
  readonly phones: readonly Phone[];
  readonly paper: readonly PaperCard[];
  readonly preview: Preview | undefined;
}

export function judgeLines({ panel, cards, phones, paper, preview }: Known): JudgeLine[] {
  return panel.seats.map((seat) => {
    const hers = phones.filter(({ personId, revokedAt }) => personId === seat.personId && revokedAt === null);
    return {
      seat,
      stand: standOf(seat, {
        card: cards.find(({ seatId }) => seatId === seat.id),
        paper: paper.find(({ seatId, status }) => seatId === seat.id && status === 'open'),
        missing: preview?.cardsMissing.find(({ seatId }) => seatId === seat.id)?.why,
      }),
      judgePhones: hers.filter(({ role }) => role === 'judge'),
      scribePhones: hers.filter(({ role }) => role === 'scribe'),
    };
  });
}

interface OfSeat {
  readonly card: Progress | undefined;
  readonly paper: PaperCard | undefined;
  readonly missing: 'not-signed' | 'to-be-amended' | undefined;
}

function standOf({ withdrawnAt }: Seat, { card, paper, missing }: OfSeat): CardStand {
  if (withdrawnAt !== null) return { is: 'withdrawn' };
  if (paper !== undefined) {
    return { is: 'on-paper', paperCardId: paper.id, enteredBy: paper.entries.length };
  }
  if (card === undefined) return { is: 'waiting', expected: 0 };
  const { signed, goesWritten: written, goesExpected: expected } = card;
  if (signed === null)
    return written === 0 ? { is: 'waiting', expected } : { is: 'under-way', written, expected };
  if (missing === 'to-be-amended') return { is: 'to-be-amended', entriesToAdd: signed.entriesToAdd.length };
  const { revision, receivedAt: at, origin } = signed;
  return { is: 'signed', revision, at, onPaper: origin === 'paper' };
}

/** Is the office still waiting for it? */
export const isMissing = ({ stand }: JudgeLine): boolean => stand.is !== 'signed' && stand.is !== 'withdrawn';
