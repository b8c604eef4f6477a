/** A card that came in on paper: typed by two of the office, who do not see each other's until both are in. */
import type { Api, Sends } from './api.ts';
import type { TaleOf } from './demo-files.ts';
import { contentOf } from './judge-cards.ts';
import type { WrittenCard } from './marks/judge-class.ts';
import type { ReadyClass } from './set-up-class.ts';
import type { ShowGround } from './set-up-show.ts';

interface PaperCard {
  readonly id: string;
  readonly status: 'open' | 'accepted' | 'withdrawn';
  readonly differences: readonly Difference[] | null;
}

interface Difference {
  readonly backNumber: number | null;
  readonly part: string;
  readonly mine: string | null;
  readonly other: string | null;
}

interface AtClass {
  readonly ground: ShowGround;
  readonly ready: ReadyClass;
  readonly say: (line: string) => void;
}

interface OnPaper {
  readonly tale: TaleOf<'paper'>;
  readonly seatId: string;
  readonly card: WrittenCard;
}

/** The secretary misreads two numbers, the manager does not; the difference is shown to both, and mended. */
export async function enterFromPaper(at: AtClass, { tale, seatId, card }: OnPaper): Promise<void> {
  const { ground, ready, say } = at;
  const { api, secretary, manager } = ground;
  const { body: paper } = await api.ask<PaperCard>({
    ...{ method: 'POST', path: `/classes/${ready.id}/paper-cards`, as: secretary },
    body: { seatId, reason: tale.reason },
  });
  const enter = entering(api, paper.id);
  const first = await enter(secretary, contentOf(ready, swapRanks(card, tale.misread)));
  const { body: both } = await enter(manager, contentOf(ready, card));
  for (const difference of both.differences ?? []) say(`    ${inWords(difference)}`);
  const mended = await enter(secretary, contentOf(ready, card), first.etag);
  if (mended.body.status !== 'accepted') throw new Error('the paper card was not accepted');
}

const entering = (api: Api, paperCardId: string) => (as: Sends, content: unknown, ifMatch?: string) =>
  api.ask<PaperCard>({
    ...{ method: 'PUT', path: `/paper-cards/${paperCardId}/entries/mine`, as, body: content },
    ...(ifMatch === undefined ? {} : { ifMatch }),
  });

function swapRanks(card: WrittenCard, [one, other]: readonly [number, number]): WrittenCard {
  const swapped = (backNumber: number) =>
    backNumber === one ? other : backNumber === other ? one : backNumber;
  return { ...card, ranking: card.ranking?.map(swapped) };
}

const inWords = ({ backNumber, part, mine, other }: Difference): string =>
  `the two who typed the card on paper differ at ${backNumber}, ${part}: ${mine} and ${other}`;
