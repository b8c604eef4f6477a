/** What went wrong, as it is shown: what happened, and what to do about it. */

export interface FaultWords {
  readonly what: string;
  readonly whatToDo: string;
}
