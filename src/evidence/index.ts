export { canonicalText, readCanonical } from './canonical.ts';
export { cardIdOf } from './card-id.ts';
export {
  attached,
  detached,
  type EvidenceType,
  evidenceAlgorithm,
  evidenceTypes,
  type JwsFault,
  type JwsRead,
  kidOf,
  readJws,
} from './jws.ts';
export { type ChainedLine, type LineActor, ofTheService } from './ledger-line.ts';
export { type SheetName, type SignedCard, signedCardForm } from './signed-card.ts';
export { type LedgerHead, type SignedPosting, signedPostingForm } from './signed-posting.ts';
