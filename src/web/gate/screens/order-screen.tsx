/** The order of go, changed by hand: one step at a time, or to the end; then the reason. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useWords } from '../../shared/words.tsx';
import { goers } from '../desk/gate-sheet.ts';
import type { ClassLine, EntryLine } from '../desk/gate-types.ts';
import { moved, together } from '../desk/new-order.ts';
import { useChanges } from '../use-changes.ts';
import { useDesk } from '../use-desk.ts';
import type { ClassParts } from './class-screen.tsx';
import { Modal } from './modal.tsx';
import { ReasonPart } from './reason-part.tsx';
import { Screen } from './screen.tsx';

export function OrderScreen({ classId, show }: ClassParts) {
  const { t } = useWords();
  const desk = useDesk();
  useEffect(() => desk.watch(classId), [desk, classId]);
  const line = desk.classLine(classId);
  const sheet = desk.sheetOf(classId)?.what;
  const back = { href: `/classes/${classId}`, label: t('gate-to-sheet') };
  return (
    <Screen
      title={t('gate-change-the-order')}
      over={line === undefined ? '' : `${line.number} ${line.name}`}
      show={show}
      back={back}
    >
      {line === undefined || sheet === undefined ? (
        <p class="empty">{t('gate-looking')}</p>
      ) : (
        <NewOrder line={line} going={goers(sheet)} />
      )}
    </Screen>
  );
}

function NewOrder({ line, going }: { readonly line: ClassLine; readonly going: readonly EntryLine[] }) {
  const { t } = useWords();
  const [, go] = useLocation();
  const { setOrder } = useChanges(line);
  const mine = useSignal<readonly string[] | undefined>(undefined);
  const asks = useSignal(false);
  const now = going.map(({ id }) => id);
  const order = together(mine.value ?? now, now);
  const isChanged = order.some((id, index) => id !== now[index]);
  const move = (id: string, to: number) => {
    mine.value = moved(order, id, to);
  };
  const keep = (reason: string) => {
    asks.value = false;
    void setOrder(order, reason);
    go(`/classes/${line.id}`);
  };
  return (
    <>
      <ol class="goes is-moving">
        {order.map((id, index) => {
          const entry = going.find((one) => one.id === id);
          return entry && <MovingLine key={id} {...{ entry, index, last: order.length - 1, move }} />;
        })}
      </ol>
      <div class="reach">
        <button type="button" class="main" disabled={!isChanged} onClick={() => (asks.value = true)}>
          {t('gate-keep-order')}
        </button>
        <button type="button" disabled={!isChanged} onClick={() => (mine.value = undefined)}>
          {t('gate-order-as-it-was')}
        </button>
      </div>
      <Modal title={t('gate-why-order')} open={asks.value} onClose={() => (asks.value = false)}>
        <ReasonPart
          label={t('gate-order-is-read')}
          reasons={['two-goes', 'not-ready', 'tack', 'other-ring']}
          onReason={keep}
        />
        <button type="button" onClick={() => (asks.value = false)}>
          {t('shared-cancel')}
        </button>
      </Modal>
    </>
  );
}

interface Moving {
  readonly entry: EntryLine;
  readonly index: number;
  readonly last: number;
  readonly move: (id: string, to: number) => void;
}

function MovingLine({ entry: { id, backNumber, exhibitor }, index, last, move }: Moving) {
  const { t } = useWords();
  const number = { backNumber: `${backNumber}` };
  return (
    <li class="go">
      <span class="go-place" aria-hidden="true">
        {index + 1}
      </span>
      <span class="go-number">{backNumber}</span>
      <span class="go-words">{exhibitor !== `No. ${backNumber}` && exhibitor}</span>
      <span class="moves">
        <button
          type="button"
          aria-label={t('gate-earlier', number)}
          disabled={index === 0}
          onClick={() => move(id, index - 1)}
        >
          <span aria-hidden="true">↑</span>
        </button>
        <button
          type="button"
          aria-label={t('gate-later', number)}
          disabled={index === last}
          onClick={() => move(id, index + 1)}
        >
          <span aria-hidden="true">↓</span>
        </button>
        <button
          type="button"
          aria-label={t('gate-last', number)}
          disabled={index === last}
          onClick={() => move(id, last)}
        >
          <span aria-hidden="true">⤓</span>
        </button>
      </span>
    </li>
  );
}
