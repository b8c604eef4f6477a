/** Where an entry stands in a class, in a few words: its place once there is one, until then the state of the class. */
import { useWords } from '../shared/words.tsx';

interface Placed {
  readonly judge: { readonly name: string } | null;
  readonly place: number | null;
  readonly of: number;
}

interface Line {
  readonly state: string;
  readonly status: string;
  readonly results: readonly Placed[];
}

export function PlaceWords({ line: { state, status, results } }: { readonly line: Line }) {
  const { t } = useWords();
  if (results.length === 0) {
    return <>{isGoing(status) ? t(`shared-state-${state}`) : t(`shared-status-${status}`)}</>;
  }
  const places = results.map(({ judge, place, of }) => {
    const words = place === null ? t('exhibitor-without-place') : t('exhibitor-place-of', { place, of });
    return judge === null || results.length === 1 ? words : `${judge.name}: ${words}`;
  });
  return <b>{places.join('; ')}</b>;
}

export const isGoing = (status: string): boolean => status === 'entered' || status === 'checked-in';
