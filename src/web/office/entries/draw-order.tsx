import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Field, TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { ClassInHand } from './class-entries-screen.tsx';
import type { Draw } from './repeat-draw.ts';
import { isGoing } from './statuses.ts';

/** From the seed that was stored with the class. To draw again needs a reason, and both draws stay on record. */
export function DrawOrder({ showId, classId, ofClass, entries, draws, again }: ClassInHand) {
  const { t } = useWords();
  const [reason, setReason] = useState('');
  const [gap, setGap] = useState('');
  const isDrawn = draws.length > 0;
  const goers = entries.filter(({ status }) => isGoing(status)).length;
  const enoughGap = /^[1-9]\d{0,2}$/.test(gap.trim()) ? Number(gap) : null;
  const done = ({ leastGap }: Draw) => {
    say(t('office-entries-drawn', { count: goers, gap: leastGap ?? 0 }));
    setReason('');
    void again();
  };
  if (goers === 0) return <p class="note">{t('office-entries-nobody-goes')}</p>;
  return (
    <details open={!isDrawn}>
      <summary>{t(isDrawn ? 'office-entries-draw-again' : 'office-entries-draw-first')}</summary>
      <p class="note">{t('office-entries-seed', { seed: ofClass.drawSeed })}</p>
      <SendingForm<Draw>
        action={t(isDrawn ? 'office-entries-draw-again' : 'office-entries-draw-first')}
        disabled={isDrawn && reason.trim() === ''}
        send={() =>
          ask({
            ...{ method: 'POST', path: `/v1/shows/${showId}/classes/${classId}/order-of-go/draws` },
            body: { reason: reason.trim() === '' ? null : reason, enoughGap },
          })
        }
        onDone={done}
        onRefused={() => void again()}
      >
        {(fields) => (
          <>
            <Field
              {...{ label: t('office-entries-gap'), hint: t('office-entries-gap-hint'), value: gap }}
              {...{ onValue: setGap, inputMode: 'numeric', maxLength: 3, fault: fields.get('/enoughGap') }}
            />
            {isDrawn && (
              <TextField
                {...{ label: t('office-entries-why-draw'), hint: t('office-entries-why-draw-hint') }}
                {...{ value: reason, onValue: setReason, fault: fields.get('/reason') }}
              />
            )}
          </>
        )}
      </SendingForm>
    </details>
  );
}
