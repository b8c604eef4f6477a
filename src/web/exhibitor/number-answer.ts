/** What the page of a back number reads of the API. */
import type { Answer } from '../shared/api.ts';
import type { Given } from '../shared/public-page.ts';

export type OfNumber = Answer<'/v1/shows/{showId}/numbers/{backNumber}/results'>;
export type ClassOfNumber = OfNumber['classes'][number];
export type Posted = NonNullable<ClassOfNumber['posted']>;
export type EntryResult = Posted['results'][number];
export type Card = Posted['cards'][number];
export type Marks = NonNullable<NonNullable<Card['go']>['marks']>;
export type Sheet = Posted['sheet'];
export type Pattern = NonNullable<ClassOfNumber['pattern']>;

export const ofNumber = (given: Given): OfNumber => given.number as OfNumber;
