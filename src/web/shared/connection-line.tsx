/** Says in words how the page hears of what happens, and when it last did. */
import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import { ConnectionContext } from './connection.ts';
import { useWords } from './words.tsx';

export function ConnectionLine() {
  const { t, language } = useWords();
  const connection = useContext(ConnectionContext);
  const spoken = useSpoken(connection?.kind);
  // A reader's own wait is told by her own clock.
  const time = connection?.heardAt.toLocaleTimeString(language, { timeStyle: 'short' }) ?? '';
  const isLost = connection?.kind === 'lost';
  return (
    <div class="connection">
      <noscript>{t('shared-without-script')}</noscript>
      <p role="status" class={isLost ? 'heed' : 'heard'}>
        {isLost
          ? t('shared-connection-lost', { time })
          : spoken === 'back'
            ? t('shared-connection-back')
            : ''}
      </p>
      {connection !== undefined && !isLost && (
        <p class={`note connection-${connection.kind}`}>{t(`shared-connection-${connection.kind}`)}</p>
      )}
    </div>
  );
}

/** Whoever listens hears that it is back after it was lost, and nothing while all is well. */
function useSpoken(kind: 'live' | 'looking' | 'lost' | undefined): 'back' | undefined {
  const [spoken, setSpoken] = useState<'back'>();
  const before = useRef(kind);
  useEffect(() => {
    if (kind === 'lost') setSpoken(undefined);
    else if (before.current === 'lost') setSpoken('back');
    before.current = kind;
  }, [kind]);
  return spoken;
}
