/** What was posted while one looked, or since one looked last: said once, and marked until it is seen. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../shared/words.tsx';
import { type Board, type BoardClass, postedOf } from './board-answer.ts';
import { markSeen, unseenPostings } from './seen-postings.ts';

interface News {
  /** For whoever listens. */
  readonly announced: string;
  /** Ids of classes. */
  readonly unseen: ReadonlySet<string>;
  readonly seeAll: () => void;
}

const nothing: ReadonlySet<string> = new Set();

export function useNews(board: Board): News {
  const { t } = useWords();
  const { show } = board;
  const posted = postedOf(board);
  const before = useRef(posted);
  const [unseen, setUnseen] = useState(nothing);
  const [announced, setAnnounced] = useState('');
  useEffect(() => {
    setUnseen(unseenPostings(show.id, posted));
    const fresh = posted.filter((one) => isFresh(one, before.current));
    before.current = posted;
    if (fresh.length === 0) return;
    const told = fresh.map(({ number, name, state }) => t('board-news', { number, name, state }));
    setAnnounced(told.join(' '));
  }, [board]);
  const seeAll = () => {
    markSeen(show.id, posted);
    setUnseen(nothing);
  };
  return { announced, unseen, seeAll };
}

const isFresh = ({ id, postingVersion }: BoardClass, before: readonly BoardClass[]): boolean =>
  before.find((one) => one.id === id)?.postingVersion !== postingVersion;
