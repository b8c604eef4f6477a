/** Turning the pages of an announcement by keys, with one hand at the microphone. */
import { useEffect, useRef } from 'preact/hooks';

interface Reading {
  readonly turn: (by: 1 | -1) => void;
  readonly first: () => void;
}

const forward = ['ArrowRight', 'ArrowDown', 'PageDown'];
const backward = ['ArrowLeft', 'ArrowUp', 'PageUp'];

export function useReadingKeys(reading: Reading): void {
  const now = useRef(reading);
  now.current = reading;
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || isWriting(event.target)) return;
      if (forward.includes(event.key)) now.current.turn(1);
      else if (backward.includes(event.key)) now.current.turn(-1);
      else if (event.key === 'Home') now.current.first();
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, []);
}

const isWriting = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input, textarea, select, dialog') !== null;
