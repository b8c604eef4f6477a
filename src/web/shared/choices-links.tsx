/** Language and light at the foot of a public page: plain links, until the script takes the page over. */
import { createContext } from 'preact';
import { useContext, useEffect, useState } from 'preact/hooks';
import { type Choices, themes } from './choices.ts';
import { ChoicesBar } from './choices-bar.tsx';
import { type Address, isNameOfPart } from './public-page.ts';
import { languages, useWords } from './words.tsx';

/** What the service rendered the page with; in a browser it stands on the element of the document. */
export const ChoicesContext = createContext<Choices | undefined>(undefined);

export function ChoicesLinks({ address }: { readonly address: Address }) {
  const { t, language } = useWords();
  const [hasScript, setHasScript] = useState(false);
  useEffect(() => setHasScript(true), []);
  const theme = useContext(ChoicesContext)?.theme ?? document.documentElement.dataset.theme;
  if (hasScript) return <ChoicesBar />;
  const link = (name: string, value: string) => {
    const asked = Object.entries(address).filter(([part]) => !isNameOfPart(part));
    return `?${new URLSearchParams([...asked, [name, value]])}`;
  };
  const current = (is: boolean) => (is ? { 'aria-current': 'true' as const } : {});
  return (
    <div class="choices">
      <p>
        <span>{t('shared-language')}</span>{' '}
        {languages.map((code) => (
          <a key={code} href={link('language', code)} lang={code} {...current(code === language)}>
            {t(`shared-language-${code}`)}
          </a>
        ))}
      </p>
      <p>
        <span>{t('shared-light')}</span>{' '}
        {themes.map((one) => (
          <a key={one} href={link('theme', one)} {...current(one === theme)}>
            {t(`shared-light-${one}`)}
          </a>
        ))}
      </p>
    </div>
  );
}
