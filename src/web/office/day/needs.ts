/** What of the day needs the office now: read off the board, and off the previews of classes whose cards are in. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { ask } from '../ask.ts';
import type { Preview } from '../class/class-answers.ts';
import { concernsClass, useLive } from '../office-state.ts';

export type BoardClass = Answer<'/v1/shows/{showId}/board'>['classes'][number];

export type Need =
  | { readonly is: 'tie-open'; readonly count: number }
  | { readonly is: 'changed-since'; readonly version: number }
  | { readonly is: 'to-be-amended'; readonly judges: string }
  | { readonly is: 'card-missing'; readonly missing: number; readonly expected: number }
  | { readonly is: 'ready-to-post' };

/** The first is the most urgent. */
const urgency = [
  'tie-open',
  'changed-since',
  'to-be-amended',
  'card-missing',
  'ready-to-post',
] as const satisfies readonly Need['is'][];

export interface ClassInNeed {
  readonly ofClass: BoardClass;
  readonly need: Need;
}

export function classesInNeed(
  classes: readonly BoardClass[],
  previews: ReadonlyMap<string, Preview>,
): ClassInNeed[] {
  return classes
    .flatMap((ofClass) => {
      const need = needOf(ofClass, previews.get(ofClass.id));
      return need === undefined ? [] : [{ ofClass, need }];
    })
    .sort((one, other) => urgency.indexOf(one.need.is) - urgency.indexOf(other.need.is));
}

function needOf(ofClass: BoardClass, preview: Preview | undefined): Need | undefined {
  const { cardsIn, cardsExpected, postingVersion } = ofClass;
  if (isWaitedFor(ofClass)) {
    return { is: 'card-missing', missing: cardsExpected - cardsIn, expected: cardsExpected };
  }
  if (preview === undefined || !cardsTell(ofClass)) return undefined;
  const { cardsMissing, openTies, changedSincePosting } = preview;
  if (cardsMissing.length > 0) {
    return { is: 'to-be-amended', judges: cardsMissing.map(({ judge }) => judge).join(', ') };
  }
  if (openTies.length > 0) return { is: 'tie-open', count: openTies.length };
  if (postingVersion === null) return { is: 'ready-to-post' };
  return changedSincePosting ? { is: 'changed-since', version: postingVersion } : undefined;
}

const isWaitedFor = ({ state, cardsIn, cardsExpected }: BoardClass): boolean =>
  state === 'under-way' && cardsIn > 0 && cardsIn < cardsExpected;

/** Its cards are in, so that its preview says what is to be done. */
const cardsTell = ({ state }: BoardClass): boolean =>
  ['cards-in', 'provisional', 'official', 'corrected'].includes(state);

const atOnce = 3;

export interface PreviewsSoFar {
  readonly previews: ReadonlyMap<string, Preview>;
  /** Some were not looked at yet. */
  readonly looking: boolean;
}

/** The previews of the classes whose cards are in; each is asked for again when something happens to its class. */
export function usePreviews(classes: readonly BoardClass[]): PreviewsSoFar {
  const [previews, setPreviews] = useState<ReadonlyMap<string, Preview>>(new Map());
  const [looked, setLooked] = useState<ReadonlySet<string>>(new Set());
  const asked = useRef(new Map<string, string>());
  const queue = useRef<string[]>([]);
  const running = useRef(0);
  const work = async () => {
    if (running.current >= atOnce) return;
    running.current += 1;
    for (let id = queue.current.shift(); id !== undefined; id = queue.current.shift()) {
      const known = id;
      const outcome = await ask<Preview>({ path: `/v1/classes/${known}/tabulation` });
      if (outcome.ok) setPreviews((before) => new Map(before).set(known, outcome.body));
      setLooked((before) => new Set(before).add(known));
    }
    running.current -= 1;
  };
  const askFor = (id: string) => {
    if (!queue.current.includes(id)) queue.current.push(id);
    void work();
  };
  useEffect(() => {
    for (const { id, state, cardsIn, postingVersion } of classes.filter(cardsTell)) {
      const stand = `${state} ${cardsIn} ${postingVersion}`;
      if (asked.current.get(id) === stand) continue;
      asked.current.set(id, stand);
      askFor(id);
    }
  });
  useLive((event) => {
    if (event.type === undefined) return;
    for (const { id } of classes.filter(cardsTell)) if (concernsClass(id)(event)) askFor(id);
  });
  const looking = classes.some((ofClass) => cardsTell(ofClass) && !looked.has(ofClass.id));
  return { previews, looking };
}
