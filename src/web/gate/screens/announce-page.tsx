import { figureText } from '../../shared/figure-words.ts';
import { useWords } from '../../shared/words.tsx';
import type { Announcement } from '../desk/gate-types.ts';
import type { Placing, ReadingPage } from '../desk/reading.ts';

interface PageParts {
  readonly page: ReadingPage;
  readonly announcement: Announcement;
}

export function ReadingPageView({ page, announcement }: PageParts) {
  return page.kind === 'opening' ? (
    <Opening page={page} announcement={announcement} />
  ) : (
    <Place placing={page.placing} judge={page.judge} />
  );
}

/** What is said before the first place is read: the class, who judged, and whether it is final. */
function Opening({ page, announcement }: PageParts) {
  const { t, language } = useWords();
  const { class: ofClass, judges, posting } = announcement;
  if (page.kind !== 'opening') return null;
  const names = new Intl.ListFormat(language, { type: 'conjunction' }).format(judges);
  return (
    <>
      <p class="reading-class">
        {ofClass.number} {ofClass.name}
      </p>
      {ofClass.division !== null && <p>{ofClass.division}</p>}
      <p class="reading-judges">
        {page.judge === null
          ? t('gate-judged-by', { count: judges.length, names })
          : t('gate-placings-of', { judge: page.judge })}
      </p>
      <p>{t('gate-places-count', { count: page.count })}</p>
      {posting.state === 'provisional' && <p class="reading-provisional">{t('gate-say-provisional')}</p>}
    </>
  );
}

function Place({ placing, judge }: { readonly placing: Placing; readonly judge: string | null }) {
  const { t, language } = useWords();
  const { place, tied, backNumber, name, spokenAs, horse, horseSpokenAs, total } = placing;
  const isNamed = name !== `No. ${backNumber}`;
  return (
    <>
      {judge !== null && <p class="note">{t('gate-placings-of', { judge })}</p>}
      <p class="reading-place">{t('gate-place', { place })}</p>
      {tied && <p class="tag is-strong">{t('gate-tied')}</p>}
      <p class="reading-number">
        <span class="heard">{t('gate-back-number')}</span> {backNumber}
      </p>
      {isNamed ? <p class="reading-name">{name}</p> : <p class="note">{t('gate-number-only')}</p>}
      {spokenAs !== null && <Spoken words={spokenAs} />}
      {horse !== null && <p class="reading-horse">{t('gate-riding', { horse })}</p>}
      {horseSpokenAs !== null && <Spoken words={horseSpokenAs} />}
      {total !== null && <p class="note">{t('gate-total', { total: figureText(total, language) })}</p>}
    </>
  );
}

function Spoken({ words }: { readonly words: string }) {
  const { t } = useWords();
  return (
    <p class="reading-spoken">
      <span class="heard">{t('gate-spoken')}</span> “{words}”
    </p>
  );
}
