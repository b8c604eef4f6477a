/** The words of the page for what is no component: a refusal is worded where it comes in. */
import type { FaultWords } from '../shared/fault-words.ts';
import { type Problem, problemInWords } from '../shared/problem-words.ts';
import type { Words } from '../shared/words.tsx';

let spoken: Pick<Words, 'find'> = { find: () => undefined };

export function speakWith(words: Words): void {
  spoken = words;
}

export const spokenProblem = (problem: Pick<Problem, 'code' | 'title' | 'whatToDo'>): FaultWords =>
  problemInWords(problem, spoken);

export const spokenNoAnswer = (): FaultWords =>
  spokenProblem({ code: 'no_answer', title: 'The service does not answer', whatToDo: 'Try again.' });
