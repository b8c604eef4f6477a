/** Language and light, at the foot of every page. */
import { isTheme, themes } from './choices.ts';
import { chooseLanguage, chooseTheme, chosen } from './chosen.ts';
import { isLanguage, languages, useWords } from './words.tsx';

/** `onLanguage`: the page loads its words anew; left out: the page is opened anew. */
export function ChoicesBar({ onLanguage }: { readonly onLanguage?: () => void }) {
  const { t, language } = useWords();
  const pickLanguage = (value: string) => {
    if (!isLanguage(value)) return;
    chooseLanguage(value);
    if (onLanguage === undefined) location.reload();
    else onLanguage();
  };
  return (
    <div class="choices">
      <label>
        <span>{t('shared-language')}</span>
        <select value={language} onChange={(event) => pickLanguage(event.currentTarget.value)}>
          {languages.map((code) => (
            <option key={code} value={code} lang={code}>
              {t(`shared-language-${code}`)}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{t('shared-light')}</span>
        <select
          value={chosen().theme}
          onChange={({ currentTarget: { value } }) => isTheme(value) && chooseTheme(value)}
        >
          {themes.map((theme) => (
            <option key={theme} value={theme}>
              {t(`shared-light-${theme}`)}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
