import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { ClassInHand } from './class-entries-screen.tsx';
import { broughtUpToDate, moved, whoMoved } from './order-by-hand.ts';
import { OrderLine } from './order-line.tsx';
import type { Draw } from './repeat-draw.ts';
import { isGoing } from './statuses.ts';

/** By hand, with a reason: buttons and keys move one entry at a time; whoever has a mouse may drag. */
export function SetOrder({ showId, classId, entries, again }: ClassInHand) {
  const { t } = useWords();
  const goers = entries.filter(({ status }) => isGoing(status));
  const going = goers.map(({ id }) => id);
  const [order, setOrder] = useState<readonly string[]>(going);
  const [reason, setReason] = useState('');
  const [told, setTold] = useState('');
  const [dragged, setDragged] = useState<string | undefined>(undefined);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => setOrder((before) => broughtUpToDate(before, going)), [going.join()]);
  const changed = whoMoved(going, order).length;
  const numberOf = (id: string) => goers.find((entry) => entry.id === id)?.backNumber ?? 0;
  const move = (id: string, to: number) => {
    const after = moved(order, id, to);
    setOrder(after);
    setTold(t('office-entries-moved-to', { number: numberOf(id), position: after.indexOf(id) + 1 }));
  };
  const done = () => {
    say(t('office-entries-order-set'));
    setReason('');
    void again();
  };
  return (
    <details>
      <summary>{t('office-entries-by-hand')}</summary>
      <p class="note">{t('office-entries-by-hand-what')}</p>
      <p role="status" class="heard">
        {told}
      </p>
      <ol class="by-hand" ref={list}>
        {order.map((id, index) => (
          <OrderLine
            key={id}
            {...{ id, index, last: order.length - 1, number: numberOf(id), move }}
            name={goers.find((entry) => entry.id === id)?.exhibitor ?? ''}
            isDragged={dragged === id}
            onDrag={setDragged}
            onDrop={() => dragged !== undefined && move(dragged, index)}
          />
        ))}
      </ol>
      <SendingForm<Draw>
        action={t('office-entries-set-order')}
        label={t('office-entries-by-hand')}
        disabled={changed === 0 || reason.trim() === ''}
        send={() =>
          ask({
            ...{ method: 'PUT', path: `/v1/shows/${showId}/classes/${classId}/order-of-go` },
            body: { order, reason },
          })
        }
        onDone={done}
        onRefused={({ code }) => code !== 'no_answer' && void again()}
        beside={
          changed > 0 && (
            <button type="button" onClick={() => setOrder(going)}>
              {t('office-entries-as-it-was')}
            </button>
          )
        }
      >
        {(fields) => (
          <>
            <p>{t('office-entries-order-changes', { count: changed })}</p>
            <TextField
              {...{ label: t('office-entries-why-order'), value: reason, onValue: setReason }}
              {...{ hint: t('office-entries-why-draw-hint'), fault: fields.get('/reason') }}
            />
          </>
        )}
      </SendingForm>
    </details>
  );
}
