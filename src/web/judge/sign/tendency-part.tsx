/**
 * For the judge's own eyes, once the class is posted: the mean of her scores and whether they drifted over the order of
 * go. Computed on her phone from her own card; nobody is asked.
 */

import { drift, type ScoredGo, spread } from '../../../engine/agreement/judge-tendency.ts';
import type { Exact } from '../../../engine/numbers/exact.ts';
import { round } from '../../../engine/numbers/rounding.ts';
import { scoreGo } from '../../../engine/sheets/score-go.ts';
import { useDerived } from '../derived.ts';
import type { DayClass } from '../desk/day-types.ts';
import { goingIn, maneuversOf } from '../entries.ts';
import { decimalFigure } from '../numbers.ts';
import { useParts } from '../parts.tsx';

const posted: readonly string[] = ['provisional', 'official', 'corrected'];

/** Fewer goes say nothing: our own choice, no source; the office is told from as many on. */
const goesWorthTelling = 6;

export function TendencyPart({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, words, books } = useParts();
  const book = books.of(dayClass.classId).value;
  const goes = useDerived(() => scoredGoes(dayClass, book.content.value.goes), [dayClass, book]);
  const spreadOut = spread(goes.map(({ score }) => score));
  const slope = drift(goes);
  if (!posted.includes(dayClass.state) || spreadOut === undefined || slope === undefined) return null;
  if (spreadOut.goes < goesWorthTelling) return null;
  const told = (value: Exact) => decimalFigure(round(value, { places: 1, mode: 'half-up' }), words);
  const overTen = round(slope.mul(10), { places: 1, mode: 'half-up' });
  const way = overTen.n === 0n ? 'level' : overTen.s > 0n ? 'rose' : 'fell';
  return (
    <section aria-labelledby="tendency">
      <h2 id="tendency">{t('judge-tendency')}</h2>
      <p>{t('judge-tendency-mean', { goes: spreadOut.goes, mean: told(spreadOut.mean) })}</p>
      <p>{t(`judge-tendency-${way}`, { by: told(overTen.abs()) })}</p>
      <p class="note">{t('judge-tendency-own')}</p>
    </section>
  );
}

function scoredGoes(
  dayClass: DayClass,
  goes: Readonly<Record<string, Parameters<typeof scoreGo>[2]>>,
): readonly ScoredGo[] {
  return goingIn(dayClass).flatMap(({ classEntryId }, index): ScoredGo[] => {
    const go = goes[classEntryId];
    const scored = go === undefined ? undefined : scoreGo(dayClass.sheet, maneuversOf(dayClass), go);
    return scored?.ok === true && scored.score.score !== undefined
      ? [{ position: index + 1, score: scored.score.score }]
      : [];
  });
}
