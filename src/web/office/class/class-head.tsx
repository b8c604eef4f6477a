import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { say } from '../pieces/said.tsx';
import { ScreenHead } from '../pieces/screen-head.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { useMayWrite, useShowClock } from '../use-show.ts';
import type { ShowClass } from './class-answers.ts';
import { ClassTabs } from './class-frame.tsx';

interface ClassHeadParts {
  readonly ofClass: ShowClass;
  readonly ring: string | undefined;
  readonly state: string | undefined;
  /** A card is signed: it can no longer be cancelled. */
  readonly begun: boolean;
  readonly again: () => Promise<void>;
}

export function ClassHead({ ofClass, ring, state, begun, again }: ClassHeadParts) {
  const { t } = useWords();
  const { moment } = useShowClock();
  const mayWrite = useMayWrite();
  const { number, name, division, scheduledAt, status } = ofClass;
  return (
    <ScreenHead title={t('office-class-title', { number: String(number), name })}>
      <p class="note">
        {[
          division,
          ring,
          scheduledAt === null ? null : moment(scheduledAt),
          state === undefined ? null : t(`shared-state-${state}`),
        ]
          .filter((part) => part !== null && part !== undefined)
          .join(' · ')}
      </p>
      <ClassTabs {...{ ofClass, at: 'result' }} />
      {mayWrite && status === 'open' && <ClassActs {...{ ofClass, begun, again }} />}
    </ScreenHead>
  );
}

function ClassActs({ ofClass, begun, again }: Pick<ClassHeadParts, 'ofClass' | 'begun' | 'again'>) {
  const { t } = useWords();
  const { time } = useShowClock();
  const [cancelling, cancel] = useState(false);
  const path = `/v1/shows/${ofClass.showId}/classes/${ofClass.id}`;
  const done = (words: string) => () => {
    cancel(false);
    say(words);
    void again();
  };
  if (begun) return null;
  return (
    <div class="buttons">
      {ofClass.calledAt !== null && <span>{t('office-called-at', { time: time(ofClass.calledAt) })}</span>}
      <SendingForm<ShowClass>
        action={t(ofClass.calledAt === null ? 'office-call' : 'office-call-again')}
        send={() => ask({ method: 'POST', path: `${path}/calls` })}
        onDone={done(t('office-called'))}
      />
      <button type="button" class="grave" onClick={() => cancel(true)}>
        {t('office-cancel-class')}
      </button>
      <Modal
        title={t('office-cancel-class-ask', { number: String(ofClass.number) })}
        open={cancelling}
        onClose={() => cancel(false)}
      >
        <p>{t('office-cancel-class-why')}</p>
        <SendingForm<ShowClass>
          {...{ action: t('office-cancel-class'), grave: true, onDone: done(t('office-cancelled')) }}
          send={() => ask({ method: 'POST', path: `${path}/cancellation` })}
          beside={
            <button type="button" onClick={() => cancel(false)}>
              {t('shared-cancel')}
            </button>
          }
        />
      </Modal>
    </div>
  );
}
