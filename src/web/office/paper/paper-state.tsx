import { Link } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { showInHand } from '../office-state.ts';
import { paths } from '../paths.ts';
import { momentOf } from '../pieces/moments.ts';
import { session } from '../session.ts';
import type { PaperCard } from './paper-card.ts';

interface StateParts {
  readonly paper: PaperCard;
  readonly showId: string;
}

/** Where the card is between the two who type it: told when it changes. */
export function PaperState({ paper, showId }: StateParts) {
  const { t, language } = useWords();
  const accountId = session.value?.account.id;
  const timeZone = showInHand.value?.timeZone ?? 'UTC';
  const stage = stageOf(paper);
  return (
    <section class="paper-state" aria-label={t('office-paper-state')}>
      <p role="status" class={stage === 'differ' || stage === 'overtaken' ? 'heed' : ''}>
        {t(`office-paper-stage-${stage}`, {
          revision: paper.revision,
          why: paper.withdrawnWhy ?? '',
          count: paper.differences?.length ?? 0,
        })}
      </p>
      {paper.reason !== null && <p class="note">{t('office-paper-reason', { reason: paper.reason })}</p>}
      <ul class="entered">
        {paper.entries.map((entry) => (
          <li key={entry.accountId}>
            {t(entry.accountId === accountId ? 'office-paper-entered-mine' : 'office-paper-entered-other', {
              at: momentOf(entry.enteredAt, timeZone, language),
            })}
          </li>
        ))}
      </ul>
      {paper.status !== 'open' && (
        <p>
          <Link href={paths.class(showId, paper.classId)}>{t('office-paper-to-class')}</Link>
        </p>
      )}
    </section>
  );
}

export type Stage =
  | 'nobody'
  | 'mine-only'
  | 'other-only'
  | 'two-others'
  | 'differ'
  | 'overtaken'
  | 'accepted'
  | 'withdrawn';

export function stageOf({ status, overtaken, mine, entries, differences }: PaperCard): Stage {
  if (status !== 'open') return status;
  if (overtaken) return 'overtaken';
  if (differences !== null) return 'differ';
  if (mine !== null) return 'mine-only';
  if (entries.length === 0) return 'nobody';
  return entries.length === 1 ? 'other-only' : 'two-others';
}
