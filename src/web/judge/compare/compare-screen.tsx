/** All goes so far side by side, best first; ties of her own marked, and broken here. */
import { useSignal } from '@preact/signals';
import { Link, useLocation } from 'wouter-preact';
import { CardStateLine } from '../class/card-state-line.tsx';
import { useDerived } from '../derived.ts';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import { maneuversOf } from '../entries.ts';
import { stepName, stepSign } from '../go/step-words.ts';
import { type Step, stepsOf } from '../go/steps.ts';
import { outcomeWords } from '../outcome-words.ts';
import { useParts } from '../parts.tsx';
import { Screen } from '../screen.tsx';
import { GoMarks } from './go-marks.tsx';
import { type Level, moved, standingOf, withTieOrder } from './standing.ts';

export function CompareScreen({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, books } = useParts();
  const [, go] = useLocation();
  const { classId } = dayClass;
  const book = books.of(classId).value;
  const standing = useDerived(() => standingOf(dayClass, book.content.value), [dayClass, book]);
  const steps = stepsOf(dayClass.sheet, maneuversOf(dayClass));
  return (
    <Screen
      title={t('judge-compare')}
      over={`${dayClass.number} ${dayClass.name}`}
      back={{ href: `/classes/${classId}`, label: t('judge-gate-sheet') }}
      reach={
        <button type="button" class="main" onClick={() => go(`/classes/${classId}/sign`)}>
          {t(book.shut.value === 'signed' ? 'judge-to-signed' : 'judge-to-sign')}
        </button>
      }
    >
      <CardStateLine dayClass={dayClass} />
      {standing.levels.length === 0 ? (
        <p class="empty">{t('judge-compare-empty')}</p>
      ) : (
        <table class="compare">
          <thead>
            <tr>
              <th scope="col">
                <span class="heard">{t('judge-compare-place')}</span>
              </th>
              <th scope="col">
                <span class="heard">{t('judge-compare-entry')}</span>
              </th>
              <th scope="col">
                <MarkHeads steps={steps} />
              </th>
              <th scope="col">{t('judge-part-total')}</th>
            </tr>
          </thead>
          {standing.levels.map((level) => (
            <LevelRows key={level.entries[0]?.classEntryId} dayClass={dayClass} level={level} steps={steps} />
          ))}
        </table>
      )}
      {standing.open.length === 0 ? null : <StillOpen dayClass={dayClass} open={standing.open} />}
    </Screen>
  );
}

function MarkHeads({ steps }: { readonly steps: readonly Step[] }) {
  const parts = useParts();
  if (steps.length < 2) return parts.t('judge-step-mark');
  return (
    <span class="marks-of-go">
      {steps.map((step, index) => (
        <abbr key={index} title={stepName(step, parts)}>
          {stepSign(step, steps, parts.words)}
        </abbr>
      ))}
    </span>
  );
}

interface LevelProps {
  readonly dayClass: DayClass;
  readonly level: Level;
  readonly steps: readonly Step[];
}

function LevelRows({ dayClass, level, steps }: LevelProps) {
  const { t, books } = useParts();
  const shut = books.of(dayClass.classId).value.shut.value;
  return (
    <tbody data-tie={level.tie}>
      {level.entries.map((entry, index) => (
        <tr key={entry.classEntryId}>
          <td class="place">{placeText(level, index, t)}</td>
          <th scope="row">
            <Link href={`/classes/${dayClass.classId}/goes/${entry.classEntryId}`}>{entry.backNumber}</Link>
          </th>
          <td>
            <GoMarks dayClass={dayClass} entry={entry} steps={steps} />
          </td>
          <td class="sum">
            {index === 0 || level.place === undefined ? <Total dayClass={dayClass} entry={entry} /> : '″'}
          </td>
        </tr>
      ))}
      {level.tie === 'none' ? null : (
        <tr>
          <td colSpan={4} class="tie">
            <p>
              {t(`judge-tie-${level.tie}`, {
                numbers: level.entries.map(({ backNumber }) => backNumber).join(', '),
              })}
            </p>
            {shut === null ? <TieOrder dayClass={dayClass} level={level} /> : null}
          </td>
        </tr>
      )}
    </tbody>
  );
}

function placeText({ place, tie }: Level, index: number, t: (id: string) => string): string {
  if (place === undefined) return t('judge-compare-unplaced');
  return String(tie === 'broken' ? place + index : place);
}

function Total({ dayClass, entry }: { readonly dayClass: DayClass; readonly entry: DayEntry }) {
  return <GoMarks dayClass={dayClass} entry={entry} steps={[]} totalOnly />;
}

/** Hers to order, by going up or down. */
function TieOrder({ dayClass, level }: Omit<LevelProps, 'steps'>) {
  const { t, books, words, speech } = useParts();
  const refused = useSignal('');
  const book = books.of(dayClass.classId).value;
  const ids = level.entries.map(({ classEntryId }) => classEntryId);
  const write = async (tie: readonly string[]) => {
    const standing = standingOf(dayClass, book.content.value);
    const outcome = await book.writeOrder((kept) => ({
      ...kept,
      ownOrder: withTieOrder(standing, kept.ownOrder ?? [], tie),
    }));
    refused.value = outcome.ok ? '' : outcomeWords(outcome, { words, speech, dayClass });
  };
  return (
    <>
      <ol class="tie-order">
        {level.entries.map(({ classEntryId, backNumber }, index) => (
          <li key={classEntryId}>
            <span class="number">{backNumber}</span>
            <button
              type="button"
              disabled={index === 0}
              aria-label={t('judge-tie-up', { number: backNumber })}
              onClick={() => void write(moved(ids, classEntryId, -1))}
            >
              ↑
            </button>
            <button
              type="button"
              disabled={index === ids.length - 1}
              aria-label={t('judge-tie-down', { number: backNumber })}
              onClick={() => void write(moved(ids, classEntryId, 1))}
            >
              ↓
            </button>
          </li>
        ))}
      </ol>
      {level.tie === 'open' ? (
        <button type="button" onClick={() => void write(ids)}>
          {t('judge-tie-as-is')}
        </button>
      ) : null}
      <div role="alert">{refused.value === '' ? null : <p class="fault">{refused.value}</p>}</div>
    </>
  );
}

function StillOpen({ dayClass, open }: { readonly dayClass: DayClass; readonly open: readonly DayEntry[] }) {
  const { t } = useParts();
  return (
    <section aria-labelledby="still-open">
      <h2 id="still-open">{t('judge-compare-open')}</h2>
      <ul class="numbers">
        {open.map(({ classEntryId, backNumber }) => (
          <li key={classEntryId}>
            <Link href={`/classes/${dayClass.classId}/goes/${classEntryId}`}>{backNumber}</Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
