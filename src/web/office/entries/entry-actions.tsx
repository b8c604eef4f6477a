import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { Field } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { ClassInHand } from './class-entries-screen.tsx';
import { backTo, type ClassEntry, needsReason, type SetStatus, whatMayFollow } from './statuses.ts';
import { mayBeUndone } from './undo.tsx';

interface ActionParts extends Pick<ClassInHand, 'showId' | 'classId' | 'again'> {
  readonly entry: ClassEntry;
  /** It is done: the line closes. */
  readonly onDone: () => void;
}

/** Scratch, no-show, excused, and back; and the video of the go. */
export const EntryActions = (parts: ActionParts) => (
  <div class="actions">
    <StatusForm {...parts} />
    <VideoForm {...parts} />
  </div>
);

function StatusForm({ showId, classId, entry, again, onDone }: ActionParts) {
  const { t } = useWords();
  const [status, setStatus] = useState<SetStatus | undefined>(undefined);
  const [reason, setReason] = useState('');
  const put = (next: SetStatus, why: string | null) =>
    ask<ClassEntry>({
      ...{ method: 'PUT', path: `/v1/shows/${showId}/classes/${classId}/entries/${entry.id}/status` },
      body: { status: next, reason: why },
    });
  const wanted = status !== undefined && needsReason(entry.status, status);
  const done = (after: ClassEntry) => {
    const words = t('office-entries-now', {
      number: entry.backNumber,
      status: t(`shared-status-${after.status}`),
    });
    const back = after.status === 'moved' ? undefined : backTo(entry.status, after.status);
    if (back === undefined) say(words);
    else mayBeUndone({ words, takeBack: () => takeBack(back) });
    onDone();
    void again();
  };
  const takeBack = async (back: SetStatus): Promise<Refused | undefined> => {
    const outcome = await put(back, t('office-entries-undo-reason'));
    if (!outcome.ok) return outcome;
    say(t('office-entries-now', { number: entry.backNumber, status: t(`shared-status-${back}`) }));
    void again();
    return undefined;
  };
  return (
    <SendingForm<ClassEntry>
      action={t('office-entries-keep')}
      label={t('office-entries-change-entry', { number: entry.backNumber })}
      disabled={status === undefined || (wanted && reason.trim() === '')}
      send={() => put(status ?? 'entered', reason.trim() === '' ? null : reason)}
      onDone={done}
      onRefused={() => void again()}
    >
      {(fields) => (
        <>
          <fieldset class="ticks">
            <legend>{t('office-entries-becomes', { number: entry.backNumber })}</legend>
            {whatMayFollow(entry.status).map((next) => (
              <label key={next} class="tick">
                <input
                  type="radio"
                  name={`status-${entry.id}`}
                  checked={status === next}
                  onChange={() => setStatus(next)}
                />
                {t(`office-entries-to-${next}`)}
              </label>
            ))}
          </fieldset>
          {wanted && (
            <Field
              {...{ label: t('office-entries-why'), hint: t('office-entries-why-hint'), value: reason }}
              {...{ onValue: setReason, maxLength: 1000, autocomplete: 'off', fault: fields.get('/reason') }}
            />
          )}
        </>
      )}
    </SendingForm>
  );
}

function VideoForm({ showId, classId, entry, again }: ActionParts) {
  const { t } = useWords();
  const [url, setUrl] = useState(entry.videoUrl ?? '');
  const given = url.trim() === '' ? null : url.trim();
  return (
    <SendingForm<ClassEntry>
      action={t('office-entries-keep-video')}
      label={t('office-entries-video')}
      disabled={given === entry.videoUrl}
      send={() =>
        ask({
          ...{ method: 'PUT', path: `/v1/shows/${showId}/classes/${classId}/entries/${entry.id}/video` },
          body: { url: given },
        })
      }
      onDone={() => {
        say(t(given === null ? 'office-entries-video-off' : 'office-entries-video-kept'));
        void again();
      }}
    >
      {(fields) => (
        <Field
          {...{ label: t('office-entries-video'), hint: t('office-entries-video-hint'), value: url }}
          {...{ onValue: setUrl, type: 'url', inputMode: 'url', autocomplete: 'off', maxLength: 500 }}
          fault={fields.get('/url')}
        />
      )}
    </SendingForm>
  );
}
