/** `/shows/:showId`: what is in the ring now, what comes next, and what is posted. */
import { PublicFrame } from '../shared/public-frame.tsx';
import type { PublicPage, Seen } from '../shared/public-page.ts';
import { calendarDay } from '../shared/show-times.ts';
import { useWords } from '../shared/words.tsx';
import {
  type Board,
  type BoardClass,
  byRing,
  classesOf,
  movesBoard,
  type Part,
  postedOf,
} from './board-answer.ts';
import { ClassLine } from './class-line.tsx';
import { FindNumber } from './find-number.tsx';
import { useNews } from './news.ts';

export const boardPage: PublicPage = {
  name: 'board',
  path: '/shows/:showId',
  topics: ['board'],
  asks: ({ showId }, given) => {
    if ('board' in given && given.board === undefined) return null;
    return { board: `/v1/shows/${showId}/board` };
  },
  title: ({ board }, { t }) => t('board-title', { show: (board as Board).show.name }),
  description: ({ board }, { t }) => inASentence(board as Board, t),
  concerns: movesBoard,
  View: BoardView,
};

const inASentence = (
  board: Board,
  t: (id: string, args: Record<string, string | number>) => string,
): string =>
  t('board-description', {
    show: board.show.name,
    place: board.show.place,
    now: classesOf(board, 'now').length,
    posted: postedOf(board).length,
  });

function BoardView({ given, address }: Seen) {
  const { t } = useWords();
  const board = given.board as Board;
  const { show } = board;
  const news = useNews(board);
  return (
    <PublicFrame address={address} practice={show.practice} timeZone={show.timeZone}>
      <header class="title">
        <h1>{show.name}</h1>
        <p>{show.place}</p>
      </header>
      <p role="status" class="heard">
        {news.announced}
      </p>
      {board.classes.length === 0 && <p class="empty">{t('board-empty')}</p>}
      {board.classes.length > 0 && (
        <>
          <FindNumber showId={show.id} />
          <div class="sheets">
            <div class="running">
              <Classes board={board} part="now" />
              <Classes board={board} part="next" />
              <Classes board={board} part="over" />
            </div>
            <Posted board={board} news={news} />
          </div>
        </>
      )}
      <p class="to-screen">
        <a href={`/shows/${show.id}/screen`}>{t('board-to-screen')}</a>
      </p>
    </PublicFrame>
  );
}

/** Classes on more than one day are told with their dates. */
const isDated = ({ classes, show }: Board): boolean =>
  new Set(classes.flatMap(({ scheduledAt }) => (scheduledAt ? calendarDay(scheduledAt, show.timeZone) : [])))
    .size > 1;

function Classes({ board, part }: { readonly board: Board; readonly part: Part }) {
  const { t } = useWords();
  const classes = classesOf(board, part);
  if (part === 'over' && classes.length === 0) return null;
  const rings = byRing(classes);
  return (
    <section class={`pinned ${part}`} aria-labelledby={`part-${part}`}>
      <h2 id={`part-${part}`}>{t(`board-${part}`)}</h2>
      {classes.length === 0 && <p class="note">{t(`board-${part}-empty`)}</p>}
      {rings.map(({ ring, classes: inRing }) => (
        <div key={ring ?? ''} class="ring">
          {(rings.length > 1 || ring !== null) && <h3>{ring ?? t('board-no-ring')}</h3>}
          <Lines board={board} classes={inRing} withRing={false} />
        </div>
      ))}
    </section>
  );
}

function Posted({ board, news }: { readonly board: Board; readonly news: ReturnType<typeof useNews> }) {
  const { t } = useWords();
  const posted = postedOf(board);
  return (
    <section class="pinned posted" aria-labelledby="part-posted">
      <h2 id="part-posted">{t('board-posted')}</h2>
      {posted.length === 0 && <p class="note">{t('board-posted-empty')}</p>}
      {news.unseen.size > 0 && (
        <p class="fresh-note">
          {t('board-new-count', { count: news.unseen.size })}{' '}
          <button type="button" onClick={news.seeAll}>
            {t('board-new-seen')}
          </button>
        </p>
      )}
      <Lines board={board} classes={posted} unseen={news.unseen} />
    </section>
  );
}

interface LinesToShow {
  readonly board: Board;
  readonly classes: readonly BoardClass[];
  readonly unseen?: ReadonlySet<string>;
  readonly withRing?: boolean;
}

function Lines({ board, classes, unseen, withRing = true }: LinesToShow) {
  const dated = isDated(board);
  return (
    <ul class="lines">
      {classes.map((of) => (
        <ClassLine
          key={of.id}
          {...{ show: board.show, of, dated, withRing, isNew: unseen?.has(of.id) ?? false }}
        />
      ))}
    </ul>
  );
}
