/** Two phones on one seat: who saves says which version she has seen, and nothing is lost in silence. */
import { problem } from '../platform/problems/index.ts';
import type { Draft } from './card-record.ts';

/** By If-Match; `none`: If-None-Match: *, nothing was there; `undefined`: the sender does not say. */
export type SeenVersion = number | 'none' | undefined;

interface Save<Content> {
  readonly seen: SeenVersion;
  readonly sent: Content;
  readonly blank: (content: Content) => boolean;
}

/**
 * May `sent` take the place of what is stored? A first save needs no version, nor does one over a draft that was
 * wiped; any other must be of the version that is stored. Throws draft_changed_meanwhile with both.
 */
export function mustBeSeen<Content>(stored: Draft<Content> | undefined, save: Save<Content>): void {
  const { seen, sent, blank } = save;
  if (stored === undefined) {
    if (typeof seen === 'number') throw changed(null, sent, `Version ${seen} is not there.`);
    return;
  }
  const { version, content } = stored;
  if (seen === version || (typeof seen !== 'number' && blank(content))) return;
  const said = typeof seen === 'number' ? `You have seen version ${seen}` : 'You have seen nothing saved';
  throw changed(stored, sent, `${said}; version ${version} is kept.`);
}

function changed<Content>(stored: Draft<Content> | null, sent: Content, detail: string) {
  const current = stored && {
    content: stored.content,
    version: stored.version,
    savedAt: stored.savedAt.toISOString(),
  };
  return problem('draft_changed_meanwhile', { detail, more: { current, sent } });
}
