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
