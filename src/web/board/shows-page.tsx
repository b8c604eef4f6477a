/** `/`: the shows of this service, the present one first; practice shows apart. */
import type { Answer } from '../shared/api.ts';
import { PublicFrame } from '../shared/public-frame.tsx';
import type { Given, PublicPage, Seen } from '../shared/public-page.ts';
import { calendarDay, daysBetween } from '../shared/show-times.ts';
import { useWords } from '../shared/words.tsx';

type Shows = Answer<'/v1/shows'>;
type Show = Pick<
  Shows['items'][number],
  'id' | 'name' | 'place' | 'timeZone' | 'firstDay' | 'lastDay' | 'practice'
>;

const pages = ['shows1', 'shows2', 'shows3', 'shows4', 'shows5'] as const;

export const showsPage: PublicPage = {
  name: 'shows',
  path: '/',
  topics: ['board'],
  readsClock: true,
  asks: (_address, given) => asksOf(given),
  keeps: Object.fromEntries(pages.map((name) => [name, keptOf])),
  title: (_given, { t }) => t('board-shows-title'),
  description: (_given, { t }) => t('board-shows-description'),
  View: ShowsView,
};

/** Page by page, the oldest first: 1,000 shows in all. */
function asksOf(given: Given): Record<string, string> {
  const asked = pages.filter((name) => name in given);
  const last = given[asked.at(-1) ?? ''] as Shows | undefined;
  const next = pages[asked.length];
  if (next === undefined || (asked.length > 0 && !last?.nextCursor)) return {};
  const cursor = last?.nextCursor ? `&cursor=${encodeURIComponent(last.nextCursor)}` : '';
  return { ...Object.fromEntries(asked.map((name) => [name, ''])), [next]: `/v1/shows?limit=200${cursor}` };
}

function keptOf(answer: unknown) {
  const { items, nextCursor } = answer as Shows;
  const shown = ({ id, name, place, timeZone, firstDay, lastDay, practice }: Show) => {
    return { id, name, place, timeZone, firstDay, lastDay, practice };
  };
  return { nextCursor, items: items.map(shown) };
}

type When = 'present' | 'coming' | 'past' | 'practice';

function whenOf({ practice, timeZone, firstDay, lastDay }: Show, now: string): When {
  if (practice) return 'practice';
  const today = calendarDay(now, timeZone);
  if (today < firstDay) return 'coming';
  return today > lastDay ? 'past' : 'present';
}

function ShowsView({ given, address }: Seen) {
  const { t } = useWords();
  const shows = pages.flatMap((name) => (given[name] as { items: Show[] } | undefined)?.items ?? []);
  const at = (when: When) => shows.filter((show) => whenOf(show, String(given.now)) === when);
  const soonest = (a: Show, b: Show) => a.firstDay.localeCompare(b.firstDay);
  return (
    <PublicFrame address={address}>
      <h1>{t('board-shows-title')}</h1>
      {shows.length === 0 && <p class="empty">{t('board-shows-empty')}</p>}
      <ShowList when="present" shows={at('present').sort(soonest)} />
      <ShowList when="coming" shows={at('coming').sort(soonest)} />
      <ShowList when="past" shows={at('past').sort(soonest).reverse()} />
      <ShowList when="practice" shows={at('practice').sort(soonest).reverse()} />
    </PublicFrame>
  );
}

function ShowList({ when, shows }: { readonly when: When; readonly shows: readonly Show[] }) {
  const { t, language } = useWords();
  if (shows.length === 0) return null;
  return (
    <section class={`pinned shows-${when}`} aria-labelledby={`shows-${when}`}>
      <h2 id={`shows-${when}`}>{t(`board-shows-${when}`)}</h2>
      {when === 'practice' && <p class="note">{t('shared-practice')}</p>}
      <ul class="lines">
        {shows.map(({ id, name, place, firstDay, lastDay }) => (
          <li key={id} class="show-line">
            <a href={`/shows/${id}`}>{name}</a>
            <span>{place}</span>
            <span>{daysBetween(firstDay, lastDay, language)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
