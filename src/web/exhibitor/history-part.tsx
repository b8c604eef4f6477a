/** What was posted when: a change is said with its reason, and what stood there before stays readable. */
import { scoreText } from '../board/class/score-text.ts';
import { dayAndTimeAt } from '../shared/show-times.ts';
import { useWords } from '../shared/words.tsx';
import type { EntryResult, OfNumber, Posted } from './number-answer.ts';

interface Told {
  readonly history: Posted['history'];
  readonly show: OfNumber['show'];
}

/** The reason of the last posting, and what it changed for this entry. */
export function LastChange({ history, show: { timeZone } }: Told) {
  const { t, language } = useWords();
  const last = history.at(-1);
  const before = history.at(-2);
  if (last === undefined || last.reason === null) return null;
  const time = dayAndTimeAt(last.postedAt, { language, timeZone });
  return (
    <div class="heed">
      <p>{t('exhibitor-corrected', { time, reason: last.reason })}</p>
      {last.results.map((now, at) => (
        <Moved key={now.judge?.seatId ?? ''} {...{ now, before: before?.results[at] }} />
      ))}
    </div>
  );
}

interface ToCompare {
  readonly now: EntryResult;
  readonly before: EntryResult | undefined;
}

function Moved({ now, before }: ToCompare) {
  const { t, language } = useWords();
  if (before === undefined) return null;
  const text = (total: string | null) => (total === null ? '–' : scoreText(total, { language }));
  return (
    <>
      {now.place !== before.place && <p>{placeMoved(before.place, now.place, t)}</p>}
      {now.total !== before.total && (
        <p>{t('exhibitor-moved-total', { before: text(before.total), now: text(now.total) })}</p>
      )}
    </>
  );
}

function placeMoved(
  before: number | null,
  now: number | null,
  t: (id: string, args: Record<string, string>) => string,
): string {
  if (now === null) return t('exhibitor-got-place', { before: String(before) });
  if (before === null) return t('exhibitor-gets-place', { now: String(now) });
  return t('exhibitor-moved-place', { before: String(before), now: String(now) });
}

export function HistoryPart({ history, show, id }: Told & { readonly id: string }) {
  const { t, language } = useWords();
  const { timeZone } = show;
  return (
    <section aria-labelledby={`${id}-history`}>
      <h3 id={`${id}-history`}>{t('exhibitor-history')}</h3>
      {history.toReversed().map(({ id: posting, version, state, postedAt, reason, results }) => (
        <details key={posting} class="version">
          <summary>
            {t('exhibitor-version', {
              ...{ version: String(version), state: t(`shared-state-${state}`) },
              time: dayAndTimeAt(postedAt, { language, timeZone }),
            })}
            {version === history.length && <b> ({t('exhibitor-version-now')})</b>}
          </summary>
          {reason !== null && <p>{reason}</p>}
          {results.map((result) => (
            <Said key={result.judge?.seatId ?? ''} result={result} />
          ))}
        </details>
      ))}
    </section>
  );
}

function Said({ result }: { readonly result: EntryResult }) {
  const { t, language } = useWords();
  const { judge, place, of, total, because } = result;
  return (
    <div class="said">
      <p>
        {judge !== null && `${judge.name}: `}
        <b>{place === null ? t('exhibitor-without-place') : t('exhibitor-place-of', { place, of })}</b>
        {total !== null && ` · ${t('exhibitor-total')} ${scoreText(total, { language })}`}
      </p>
      {because.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
