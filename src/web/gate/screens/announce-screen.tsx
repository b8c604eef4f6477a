/** The announcer's view: one place at a time, from the last to the first, as large as the screen. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useWakeLock } from '../../judge/wake-lock.ts';
import { dayAndTimeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import type { Announcement, ClassLine, Seen, Show } from '../desk/gate-types.ts';
import { pagesOf } from '../desk/reading.ts';
import { useDesk } from '../use-desk.ts';
import { useReadingKeys } from '../use-reading-keys.ts';
import { ReadingPageView } from './announce-page.tsx';
import type { ClassParts } from './class-screen.tsx';
import { Screen } from './screen.tsx';

export function AnnounceScreen({ classId, show }: ClassParts) {
  const { t } = useWords();
  const desk = useDesk();
  useWakeLock(true);
  useEffect(() => {
    void desk.askAnnouncement(classId);
    return desk.watch(classId);
  }, [desk, classId]);
  const line = desk.classLine(classId);
  const seen = desk.announcementOf(classId);
  const posted = line?.postingVersion ?? null;
  const isOld = seen !== undefined && posted !== null && posted > seen.what.posting.version;
  return (
    <Screen
      title={line === undefined ? t('gate-announce') : `${line.number} ${line.name}`}
      over={t('gate-announce')}
      show={show}
      back={{ href: `/classes/${classId}`, label: t('gate-to-sheet') }}
    >
      {seen === undefined ? (
        <p class="empty">{posted === null ? t('gate-not-posted') : t('gate-looking')}</p>
      ) : (
        // Another posting is read from its beginning.
        <Reading key={seen.what.posting.id} {...{ seen, line, show, isOld }} />
      )}
    </Screen>
  );
}

interface ReadingParts {
  readonly seen: Seen<Announcement>;
  readonly line: ClassLine | undefined;
  readonly show: Show;
  readonly isOld: boolean;
}

function Reading({ seen, show, isOld }: ReadingParts) {
  const { t } = useWords();
  const at = useSignal(0);
  const pages = pagesOf(seen.what);
  const turn = (by: number) => {
    at.value = Math.min(Math.max(at.value + by, 0), pages.length - 1);
  };
  useReadingKeys({ turn, first: () => turn(-pages.length) });
  const page = pages[at.value];
  if (pages.every(({ kind }) => kind === 'opening')) return <p class="empty">{t('gate-nobody-placed')}</p>;
  return (
    <article class="reading">
      <PostingLine seen={seen} show={show} isOld={isOld} />
      <div class="reading-page" aria-live="polite">
        {page !== undefined && <ReadingPageView page={page} announcement={seen.what} />}
      </div>
      <p class="note reading-count">{t('gate-page', { at: at.value + 1, of: pages.length })}</p>
      <div class="steps reading-steps">
        <button type="button" disabled={at.value === 0} onClick={() => turn(-1)}>
          {t('shared-back')}
        </button>
        <button
          type="button"
          class="main"
          disabled={isOld || at.value === pages.length - 1}
          onClick={() => turn(1)}
        >
          {t('gate-read-next')}
        </button>
      </div>
      <p class="note for-keys">{t('gate-reading-keys')}</p>
    </article>
  );
}

/** An announcer never reads an old result without being told. */
function PostingLine({ seen, show, isOld }: Omit<ReadingParts, 'line'>) {
  const { t, language } = useWords();
  const desk = useDesk();
  const { posting } = seen.what;
  const when = dayAndTimeAt(posting.postedAt, { language, timeZone: show.timeZone });
  const isLost = desk.hearing.value.kind === 'lost';
  const seenAt = new Date(seen.seenAt).toLocaleTimeString(language, { timeStyle: 'short' });
  return (
    <>
      <p class={posting.state === 'provisional' ? 'heed posting-state' : 'posting-state'}>
        <strong>{t(`gate-posting-${posting.state}`)}</strong>{' '}
        {t('gate-posting', { version: posting.version, when })}
      </p>
      <div role="alert">
        {isOld && <p class="fault">{t('gate-newer-posting')}</p>}
        {!isOld && isLost && <p class="heed">{t('gate-announcement-kept', { time: seenAt })}</p>}
      </div>
    </>
  );
}
