/** Lists that come in pages, read to their end: an office has all of a show's names at hand. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { LiveEvent } from '../../shared/live.ts';
import { ask, type Outcome, type Refused } from '../ask.ts';
import { useLive } from '../office-state.ts';
import type { AskedFor } from '../use-asked.ts';

interface PageOf<Item> {
  readonly items: readonly Item[];
  readonly nextCursor: string | null;
}

const most = 200;

/** Never rejects. `path` without a query. */
export async function askAll<Item>(path: string): Promise<Outcome<readonly Item[]>> {
  const items: Item[] = [];
  let cursor: string | null = null;
  do {
    const query: string = cursor === null ? '' : `&cursor=${encodeURIComponent(cursor)}`;
    const page: Outcome<PageOf<Item>> = await ask({ path: `${path}?limit=${most}${query}` });
    if (!page.ok) return page;
    items.push(...page.body.items);
    cursor = page.body.nextCursor;
  } while (cursor !== null);
  return { ok: true, body: items, etag: undefined };
}

interface Held<Item> {
  readonly path: string;
  readonly body: readonly Item[] | undefined;
  readonly refused: Refused | undefined;
}

/** As `useAsked`, for a whole list. */
export function useAll<Item>(path: string, on: (event: LiveEvent) => boolean): AskedFor<readonly Item[]> {
  const [held, hold] = useState<Held<Item>>({ path, body: undefined, refused: undefined });
  const wanted = useRef(path);
  wanted.current = path;
  const again = useCallback(async () => {
    const outcome = await askAll<Item>(path);
    if (wanted.current !== path) return;
    hold((before) => {
      if (outcome.ok) return { path, body: outcome.body, refused: undefined };
      return { path, body: before.path === path ? before.body : undefined, refused: outcome };
    });
  }, [path]);
  useEffect(() => void again(), [again]);
  useLive((event) => on(event) && void again());
  const fits = held.path === path;
  return {
    ...{ body: fits ? held.body : undefined, refused: fits ? held.refused : undefined },
    ...{ etag: undefined, again },
  };
}

/** Lines that change who is entered, under which number and name. */
export const changesNames = ({ type }: LiveEvent): boolean =>
  type === undefined || /^(entry|exhibitor|horse|names)\./.test(type);
