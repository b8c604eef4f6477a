/** `/shows/:showId/classes/:number`: what is known of a class, from its order of go to its last posting. */
import { useEffect } from 'preact/hooks';
import { PublicFrame } from '../../shared/public-frame.tsx';
import type { Given, PublicPage, Seen } from '../../shared/public-page.ts';
import { dayAndTimeAt } from '../../shared/show-times.ts';
import { useWords, type Words } from '../../shared/words.tsx';
import { classAddress, classOfEvent } from '../board-answer.ts';
import { StateWords } from '../class-line.tsx';
import { markSeen } from '../seen-postings.ts';
import { asksOfClass, type ClassGiven, classGiven, keptOfClass, lineOf } from './class-answer.ts';
import { OlderSheet } from './older-sheet.tsx';
import { OrderOfGo } from './order-of-go.tsx';
import { PatternPart } from './pattern-part.tsx';
import { PostedResult } from './posted-result.tsx';

export const classPage: PublicPage = {
  name: 'class',
  path: '/shows/:showId/classes/:number',
  topics: ['board'],
  asks: asksOfClass,
  keeps: keptOfClass,
  title: (given, { t }) => {
    const { show, of } = classGiven(given);
    return t('board-class-title', { number: of.number, name: of.name, show: show.name });
  },
  description: inASentence,
  concerns: (event, given) => {
    const about = classOfEvent(event);
    return about === undefined ? /^(show|names)\./.test(event.type ?? '') : about === lineOf(given)?.id;
  },
  View: ClassView,
};

function inASentence(given: Given, { t, language }: Words): string {
  const { show, of, result } = classGiven(given);
  const state = t(`shared-state-${of.state}`);
  if (result === undefined) return t('board-class-description', { show: show.name, state });
  const time = dayAndTimeAt(result.posting.postedAt, { language, timeZone: show.timeZone });
  const placed = result.results[0]?.placings.length ?? 0;
  return t('board-class-description-posted', { show: show.name, state, time, placed });
}

function ClassView({ given, address }: Seen) {
  const seen = classGiven(given);
  const { show, of, pattern } = seen;
  useEffect(() => {
    if (of.postingVersion !== null) markSeen(show.id, [of]);
  }, [show.id, of.id, of.postingVersion]);
  const trail = [{ href: `/shows/${show.id}`, name: show.name }];
  return (
    <PublicFrame {...{ address, trail }} practice={show.practice} timeZone={show.timeZone}>
      <article class="pinned typed">
        <ClassHead {...seen} />
        <ClassBody {...seen} />
      </article>
      {pattern !== undefined && <PatternPart pattern={pattern} />}
      <PrintedFoot {...seen} />
    </PublicFrame>
  );
}

function ClassHead({ show, of }: ClassGiven) {
  const { t, language } = useWords();
  const { number, name, ring, scheduledAt } = of;
  const { timeZone } = show;
  return (
    <header class="class-head">
      <p class="class-number figures">
        <span class="heard">{t('board-class-number', { number })}</span>
        <span aria-hidden="true">{number}</span>
      </p>
      <div>
        <h1>{name}</h1>
        <p class="class-where">
          {ring !== null && <span>{ring}</span>}
          {scheduledAt !== null && (
            <time dateTime={scheduledAt}>{dayAndTimeAt(scheduledAt, { language, timeZone })}</time>
          )}
        </p>
        <p class="class-state" role="status">
          <StateWords of={of} />
        </p>
      </div>
    </header>
  );
}

function ClassBody(seen: ClassGiven) {
  const { t } = useWords();
  const { show, of, result, order, older } = seen;
  if (older !== undefined && result !== undefined) return <OlderSheet {...{ show, of, result, older }} />;
  if (result !== undefined) return <PostedResult {...seen} result={result} />;
  if (of.state === 'cancelled' || of.state === 'combined') {
    return <p class="note">{t(`board-class-${of.state}`)}</p>;
  }
  return order === undefined ? null : <OrderOfGo order={order} />;
}

/** What a sheet on the wall must say of itself: of which show, when, which version, and by what it can be checked. */
function PrintedFoot({ show, of, result, older }: ClassGiven) {
  const { t, language } = useWords();
  const { timeZone } = show;
  if (result === undefined) return null;
  const { version, postedAt, state } = older ?? result.posting;
  return (
    <footer class="printed-only printed-foot">
      <p>
        {t('board-printed', {
          ...{ show: show.name, number: of.number, version, state: t(`shared-state-${state}`) },
          time: dayAndTimeAt(postedAt, { language, timeZone }),
        })}
      </p>
      {older === undefined && (
        <p>
          {t('board-head', { sequence: result.posting.ledger.sequence })}{' '}
          <span class="figures">{result.posting.ledger.hash}</span>
        </p>
      )}
      <p>{classAddress(show.id, of)}</p>
    </footer>
  );
}
