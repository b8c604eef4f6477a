/** What the service refused (RFC 9457), in words for whoever holds the phone. */
import type { FaultWords } from './fault-words.ts';
import type { Words } from './words.tsx';

export interface Problem {
  readonly code: string;
  readonly title: string;
  readonly detail?: string;
  readonly whatToDo: string;
  readonly errors?: readonly { readonly message: string }[];
}

/** Also where something between phone and service answered in its place. */
export async function problemIn(answer: Response): Promise<Problem> {
  const found: unknown = await answer.json().catch(() => undefined);
  if (typeof found === 'object' && found !== null && 'code' in found) return found as Problem;
  return {
    code: 'no_problem_details',
    title: `The service is in trouble (${answer.status}).`,
    whatToDo: 'Try again in a minute. If it stays so, tell the office.',
  };
}

/**
 * What was refused in the reader's language, by its stable code (the file `problems.ftl`). For a code that the page does
 * not know yet the service's own words stand, which are English.
 */
export function problemInWords(
  { code, title, detail, whatToDo }: Pick<Problem, 'code' | 'title' | 'detail' | 'whatToDo'>,
  { find }: Pick<Words, 'find'>,
): FaultWords {
  const what = find(`problem-${code}`);
  if (what === undefined) return { what: sentence(detail ?? title), whatToDo };
  return { what, whatToDo: find(`problem-${code}-do`) ?? whatToDo };
}

const sentence = (text: string): string =>
  text.charAt(0).toUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? '' : '.');
