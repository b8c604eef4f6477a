/**
 * What a reader chose for all pages: language and light. Kept in cookies, so that pages which the service renders
 * come out right at once; they say nothing about a person.
 */
import { isLanguage, type Language, languages } from './words.tsx';

export const themes = ['device', 'light', 'dark', 'glare'] as const;
/** `device`: as the device says. `glare`: black on white, for bright sun. */
export type Theme = (typeof themes)[number];

export const isTheme = (text: string | undefined): text is Theme => themes.some((theme) => theme === text);

export interface Choices {
  readonly language: Language;
  readonly theme: Theme;
}

export const cookieNames = { language: 'ringledger-language', theme: 'ringledger-theme' } as const;

interface Asked {
  /** Of the header Cookie, or `document.cookie`. */
  readonly cookies: string;
  /** Languages that the reader's browser asks for, the dearest first: `['de-AT', 'en']`. */
  readonly preferred: readonly string[];
}

export function choicesFrom({ cookies, preferred }: Asked): Choices {
  const chosen = cookieIn(cookies, cookieNames.language);
  const theme = cookieIn(cookies, cookieNames.theme);
  return {
    language: isLanguage(chosen) ? chosen : firstKnown(preferred),
    theme: isTheme(theme) ? theme : 'device',
  };
}

function firstKnown(preferred: readonly string[]): Language {
  for (const tag of preferred) {
    const language = tag.slice(0, 2).toLowerCase();
    if (isLanguage(language)) return language;
  }
  return languages[0];
}

function cookieIn(cookies: string, name: string): string | undefined {
  const found = cookies.split(';').find((part) => part.trim().startsWith(`${name}=`));
  return found?.trim().slice(name.length + 1);
}

/** `Set-Cookie`, or what is assigned to `document.cookie`. */
export function choiceCookie(name: keyof Choices, value: string, { secure }: { readonly secure: boolean }) {
  const aYear = 365 * 24 * 3600;
  return `${cookieNames[name]}=${value}; Path=/; Max-Age=${aYear}; SameSite=Lax${secure ? '; Secure' : ''}`;
}
