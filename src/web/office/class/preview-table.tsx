import { useWords } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { shownNumber } from './changes.ts';
import type { Preview } from './class-answers.ts';

type Result = Preview['results'][number];
type Placing = Result['placings'][number];
type Cards = Preview['cards'];

/** What the signed cards come to: places with the judges side by side, and the reasons. */
export function PreviewTables({ preview }: { readonly preview: Preview }) {
  const { t } = useWords();
  const { results, didNotGo } = preview;
  if (results.every(({ placings, unplaced }) => placings.length + unplaced.length === 0)) {
    return <p class="note">{t('office-preview-empty')}</p>;
  }
  return (
    <>
      {results.map((result) => (
        <ResultTable key={result.judge?.seatId ?? 'merged'} {...{ preview, result }} />
      ))}
      {didNotGo.length > 0 && (
        <p class="note">
          {t('office-did-not-go')}{' '}
          {didNotGo
            .map(({ backNumber, status }) => `${backNumber} (${t(`shared-status-${status}`)})`)
            .join(', ')}
        </p>
      )}
    </>
  );
}

function ResultTable({ preview, result }: { readonly preview: Preview; readonly result: Result }) {
  const { t } = useWords();
  const cards = preview.cards.filter(({ seatId }) => result.judge === null || result.judge.seatId === seatId);
  const judge = result.judge?.name;
  const hasTotals = result.placings.some(({ total }) => total !== null);
  return (
    <RuledTable
      caption={
        judge === undefined ? t('office-preview-caption') : t('office-preview-caption-judge', { judge })
      }
      captionSeen={judge !== undefined}
      class="result"
    >
      <thead>
        <tr>
          <th scope="col">{t('office-place')}</th>
          <th scope="col">{t('office-number')}</th>
          <th scope="col">{t('office-exhibitor')}</th>
          {cards.map(({ seatId, judge: name }) => (
            <th key={seatId} scope="col" class="judge">
              {name}
            </th>
          ))}
          {hasTotals && <th scope="col">{t('office-total')}</th>}
        </tr>
      </thead>
      <tbody>
        {result.placings.map((placing) => (
          <PlacingRow key={placing.classEntryId} {...{ placing, cards, hasTotals }} />
        ))}
        {result.unplaced.map(({ classEntryId, backNumber, name, horse, why }) => (
          <tr key={classEntryId}>
            <td>–</td>
            <th scope="row" class="figures">
              {backNumber}
            </th>
            <td>
              {named(name, horse)}
              <p>{why}</p>
            </td>
            {cards.map((card) => (
              <td key={card.seatId}>{onCard(card, backNumber)}</td>
            ))}
            {hasTotals && <td>–</td>}
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}

interface PlacingRowParts {
  readonly placing: Placing;
  readonly cards: Cards;
  readonly hasTotals: boolean;
}

function PlacingRow({ placing, cards, hasTotals }: PlacingRowParts) {
  const { t } = useWords();
  const { place, tied, backNumber, name, horse, total, because } = placing;
  return (
    <tr class={tied ? 'tied' : ''}>
      <td class="figures place">
        {place}
        {tied && <span class="tie-mark">{t('office-tied')}</span>}
      </td>
      <th scope="row" class="figures">
        {backNumber}
      </th>
      <td>
        {named(name, horse)}
        <details>
          <summary>
            {t('office-why')}
            <span class="heard"> {backNumber}</span>
          </summary>
          {because.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </details>
      </td>
      {cards.map((card) => (
        <td key={card.seatId} class="figures">
          {onCard(card, backNumber)}
        </td>
      ))}
      {hasTotals && <td class="figures">{total === null ? '' : shownNumber(total)}</td>}
    </tr>
  );
}

const named = (name: string, horse: string | null): string => (horse === null ? name : `${name}, ${horse}`);

/** Her place for it, and her score behind it. */
function onCard({ goes }: Cards[number], backNumber: number) {
  const go = goes.find((one) => one.backNumber === backNumber);
  if (go === undefined) return '';
  return (
    <>
      {go.place ?? '–'}
      {go.score !== null && <span class="score"> {shownNumber(go.score)}</span>}
    </>
  );
}
