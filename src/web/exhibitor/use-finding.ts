/** Looks somebody up without loading the page again, so that no name is left in the address or the history. */
import { useEffect, useState } from 'preact/hooks';
import { askAsAnyone } from '../shared/public-client.ts';
import { type Found, lookUpAddress } from './look-up-address.ts';

interface Finding {
  readonly words: string;
  /** `undefined`: nobody was looked for, or the service refused the words. */
  readonly found: Found | undefined;
  readonly state: 'found' | 'looking' | 'failed';
}

export function useFinding(showId: string, first: Pick<Finding, 'words' | 'found'>) {
  const [finding, setFinding] = useState<Finding>({ ...first, state: 'found' });
  useEffect(forgetNameInAddress, []);
  const find = (words: string) => {
    if (words === '') return;
    setFinding({ words, found: finding.found, state: 'looking' });
    lookUp(showId, words).then(
      (found) => setFinding({ words, found, state: 'found' }),
      () => setFinding({ words, found: undefined, state: 'failed' }),
    );
  };
  return { ...finding, find };
}

async function lookUp(showId: string, words: string): Promise<Found | undefined> {
  const answer = await askAsAnyone(lookUpAddress(showId, words));
  if (answer.ok) return (await answer.json()) as Found;
  if (answer.status < 500 && answer.status !== 429) return undefined;
  throw new Error(`the service answered ${answer.status}`);
}

/** A back number may stay, so that the page can be loaded again. */
function forgetNameInAddress(): void {
  const address = new URL(location.href);
  const words = address.searchParams.get('words');
  if (words === null || /^\s*\d+\s*$/.test(words)) return;
  address.searchParams.delete('words');
  history.replaceState(history.state, '', address);
}
