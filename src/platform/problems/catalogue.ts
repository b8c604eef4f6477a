/**
 * Every error of the API, once: a stable code, its HTTP status, and what to do about it. Nowhere else does an
 * HTTP status of an error stand. `api-docs/errors.md` is written from this.
 */
import { accessProblems } from './access-problems.ts';
import { accountProblems } from './account-problems.ts';
import { archiveProblems } from './archive-problems.ts';
import { cardProblems } from './card-problems.ts';
import { officeProblems } from './office-problems.ts';
import { paperProblems } from './paper-problems.ts';
import { phoneProblems } from './phone-problems.ts';
import { queryProblems } from './query-problems.ts';
import { requestProblems } from './request-problems.ts';
import { resultProblems } from './result-problems.ts';

export interface ProblemKind {
  readonly status: number;
  /** The same for every occurrence. */
  readonly title: string;
  /** What the reader should do next. */
  readonly whatToDo: string;
}

const kinds = {
  ...requestProblems,
  ...accessProblems,
  ...accountProblems,
  ...phoneProblems,
  ...officeProblems,
  ...cardProblems,
  ...paperProblems,
  ...resultProblems,
  ...queryProblems,
  ...archiveProblems,
} as const satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof kinds;

export const problemCatalogue: Readonly<Record<ProblemCode, ProblemKind>> = kinds;

/** The catalogue as it is documented, group by group. */
export const problemGroups: ReadonlyArray<
  readonly [heading: string, kinds: Readonly<Record<string, ProblemKind>>]
> = [
  ['Any request', requestProblems],
  ['Access', accessProblems],
  ['Accounts of the office', accountProblems],
  ['Phones', phoneProblems],
  ['Show office', officeProblems],
  ['Cards', cardProblems],
  ['Paper cards', paperProblems],
  ['Results', resultProblems],
  ['Queries about a result', queryProblems],
  ['Archives', archiveProblems],
];
