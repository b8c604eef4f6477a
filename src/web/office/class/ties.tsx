import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { say } from '../pieces/said.tsx';
import { useMayWrite } from '../use-show.ts';
import type { OpenTie, Preview } from './class-answers.ts';
import { RulingForm } from './ruling-form.tsx';

interface TiesParts {
  readonly classId: string;
  readonly preview: Preview;
  readonly again: () => Promise<void>;
}

/** Ties that the rule left open, and those that are a judge's own to break. */
export function Ties({ classId, preview, again }: TiesParts) {
  const { t } = useWords();
  const { openTies, ownTies, cardsMissing } = preview;
  const cardsIn = cardsMissing.length === 0;
  return (
    <>
      {openTies.map((tie) => (
        <OneTie key={tie.classEntryIds.join()} {...{ classId, tie, cardsIn, again }} />
      ))}
      {byJudge(ownTies).map(({ seatId, judge, numbers }) => (
        <p key={seatId}>{t('office-own-tie', { judge, numbers })}</p>
      ))}
    </>
  );
}

type OwnTies = Preview['ownTies'];

/** One line for each judge: "283, 288; 249, 252". */
function byJudge(ties: OwnTies) {
  const seats = [...new Map(ties.map(({ seatId, judge }) => [seatId, judge]))];
  return seats.map(([seatId, judge]) => {
    const hers = ties.filter((tie) => tie.seatId === seatId);
    return { seatId, judge, numbers: hers.map(({ backNumbers }) => backNumbers.join(', ')).join('; ') };
  });
}

interface OneTieParts extends Omit<TiesParts, 'preview'> {
  readonly tie: OpenTie;
  readonly cardsIn: boolean;
}

function OneTie({ classId, tie, cardsIn, again }: OneTieParts) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  const [ruling, rule] = useState(false);
  return (
    <div class="heed tie">
      <p>{tie.sentence}</p>
      {!cardsIn && <p>{t('office-tie-wait')}</p>}
      {cardsIn && mayWrite && !ruling && (
        <button type="button" onClick={() => rule(true)}>
          {t('office-tie-decide')}
          <span class="heard"> {tie.backNumbers.join(', ')}</span>
        </button>
      )}
      {cardsIn && ruling && (
        <RulingForm
          {...{ classId, kinds: tie.mayBeRuled, onLeave: () => rule(false) }}
          entries={tie.classEntryIds.map((id, at) => ({ id, backNumber: tie.backNumbers[at] ?? 0 }))}
          onRuled={() => {
            rule(false);
            say(t('office-ruled'));
            void again();
          }}
        />
      )}
    </div>
  );
}
