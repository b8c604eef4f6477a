/** The screen stays on while a class is under way (Screen Wake Lock API), where the browser can do that. */
import { useEffect } from 'preact/hooks';

export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let left = false;
    // A page that was hidden has lost it; a battery that is low may refuse it, and then the phone does as it does.
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      const given = await navigator.wakeLock.request('screen').catch(() => undefined);
      if (left) await given?.release();
      else lock = given;
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isWanted]);
}
