/** What a screen shows of the service: asked when it opens, and again when something happens that concerns it. */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { LiveEvent } from '../shared/live.ts';
import { ask, type Refused } from './ask.ts';
import { useLive } from './office-state.ts';

export interface AskedFor<Body> {
  /** The last good answer; it stays while it is asked for again. `undefined`: none yet. */
  readonly body: Body | undefined;
  readonly etag: string | undefined;
  /** Of the last asking. */
  readonly refused: Refused | undefined;
  /** Asks again now; resolves when the answer is shown. */
  readonly again: () => Promise<void>;
}

interface Wish {
  /** Left out: everything that happens at the show. */
  readonly on?: (event: LiveEvent) => boolean;
}

/** A judge's goes come in bursts. */
const gatherMilliseconds = 200;

type Held<Body> = Omit<AskedFor<Body>, 'again'> & { readonly path: string | undefined };

/** `path` left `undefined`: nothing is asked yet. */
export function useAsked<Body>(path: string | undefined, { on = () => true }: Wish = {}): AskedFor<Body> {
  const [held, hold] = useState<Held<Body>>({ path, body: undefined, etag: undefined, refused: undefined });
  const wanted = useRef(path);
  wanted.current = path;
  const again = useCallback(async () => {
    if (path === undefined) return;
    const outcome = await ask<Body>({ path });
    if (wanted.current !== path) return;
    hold((before) => {
      if (outcome.ok) return { path, body: outcome.body, etag: outcome.etag, refused: undefined };
      const kept = before.path === path ? before : { body: undefined, etag: undefined };
      return { path, body: kept.body, etag: kept.etag, refused: outcome };
    });
  }, [path]);
  useEffect(() => void again(), [again]);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  useLive((event) => {
    if (!on(event)) return;
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void again(), gatherMilliseconds);
  });
  const fits = held.path === path;
  return {
    body: fits ? held.body : undefined,
    etag: fits ? held.etag : undefined,
    refused: fits ? held.refused : undefined,
    again,
  };
}
