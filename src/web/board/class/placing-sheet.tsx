/** Places from the first to the last, each with the sentences why; then who has none, and why not. */
import { useWords } from '../../shared/words.tsx';
import type { OneResult, Placing, Result } from './class-answer.ts';
import { scoreText } from './score-text.ts';
import { Who } from './who.tsx';

interface SheetToShow {
  readonly one: OneResult;
  readonly result: Result;
}

export function PlacingSheet({ one, result }: SheetToShow) {
  const { t } = useWords();
  const { judge, placings, unplaced } = one;
  const id = `placing-${judge?.seatOrder ?? 0}`;
  const hasTotals = placings.some(({ total }) => total !== null);
  const columns = hasTotals ? 4 : 3;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>
        {judge === null ? t('board-places') : t('board-places-of-judge', { judge: judge.name })}
      </h2>
      {placings.length === 0 && <p class="note">{t('board-nobody-placed')}</p>}
      <table class="typed-table placing" hidden={placings.length === 0}>
        <thead>
          <tr>
            <th scope="col">{t('board-place')}</th>
            <th scope="col">{t('board-back-number')}</th>
            <th scope="col">{t('board-who')}</th>
            {hasTotals && <th scope="col">{t('board-total')}</th>}
          </tr>
        </thead>
        {placings.map((placing) => (
          <PlacingLines key={placing.classEntryId} {...{ placing, result, columns }} />
        ))}
      </table>
      {unplaced.length > 0 && <Unplaced unplaced={unplaced} id={id} />}
    </section>
  );
}

interface LinesToShow {
  readonly placing: Placing;
  readonly result: Result;
  readonly columns: number;
}

/** A line of figures, and under it the reasons; together they stay on one page of paper. */
function PlacingLines({ placing, result, columns }: LinesToShow) {
  const { t, language } = useWords();
  const { place, tied, backNumber, name, horse, total, because } = placing;
  return (
    <tbody>
      <tr>
        <td class="place figures">
          {place}
          {tied && <span class="tied">{t('board-tied')}</span>}
        </td>
        <th scope="row" class="figures">
          {backNumber}
        </th>
        <td>
          <Who {...{ name, horse }} />
        </td>
        {columns === 4 && (
          <td class="total figures">{total === null ? '–' : scoreText(total, { language })}</td>
        )}
      </tr>
      <tr class="why">
        <td colSpan={columns}>
          {because.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <ByJudge {...{ result, backNumber }} />
        </td>
      </tr>
    </tbody>
  );
}

/** What each judge's card says of the entry in one figure; the whole cards stand further down. */
function ByJudge({ result, backNumber }: { readonly result: Result; readonly backNumber: number }) {
  const { t, language } = useWords();
  const { cards } = result;
  if (cards.length === 0) return null;
  return (
    <ul class="by-judge">
      {cards.map(({ seatId, judge, goes }) => {
        const go = goes.find((one) => one.backNumber === backNumber);
        const score = go?.score ?? null;
        return (
          <li key={seatId}>
            {judge} {score !== null && <b class="figures">{scoreText(score, { language })}</b>}{' '}
            {go?.place != null && <span>{t('board-place-on-card', { place: go.place })}</span>}
          </li>
        );
      })}
    </ul>
  );
}

interface UnplacedToShow {
  readonly unplaced: OneResult['unplaced'];
  readonly id: string;
}

function Unplaced({ unplaced, id }: UnplacedToShow) {
  const { t } = useWords();
  return (
    <>
      <h3 id={`${id}-unplaced`}>{t('board-unplaced')}</h3>
      <table class="typed-table unplaced" aria-labelledby={`${id}-unplaced`}>
        <thead>
          <tr>
            <th scope="col">{t('board-back-number')}</th>
            <th scope="col">{t('board-who')}</th>
            <th scope="col">{t('board-why-not')}</th>
          </tr>
        </thead>
        <tbody>
          {unplaced.map(({ classEntryId, backNumber, name, horse, why }) => (
            <tr key={classEntryId}>
              <th scope="row" class="figures">
                {backNumber}
              </th>
              <td>
                <Who {...{ name, horse }} />
              </td>
              <td>{why}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
