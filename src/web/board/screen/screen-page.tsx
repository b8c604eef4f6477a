/**
 * `/shows/:showId/screen`: the board for a screen at the ring. One sheet at a time, with what was just posted first; it
 * goes on by itself whatever breaks, and shows no error to the crowd. Without a script all sheets stand under each other.
 */
import { useContext } from 'preact/hooks';
import { ConnectionContext } from '../../shared/connection.ts';
import type { PublicPage, Seen } from '../../shared/public-page.ts';
import { timeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { type Board, type BoardShow, movesBoard } from '../board-answer.ts';
import { SlideView } from './slide-view.tsx';
import { keptOfResult, newest, newestOf, slidesOf } from './slides.ts';
import { type Rotation, secondsOnSlide, useRotation } from './use-rotation.ts';
import { fillScreen, useAwake, useKeys, useNow } from './use-screen.ts';

export const screenPage: PublicPage = {
  name: 'screen',
  path: '/shows/:showId/screen',
  topics: ['board'],
  renewsItself: true,
  asks: ({ showId }, given) => {
    const board = { board: `/v1/shows/${showId}/board` };
    if (!('board' in given)) return board;
    if (given.board === undefined) return null;
    const results = newestOf(given.board as Board).map(({ id }, at) => [
      newest[at] ?? '',
      `/v1/classes/${id}/result`,
    ]);
    return { ...board, ...Object.fromEntries(results) };
  },
  keeps: Object.fromEntries(newest.map((name) => [name, keptOfResult])),
  title: ({ board }, { t }) => t('board-screen-title', { show: (board as Board).show.name }),
  concerns: (event) => movesBoard(event) || event.type === 'names.changed',
  View: ScreenView,
};

function ScreenView({ given }: Seen) {
  const { t } = useWords();
  const { show } = given.board as Board;
  const slides = slidesOf(given);
  const [last] = newestOf(given.board as Board);
  const rotation = useRotation(slides, last && `${last.id} ${last.postingVersion}`);
  useAwake();
  useKeys(rotation);
  const { at } = rotation;
  const shown = at === undefined ? slides : slides.slice(at, at + 1);
  return (
    <div class={at === undefined ? 'screen' : 'screen is-running'}>
      <header class="screen-head">
        <h1>{show.name}</h1>
        {show.practice && <p class="practice">{t('shared-practice')}</p>}
        <Clock show={show} />
      </header>
      <main id="content">
        <noscript>{t('board-screen-still')}</noscript>
        {shown.map((slide) => (
          <SlideView key={slide.key} {...{ slide, show }} />
        ))}
      </main>
      <ScreenBar {...{ show, rotation, count: slides.length }} />
    </div>
  );
}

function Clock({ show: { timeZone } }: { readonly show: BoardShow }) {
  const { language } = useWords();
  const now = useNow();
  return <p class="clock figures">{now === undefined ? '' : timeAt(now, { language, timeZone })}</p>;
}

interface BarToShow {
  readonly show: BoardShow;
  readonly rotation: Rotation;
  readonly count: number;
}

/** How far the turn has come, in seconds and in sheets, and the way to stop it (WCAG 2.2, 2.2.2). */
function ScreenBar({ show, rotation, count }: BarToShow) {
  const { t } = useWords();
  const { at, seconds, isPaused, pause, step } = rotation;
  if (at === undefined) {
    return (
      <footer class="screen-bar">
        <a href={`/shows/${show.id}`}>{t('board-screen-back')}</a>
      </footer>
    );
  }
  return (
    <footer class="screen-bar">
      <progress max={secondsOnSlide} value={seconds} aria-label={t('board-screen-progress')} />
      <p class="figures">{t('board-screen-sheet', { at: at + 1, count })}</p>
      <AsOf show={show} />
      <button type="button" onClick={() => step(-1)}>
        {t('board-screen-previous')}
      </button>
      <button type="button" onClick={pause}>
        {t(isPaused ? 'board-screen-go-on' : 'board-screen-pause')}
      </button>
      <button type="button" onClick={() => step(1)}>
        {t('board-screen-next')}
      </button>
      <button type="button" onClick={fillScreen}>
        {t('board-screen-fill')}
      </button>
      <a href={`/shows/${show.id}`}>{t('board-screen-back')}</a>
    </footer>
  );
}

/** A crowd is told since when the sheets stand, not that something is broken. */
function AsOf({ show: { timeZone } }: { readonly show: BoardShow }) {
  const { t, language } = useWords();
  const connection = useContext(ConnectionContext);
  if (connection?.kind !== 'lost') return null;
  return <p>{t('board-screen-as-of', { time: timeAt(connection.heardAt, { language, timeZone }) })}</p>;
}
