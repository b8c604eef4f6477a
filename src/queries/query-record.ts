/** A query with its answers, as it is kept and as it is told. */
import type { Transaction } from '../platform/database.ts';
import type { Prisma } from '../platform/generated/prisma/client.ts';
import { type FollowedBody, followedBody } from './query-schemas.ts';

export type Reader = Pick<Transaction, 'prisma'>;

export const withAll = {
  showClass: { select: { id: true, number: true, name: true } },
  entry: { select: { backNumber: true } },
  answers: { orderBy: [{ answeredAt: 'asc' }, { id: 'asc' }] },
} satisfies Prisma.ClassQueryInclude;

export type QueryRecord = Prisma.ClassQueryGetPayload<{ include: typeof withAll }>;

const { about, state, answers } = followedBody.shape;

/** What whoever asked and the office both read of it. */
export function queryOf(row: QueryRecord): Omit<FollowedBody, 'show' | 'answers'> {
  const { id, showClass, entry, postingVersion, words, askedAt, withdrawnAt, erasedAt } = row;
  return {
    ...{ id, class: showClass, backNumber: entry?.backNumber ?? null, postingVersion, words },
    about: about.parse(row.about),
    state: state.parse(row.state),
    askedAt: askedAt.toISOString(),
    withdrawnAt: withdrawnAt?.toISOString() ?? null,
    erasedAt: erasedAt?.toISOString() ?? null,
  };
}

/** Without who of the office it was: the office answers as one. */
export function answerOf({ id, words, outcome, answeredAt }: QueryRecord['answers'][number]) {
  const known = answers.element.shape.outcome.parse(outcome);
  return { id, words, outcome: known, answeredAt: answeredAt.toISOString() };
}
