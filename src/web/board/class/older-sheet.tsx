/** A posting that was replaced since: its places beside those of today, so that it shows what the correction moved. */
import { dayAndTimeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { type BoardClass, type BoardShow, classAddress } from '../board-answer.ts';
import type { OlderPosting, PostedBody, Result } from './class-answer.ts';
import { scoreText } from './score-text.ts';
import { Who } from './who.tsx';

interface OlderToShow {
  readonly show: BoardShow;
  readonly of: BoardClass;
  readonly result: Result;
  readonly older: OlderPosting;
}

export function OlderSheet({ show, of, result, older }: OlderToShow) {
  const { t, language } = useWords();
  const { version, postedAt, state, id } = older;
  const time = dayAndTimeAt(postedAt, { language, timeZone: show.timeZone });
  return (
    <section aria-labelledby="older">
      <h2 id="older">{t('board-older', { version })}</h2>
      <p class="heed">
        {t('board-older-note', { time, state: t(`shared-state-${state}`), now: result.posting.version })}{' '}
        <a href={classAddress(show.id, of)}>{t('board-posting-read', { version: result.posting.version })}</a>
      </p>
      {older.body.results.map((one) => (
        <OlderPlaces key={one.judge ?? ''} {...{ one, older, result }} />
      ))}
      <p class="not-printed">
        <a href={`/v1/postings/${id}`}>{t('board-signed-posting')}</a>
      </p>
    </section>
  );
}

interface PlacesToShow {
  readonly one: PostedBody['results'][number];
  readonly older: OlderPosting;
  readonly result: Result;
}

function OlderPlaces({ one, older, result }: PlacesToShow) {
  const { t, language } = useWords();
  const now = result.results.find(({ judge }) => (judge?.seatId ?? null) === one.judge);
  const numbers = new Map(older.body.entries.map(({ id, backNumber }) => [id, backNumber]));
  const lines = [
    ...one.placed.map(({ entry, place, tied, total }) => ({ entry, place, tied, total })),
    ...one.unplaced.map(({ entry }) => ({ entry, place: null, tied: false, total: null })),
  ];
  const placeNow = (entry: string) => now?.placings.find(({ classEntryId }) => classEntryId === entry)?.place;
  return (
    <table class="typed-table older">
      {now?.judge != null && <caption>{t('board-places-of-judge', { judge: now.judge.name })}</caption>}
      <thead>
        <tr>
          <th scope="col">{t('board-place')}</th>
          <th scope="col">{t('board-back-number')}</th>
          <th scope="col">{t('board-who')}</th>
          <th scope="col">{t('board-total')}</th>
          <th scope="col">{t('board-place-now')}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ entry, place, total }) => (
          <tr key={entry} class={placeNow(entry) === (place ?? undefined) ? undefined : 'moved'}>
            <td class="place figures">{place ?? '–'}</td>
            <th scope="row" class="figures">
              {numbers.get(entry) ?? '–'}
            </th>
            <td>
              <Who {...whoIs(numbers.get(entry), result, t('board-name-not-public'))} />
            </td>
            <td class="total figures">{total === null ? '–' : scoreText(total, { language })}</td>
            <td class="place-now figures">{placeNow(entry) ?? '–'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A posting holds no names: they stand on it in the form in which they are public now. */
function whoIs(backNumber: number | undefined, { results, didNotGo }: Result, unknown: string) {
  const known = [...results.flatMap(({ placings, unplaced }) => [...placings, ...unplaced]), ...didNotGo];
  const found = known.find((one) => one.backNumber === backNumber);
  return { name: found?.name ?? unknown, horse: found?.horse ?? null };
}
