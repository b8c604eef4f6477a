import { useWords } from '../../shared/words.tsx';
import { useShowClock } from '../use-show.ts';
import { changesNames, useAll } from './all-pages.ts';
import type { ClassInHand } from './class-entries-screen.tsx';
import type { Entry } from './entry-search.ts';
import { type Draw, type Drawn, repeated, shellLine } from './repeat-draw.ts';

/** How the order of go came about, and how anybody repeats it. */
export function HowDrawn({ showId, entries, draws }: ClassInHand) {
  const { t } = useWords();
  const all = useAll<Entry>(`/v1/shows/${showId}/entries`, changesNames).body ?? [];
  const drawn = entries.map(({ id, entryId, backNumber }) => ({
    ...{ id, backNumber },
    rider: all.find((entry) => entry.id === entryId)?.exhibitor.id ?? id,
  }));
  if (draws.length === 0) return <p class="note">{t('office-entries-not-drawn')}</p>;
  return (
    <details>
      <summary>{t('office-entries-how', { count: draws.length })}</summary>
      <ol class="lines">
        {draws.map((draw) => (
          <li key={draw.id}>
            <OneDraw {...{ draw, drawn }} />
          </li>
        ))}
      </ol>
    </details>
  );
}

function OneDraw({ draw, drawn }: { readonly draw: Draw; readonly drawn: readonly Drawn[] }) {
  const { t } = useWords();
  const { moment } = useShowClock();
  const numbers = draw.order.flatMap((id) => drawn.find((entry) => entry.id === id)?.backNumber ?? []);
  return (
    <>
      <p>
        <strong>{t(`office-entries-kind-${draw.kind}`)}</strong>{' '}
        <span class="note">
          {moment(draw.drawnAt)}
          {draw.reason !== null && ` · ${draw.reason}`}
        </span>
      </p>
      <p class="figures">{numbers.join(' ')}</p>
      {draw.seed !== null && (
        <>
          <p class="note">
            {t('office-entries-seed-of', { seed: draw.seed })}{' '}
            {t(`office-entries-repeat-${repeated(draw, drawn)}`)}
          </p>
          <pre class="shell">
            <code>{shellLine(draw, numbers)}</code>
          </pre>
          <p class="note">{t('office-entries-repeat-what')}</p>
        </>
      )}
    </>
  );
}
