/** Fingerprints over canonical JSON (RFC 8785): the same on the phone, here and in any later check. */
import { createHash } from 'node:crypto';
import { canonicalText } from '../evidence/canonical.ts';

export { canonicalText };

/** SHA-256 over a text, as small hex. */
export const hashOfText = (text: string): string => createHash('sha256').update(text).digest('hex');

/** SHA-256 over the canonical form, as small hex. */
export const fingerprint = (value: unknown): string => hashOfText(canonicalText(value));

/** A content with its canonical text and fingerprint, made once: a card of 300 goes is some 200 KB. */
export interface Fingerprinted<Content> {
  readonly content: Content;
  readonly text: string;
  readonly hash: string;
}

export function fingerprinted<Content>(content: Content): Fingerprinted<Content> {
  const text = canonicalText(content);
  return { content, text, hash: hashOfText(text) };
}

/** Do both say the same, whatever the order of their members? */
export const sameContent = (a: unknown, b: unknown): boolean => canonicalText(a) === canonicalText(b);
