/** What most screens need of the show in hand and of whoever is signed in. */
import { useWords } from '../shared/words.tsx';
import { showInHand } from './office-state.ts';
import { momentOf, timeOf } from './pieces/moments.ts';
import { session } from './session.ts';

/** May whoever is signed in change something at the show? A points secretary reads. */
export const useMayWrite = (): boolean => {
  const duty = session.value?.account.duty;
  return duty === 'manager' || duty === 'secretary';
};

/** Times by the clock on the show's wall. */
export function useShowClock() {
  const { language } = useWords();
  const timeZone = showInHand.value?.timeZone ?? 'UTC';
  return {
    time: (instant: string) => timeOf(instant, timeZone, language),
    moment: (instant: string) => momentOf(instant, timeZone, language),
  };
}
