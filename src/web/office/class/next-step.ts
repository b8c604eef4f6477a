/** What the office has to do next for a class, the most urgent first. */
import type { OpenTie, Posting, Preview } from './class-answers.ts';
import { isMissing, type JudgeLine } from './judge-lines.ts';

export type NextStep =
  | { readonly is: 'nobody-sits' }
  | { readonly is: 'over' }
  | { readonly is: 'not-begun' }
  | { readonly is: 'cards-missing'; readonly lines: readonly JudgeLine[]; readonly in: number }
  | { readonly is: 'tie-open'; readonly ties: readonly OpenTie[] }
  | { readonly is: 'ready-to-post' }
  | { readonly is: 'changed-since'; readonly last: Posting }
  | { readonly is: 'make-official'; readonly last: Posting }
  | { readonly is: 'posted'; readonly last: Posting };

interface Stand {
  readonly preview: Preview;
  readonly lines: readonly JudgeLine[];
  /** The last one posted. */
  readonly last: Posting | undefined;
}

export function nextStep({ preview, lines, last }: Stand): NextStep {
  if (preview.state === 'cancelled' || preview.state === 'combined') return { is: 'over' };
  if (lines.every(({ stand }) => stand.is === 'withdrawn')) return { is: 'nobody-sits' };
  const missing = lines.filter(isMissing);
  if (missing.length > 0) {
    const signed = lines.filter(({ stand }) => stand.is === 'signed').length;
    const begun = signed > 0 || missing.some(({ stand }) => stand.is !== 'waiting');
    return begun || last !== undefined
      ? { is: 'cards-missing', lines: missing, in: signed }
      : { is: 'not-begun' };
  }
  if (preview.openTies.length > 0) return { is: 'tie-open', ties: preview.openTies };
  if (last === undefined) return { is: 'ready-to-post' };
  if (preview.changedSincePosting) return { is: 'changed-since', last };
  return last.state === 'provisional' ? { is: 'make-official', last } : { is: 'posted', last };
}
