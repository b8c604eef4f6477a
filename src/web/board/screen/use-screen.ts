/** What a screen on a wall needs of its browser: it stays awake, fills the wall, obeys keys, and knows the time. */
import { useEffect, useState } from 'preact/hooks';
import type { Rotation } from './use-rotation.ts';

/** As long as the page is looked at; a browser that cannot, lets the screen sleep as it is set up. */
export function useAwake(): void {
  useEffect(() => {
    const ended = new AbortController();
    let lock: WakeLockSentinel | undefined;
    const hold = async () => {
      if (document.hidden || !('wakeLock' in navigator)) return;
      lock = await navigator.wakeLock.request('screen').catch(() => undefined);
    };
    void hold();
    document.addEventListener('visibilitychange', () => void hold(), { signal: ended.signal });
    return () => {
      ended.abort();
      void lock?.release();
    };
  }, []);
}

export function fillScreen(): void {
  if (document.fullscreenElement !== null) void document.exitFullscreen();
  else void document.documentElement.requestFullscreen?.().catch(() => undefined);
}

/** Arrows step, the space bar pauses, F fills the screen. A button in focus has the space bar for itself. */
export function useKeys({ step, pause }: Rotation): void {
  useEffect(() => {
    const obey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const onControl = event.target instanceof Element && event.target.closest('button, a') !== null;
      if (event.key === 'ArrowRight') step(1);
      else if (event.key === 'ArrowLeft') step(-1);
      else if (event.key === 'f') fillScreen();
      else if (event.key === ' ' && !onControl) {
        event.preventDefault();
        pause();
      }
    };
    document.addEventListener('keydown', obey);
    return () => document.removeEventListener('keydown', obey);
  });
}

/** `undefined`: the service does not write a time into the page; it would stand still. */
export function useNow(): Date | undefined {
  const [now, setNow] = useState<Date>();
  useEffect(() => {
    setNow(new Date());
    const timer = setInterval(() => setNow(new Date()), 5_000);
    return () => clearInterval(timer);
  }, []);
  return now;
}
