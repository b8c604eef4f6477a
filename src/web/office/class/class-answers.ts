/** All that the screen of a class asks for, kept fresh while the class is judged. */
import { useEffect } from 'preact/hooks';
import type { Answer, Part } from '../../shared/api.ts';
import type { LiveEvent } from '../../shared/live.ts';
import { concernsClass } from '../office-state.ts';
import { type AskedFor, useAsked } from '../use-asked.ts';

export type ShowClass = Answer<'/v1/shows/{showId}/classes/{classId}'>;
export type Preview = Answer<'/v1/classes/{classId}/tabulation'>;
export type Panel = Answer<'/v1/shows/{showId}/classes/{classId}/panel'>;
export type Seat = Panel['seats'][number];
export type Progress = Part<'CardProgress'>;
export type Posting = Answer<'/v1/classes/{classId}/postings'>['postings'][number];
export type Ruling = Answer<'/v1/classes/{classId}/rulings'>['rulings'][number];
export type Phone = Answer<'/v1/shows/{showId}/phones'>['items'][number];
export type PaperCard = Part<'PaperCard'>;
export type OpenTie = Preview['openTies'][number];
export type RulingKind = Ruling['kind'];

export interface ClassAnswers {
  readonly ofClass: AskedFor<ShowClass>;
  readonly panel: AskedFor<Panel>;
  readonly cards: AskedFor<{ readonly items: readonly Progress[] }>;
  readonly preview: AskedFor<Preview>;
  readonly postings: AskedFor<Answer<'/v1/classes/{classId}/postings'>>;
  readonly rulings: AskedFor<Answer<'/v1/classes/{classId}/rulings'>>;
  readonly phones: AskedFor<Answer<'/v1/shows/{showId}/phones'>>;
  readonly paper: AskedFor<{ readonly items: readonly PaperCard[] }>;
  readonly rings: AskedFor<Answer<'/v1/shows/{showId}/rings'>>;
}

interface Asked {
  readonly showId: string;
  readonly classId: string;
  /** Phones and paper cards are for those who work with them. */
  readonly mayWrite: boolean;
}

export function useClassAnswers({ showId, classId, mayWrite }: Asked): ClassAnswers {
  const on = concernsClass(classId);
  const ofShow = `/v1/shows/${showId}`;
  const answers = {
    ofClass: useAsked<ShowClass>(`${ofShow}/classes/${classId}`, { on }),
    panel: useAsked<Panel>(`${ofShow}/classes/${classId}/panel`, { on }),
    cards: useAsked<{ items: Progress[] }>(`/v1/classes/${classId}/cards`, { on }),
    preview: useAsked<Preview>(`/v1/classes/${classId}/tabulation`, { on }),
    postings: useAsked<Answer<'/v1/classes/{classId}/postings'>>(`/v1/classes/${classId}/postings`, { on }),
    rulings: useAsked<Answer<'/v1/classes/{classId}/rulings'>>(`/v1/classes/${classId}/rulings`, { on }),
    phones: useAsked<Answer<'/v1/shows/{showId}/phones'>>(mayWrite ? `${ofShow}/phones` : undefined, {
      on: isOfPhones,
    }),
    paper: useAsked<{ items: PaperCard[] }>(mayWrite ? `/v1/classes/${classId}/paper-cards` : undefined, {
      on,
    }),
    rings: useAsked<Answer<'/v1/shows/{showId}/rings'>>(`${ofShow}/rings?limit=200`, { on: isOfRings }),
  };
  useEvery(goesWrittenSeconds, answers.cards.again, isBeingWritten(answers.cards.body?.items ?? []));
  return answers;
}

/** A go that is saved is no line of the ledger, so nobody is told of it: it is looked for. */
const goesWrittenSeconds = 4;

const isBeingWritten = (cards: readonly Progress[]): boolean =>
  cards.some(({ signed, withdrawn, cardId }) => !withdrawn && cardId !== null && signed === null);

export const isOfPhones = ({ type }: LiveEvent): boolean =>
  type === undefined || type.startsWith('phone.') || type.startsWith('invitation.');

const isOfRings = ({ type }: LiveEvent): boolean => type === undefined || type === 'ring.created';

/** Looks again every so often while somebody looks at the window. */
export function useEvery(seconds: number, look: () => Promise<void>, wanted: boolean): void {
  useEffect(() => {
    if (!wanted) return;
    const timer = setInterval(() => {
      if (document.visibilityState === 'visible') void look();
    }, seconds * 1_000);
    return () => clearInterval(timer);
  }, [seconds, look, wanted]);
}
