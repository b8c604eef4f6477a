/** All that the judges wrote about one go, beside each other; or why there is nothing to read. */
import { useWords } from '../shared/words.tsx';
import { type Line, linesOf } from './marks-lines.tsx';
import type { Note } from './marks-notes.ts';
import type { Card, ClassOfNumber, Posted } from './number-answer.ts';
import { hasStamp, RemarkText } from './remark-text.tsx';

interface ToShow {
  readonly posted: Posted;
  readonly publishCards: ClassOfNumber['publishCards'];
  readonly id: string;
}

export function MarksPart({ posted: { sheet, cards }, publishCards, id }: ToShow) {
  const words = useWords();
  const { t } = words;
  const shown = cards.filter(({ go }) => go !== null);
  if (shown.length === 0) return <p class="note">{t(`exhibitor-cards-${publishCards}`)}</p>;
  const lines = linesOf({ sheet, cards: shown, words });
  const stamped = lines.some(({ notes }) => notes.some(({ text }) => hasStamp(text)));
  return (
    <section aria-labelledby={`${id}-marks`}>
      <h3 id={`${id}-marks`}>{t('exhibitor-marks')}</h3>
      {stamped && <p class="note">{t('exhibitor-stamps')}</p>}
      <MarksTable {...{ lines, cards: shown, labelledBy: `${id}-marks` }} />
    </section>
  );
}

/** A narrow screen sets a line's name above its cells; the roles are spelled, so that it is heard as a table there too. */
const as = {
  table: { role: 'table' },
  rows: { role: 'rowgroup' },
  row: { role: 'row' },
  column: { role: 'columnheader', scope: 'col' },
  head: { role: 'rowheader', scope: 'row' },
  cell: { role: 'cell' },
} as const;

interface TableToShow {
  readonly lines: readonly Line[];
  readonly cards: readonly Card[];
  readonly labelledBy: string;
}

function MarksTable({ lines, cards, labelledBy }: TableToShow) {
  const { t } = useWords();
  return (
    <table {...as.table} class="marks" aria-labelledby={labelledBy}>
      <thead {...as.rows}>
        <tr {...as.row}>
          <th {...as.column} class="line-name">
            {t('exhibitor-maneuver')}
          </th>
          {cards.map(({ seatId, seatOrder, judge, revision }) => (
            <th {...as.column} key={seatId}>
              {cards.length > 1 && (
                <span class="seat">{t('exhibitor-judge-number', { number: seatOrder })}</span>
              )}{' '}
              {judge}
              {revision > 1 && <span class="note"> {t('exhibitor-amended', { revision })}</span>}
            </th>
          ))}
        </tr>
      </thead>
      {lines.map((line) => (
        <tbody {...as.rows} key={line.key} class={line.kind}>
          <tr {...as.row}>
            <th {...as.head} class="line-name">
              {line.number !== undefined && <span class="figures at">{line.number}</span>} {line.name}
            </th>
            {cards.map((card) => (
              <td {...as.cell} key={card.seatId} class="figures">
                {line.cell(card)}
              </td>
            ))}
          </tr>
          {line.notes.length > 0 && <Notes {...{ line, columns: cards.length + 1 }} />}
        </tbody>
      ))}
    </table>
  );
}

function Notes({ line: { notes, kind }, columns }: { readonly line: Line; readonly columns: number }) {
  const { t } = useWords();
  return (
    <tr {...as.row} class="notes">
      <td {...as.cell} colSpan={columns}>
        {kind === 'place' && <p class="note">{t('exhibitor-about-whole-go')}</p>}
        <ul>
          {notes.map((note) => (
            <li key={note.key} class={note.kind}>
              <Told {...{ note, named: columns > 2 }} />
            </li>
          ))}
        </ul>
      </td>
    </tr>
  );
}

/** Whose words they are is said where there is more than one judge. */
function Told({ note, named }: { readonly note: Note; readonly named: boolean }) {
  const { t } = useWords();
  return (
    <>
      {named && <span class="whose">{t('exhibitor-remark-of', { judge: note.judge })}</span>}{' '}
      {note.kind === 'remark' ? (
        <q>
          <RemarkText remark={note.text} />
        </q>
      ) : (
        note.text
      )}
    </>
  );
}
