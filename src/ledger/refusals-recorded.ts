/**
 * Which refusals are written to the ledger: those for want of a right, and those where evidence or a pass does not
 * hold. A form filled in wrongly, or a result that is not ready yet, is everyday work and is not.
 */
import type { ProblemCode } from '../platform/problems/index.ts';

const why = {
  not_allowed: 'Somebody tried what is not her duty.',
  other_show: 'A pass of one show was used for another.',
  other_seat: "Somebody reached for another judge's card.",
  card_hidden: 'Somebody asked for marks of a card that is not signed.',
  token_revoked: 'A session that was ended, or whose account was closed, is still used.',
  phone_revoked: 'A phone that was taken off the show is still used: it may be in wrong hands.',
  proof_invalid: 'The token of a phone is used by somebody without its key: it was stolen.',
  signature_invalid:
    "A card came that is not signed by its judge's phone, or was changed after she signed it.",
  signature_of_other_card:
    'A signed card was sent for another show, class, seat, sheet or revision than it names.',
  class_not_empty: 'A class that nobody opened has something written in it.',
  own_account: 'Somebody tried to reset her own account, which is for another manager.',
  password_wrong: 'Somebody at an open session did not know its password.',
  archive_altered: 'An archive was brought in that does not hold: something in it was changed.',
  archive_of_other_history:
    'An archive was brought in that tells a show in another way than it is told here.',
  archive_conflicts: 'An archive was brought in that says something else of a record than is kept here.',
  proof_replayed: 'A request of a phone came a second time, as somebody sends it who listened in.',
} as const satisfies Partial<Record<ProblemCode, string>>;

/** Each with what it says about its sender. */
export const recordedRefusals: Readonly<Partial<Record<ProblemCode, string>>> = why;
