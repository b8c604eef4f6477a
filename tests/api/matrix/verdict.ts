/** Is this sender let in on this row? The rules of the table, spelled out. */
import type { Role, Row } from './expected.ts';

export interface Kind {
  readonly role: Role;
  /** Which shows the pass is for. */
  readonly shows: 'all' | 'this' | 'other' | 'none';
  /** Of a judge or scribe: does she hold the seat of the card that is asked for? */
  readonly holdsSeat: boolean;
  /** A session that was ended, a phone that was taken back. */
  readonly ended: boolean;
}

export interface Asked {
  /** Is the card signed that the ids are of? */
  readonly signed: boolean;
}

export function isLetIn({ open, within, onceSigned }: Row, kind: Kind, { signed }: Asked): boolean {
  if (within === 'no-pass') return true;
  if (kind.ended) return false;
  const roles = signed ? (onceSigned ?? open) : open;
  const publicRow = roles.includes('everyone');
  if (kind.role === 'everyone') return publicRow;
  if (!publicRow && !roles.includes(kind.role)) return false;
  switch (within) {
    case 'anywhere':
      return true;
    case 'service':
      return kind.shows === 'all';
    case 'show':
      return kind.shows !== 'other';
    case 'seat':
      return kind.shows !== 'other' && (isOfSeat(kind) ? kind.holdsSeat : true);
  }
}

const isOfSeat = ({ role }: Kind): boolean => role === 'judge' || role === 'scribe';
