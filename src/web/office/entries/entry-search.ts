/** Finding somebody by the back number, or by pieces of a name, however it is spelled. Pure. */
import type { Answer } from '../../shared/api.ts';

export type Entry = Answer<'/v1/shows/{showId}/entries'>['items'][number];

/** "Ünal Straße" and "unal strasse" are the same; case and accents say nothing. */
export const plainName = (name: string): string =>
  name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('ß', 'ss');

/** Every word of `words` begins a word of the name. */
export function isNamed(name: string, words: string): boolean {
  const parts = plainName(name).split(/[^\p{L}\p{N}]+/u);
  return plainName(words)
    .split(/\s+/)
    .filter((word) => word !== '')
    .every((word) => parts.some((part) => part.startsWith(word)));
}

/** Digits look for a number that begins so, the number itself first; letters for exhibitor, horse or owner. */
export function foundEntries(entries: readonly Entry[], words: string): readonly Entry[] {
  const wanted = words.trim();
  if (wanted === '') return entries;
  if (!/^\d+$/.test(wanted)) {
    return entries.filter(({ exhibitor, horse, owner }) =>
      isNamed(`${exhibitor.name} ${horse.name} ${owner?.name ?? ''}`, wanted),
    );
  }
  const exact = entries.filter(({ backNumber }) => String(backNumber) === wanted);
  const begun = entries.filter(
    ({ backNumber }) => String(backNumber) !== wanted && String(backNumber).startsWith(wanted),
  );
  return [...exact, ...begun];
}
