/** What the card comes to: who stands where, by how much, and what she ruled. */

import { standingOf } from '../compare/standing.ts';
import { useDerived } from '../derived.ts';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import { isRail } from '../entries.ts';
import { decimalFigure, figure } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import { placeOf } from '../places/ranking.ts';

interface SummaryLine {
  readonly key: string;
  readonly place: string;
  readonly number: number;
  readonly words: string;
}

export function Summary({ dayClass }: { readonly dayClass: DayClass }) {
  const { t } = useParts();
  const lines = useSummary(dayClass);
  if (lines.length === 0) return null;
  return (
    <table class="summary">
      <caption>{t('judge-summary', { count: lines.length })}</caption>
      <thead>
        <tr>
          <th scope="col">{t('judge-compare-place')}</th>
          <th scope="col">{t('judge-compare-entry')}</th>
          <th scope="col">{t('judge-part-total')}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ key, place, number, words }) => (
          <tr key={key}>
            <td class="place">{place}</td>
            <th scope="row">{number}</th>
            <td class="sum">{words}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function useSummary(dayClass: DayClass): readonly SummaryLine[] {
  const { books, words, speech, t } = useParts();
  const book = books.of(dayClass.classId).value;
  return useDerived(() => {
    const content = book.content.value;
    const ruled = ({ classEntryId }: DayEntry) => {
      const code = content.goes[classEntryId]?.ruling?.code;
      return code === undefined ? '' : speech.say(`ruling-${code}`);
    };
    if (isRail(dayClass)) return railLines(dayClass, content.ranking ?? []);
    return standingOf(dayClass, content).levels.flatMap(({ place, score, entries, tie }) =>
      entries.map((entry, index) => ({
        key: entry.classEntryId,
        place:
          place === undefined
            ? t('judge-compare-unplaced')
            : String(tie === 'broken' ? place + index : place),
        number: entry.backNumber,
        words: [score === undefined ? '' : figureOn(dayClass, score), ruled(entry)]
          .filter(Boolean)
          .join(' · '),
      })),
    );
  }, [dayClass, book, words, speech]);

  function figureOn({ sheet }: DayClass, score: Parameters<typeof figure>[0]): string {
    return sheet.kind === 'percentage' || sheet.kind === 'measured'
      ? decimalFigure(score, words)
      : figure(score, words);
  }
}

const railLines = ({ entries }: DayClass, ranking: readonly (readonly string[])[]): readonly SummaryLine[] =>
  ranking.flatMap((level, at) =>
    level.map((id) => ({
      key: id,
      place: String(placeOf(ranking, at)),
      number: entries.find(({ classEntryId }) => classEntryId === id)?.backNumber ?? 0,
      words: '',
    })),
  );
