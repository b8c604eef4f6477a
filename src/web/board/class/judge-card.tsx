/**
 * One judge's card: a line for each go, a column for each maneuver, as on the paper. On a narrow screen the cells of a
 * line stand under each other's heads; the roles are spelled so that it stays a table for whoever listens.
 */
import { useWords } from '../../shared/words.tsx';
import { type Column, cardColumns } from './card-columns.tsx';
import type { Card, CardGo, Sheet } from './class-answer.ts';
import { GoNotes, hasNotes } from './go-notes.tsx';

/** On a narrow screen the parts of the table are no table to the style, and one browser then takes them for none. */
const as = {
  table: { role: 'table' },
  rowgroup: { role: 'rowgroup' },
  row: { role: 'row' },
  columnheader: { role: 'columnheader' },
  rowheader: { role: 'rowheader' },
  cell: { role: 'cell' },
} as const;

interface CardToShow {
  readonly card: Card;
  readonly sheet: Sheet;
}

export function JudgeCard({ card, sheet }: CardToShow) {
  const words = useWords();
  const { t } = words;
  const { judge, revision, goes } = card;
  const columns = cardColumns({ sheet, goes, words });
  return (
    <details class="card-of">
      <summary>
        {t('board-card-of', { judge })}
        {revision > 1 && <span class="note"> {t('board-card-revision', { revision })}</span>}
      </summary>
      <table {...as.table} class="typed-table card">
        <caption class="heard">{t('board-card-of', { judge })}</caption>
        <thead {...as.rowgroup}>
          <tr {...as.row}>
            <th {...as.columnheader} scope="col">
              {t('board-back-number')}
            </th>
            {columns.map((column) => (
              <th {...as.columnheader} scope="col" key={column.key} class={column.kind}>
                {column.short === column.label ? (
                  column.label
                ) : (
                  <>
                    <span aria-hidden="true">{column.short}</span>
                    <span class="heard">{column.label}</span>
                  </>
                )}
              </th>
            ))}
          </tr>
        </thead>
        {inOrderOfCard(goes).map((go) => (
          <GoLines key={go.backNumber} {...{ go, columns, sheet }} />
        ))}
      </table>
    </details>
  );
}

interface GoToShow {
  readonly go: CardGo;
  readonly columns: readonly Column[];
  readonly sheet: Sheet;
}

function GoLines({ go, columns, sheet }: GoToShow) {
  return (
    <tbody {...as.rowgroup}>
      <tr {...as.row}>
        <th {...as.rowheader} scope="row" class="figures">
          {go.backNumber}
        </th>
        {columns.map((column) => (
          <td {...as.cell} key={column.key} class={`figures ${column.kind}`} data-head={column.short}>
            {column.cell(go)}
          </td>
        ))}
      </tr>
      {hasNotes(go) && (
        <tr {...as.row} class="notes">
          <td {...as.cell} colSpan={columns.length + 1}>
            <GoNotes {...{ go, sheet }} />
          </td>
        </tr>
      )}
    </tbody>
  );
}

/** By the judge's own places; who has none, last, by back number. */
function inOrderOfCard(goes: readonly CardGo[]): CardGo[] {
  const rank = ({ place }: CardGo) => (place === null ? Number.MAX_SAFE_INTEGER : Number(place));
  return [...goes].sort((a, b) => rank(a) - rank(b) || a.backNumber - b.backNumber);
}
