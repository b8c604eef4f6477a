/** The gate sheet of one class: call it, who is in the ring, and everybody in the order of go. */
import { useEffect } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useWakeLock } from '../../judge/wake-lock.ts';
import { timeAt } from '../../shared/show-times.ts';
import { useWords } from '../../shared/words.tsx';
import { goers, isDrawn, listed } from '../desk/gate-sheet.ts';
import type { ClassLine, Sheet, Show } from '../desk/gate-types.ts';
import { useChanges } from '../use-changes.ts';
import { useDesk } from '../use-desk.ts';
import { GoLine } from './go-line.tsx';
import { RingPart } from './ring-part.tsx';
import { Screen } from './screen.tsx';

export interface ClassParts {
  readonly classId: string;
  readonly show: Show;
}

export function ClassScreen({ classId, show }: ClassParts) {
  const { t } = useWords();
  const desk = useDesk();
  useEffect(() => desk.watch(classId), [desk, classId]);
  useWakeLock(true);
  const line = desk.classLine(classId);
  const back = { href: '/', label: t('gate-to-day') };
  if (line === undefined) {
    const text = desk.board === undefined ? t('gate-looking') : t('gate-no-class');
    return (
      <Screen title={t('gate-title')} show={show} back={back}>
        <p class="empty">{text}</p>
      </Screen>
    );
  }
  return <OneClass line={line} show={show} />;
}

function OneClass({ line, show }: { readonly line: ClassLine; readonly show: Show }) {
  const { t, language } = useWords();
  const desk = useDesk();
  const sheet = desk.sheetOf(line.id)?.what;
  const { number, name, ring, scheduledAt, state } = line;
  const when = scheduledAt === null ? [] : [timeAt(scheduledAt, { language, timeZone: show.timeZone })];
  const facts = [ring ?? t('gate-no-ring'), ...when, t(`shared-state-${state}`)];
  const isOpen = state !== 'cancelled' && state !== 'combined';
  return (
    <Screen
      title={`${number} ${name}`}
      over={facts.join(' · ')}
      show={show}
      back={{ href: '/', label: t('gate-to-day') }}
    >
      {isOpen && <ClassActions line={line} />}
      {sheet === undefined && <p class="empty">{t('gate-looking')}</p>}
      {sheet?.isRail && <RailLine sheet={sheet} />}
      {sheet !== undefined && !sheet.isRail && isOpen && isDrawn(sheet) && (
        <RingPart line={line} sheet={sheet} />
      )}
      {sheet !== undefined && <GateSheet line={line} sheet={sheet} isOpen={isOpen} />}
    </Screen>
  );
}

const isPosted = ({ postingVersion }: ClassLine): boolean => postingVersion !== null;
const toBeCalled = ['setting-up', 'drawn', 'called', 'under-way'];

function ClassActions({ line }: { readonly line: ClassLine }) {
  const { t } = useWords();
  const { call } = useChanges(line);
  return (
    <div class="class-actions">
      {toBeCalled.includes(line.state) && (
        <button type="button" class={line.state === 'drawn' ? 'main' : ''} onClick={() => void call()}>
          {line.state === 'called' || line.state === 'under-way' ? t('gate-call-again') : t('gate-call')}
        </button>
      )}
      {isPosted(line) && (
        <Link href={`/classes/${line.id}/announce`} class="main-link">
          {t('gate-announce')}
        </Link>
      )}
    </div>
  );
}

function RailLine({ sheet }: { readonly sheet: Sheet }) {
  const { t } = useWords();
  return <p class="rail">{t('gate-rail', { going: goers(sheet).length })}</p>;
}

interface GateSheetParts {
  readonly line: ClassLine;
  readonly sheet: Sheet;
  readonly isOpen: boolean;
}

function GateSheet({ line, sheet, isOpen }: GateSheetParts) {
  const { t } = useWords();
  const entries = listed(sheet);
  const going = goers(sheet);
  const here = going.filter(({ status }) => status === 'checked-in').length;
  if (entries.length === 0) return <p class="empty">{t('gate-no-entries')}</p>;
  return (
    <section class="gate-sheet" aria-labelledby="gate-sheet-title">
      <div class="sheet-head">
        <h2 id="gate-sheet-title">{t('gate-sheet')}</h2>
        <p class="note">{t('gate-checked-in-count', { here, going: going.length })}</p>
      </div>
      {!isDrawn(sheet) && <p class="note">{t('gate-not-drawn')}</p>}
      <ol class="goes">
        {entries.map((entry) => (
          <GoLine key={entry.id} entry={entry} line={line} sheet={sheet} isOpen={isOpen} />
        ))}
      </ol>
      {isOpen && isDrawn(sheet) && going.length > 1 && (
        <Link href={`/classes/${line.id}/order`} class="quiet-link">
          {t('gate-change-the-order')}
        </Link>
      )}
    </section>
  );
}
