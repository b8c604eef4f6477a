import type { FaultWords } from './fault-words.ts';

/** Fills `place`, which a screen reader announces where it has the role alert; `undefined` empties it. */
export function showFault(place: HTMLElement, fault: FaultWords | undefined): void {
  place.classList.toggle('fault', fault !== undefined);
  place.replaceChildren(...(fault === undefined ? [] : [strong(fault.what), fault.whatToDo]));
}

function strong(text: string): HTMLElement {
  const place = document.createElement('strong');
  place.textContent = text;
  return place;
}
