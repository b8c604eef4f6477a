/** What was asked from this device about one entry, read anew when the office answers. */
import { createContext } from 'preact';
import { useContext, useEffect, useState } from 'preact/hooks';
import { followShow } from '../../shared/live.ts';
import { askAsAnyone } from '../../shared/public-client.ts';
import {
  type FollowedCode,
  followedCodes,
  forgetCode,
  keepCode,
  takeCodeFromAddress,
} from './followed-codes.ts';
import { type Query, readQuery } from './send.ts';

export interface Followed extends FollowedCode {
  /** `gone`: there is none; `undefined`: it could not be read yet. */
  readonly query: Query | 'gone' | undefined;
  /** The browser did not keep the code. */
  readonly notKept: boolean;
}

export interface Asking {
  readonly followed: readonly Followed[];
  /** `false`: there is no script, or it has not begun. */
  readonly ready: boolean;
  readonly follow: (code: string, classId?: string) => void;
  readonly forget: (code: string) => void;
  readonly put: (code: string, query: Query) => void;
}

const nothing: Asking = {
  followed: [],
  ready: false,
  follow: () => undefined,
  forget: () => undefined,
  put: () => undefined,
};

export const AskingContext = createContext<Asking>(nothing);
export const useAskingHere = (): Asking => useContext(AskingContext);

interface Page {
  readonly showId: string;
  readonly backNumber: number;
}

export function useAsking(page: Page): Asking {
  const { showId, backNumber } = page;
  const [followed, setFollowed] = useState<readonly Followed[]>([]);
  const [ready, setReady] = useState(false);
  const put = (code: string, query: Query | 'gone') =>
    setFollowed((all) => all.map((one) => (one.code === code ? { ...one, query } : one)));
  const read = (code: string) =>
    readQuery(code).then(
      (query) => {
        put(code, query);
        if (query !== 'gone' && followedCodes().some((one) => one.code === code))
          keepCode({ code, showId, backNumber, classId: query.class.id });
      },
      () => undefined,
    );
  const follow = (code: string, classId?: string) => {
    const asked = { code, showId, backNumber, ...(classId === undefined ? {} : { classId }) };
    const notKept = !keepCode(asked);
    setFollowed((all) => [
      ...all.filter((one) => one.code !== code),
      { ...asked, notKept, query: undefined },
    ]);
    void read(code);
  };
  useEffect(() => {
    const linked = takeCodeFromAddress();
    const kept = followedCodes().filter((one) => one.showId === showId && one.backNumber === backNumber);
    setFollowed(kept.map((one) => ({ ...one, query: undefined, notKept: false })));
    setReady(true);
    for (const { code } of kept) void read(code);
    if (linked !== undefined) follow(linked);
  }, [showId, backNumber]);
  useAnswers(showId, followed.filter(isOpen), read);
  const forget = (code: string) => {
    forgetCode(code);
    setFollowed((all) => all.filter((one) => one.code !== code));
  };
  return { followed, ready, follow, forget, put };
}

const isOpen = ({ query }: Followed): boolean =>
  query === undefined || (query !== 'gone' && query.state === 'open');

/** Listens only where an answer is waited for. An event says which query was answered, and nothing of it. */
function useAnswers(showId: string, open: readonly Followed[], read: (code: string) => unknown): void {
  const codes = open.map(({ code }) => code).join(' ');
  useEffect(() => {
    if (codes === '') return undefined;
    return followShow({
      showId,
      ask: askAsAnyone,
      // Without a type: no stream gets through, so it is time to look again.
      hear: ({ type }) => {
        if (type !== undefined && type !== 'query.answered') return;
        for (const code of codes.split(' ')) void read(code);
      },
    });
  }, [showId, codes]);
}
