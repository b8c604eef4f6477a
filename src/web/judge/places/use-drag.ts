/** A line is dragged by its grip; where it is let go it takes the place of the line under it. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';

export function useDrag(drop: (entry: string, before: string | null) => void) {
  const list = useRef<HTMLOListElement>(null);
  const dragged = useSignal<string | null>(null);
  /** The line whose upper half, or whose line above's lower half, is under the finger; `null`: below the last. */
  const lineAt = (y: number): string | null => {
    for (const line of list.current?.querySelectorAll<HTMLElement>(':scope > [data-entry]') ?? []) {
      const { top, height } = line.getBoundingClientRect();
      if (y < top + height / 2) return line.dataset.entry ?? null;
    }
    return null;
  };
  const grip = (entry: string) => ({
    onPointerDown: (event: PointerEvent) => {
      if (!(event.currentTarget instanceof HTMLElement)) return;
      event.preventDefault();
      const place = event.currentTarget;
      place.setPointerCapture(event.pointerId);
      dragged.value = entry;
      const ended = new AbortController();
      const end = (at: PointerEvent | undefined) => {
        ended.abort();
        dragged.value = null;
        if (at !== undefined) drop(entry, lineAt(at.clientY));
      };
      place.addEventListener('pointerup', end, { signal: ended.signal });
      place.addEventListener('pointercancel', () => end(undefined), { signal: ended.signal });
    },
  });
  return { list, dragged, grip };
}
