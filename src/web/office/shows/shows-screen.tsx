import { useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import type { Show } from '../office-state.ts';
import { paths } from '../paths.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { dayOf } from '../pieces/moments.ts';
import { Part } from '../pieces/part.tsx';
import { say } from '../pieces/said.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { useOnce } from '../pieces/sending-form.tsx';
import { Shown } from '../pieces/shown.tsx';
import { session } from '../session.ts';
import { useAsked } from '../use-asked.ts';
import { useMayWrite } from '../use-show.ts';

/** The shows that whoever is signed in works at, the latest first; those for practice by themselves. */
export function ShowsScreen() {
  const { t } = useWords();
  const shows = useAsked<Answer<'/v1/shows'>>('/v1/shows?limit=200', { on: () => false });
  const account = session.value?.account;
  const isHers = ({ id }: Show) => account?.wholeService === true || account?.showIds.includes(id) === true;
  return (
    <>
      <ScreenHead title={t('office-shows')} />
      <Shown asked={shows}>
        {({ items }) => {
          const hers = items.filter(isHers).sort((one, other) => other.firstDay.localeCompare(one.firstDay));
          const practice = hers.filter((show) => show.practice);
          return (
            <>
              <Part title={t('office-shows-real')}>
                <ShowLines shows={hers.filter((show) => !show.practice)} />
                {hers.length === 0 && <p>{t('office-shows-none')}</p>}
              </Part>
              {practice.length > 0 && (
                <Part title={t('office-shows-practice')} aside={<p class="note">{t('shared-practice')}</p>}>
                  <ShowLines shows={practice} />
                </Part>
              )}
            </>
          );
        }}
      </Shown>
    </>
  );
}

function ShowLines({ shows }: { readonly shows: readonly Show[] }) {
  const { language } = useWords();
  const mayWrite = useMayWrite();
  return (
    <ul class="lines">
      {shows.map((show) => (
        <li key={show.id}>
          <Link class="line-head" href={paths.day(show.id)}>
            {show.name}
          </Link>
          <p class="note">
            {show.place} · {dayOf(show.firstDay, language)}
            {show.lastDay !== show.firstDay && ` – ${dayOf(show.lastDay, language)}`}
          </p>
          {mayWrite && !show.practice && <Rehearse show={show} />}
        </li>
      ))}
    </ul>
  );
}

/** A practice show like this one: the same classes and judges, and nobody's name who rides. */
function Rehearse({ show }: { readonly show: Show }) {
  const { t } = useWords();
  const [, go] = useLocation();
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const { busy, once } = useOnce();
  const make = async () => {
    const outcome = await ask<Show>({ method: 'POST', path: `/v1/shows/${show.id}/rehearsals` });
    if (!outcome.ok) return setRefused(outcome);
    say(t('office-rehearsal-made'));
    go(paths.day(outcome.body.id));
  };
  return (
    <>
      <button type="button" class="small" aria-disabled={busy} onClick={() => void once(make)}>
        {t('office-rehearse')}
        <span class="heard"> {show.name}</span>
      </button>
      <FaultNote words={refused?.words} />
    </>
  );
}
