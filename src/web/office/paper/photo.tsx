import { useEffect, useState } from 'preact/hooks';
import type { FaultWords } from '../../shared/fault-words.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { FaultNote } from '../pieces/fault-note.tsx';
import { say } from '../pieces/said.tsx';
import { useOnce } from '../pieces/sending-form.tsx';
import type { PaperCard } from './paper-card.ts';
import { photoOf } from './photo-bytes.ts';

interface PhotoParts {
  readonly paper: PaperCard;
  readonly again: () => Promise<void>;
}

/** The photo of the paper, beside the form: fitted in, or large enough to read a scrawl. */
export function Photo({ paper, again }: PhotoParts) {
  const { t } = useWords();
  const [large, setLarge] = useState(false);
  const { address, fault, retry } = usePhoto(paper);
  return (
    <section class="photo" aria-label={t('office-paper-photo')}>
      <FaultNote words={fault} again={retry} />
      {address !== undefined && (
        <>
          <View {...{ address, large }} />
          <button type="button" aria-pressed={large} onClick={() => setLarge(!large)}>
            {t('office-paper-photo-large')}
          </button>
        </>
      )}
      {paper.status === 'open' && <PhotoUpload {...{ paper, again }} />}
    </section>
  );
}

interface ViewParts {
  readonly address: string;
  readonly large: boolean;
}

function View({ address, large }: ViewParts) {
  const { t } = useWords();
  const look = large ? 'view large' : 'view';
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a place that scrolls must be reachable by keyboard (WCAG 2.1.1)
    <section class={look} aria-label={t('office-paper-photo-view')} tabIndex={0}>
      <img src={address} alt={t('office-paper-photo-alt')} />
    </section>
  );
}

/** Asked with the pass of the session, so the picture has no address of its own. */
function usePhoto({ id, photo }: PaperCard) {
  const [address, setAddress] = useState<string | undefined>(undefined);
  const [fault, setFault] = useState<FaultWords | undefined>(undefined);
  const [tries, setTries] = useState(0);
  const hash = photo?.hash;
  useEffect(() => {
    let made: string | undefined;
    let gone = false;
    setAddress(undefined);
    const load = async () => {
      setFault(undefined);
      const outcome = await photoOf(id);
      if (gone) return;
      if (!outcome.ok) return setFault(outcome.words);
      made = URL.createObjectURL(outcome.bytes);
      setAddress(made);
    };
    if (hash !== undefined) void load();
    return () => {
      gone = true;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [id, hash, tries]);
  return { address, fault, retry: () => setTries(tries + 1) };
}

function PhotoUpload({ paper, again }: PhotoParts) {
  const { t } = useWords();
  const [fault, setFault] = useState<FaultWords | undefined>(undefined);
  const { busy, once } = useOnce();
  const send = (file: File) =>
    once(async () => {
      setFault(undefined);
      const outcome = await ask({ method: 'PUT', path: `/v1/paper-cards/${paper.id}/photo`, body: file });
      if (!outcome.ok) return setFault(outcome.words);
      say(t('office-paper-photo-stored'));
      await again();
    });
  return (
    <div class="field">
      <label for="paper-photo">
        {t(paper.photo === null ? 'office-paper-photo-add' : 'office-paper-photo-other')}
      </label>
      <input
        id="paper-photo"
        type="file"
        accept="image/jpeg,image/png,image/webp"
        aria-describedby="paper-photo-hint"
        aria-busy={busy}
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file !== undefined) void send(file);
          currentTarget.value = '';
        }}
      />
      <p class="note" id="paper-photo-hint">
        {busy ? t('office-paper-photo-sending') : t('office-paper-photo-hint')}
      </p>
      <FaultNote words={fault} />
    </div>
  );
}
