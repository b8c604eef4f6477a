import { useWords, type Words } from '../../shared/words.tsx';
import type { ShowClass } from './class-answers.ts';
import type { NextStep } from './next-step.ts';

/** What comes next, as one sentence at the top; told when it changes. */
export function NextWords({ step, ofClass }: { readonly step: NextStep; readonly ofClass: ShowClass }) {
  const { t } = useWords();
  return (
    <p class={isUrgent(step) ? 'next heed' : 'next'} role="status">
      {nextWords(step, { t, called: ofClass.calledAt !== null })}
    </p>
  );
}

const isUrgent = ({ is }: NextStep): boolean =>
  is === 'tie-open' || is === 'changed-since' || is === 'nobody-sits';

export function nextWords(
  step: NextStep,
  { t, called }: { readonly t: Words['t']; readonly called: boolean },
): string {
  switch (step.is) {
    case 'nobody-sits':
      return t('office-next-nobody-sits');
    case 'over':
      return t('office-next-over');
    case 'not-begun':
      return t(called ? 'office-next-called' : 'office-next-not-begun');
    case 'cards-missing': {
      const judges = step.lines.map(({ seat }) => seat.name).join(', ');
      return t('office-next-cards-missing', { judges, in: step.in });
    }
    case 'tie-open':
      return t('office-next-tie-open', { count: step.ties.length });
    case 'ready-to-post':
      return t('office-next-ready');
    case 'changed-since':
      return t('office-next-changed', { version: step.last.version });
    case 'make-official':
      return t('office-next-official');
    case 'posted':
      return t('office-next-posted');
  }
}
