/** The show in hand and what happens at it, for every screen of the office. */
import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Answer } from '../shared/api.ts';
import { followShow, type LiveEvent, type LiveState } from '../shared/live.ts';
import { askAsOffice } from '../shared/office-client.ts';
import { ask, type Refused } from './ask.ts';

export type Show = Answer<'/v1/shows/{showId}'>;

export const showInHand = signal<Show | undefined>(undefined);
/** Why there is no show in hand. */
export const showRefused = signal<Refused | undefined>(undefined);
export const liveState = signal<LiveState>('streaming');

type Hear = (event: LiveEvent) => void;
const listeners = new Set<Hear>();

/** For the frame around the screens: takes a show in hand and follows it until the returned verb is called. */
export function takeInHand(showId: string): () => void {
  const read = async () => {
    const outcome = await ask<Show>({ path: `/v1/shows/${showId}` });
    if (ended) return;
    if (outcome.ok) showInHand.value = outcome.body;
    showRefused.value = outcome.ok ? undefined : outcome;
  };
  let ended = false;
  if (showInHand.value?.id !== showId) showInHand.value = undefined;
  showRefused.value = undefined;
  void read();
  const stop = followShow({
    showId,
    ask: (path, { headers, signal: until }) => askAsOffice({ path, headers, signal: until }),
    hear: (event) => {
      if (event.type === 'show.changed') void read();
      for (const hear of [...listeners]) hear(event);
    },
    tell: (state) => {
      liveState.value = state;
    },
  });
  return () => {
    ended = true;
    stop();
  };
}

/** Calls `hear` for what happens at the show in hand, as long as the component is there. */
export function useLive(hear: Hear): void {
  const last = useRef(hear);
  last.current = hear;
  useEffect(() => {
    const listener: Hear = (event) => last.current(event);
    listeners.add(listener);
    return () => void listeners.delete(listener);
  }, []);
}

/** What the line of the ledger holds: ids and numbers, e.g. `{ classId, seatId }`. */
export function lineBody({ body: line }: LiveEvent): Readonly<Record<string, unknown>> {
  const body = isRecord(line) ? line.body : undefined;
  return isRecord(body) ? body : {};
}

/** Does the event say something of the class? Without a type nobody knows, so it may. */
export const concernsClass =
  (classId: string) =>
  (event: LiveEvent): boolean =>
    event.type === undefined ||
    Object.values(lineBody(event)).some((value) => value === classId || isListWith(value, classId));

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const isListWith = (value: unknown, id: string): boolean => Array.isArray(value) && value.includes(id);
