/**
 * What a typist has typed and not sent yet stays with its window, so that a reload costs nothing. It is kept for her
 * account alone: whoever signs in next at the same window neither sees it nor finds it there.
 */
import type { TypedCard } from './typed-card.ts';

interface Typist {
  readonly accountId: string;
  readonly paperCardId: string;
}

const beginning = 'ringledger-typing:';
const keyOf = ({ accountId, paperCardId }: Typist): string => `${beginning}${accountId}:${paperCardId}`;

export function keptTyping(typist: Typist): TypedCard | undefined {
  forgetOthers(typist.accountId);
  const text = sessionStorage.getItem(keyOf(typist));
  if (text === null) return undefined;
  const { goes, ranking } = JSON.parse(text) as TypedCard;
  return { goes, ranking };
}

/** Where the browser has no room left the typing goes on, and is only not kept. */
export function keepTyping(typist: Typist, typed: TypedCard): void {
  try {
    sessionStorage.setItem(keyOf(typist), JSON.stringify(typed));
  } catch {
    forgetTyping(typist);
  }
}

export const forgetTyping = (typist: Typist): void => sessionStorage.removeItem(keyOf(typist));

function forgetOthers(accountId: string): void {
  for (const key of Object.keys(sessionStorage)) {
    if (key.startsWith(beginning) && !key.startsWith(`${beginning}${accountId}:`))
      sessionStorage.removeItem(key);
  }
}
