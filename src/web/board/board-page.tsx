/** `/shows/:showId`: the classes of a show and where each stands. */
import type { Answer } from '../shared/api.ts';
import type { PublicPage, Seen } from '../shared/public-page.ts';
import { useWords } from '../shared/words.tsx';

type Board = Answer<'/v1/shows/{showId}/board'>;

export const boardPage: PublicPage = {
  name: 'board',
  path: '/shows/:showId',
  topics: ['board'],
  asks: ({ showId }, given) => {
    if ('board' in given && given.board === undefined) return null;
    return { board: `/v1/shows/${showId}/board` };
  },
  title: ({ board }) => (board as Board).show.name,
  View: BoardView,
};

function BoardView({ given }: Seen) {
  const { t } = useWords();
  const { show, classes } = given.board as Board;
  return (
    <main class="sheet">
      <h1>{show.name}</h1>
      <ol>
        {classes.map(({ id, number, name, state }) => (
          <li key={id}>
            {number} {name}: {t(`shared-state-${state}`)}
          </li>
        ))}
      </ol>
    </main>
  );
}
