/** The code of an invitation as a person types it: any case, with or without the hyphen. */

const length = 8;

/** "xk7p 4m2q" -> "XK7P-4M2Q"; what is not there yet is left out. */
export function asWritten(typed: string): string {
  const signs = typed
    .toUpperCase()
    .replace(/[^0-9A-Z]/g, '')
    .slice(0, length);
  return signs.length <= length / 2 ? signs : `${signs.slice(0, length / 2)}-${signs.slice(length / 2)}`;
}

export const isWhole = (code: string): boolean => code.replace('-', '').length === length;

/** The part of a link after `#`. */
export const codeInLink = (hash: string): string => asWritten(decodeLoosely(hash.replace(/^#/, '')));

function decodeLoosely(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
