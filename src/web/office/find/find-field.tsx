import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { useKey } from '../keys/short-keys.tsx';
import { paths } from '../paths.ts';

type LookedUp = Answer<'/v1/shows/{showId}/look-up'>;
type Board = Answer<'/v1/shows/{showId}/board'>;

interface Found {
  readonly words: string;
  readonly classes: Board['classes'];
  readonly entries: LookedUp['entries'];
}

const nothing: Found = { words: '', classes: [], entries: [] };
const waitMilliseconds = 250;
const mostClasses = 6;

/** A class by its number or name, an entry by its back number: from anywhere, by "/". */
export function FindField({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const [address, go] = useLocation();
  const [words, setWords] = useState('');
  const found = useFound(showId, words.trim());
  const field = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLUListElement>(null);
  const id = useId();
  useKey('/', t('office-key-find'), () => field.current?.focus());
  useEffect(() => setWords(''), [address]);
  const move = (step: 1 | -1) => {
    const stops = [field.current, ...(list.current?.querySelectorAll('a') ?? [])];
    const at = stops.findIndex((stop) => stop?.isSameNode(document.activeElement));
    stops[Math.min(Math.max(at + step, 0), stops.length - 1)]?.focus();
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Escape') {
      setWords('');
      field.current?.focus();
    } else if (event.key === 'ArrowDown') move(1);
    else if (event.key === 'ArrowUp') move(-1);
    else return;
    event.preventDefault();
  };
  const first = firstAddress(showId, found);
  return (
    <search class="find" onKeyDown={onKey}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (first !== undefined) go(first);
        }}
      >
        <label for={id}>{t('office-find')}</label>
        <input
          ref={field}
          id={id}
          type="search"
          value={words}
          autocomplete="off"
          placeholder={t('office-find-hint')}
          onInput={({ currentTarget }) => setWords(currentTarget.value)}
        />
      </form>
      <p class="heard" role="status">
        {found.words === '' ? '' : t('office-found', { count: found.classes.length + found.entries.length })}
      </p>
      {found.words !== '' && (
        <ul class="found" ref={list}>
          {found.classes.map(({ id: classId, number, name, state }) => (
            <li key={classId}>
              <Link href={paths.class(showId, classId)}>
                {t('office-class-title', { number: String(number), name })}
              </Link>{' '}
              <span class="note">{t(`shared-state-${state}`)}</span>
            </li>
          ))}
          {found.entries.map((entry) => (
            <FoundEntry key={entry.backNumber} {...{ showId, entry }} />
          ))}
          {first === undefined && <li>{t('office-found', { count: 0 })}</li>}
        </ul>
      )}
    </search>
  );
}

function FoundEntry({
  showId,
  entry,
}: {
  readonly showId: string;
  readonly entry: Found['entries'][number];
}) {
  const { backNumber, name, horse, classes } = entry;
  return (
    <li>
      <Link href={`${paths.entries(showId)}?number=${backNumber}`}>
        <span class="figures">{backNumber}</span> {horse === null ? name : `${name}, ${horse}`}
      </Link>
      <ul class="plain">
        {classes.map((ofClass) => (
          <li key={ofClass.classId}>
            <Link href={paths.class(showId, ofClass.classId)}>
              {ofClass.number} {ofClass.name}
            </Link>
          </li>
        ))}
      </ul>
    </li>
  );
}

function firstAddress(showId: string, { classes, entries }: Found): string | undefined {
  const [ofClass] = classes;
  if (ofClass !== undefined) return paths.class(showId, ofClass.id);
  const [entry] = entries;
  return entry === undefined ? undefined : `${paths.entries(showId)}?number=${entry.backNumber}`;
}

function useFound(showId: string, words: string): Found {
  const [found, find] = useState<Found>(nothing);
  useEffect(() => {
    if (words === '') return find(nothing);
    const left = new AbortController();
    const timer = setTimeout(() => {
      void lookUp(showId, words, left.signal).then((next) => !left.signal.aborted && find(next));
    }, waitMilliseconds);
    return () => {
      clearTimeout(timer);
      left.abort();
    };
  }, [showId, words]);
  return words === '' ? nothing : found;
}

async function lookUp(showId: string, words: string, signal: AbortSignal): Promise<Found> {
  const [board, entries] = await Promise.all([
    ask<Board>({ path: `/v1/shows/${showId}/board`, signal }),
    ask<LookedUp>({ path: `/v1/shows/${showId}/look-up?${new URLSearchParams({ words })}`, signal }),
  ]);
  const wanted = words.toLowerCase();
  const classes = board.ok ? board.body.classes : [];
  const byNumber = classes.filter(({ number }) => String(number) === wanted);
  const byName = /^\d+$/.test(wanted)
    ? []
    : classes.filter(({ name }) => name.toLowerCase().includes(wanted));
  return {
    words,
    classes: [...byNumber, ...byName].slice(0, mostClasses),
    entries: entries.ok ? entries.body.entries : [],
  };
}
