/** What waits for the office, and what it has answered. */
import { answerOf, type QueryRecord, queryOf, type Reader, withAll } from './query-record.ts';
import type { OfficeQuery } from './query-schemas.ts';

/** Open ones first, then by class number, then as they were asked. */
export async function listQueries({ prisma }: Reader, showId: string): Promise<OfficeQuery[]> {
  const rows = await prisma.classQuery.findMany({ where: { showId }, include: withAll });
  const versions = await lastVersions({ prisma }, rows);
  const names = await accountNames({ prisma }, rows);
  return rows.toSorted(firstToLook).map((row) => ({
    ...queryOf(row),
    reachedBy: row.reachedBy,
    lastPostingVersion: versions.get(row.classId) ?? null,
    answers: row.answers.map((answer) => ({
      ...answerOf(answer),
      answeredBy: { accountId: answer.answeredBy, name: names.get(answer.answeredBy) ?? null },
    })),
  }));
}

const isClosed = ({ state }: QueryRecord): number => (state === 'open' ? 0 : 1);

const firstToLook = (one: QueryRecord, other: QueryRecord): number =>
  isClosed(one) - isClosed(other) ||
  one.showClass.number - other.showClass.number ||
  one.askedAt.getTime() - other.askedAt.getTime();

async function lastVersions({ prisma }: Reader, rows: readonly QueryRecord[]): Promise<Map<string, number>> {
  const found = await prisma.posting.groupBy({
    by: ['classId'],
    where: { classId: { in: rows.map(({ classId }) => classId) } },
    _max: { version: true },
  });
  return new Map(
    found.flatMap(({ classId, _max }) => (_max.version === null ? [] : [[classId, _max.version]])),
  );
}

async function accountNames({ prisma }: Reader, rows: readonly QueryRecord[]): Promise<Map<string, string>> {
  const ids = new Set(rows.flatMap(({ answers }) => answers.map(({ answeredBy }) => answeredBy)));
  const found = await prisma.account.findMany({
    where: { id: { in: [...ids] } },
    select: { id: true, name: true },
  });
  return new Map(found.map(({ id, name }) => [id, name]));
}
