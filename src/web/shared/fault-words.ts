/** What went wrong, as it is shown: what happened, and what to do about it. */

export interface FaultWords {
  readonly what: string;
  readonly whatToDo: string;
}

export const noSignal: FaultWords = {
  what: 'The service does not answer.',
  whatToDo: 'Is there signal here? Move to where there is, and try again; nothing is lost.',
};
