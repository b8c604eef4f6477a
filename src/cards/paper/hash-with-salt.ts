/** What a ledger line tells of a paper card without telling what is on it. */
import type { CardContent } from '../../engine/sheets/card-types.ts';
import { fingerprint } from '../../platform/canonical-json.ts';

export interface SaltedPaper {
  readonly content: CardContent;
  /** 128 random bits as 32 hex digits: everyone hears the line, and a ranking of three could be guessed from a bare hash. */
  readonly salt: string;
}

/**
 * SHA-256, as small hex, over the canonical form (RFC 8785) of `{ content, salt }`. With the content and the salt
 * anyone can compute it again; without the salt nobody can try contents out.
 */
export const hashWithSalt = ({ content, salt }: SaltedPaper): string => fingerprint({ content, salt });
