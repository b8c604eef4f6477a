/** Where somebody is looked up. */
import type { Answer } from '../shared/api.ts';

export type Found = Answer<'/v1/shows/{showId}/look-up'>;

/** As much as the service takes. */
export const mostLetters = 100;

export const lookUpAddress = (showId: string, words: string): string =>
  `/v1/shows/${showId}/look-up?${new URLSearchParams({ words: words.slice(0, mostLetters) })}`;
