/** The fingerprint of a card: the same content gives the same, on the phone, here and in any later check. */
import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';

/** Canonical JSON (RFC 8785). Throws for what JSON cannot hold. */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('this has no canonical JSON form');
  return text;
}

/** SHA-256 over a canonical text, as small hex. */
export const hashOfText = (text: string): string => createHash('sha256').update(text).digest('hex');

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
