import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask, type Refused } from '../ask.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { BeforeAfter } from './before-after.tsx';
import { changesBetween, type ResultBody } from './changes.ts';
import type { Posting, Preview } from './class-answers.ts';

/** The next thing that may be posted. */
export type ToPost = 'first' | 'anew' | 'official' | 'correction';

const stateOf = {
  first: 'provisional',
  anew: 'provisional',
  official: 'official',
  correction: 'corrected',
} as const satisfies Record<ToPost, Posting['state']>;

interface PostingFormParts {
  readonly classId: string;
  readonly toPost: ToPost;
  readonly preview: Preview;
  readonly etag: string;
  readonly judgeOf: (seatId: string) => string;
  readonly again: () => Promise<void>;
}

interface Seen {
  readonly etag: string;
  readonly preview: Preview;
}

/** Posts the preview that was looked at, and no other: where it changed meanwhile, what changed is looked at first. */
export function PostingForm(form: PostingFormParts) {
  const { classId, toPost, preview, etag, judgeOf, again } = form;
  const { t } = useWords();
  const [seen, see] = useState<Seen>({ etag, preview });
  const [reason, setReason] = useState('');
  const [asking, askOnce] = useState(false);
  const needsReason = toPost === 'anew' || toPost === 'correction';
  const changed = seen.etag !== etag;
  const body = { state: stateOf[toPost], ...(needsReason ? { reason: reason.trim() } : {}) };
  const post = () =>
    ask<Posting>({ method: 'POST', path: `/v1/classes/${classId}/postings`, body, ifMatch: seen.etag });
  const done = () => {
    askOnce(false);
    setReason('');
    say(t(`office-posted-said-${toPost}`));
    void again();
  };
  const refused = ({ code }: Refused) => {
    if (code === 'stale_version') void again();
  };
  const reasonField = (fields: ReadonlyMap<string, string>) =>
    needsReason && (
      <TextField
        {...{ label: t('office-post-reason'), hint: t('office-post-reason-hint'), value: reason }}
        {...{ onValue: setReason, required: true, maxLength: 1000, fault: fields.get('/reason') }}
      />
    );
  if (changed) {
    return <ChangedMeanwhile {...{ seen, preview, judgeOf, onSeen: () => see({ etag, preview }) }} />;
  }
  // Posting again is possible; taking back that it was official is not.
  if (toPost !== 'official') {
    return (
      <SendingForm<Posting>
        {...{ action: t(`office-post-${toPost}`), send: post, onDone: done, onRefused: refused }}
      >
        {reasonField}
      </SendingForm>
    );
  }
  return (
    <>
      <p class="buttons">
        <button type="button" class="main" onClick={() => askOnce(true)}>
          {t('office-post-official')}
        </button>
      </p>
      <Modal title={t('office-post-official-ask')} open={asking} onClose={() => askOnce(false)}>
        <p>{t('office-post-official-why')}</p>
        <SendingForm<Posting>
          {...{ action: t('office-post-official-do'), send: post, onDone: done, onRefused: refused }}
          beside={
            <button type="button" onClick={() => askOnce(false)}>
              {t('shared-cancel')}
            </button>
          }
        />
      </Modal>
    </>
  );
}

interface ChangedParts {
  readonly seen: Seen;
  readonly preview: Preview;
  readonly judgeOf: (seatId: string) => string;
  readonly onSeen: () => void;
}

function ChangedMeanwhile({ seen, preview, judgeOf, onSeen }: ChangedParts) {
  const { t } = useWords();
  const before = seen.preview.body as ResultBody;
  const { moved } = changesBetween(before, preview.body as ResultBody);
  return (
    <div class="heed" role="alert">
      <p>
        <strong>{t('office-preview-changed')}</strong>{' '}
        {t('office-preview-changed-moved', { count: moved.length })}
      </p>
      <BeforeAfter
        {...{ before, preview, judgeOf }}
        heads={{ before: t('office-change-as-read'), after: t('office-change-now') }}
      />
      <p class="buttons">
        <button type="button" class="main" onClick={onSeen}>
          {t('office-preview-seen')}
        </button>
      </p>
    </div>
  );
}
