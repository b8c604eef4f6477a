/** A family asks. Everyone may, so what one place can make the office read, and the ledger keep, has a limit. */
import { appendLine } from '../ledger/index.ts';
import type { AppParts } from '../platform/app-parts.ts';
import type { Transaction } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import { followCodeOf, hashOfFollowCode } from './follow-code.ts';
import type { NewQuery } from './query-schemas.ts';

/** Waits for an erasure, which takes all classes of its show, so that no words slip in beside it. */
const takeClass: Statement = {
  name: 'queries.take-class',
  text: 'SELECT show_id AS "showId" FROM show_class WHERE id = $1::uuid FOR SHARE',
};

const findEntry: Statement = {
  name: 'queries.find-entry',
  text: `
    SELECT entry.id FROM class_entry JOIN entry ON entry.id = class_entry.entry_id
    WHERE class_entry.class_id = $1::uuid AND entry.back_number = $2 AND class_entry.status <> 'moved'`,
};

const readLastVersion: Statement = {
  name: 'queries.read-last-version',
  text: 'SELECT max(version) AS last FROM posting WHERE class_id = $1::uuid',
};

/** Whoever asks about the class waits for whoever asked before, so that many at once count each other too. */
const queueToAsk: Statement = {
  name: 'queries.queue-to-ask',
  text: `SELECT pg_advisory_xact_lock(hashtextextended('ringledger: queries ' || $1::text, 0))`,
};

/** Those taken back within a day count too: otherwise asking and taking back could go on for ever. */
const countWaiting: Statement = {
  name: 'queries.count-waiting',
  text: `
    SELECT count(*)::int AS "ofClass", count(*) FILTER (WHERE entry_id = $2::uuid)::int AS "ofEntry"
    FROM query
    WHERE class_id = $1::uuid AND (state = 'open' OR withdrawn_at > $3::timestamptz - interval '1 day')`,
};

/** A family has one question, or two; a class of forty entries that all ask is still within it. */
const mostWaiting = { ofClass: 100, ofEntry: 5 };

interface Asked {
  readonly classId: string;
  readonly query: NewQuery;
}

/** Returns its id. Throws not_found, back_number_not_in_class, unknown_reference, queries_waiting. */
export async function askQuery(
  parts: AppParts,
  tx: Transaction,
  { classId, query }: Asked,
): Promise<{ id: string }> {
  const found = await tx.sql.row<{ showId: string }>(takeClass, [classId]);
  if (found === undefined) throw problem('not_found', { detail: 'There is no such class.' });
  const entryId = await entryOf(tx, classId, query.backNumber);
  const postingVersion = await versionOf(tx, classId, query.postingVersion);
  const askedAt = parts.clock.now();
  await mustNotBeTooMany(tx, { classId, entryId, askedAt });
  const id = parts.ids.next();
  const { about, words, reachedBy } = query;
  await tx.prisma.classQuery.create({
    data: {
      ...{ id, classId, showId: found.showId, entryId, postingVersion, about, words, reachedBy, askedAt },
      followHash: hashOfFollowCode(followCodeOf(parts.tokenKey, id)),
    },
  });
  const body = { queryId: id, classId };
  await appendLine(parts, tx, { showId: found.showId, type: 'query.asked', body, at: askedAt });
  return { id };
}

async function entryOf(tx: Transaction, classId: string, backNumber: number | null): Promise<string | null> {
  if (backNumber === null) return null;
  const found = await tx.sql.row<{ id: string }>(findEntry, [classId, backNumber]);
  if (found !== undefined) return found.id;
  const message = `nobody in this class wears ${backNumber}`;
  throw problem('back_number_not_in_class', { errors: [{ field: '/backNumber', message }] });
}

async function versionOf(tx: Transaction, classId: string, asked: number | null): Promise<number | null> {
  const last = (await tx.sql.row<{ last: number | null }>(readLastVersion, [classId]))?.last ?? null;
  if (asked === null || (last !== null && asked <= last)) return asked ?? last;
  const message =
    last === null ? 'the class is not posted' : `the last posting of the class has version ${last}`;
  throw problem('unknown_reference', { errors: [{ field: '/postingVersion', message }] });
}

async function mustNotBeTooMany(
  tx: Transaction,
  {
    classId,
    entryId,
    askedAt,
  }: { readonly classId: string; readonly entryId: string | null; readonly askedAt: Date },
): Promise<void> {
  await tx.sql.row(queueToAsk, [classId]);
  const waiting = await tx.sql.row<{ ofClass: number; ofEntry: number }>(countWaiting, [
    classId,
    entryId,
    askedAt,
  ]);
  const { ofClass = 0, ofEntry = 0 } = waiting ?? {};
  if (ofClass >= mostWaiting.ofClass || ofEntry >= mostWaiting.ofEntry) throw problem('queries_waiting');
}
