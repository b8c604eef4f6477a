/** The reader's choices in this browser: read at the start of a page, written by its settings. */
import { type Choices, choiceCookie, choicesFrom, type Theme } from './choices.ts';
import type { Language } from './words.tsx';

export const chosen = (): Choices =>
  choicesFrom({ cookies: document.cookie, preferred: navigator.languages });

/** Shows the page in the theme and language that were chosen. */
export function applyChoices({ language, theme }: Choices): void {
  document.documentElement.lang = language;
  document.documentElement.dataset.theme = theme;
}

export function chooseTheme(theme: Theme): void {
  keep('theme', theme);
  applyChoices({ ...chosen(), theme });
}

export const chooseLanguage = (language: Language): void => keep('language', language);

function keep(name: keyof Choices, value: string): void {
  // The Cookie Store API is not in every browser of the build's target.
  // biome-ignore lint/suspicious/noDocumentCookie: see above
  document.cookie = choiceCookie(name, value, { secure: location.protocol === 'https:' });
}
