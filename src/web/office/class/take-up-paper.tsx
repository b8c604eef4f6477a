import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { paths } from '../paths.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { useOnce } from '../pieces/sending-form.tsx';
import type { PaperCard, ShowClass } from './class-answers.ts';
import type { JudgeLine } from './judge-lines.ts';

/** Her card came in on paper: it is taken up, and two people type it in. */
export function TakeUpPaper({ ofClass, line }: { readonly ofClass: ShowClass; readonly line: JudgeLine }) {
  const { t } = useWords();
  const [, go] = useLocation();
  const [refused, setRefused] = useState<Refused | undefined>(undefined);
  const { once } = useOnce();
  const takeUp = async () => {
    const outcome = await ask<PaperCard>({
      ...{ method: 'POST', path: `/v1/classes/${ofClass.id}/paper-cards` },
      body: { seatId: line.seat.id },
    });
    if (outcome.ok) go(paths.paper(ofClass.showId, outcome.body.id));
    else setRefused(outcome);
  };
  // A card that was signed before is amended by its judge, or on the screen of paper cards with a reason.
  if (line.stand.is === 'to-be-amended') return null;
  return (
    <>
      <button type="button" onClick={() => void once(takeUp)}>
        {t('office-paper-take-up')}
        <span class="heard"> {line.seat.name}</span>
      </button>
      <FaultNote words={refused?.words} />
    </>
  );
}
