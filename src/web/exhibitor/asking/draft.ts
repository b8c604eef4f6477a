/** What is typed and not sent yet. It stays until it is sent, whatever fails, and ends with the tab. */

export interface Draft {
  /** Empty: not chosen yet. */
  readonly about: string;
  readonly words: string;
  readonly reachedBy: string;
  /** Under which it is sent, however often: so it counts once. Another text is another query. */
  readonly key: string;
}

export const newDraft = (): Draft => ({ about: '', words: '', reachedBy: '', key: crypto.randomUUID() });

const placeOf = (subject: string): string => `ringledger-asking-${subject}`;

/** `subject`: which class and entry it is about. */
export function keptDraft(subject: string): Draft | undefined {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(placeOf(subject)) ?? 'null');
    return isDraft(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

const isDraft = (value: unknown): value is Draft =>
  typeof value === 'object' &&
  value !== null &&
  ['about', 'words', 'reachedBy', 'key'].every(
    (name) => typeof (value as Record<string, unknown>)[name] === 'string',
  );

/** A browser that keeps nothing still has it on the screen. */
export function keepDraft(subject: string, draft: Draft): void {
  try {
    sessionStorage.setItem(placeOf(subject), JSON.stringify(draft));
  } catch {
    // Nothing else can be done, and nothing on the screen is lost.
  }
}

export function forgetDraft(subject: string): void {
  try {
    sessionStorage.removeItem(placeOf(subject));
  } catch {
    // It was never kept.
  }
}
