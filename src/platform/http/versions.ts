/** ETag and If-Match (RFC 9110, 8.8.3 and 13.1.1): where two people may edit, the later one says what she read. */
import type { FastifyReply, FastifyRequest } from 'fastify';
import { problem } from '../problems/index.ts';

export const etagOf = (version: number): string => `"${version}"`;

export function sendVersion(reply: FastifyReply, version: number): void {
  reply.header('etag', etagOf(version));
}

/** The version that the sender read. Throws if_match_required, and stale_version for what is no version. */
export function versionRead(request: FastifyRequest): number {
  const header = request.headers['if-match'];
  if (header === undefined) throw problem('if_match_required');
  const version = /^"(\d{1,9})"$/.exec(header)?.[1];
  if (version === undefined)
    throw problem('stale_version', { detail: `If-Match is ${header.slice(0, 100)}.` });
  return Number(version);
}

/** Throws stale_version where someone changed the record since it was read. */
export function mustBeCurrent(stored: number, read: number): void {
  if (stored === read) return;
  throw problem('stale_version', {
    detail: `The change is of version ${read}; the record is at version ${stored}.`,
    headers: { etag: etagOf(stored) },
  });
}

/** Does the reader hold this version already (If-None-Match)? Then 304 is the answer, without a body. */
export function isKnownToReader(request: FastifyRequest, etag: string): boolean {
  const header = request.headers['if-none-match'];
  if (header === undefined) return false;
  if (header.trim() === '*') return true;
  return header.split(',').some((tag) => tag.trim().replace(/^W\//, '') === etag);
}
