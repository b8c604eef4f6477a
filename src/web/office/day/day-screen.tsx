import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';

/** The day at a glance: where each class stands. */
export function DayScreen({ showId }: { readonly showId: string }) {
  const { t } = useWords();
  const board = useAsked<Answer<'/v1/shows/{showId}/board'>>(`/v1/shows/${showId}/board`);
  return (
    <>
      <ScreenHead title={t('office-day')} />
      <Shown asked={board}>
        {({ classes }) => (
          <ul>
            {classes.map(({ id, number, name }) => (
              <li key={id}>
                {number} {name}
              </li>
            ))}
          </ul>
        )}
      </Shown>
    </>
  );
}
