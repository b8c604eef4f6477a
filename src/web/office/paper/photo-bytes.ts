/** The photo is asked for with the pass of the session: it has no address that could be shared. */
import type { FaultWords } from '../../shared/fault-words.ts';
import { askAsOffice } from '../../shared/office-client.ts';
import { problemIn } from '../../shared/problem-words.ts';
import { spokenNoAnswer, spokenProblem } from '../spoken.ts';

export type PhotoOutcome =
  | { readonly ok: true; readonly bytes: Blob }
  | { readonly ok: false; readonly words: FaultWords };

/** Never rejects. */
export async function photoOf(paperCardId: string): Promise<PhotoOutcome> {
  try {
    const answer = await askAsOffice({ path: `/v1/paper-cards/${paperCardId}/photo` });
    if (!answer.ok) return { ok: false, words: spokenProblem(await problemIn(answer)) };
    return { ok: true, bytes: await answer.blob() };
  } catch {
    return { ok: false, words: spokenNoAnswer() };
  }
}
