/** Words as they are looked up: small letters without accents, so that "Grun", "grün" and "Gruen" find Grün. */

/** Letters that Unicode does not take apart (NFKD), as people write them on a keyboard that lacks them. */
const plainly: Readonly<Record<string, string>> = {
  ...{ ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', đ: 'd', ð: 'd', ł: 'l', þ: 'th', ı: 'i' },
};
/** As German writes them where there are no dots. */
const written: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' };

const withoutAccents = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[ßæœøđðłþı]/g, (letter) => plainly[letter] ?? letter);

const split = (text: string): string[] => text.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');

/** What is typed: each word in one spelling. */
export const askedWords = (text: string): string[] => split(withoutAccents(text.toLowerCase()));

/** What is found: each word in both spellings. */
export function foundWords(text: string): string[] {
  const small = text.normalize('NFC').toLowerCase();
  const german = small.replace(/[äöü]/g, (letter) => written[letter] ?? letter);
  return [...new Set([...split(withoutAccents(small)), ...split(withoutAccents(german))])];
}
