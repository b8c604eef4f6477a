/** `/shows/:showId/numbers/:backNumber`: what an entry got, from whom, on which maneuver, and why. */
import { classOfEvent } from '../board/board-answer.ts';
import { Who } from '../board/class/who.tsx';
import { PublicFrame } from '../shared/public-frame.tsx';
import type { PublicPage, Seen } from '../shared/public-page.ts';
import { useWords } from '../shared/words.tsx';
import { AskingContext, useAsking } from './asking/use-asking.ts';
import { ClassPart } from './class-part.tsx';
import { type OfNumber, ofNumber } from './number-answer.ts';
import { PlaceWords } from './place-words.tsx';

export const numberPage: PublicPage = {
  name: 'number',
  path: '/shows/:showId/numbers/:backNumber',
  topics: ['board', 'exhibitor'],
  asks: ({ showId, backNumber }, given) => {
    if ('number' in given && given.number === undefined) return null;
    return { number: `/v1/shows/${showId}/numbers/${backNumber}/results` };
  },
  title: (given, { t }) => {
    const { backNumber, show } = ofNumber(given);
    return t('exhibitor-title', { number: String(backNumber), show: show.name });
  },
  description: (given, { t }) => {
    const { backNumber, show } = ofNumber(given);
    return t('exhibitor-description', { number: String(backNumber), show: show.name });
  },
  concerns: (event, given) => {
    const about = classOfEvent(event);
    if (about !== undefined && ofNumber(given).classes.some(({ classId }) => classId === about)) return true;
    return /^(show|names|class-entry)\./.test(event.type ?? '');
  },
  View: NumberView,
};

function NumberView({ given, address }: Seen) {
  const { t } = useWords();
  const of = ofNumber(given);
  const { show, backNumber, name, horse, classes } = of;
  const asking = useAsking({ showId: show.id, backNumber });
  return (
    <AskingContext.Provider value={asking}>
      <PublicFrame
        address={address}
        trail={[{ href: `/shows/${show.id}`, name: show.name }]}
        practice={show.practice}
        timeZone={show.timeZone}
      >
        <header class="entry-head">
          <p class="worn figures" aria-hidden="true">
            {backNumber}
          </p>
          <h1>
            <span class="heard">{t('exhibitor-number', { number: String(backNumber) })}: </span>
            <Who {...{ name, horse }} />
          </h1>
        </header>
        {classes.length === 0 ? <p class="empty">{t('exhibitor-entered-nowhere')}</p> : <Glance of={of} />}
        {classes.map((line) => (
          <ClassPart key={line.classEntryId} {...{ line, show, backNumber }} />
        ))}
        <p class="not-printed">
          <a class="way" href={`/shows/${show.id}/find`}>
            {t('exhibitor-find-another')}
          </a>
        </p>
      </PublicFrame>
    </AskingContext.Provider>
  );
}

/** All classes in a few lines, each with the way to its part of the page. */
function Glance({ of: { classes } }: { readonly of: OfNumber }) {
  const { t } = useWords();
  if (classes.length < 2) return null;
  return (
    <nav class="glance" aria-labelledby="glance">
      <h2 id="glance">{t('exhibitor-at-a-glance')}</h2>
      <ul class="lines">
        {classes.map((line) => (
          <li key={line.classEntryId}>
            <a class="way" href={`#class-${line.number}`}>
              <span class="figures">{line.number}</span> {line.name}
            </a>{' '}
            <PlaceWords line={{ ...line, results: line.posted?.results ?? [] }} />
          </li>
        ))}
      </ul>
    </nav>
  );
}
