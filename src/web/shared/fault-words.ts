/** What went wrong, as it is shown: what happened, and what to do about it. */

export interface FaultWords {
  readonly what: string;
  readonly whatToDo: string;
}

export const noSignal: FaultWords = {
  what: 'The service does not answer.',
  whatToDo: 'Is there signal here? Move to where there is, and try again; nothing is lost.',
};

export const keyNotKept: FaultWords = {
  what: 'This browser does not keep a key.',
  whatToDo: 'Is this a private window? Open the link in an ordinary one. The code is still good.',
};

/** Fills `place`, which a screen reader announces where it has the role alert. */
export function showFault(place: HTMLElement, fault: FaultWords | undefined): void {
  place.classList.toggle('fault', fault !== undefined);
  place.replaceChildren(...(fault === undefined ? [] : [strong(fault.what), fault.whatToDo]));
}

function strong(text: string): HTMLElement {
  const place = document.createElement('strong');
  place.textContent = text;
  return place;
}
