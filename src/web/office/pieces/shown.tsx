import type { ComponentChildren } from 'preact';
import { useWords } from '../../shared/words.tsx';
import type { AskedFor } from '../use-asked.ts';
import { FaultNote } from './fault-note.tsx';

interface ShownParts<Body> {
  readonly asked: AskedFor<Body>;
  readonly children: (body: Body) => ComponentChildren;
}

/** What was asked for, as soon as it is there; where it cannot be had, why. What was there before stays. */
export function Shown<Body>({ asked, children }: ShownParts<Body>) {
  const { t } = useWords();
  const { body, refused, again } = asked;
  return (
    <>
      {(refused !== undefined || body === undefined) && (
        <FaultNote words={refused?.words} again={refused === undefined ? undefined : () => void again()} />
      )}
      {body === undefined && refused === undefined && <p class="note">{t('office-one-moment')}</p>}
      {body !== undefined && children(body)}
    </>
  );
}
