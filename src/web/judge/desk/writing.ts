/**
 * What becomes of one part of a card: it is changed here, it is heard of from the service, it comes in, or both phones
 * changed it. Pure; everything that happens is one of these.
 */
import { canonicalText } from '../../../evidence/index.ts';
import type { KeptConflict, Writing, Written } from './records.ts';

/** As the service has it. */
export interface Heard {
  readonly version: number;
  readonly savedAt: string;
  readonly content: Written;
}

/** An undo of thirty taps is more than a go has. */
const longestUndo = 30;

export const blankWriting = (classId: string, part: string): Writing => ({
  ...{ classId, part, content: {}, seen: { version: null, content: {} } },
  ...{ tried: [], conflict: null, refused: null, before: [] },
});

export const sameWritten = (one: Written, other: Written): boolean =>
  canonicalText(one) === canonicalText(other);

/** Changed on this phone. What the service has anyway needs no sending, unless something is still on its way. */
export function changed(writing: Writing, content: Written, now: number): Writing {
  const before = [...writing.before, writing.content].slice(-longestUndo);
  return withContent({ ...writing, before }, content, now);
}

/** `undefined`: there is nothing to take back. */
export function undone(writing: Writing, now: number): Writing | undefined {
  const content = writing.before.at(-1);
  if (content === undefined) return undefined;
  return withContent({ ...writing, before: writing.before.slice(0, -1) }, content, now);
}

function withContent(writing: Writing, content: Written, now: number): Writing {
  const { unsentSince: _, ...rest } = { ...writing, content, refused: null };
  const isThere = writing.tried.length === 0 && writing.conflict === null;
  return isThere && sameWritten(content, writing.seen.content) ? rest : { ...rest, unsentSince: now };
}

/** Just before it is sent: should the answer be lost, its own change is not taken for somebody else's. */
export const trying = (writing: Writing): Writing =>
  writing.tried.some((one) => sameWritten(one, writing.content))
    ? writing
    : { ...writing, tried: [...writing.tried, writing.content] };

/** The service has `sent`. What was written since is still to be sent. */
export function cameIn(writing: Writing, sent: Written, version: number): Writing {
  if (version < (writing.seen.version ?? 0)) return writing;
  return settledAt({ ...writing, seen: { version, content: sent }, tried: [], refused: null });
}

/** Not unsent where the service has just this. */
function settledAt(writing: Writing): Writing {
  if (!sameWritten(writing.content, writing.seen.content)) return writing;
  const { unsentSince: _, ...rest } = writing;
  return { ...rest, tried: [], conflict: null, refused: null };
}

/** Heard with the day. An older version than the one that was heard before is late news. */
export function heard(writing: Writing, theirs: Heard, now: Date): Writing {
  if (theirs.version <= newestKnown(writing)) return writing;
  return confronted(writing, theirs, now);
}

const newestKnown = ({ seen, conflict }: Writing): number =>
  Math.max(seen.version ?? 0, conflict?.version ?? 0);

/** What stands at the service, against what stands here: taken over, its own, the same, or a conflict. */
export function confronted(writing: Writing, theirs: Heard, now: Date): Writing {
  const { version, content, savedAt } = theirs;
  const seen = { version, content };
  if (sameWritten(content, writing.content)) return settledAt({ ...writing, seen });
  if (writing.unsentSince === undefined) return { ...writing, content, seen, tried: [], before: [] };
  if (writing.tried.some((one) => sameWritten(one, content))) {
    return { ...writing, seen, tried: [], conflict: null };
  }
  // Only the version is news: what stands there is what this was made from, or settled against.
  if (sameWritten(content, writing.seen.content)) return { ...writing, seen, conflict: null };
  const wiped = Object.keys(content).length === 0;
  const conflict = { theirs: wiped ? null : content, version, savedAt };
  return { ...writing, conflict: { ...conflict, foundAt: now.toISOString(), signed: false } };
}

/** The service had it before and has nothing now (it was put back to an older state): it is sent as the first again. */
export const forgottenThere = (writing: Writing): Writing => ({
  ...writing,
  seen: { version: null, content: {} },
  tried: [],
});

export const inConflict = (writing: Writing, conflict: KeptConflict): Writing => ({ ...writing, conflict });

/** `content`: what shall stand. What stood here can be had back by undo. */
export function settled(writing: Writing, content: Written, now: number): Writing {
  const { conflict, unsentSince: _, ...rest } = writing;
  if (conflict === null) return writing;
  const seen = { version: conflict.version, content: conflict.theirs ?? {} };
  const isMine = sameWritten(content, writing.content);
  const before = isMine ? writing.before : [...writing.before, writing.content].slice(-longestUndo);
  return settledAt({
    ...rest,
    ...{ content, seen, before, tried: [], conflict: null, refused: null, unsentSince: now },
  });
}
