/** What a judge should know on any screen: a conflict, a refusal, no signal, a wrong clock, a newer version. */
import { useSignal } from '@preact/signals';
import { Link } from 'wouter-preact';
import { useParts } from './parts.tsx';

export function Notices() {
  return (
    <div class="notices" aria-live="polite">
      <Conflicts />
      <Revoked />
      <NoSignal />
      <Clock />
      <Update />
    </div>
  );
}

function Conflicts() {
  const { desk, t } = useParts();
  const count = desk.conflicts.value.length;
  return count === 0 ? null : (
    <p class="fault">
      <strong>{t('judge-notice-conflicts', { count })}</strong>
      <Link href="/differences">{t('judge-notice-conflicts-look')}</Link>
    </p>
  );
}

function Revoked() {
  const { desk, t } = useParts();
  return desk.day.value.is === 'revoked' ? (
    <p class="fault">
      <strong>{t('judge-revoked')}</strong>
      {t('judge-revoked-what')} <Link href="/">{t('judge-revoked-look')}</Link>
    </p>
  ) : null;
}

function NoSignal() {
  const { desk, t } = useParts();
  const { is, unsent } = desk.signal.value;
  return is === 'no-answer' ? <p class="heed">{t('judge-signal-none', { unsent })}</p> : null;
}

/** Nothing hangs on it: times are told by the service's clock. */
function Clock() {
  const { desk, t } = useParts();
  const ahead = desk.signal.value.clockAheadSeconds;
  if (ahead === null) return null;
  const minutes = Math.round(Math.abs(ahead) / 60);
  return <p class="heed">{t(ahead > 0 ? 'judge-clock-ahead' : 'judge-clock-behind', { minutes })}</p>;
}

function Update() {
  const { desk, t } = useParts();
  const later = useSignal(false);
  if (desk.update.value !== 'ready' || later.value) return null;
  return (
    <div class="heed">
      <p>{t('judge-update')}</p>
      <div class="pair">
        <button type="button" onClick={() => void desk.takeUpdate()}>
          {t('judge-update-take')}
        </button>
        <button type="button" onClick={() => (later.value = true)}>
          {t('judge-update-later')}
        </button>
      </div>
    </div>
  );
}
