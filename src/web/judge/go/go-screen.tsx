/** One go: the running total above, the maneuver in hand in the middle, penalties and marks under the thumb. */
import { useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import { Problem } from '../class/card-state-line.tsx';
import { ChangesNotice } from '../class/changes-notice.tsx';
import type { DayClass, DayEntry } from '../desk/day-types.ts';
import { isRail, neighbor } from '../entries.ts';
import { outcomeWords } from '../outcome-words.ts';
import { useParts } from '../parts.tsx';
import { useArrival } from '../screen.tsx';
import { cardStateWords, writtenStateWords } from '../state-words.ts';
import { useWakeLock } from '../wake-lock.ts';
import { GoModel } from './go-model.ts';
import { InHand } from './in-hand.tsx';
import { KeysDialog } from './keys-dialog.tsx';
import { PenaltyKeys } from './penalty-keys.tsx';
import { RemarkDialog } from './remark-dialog.tsx';
import { RulingDialog } from './ruling-dialog.tsx';
import { ShorthandLine } from './shorthand-line.tsx';
import { Staff } from './staff.tsx';
import { StopWatch } from './stop-watch.ts';
import { Thumb } from './thumb.tsx';
import { TotalLine } from './total-line.tsx';
import { useGoKeys } from './use-go-keys.ts';
import { VideoPart } from './video-part.tsx';

interface GoProps {
  readonly dayClass: DayClass;
  readonly entry: DayEntry;
}

export function GoScreen({ dayClass, entry }: GoProps) {
  const { desk, books } = useParts();
  const { classId } = dayClass;
  const book = books.of(classId).value;
  const before = useRef<GoModel>();
  const model = useMemo(
    () => new GoModel({ dayClass, entry, book }, before.current),
    [dayClass, entry, book],
  );
  before.current = model;
  const watch = useMemo(() => (entry.videoUrl === null ? undefined : new StopWatch()), [entry.videoUrl]);
  const open = {
    remark: useSignal(false),
    ruling: useSignal(false),
    keys: useSignal(false),
    line: useSignal(false),
  };
  const line = useSignal('');
  useEffect(() => {
    desk.marking(classId);
    return () => desk.marking(null);
  }, [desk, classId]);
  useEffect(() => () => watch?.stop(), [watch]);
  useWakeLock(book.shut.value === null);
  useGoKeys({ model, line, open, watch });
  return (
    <div class="go" data-rail={isRail(dayClass)}>
      <Head dayClass={dayClass} entry={entry} />
      <main class="go-main">
        <TotalLine model={model} />
        <ChangesNotice dayClass={dayClass} />
        <Shut model={model} />
        <NotTaken model={model} />
        {watch === undefined || entry.videoUrl === null ? null : (
          <VideoPart url={entry.videoUrl} watch={watch} />
        )}
        <Staff model={model} />
        <InHand model={model} />
        <Refused model={model} />
        <ShorthandLine model={model} line={line} open={open.line} />
        {book.shut.value === null ? <PenaltyKeys model={model} /> : null}
      </main>
      <Thumb model={model} open={open} />
      <RemarkDialog model={model} open={open.remark} watch={watch} />
      <RulingDialog model={model} open={open.ruling} />
      <KeysDialog open={open.keys} />
    </div>
  );
}

function Head({ dayClass, entry }: GoProps) {
  const { t, words, desk } = useParts();
  const heading = useArrival(t('judge-go-title', { number: entry.backNumber }));
  const { classId } = dayClass;
  const written = desk.goOf(classId, entry.classEntryId).value.state;
  return (
    <header class="go-head">
      <Link href={`/classes/${classId}`} class="way-back">
        ‹ {t('judge-class-short', { number: dayClass.number })}
      </Link>
      <h1 tabIndex={-1} ref={heading}>
        <span class="heard">{t('judge-back-number')} </span>
        {entry.backNumber}
      </h1>
      <p class="where">
        {entry.goPosition === null
          ? ''
          : t('judge-go-place', { position: entry.goPosition, of: dayClass.entries.length })}
        <span class="state">{writtenStateWords(written, words)}</span>
      </p>
      <nav aria-label={t('judge-goes')}>
        <Turn dayClass={dayClass} entry={entry} by={-1} />
        <Turn dayClass={dayClass} entry={entry} by={1} />
      </nav>
    </header>
  );
}

function Turn({ dayClass, entry, by }: GoProps & { readonly by: -1 | 1 }) {
  const { t } = useParts();
  const other = neighbor(dayClass, entry.classEntryId, by);
  const sign = by < 0 ? '↑' : '↓';
  if (other === undefined) return <span class="turn" aria-hidden="true" />;
  return (
    <Link
      class="turn"
      href={`/classes/${dayClass.classId}/goes/${other.classEntryId}`}
      aria-label={t(by < 0 ? 'judge-go-before' : 'judge-go-after', { number: other.backNumber })}
    >
      {sign}
    </Link>
  );
}

/** A signed card is read here; it is changed by an amendment. */
function Shut({ model }: { readonly model: GoModel }) {
  const { t, desk, words } = useParts();
  const [, go] = useLocation();
  const shut = model.book.shut.value;
  if (shut === null) return model.book.amends ? <p class="heed">{t('judge-amending')}</p> : null;
  const { classId } = model.dayClass;
  const day = desk.day.value;
  const timeZone = day.is === 'here' || day.is === 'revoked' ? day.day.phone.show.timeZone : 'UTC';
  return (
    <div class="heed">
      <p>
        {shut === 'signed'
          ? cardStateWords(desk.stateOf(classId).value, { words, timeZone })
          : t(`judge-shut-${shut}`)}
      </p>
      {shut === 'signed' ? (
        <button type="button" onClick={() => go(`/classes/${classId}/sign`)}>
          {t('judge-to-amend')}
        </button>
      ) : null}
    </div>
  );
}

/** The service refused what was written here. */
function NotTaken({ model }: { readonly model: GoModel }) {
  const { desk } = useParts();
  const [classId, entryId] = [model.dayClass.classId, model.entry.classEntryId];
  const { state } = desk.goOf(classId, entryId).value;
  return state.is === 'refused' ? (
    <Problem problem={state.problem} dismiss={() => desk.dismissRefusal(classId, entryId)} />
  ) : null;
}

function Refused({ model }: { readonly model: GoModel }) {
  const { words, speech } = useParts();
  const refused = model.refused.value;
  return (
    <div role="alert">
      {refused === null ? null : (
        <p class="fault">{outcomeWords(refused, { words, speech, dayClass: model.dayClass })}</p>
      )}
    </div>
  );
}
