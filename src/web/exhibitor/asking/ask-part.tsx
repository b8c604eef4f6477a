/** "This looks wrong": what was asked about a class, and the form that asks. */
import { useEffect, useId, useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import type { PartToShow } from '../class-part.tsx';
import { AskForm } from './ask-form.tsx';
import { keptDraft } from './draft.ts';
import { FollowedQuery } from './followed-query.tsx';
import { type Followed, useAskingHere } from './use-asking.ts';

export function AskPart({ line, show, backNumber }: PartToShow) {
  const { t } = useWords();
  const { followed, ready } = useAskingHere();
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  const { classId, number, posting } = line;
  const asked = followed.filter((one) => isAbout(one, classId));
  const subject = { classId, backNumber, postingVersion: posting?.version ?? null };
  // What was typed before a reload is on the screen again.
  useEffect(() => setOpen(keptDraft(`${classId}-${backNumber}`) !== undefined), [classId, backNumber]);
  return (
    <section class="asking not-printed" aria-labelledby={id}>
      <h3 id={id}>{t('exhibitor-wrong')}</h3>
      {asked.length > 0 && (
        <ul class="asked">
          {asked.map((one) => (
            <li key={one.code}>
              <FollowedQuery followed={one} timeZone={show.timeZone} />
            </li>
          ))}
        </ul>
      )}
      <noscript>
        <p class="note">{t('exhibitor-wrong-without-script')}</p>
      </noscript>
      {ready && !isOpen && (
        <p>
          <button type="button" aria-expanded={false} onClick={() => setOpen(true)}>
            {t(asked.length > 0 ? 'exhibitor-ask-again' : 'exhibitor-wrong-ask')}
          </button>
        </p>
      )}
      {ready && isOpen && (
        <>
          <p>{t('exhibitor-wrong-what', { number: String(number) })}</p>
          <p class="heed">{t('exhibitor-wrong-caution')}</p>
          <AskForm {...{ subject, close: () => setOpen(false) }} />
        </>
      )}
    </section>
  );
}

/** Until it is read, by what was known when it was asked. */
const isAbout = ({ query, classId: asked }: Followed, classId: string): boolean =>
  (query === undefined || query === 'gone' ? asked : query.class.id) === classId;
