/** What the page of a class reads of the API; what it does not show does not travel with it. */
import type { Answer } from '../../shared/api.ts';
import type { Address, Given } from '../../shared/public-page.ts';
import { type Board, type BoardClass, type BoardShow, partOf } from '../board-answer.ts';

export type OrderOfGo = Answer<'/v1/shows/{showId}/classes/{classId}/order-of-go'>;
export type Result = Answer<'/v1/classes/{classId}/result'>;
export type OneResult = Result['results'][number];
export type Placing = OneResult['placings'][number];
export type Card = Result['cards'][number];
export type CardGo = Card['goes'][number];
export type Sheet = Result['sheet'];
export type Pattern = Answer<'/v1/classes/{classId}/pattern'>;
type Class = Answer<'/v1/shows/{showId}/classes/{classId}'>;
type Postings = Answer<'/v1/classes/{classId}/postings'>['postings'];
export type Posting = Pick<Postings[number], 'id' | 'version' | 'state' | 'reason' | 'postedAt'>;
export type PublishCards = Class['publishCards'];

/** A posting as it was hashed: ids and back numbers, no names. */
export interface PostedBody {
  readonly entries: readonly { readonly id: string; readonly backNumber: number; readonly status: string }[];
  readonly results: readonly {
    readonly judge: string | null;
    readonly placed: readonly {
      readonly entry: string;
      readonly place: number;
      readonly tied: boolean;
      readonly total: string | null;
    }[];
    readonly unplaced: readonly { readonly entry: string }[];
  }[];
}
export type OlderPosting = Posting & { readonly body: PostedBody };

/** All that the page of a class may show; what is not there yet is `undefined`. */
export interface ClassGiven {
  readonly show: BoardShow;
  readonly of: BoardClass;
  readonly publishCards: PublishCards;
  readonly order: OrderOfGo | undefined;
  readonly pattern: Pattern | undefined;
  readonly result: Result | undefined;
  readonly postings: readonly Posting[];
  /** A posting that was replaced since, asked for by `?posting=`. */
  readonly older: OlderPosting | undefined;
}

/** `undefined`: the show has no such class. */
export function lineOf(given: Given): BoardClass | undefined {
  return (given.board as Board | undefined)?.classes[0];
}

export function asksOfClass({ showId, posting }: Address, given: Given): Record<string, string> | null {
  const board = `/v1/shows/${showId}/board`;
  if (!('board' in given)) return { board };
  const line = lineOf(given);
  if (line === undefined) return null;
  const asks = {
    board,
    class: `/v1/shows/${showId}/classes/${line.id}`,
    pattern: `/v1/classes/${line.id}/pattern`,
  };
  if (partOf(line) !== 'posted')
    return { ...asks, order: `/v1/shows/${showId}/classes/${line.id}/order-of-go` };
  const posted = { result: `/v1/classes/${line.id}/result`, postings: `/v1/classes/${line.id}/postings` };
  return { ...asks, ...posted, ...olderOf(posting, given) };
}

/** Only a posting of this class is asked for, and of those only one that was replaced. */
function olderOf(posting: string | undefined, given: Given): Record<string, string> {
  const postings = (given.postings as readonly Posting[] | undefined) ?? [];
  const asked = postings.slice(0, -1).find(({ id }) => id === posting);
  return asked === undefined ? {} : { older: `/v1/postings/${asked.id}` };
}

export const keptOfClass = {
  board: (answer: unknown, { number }: Address) => {
    const { show, classes } = answer as Board;
    return { show, classes: classes.filter((one) => String(one.number) === number) };
  },
  class: (answer: unknown) => ({ publishCards: (answer as Class).publishCards }),
  result: (answer: unknown) => withoutProse(answer as Result),
  postings: (answer: unknown) => (answer as { postings: Postings }).postings.map(shortPosting),
  older: (answer: unknown) => ({
    ...shortPosting(answer as Postings[number]),
    body: shortBody((answer as OlderPosting).body),
  }),
};

/** The page shows the figures of the cards, so the sentences that tell the same stay behind. */
function withoutProse({ cards, posting, ...result }: Result): Omit<Result, 'posting'> & { posting: unknown } {
  const { jws: _, ...head } = posting;
  return {
    ...result,
    posting: head,
    cards: cards.map((card) => ({
      ...card,
      goes: card.goes.map((go) => (go.marks === null ? go : { ...go, parts: [], remarks: [] })),
    })),
  };
}

const shortPosting = ({ id, version, state, reason, postedAt }: Postings[number]): Posting => ({
  ...{ id, version, state, reason, postedAt },
});

function shortBody({ entries, results }: PostedBody): PostedBody {
  return {
    entries,
    results: results.map(({ judge, placed, unplaced }) => ({
      ...{ judge, placed },
      unplaced: unplaced.map(({ entry }) => ({ entry })),
    })),
  };
}

/** Throws where the page was asked for a class that is not there; `asksOfClass` lets none through. */
export function classGiven(given: Given): ClassGiven {
  const of = lineOf(given);
  if (of === undefined) throw new Error('the page of a class has no class');
  return {
    of,
    show: (given.board as Board).show,
    publishCards: (given.class as Pick<Class, 'publishCards'> | undefined)?.publishCards ?? 'never',
    order: given.order as OrderOfGo | undefined,
    pattern: given.pattern as Pattern | undefined,
    result: given.result as Result | undefined,
    postings: (given.postings as readonly Posting[] | undefined) ?? [],
    older: given.older as OlderPosting | undefined,
  };
}
