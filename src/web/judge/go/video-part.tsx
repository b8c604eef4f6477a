/** The video of a go, opened elsewhere, and the watch beside it. Nothing of it is loaded here. */
import { useSignal } from '@preact/signals';
import { useParts } from '../parts.tsx';
import { clockSeconds, type StopWatch } from './stop-watch.ts';

export function VideoPart({ url, watch }: { readonly url: string; readonly watch: StopWatch }) {
  const { t } = useParts();
  const wrong = useSignal(false);
  return (
    <section class="video" aria-label={t('judge-video')}>
      <a href={url} target="_blank" rel="noreferrer noopener">
        {t('judge-video-open')}
      </a>
      <button
        type="button"
        aria-label={t(watch.runs.value ? 'judge-watch-stop' : 'judge-watch-start')}
        onClick={() => (watch.runs.value ? watch.stop() : watch.start())}
      >
        {watch.runs.value ? '■' : '▶'}
      </button>
      <label>
        <span class="heard">{t('judge-watch')}</span>
        <input
          class="figures"
          inputMode="numeric"
          autocomplete="off"
          size={6}
          value={watch.text.value}
          aria-invalid={wrong.value}
          onChange={({ currentTarget: { value } }) => {
            const seconds = clockSeconds(value);
            wrong.value = seconds === undefined;
            if (seconds !== undefined) watch.set(seconds);
          }}
        />
      </label>
      {wrong.value ? <p role="alert">{t('judge-watch-wrong')}</p> : null}
    </section>
  );
}
