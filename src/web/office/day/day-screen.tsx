import { useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import { useWords, type Words } from '../../shared/words.tsx';
import { useEvery } from '../class/class-answers.ts';
import { useKey } from '../keys/short-keys.tsx';
import { liveState, showInHand } from '../office-state.ts';
import { paths } from '../paths.ts';
import { Part } from '../pieces/part.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { useShowClock } from '../use-show.ts';
import { type BoardClass, type ClassInNeed, classesInNeed, type Need, usePreviews } from './needs.ts';

type Board = Answer<'/v1/shows/{showId}/board'>;

/** The day at a glance: what needs the office now, then the classes by ring. */
export function DayScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const board = useAsked<Board>(`/v1/shows/${showId}/board`);
  useEvery(boardSeconds, board.again, true);
  const classes = board.body?.classes ?? [];
  const { previews, looking } = usePreviews(classes);
  const inNeed = classesInNeed(classes, previews);
  return (
    <>
      <ScreenHead title={t('office-day')}>
        <p class="note">
          {showInHand.value?.place} · {t(`office-live-${liveState.value}`)}
        </p>
      </ScreenHead>
      <Shown asked={board}>
        {() => (
          <>
            <Part title={t('office-needs')}>
              <Needs {...{ showId, inNeed, looking }} />
            </Part>
            {ringsOf(classes).map(([ring, ofRing]) => (
              <Part key={ring ?? ''} title={ring ?? t('office-no-ring')}>
                <RingTable {...{ showId, ring: ring ?? t('office-no-ring'), classes: ofRing }} />
              </Part>
            ))}
            {classes.length === 0 && <p>{t('office-day-empty')}</p>}
          </>
        )}
      </Shown>
    </>
  );
}

/** Goes that are written come without an event. */
const boardSeconds = 15;

function ringsOf(classes: readonly BoardClass[]): [string | null, BoardClass[]][] {
  const rings = new Map<string | null, BoardClass[]>();
  for (const ofClass of classes) rings.set(ofClass.ring, [...(rings.get(ofClass.ring) ?? []), ofClass]);
  return [...rings];
}

interface NeedsParts {
  readonly showId: string;
  readonly inNeed: readonly ClassInNeed[];
  /** Not every class was looked at yet. */
  readonly looking: boolean;
}

function Needs({ showId, inNeed, looking }: NeedsParts) {
  const { t } = useWords();
  const list = useRef<HTMLUListElement>(null);
  useKey('n', t('office-key-next-need'), () => focusNext(list.current));
  if (inNeed.length === 0) return <p>{t(looking ? 'office-one-moment' : 'office-needs-none')}</p>;
  return (
    <ul class="lines needs" ref={list} aria-live="polite">
      {inNeed.map(({ ofClass, need }) => (
        <li key={ofClass.id} class={`need ${need.is}`}>
          <Link class="line-head" href={paths.class(showId, ofClass.id)}>
            <span class="figures">{ofClass.number}</span> {ofClass.name}
          </Link>
          <p>{needWords(need, t)}</p>
        </li>
      ))}
    </ul>
  );
}

function focusNext(list: HTMLElement | null): void {
  const links = [...(list?.querySelectorAll('a') ?? [])];
  const at = links.findIndex((link) => link.isSameNode(document.activeElement));
  links[(at + 1) % links.length]?.focus();
}

function needWords(need: Need, t: Words['t']): string {
  switch (need.is) {
    case 'tie-open':
      return t('office-need-tie-open', { count: need.count });
    case 'changed-since':
      return t('office-need-changed-since', { version: need.version });
    case 'to-be-amended':
      return t('office-need-to-be-amended', { judges: need.judges });
    case 'card-missing':
      return t('office-need-card-missing', { missing: need.missing, expected: need.expected });
    case 'ready-to-post':
      return t('office-need-ready-to-post');
  }
}

interface RingTableParts {
  readonly showId: string;
  readonly ring: string;
  readonly classes: readonly BoardClass[];
}

function RingTable({ showId, ring, classes }: RingTableParts) {
  const { t } = useWords();
  const { moment } = useShowClock();
  return (
    <RuledTable caption={t('office-ring-caption', { ring })} class="day">
      <thead>
        <tr>
          <th scope="col">{t('office-class')}</th>
          <th scope="col">{t('office-time')}</th>
          <th scope="col">{t('office-state')}</th>
        </tr>
      </thead>
      <tbody>
        {classes.map((ofClass) => (
          <tr key={ofClass.id}>
            <th scope="row">
              <Link href={paths.class(showId, ofClass.id)}>
                <span class="figures">{ofClass.number}</span> {ofClass.name}
              </Link>
            </th>
            <td>{ofClass.scheduledAt === null ? '' : moment(ofClass.scheduledAt)}</td>
            <td>{stateWords(ofClass, t)}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}

function stateWords({ state, cardsIn, cardsExpected, postingVersion }: BoardClass, t: Words['t']): string {
  const words = t(`shared-state-${state}`);
  if (state === 'under-way')
    return `${words}, ${t('office-cards-in', { in: cardsIn, expected: cardsExpected })}`;
  return postingVersion === null ? words : `${words} (${t('office-version', { version: postingVersion })})`;
}
