/** Is the database still one that the service could have made? Asked in SQL, past the service's own code. */
import type pg from 'pg';

interface Fault {
  readonly what: string;
  readonly count: number;
}

/** Each finds rows that must not be there. */
const questions: Readonly<Record<string, string>> = {
  'a seat has two cards': 'SELECT seat_id FROM card GROUP BY seat_id HAVING count(*) > 1',
  'a card misses a revision': `
    SELECT card_id FROM card_revision GROUP BY card_id
    HAVING min(revision) <> 1 OR max(revision) <> count(*)`,
  'a class misses a version of its posting': `
    SELECT class_id FROM posting GROUP BY class_id HAVING min(version) <> 1 OR max(version) <> count(*)`,
  'two goes at one place of the order': `
    SELECT class_id, go_position FROM class_entry WHERE go_position IS NOT NULL AND status <> 'moved'
    GROUP BY class_id, go_position HAVING count(*) > 1`,
  'a back number is worn twice': `
    SELECT show_id, back_number FROM entry GROUP BY show_id, back_number HAVING count(*) > 1`,
  'a signed card was changed afterwards': `
    SELECT draft.card_id FROM card_draft_go draft JOIN card_revision revision ON revision.card_id = draft.card_id
    WHERE revision.revision = 1 AND draft.saved_at > revision.received_at`,
  'a constraint is not enforced':
    "SELECT conname FROM pg_constraint WHERE NOT convalidated AND contype IN ('c', 'f')",
};

/** What is wrong, in words; empty where nothing is. */
export async function faultsOfDatabase(pool: pg.Pool): Promise<string[]> {
  const asked = await Promise.all(
    Object.entries(questions).map(async ([what, text]): Promise<Fault> => {
      return { what, count: (await pool.query(text)).rows.length };
    }),
  );
  const faults = [...asked, ...(await orphans(pool))].filter(({ count }) => count > 0);
  return faults.map(({ what, count }) => `${what} (${count})`);
}

interface ForeignKey {
  readonly name: string;
  readonly child: string;
  readonly parent: string;
  readonly childColumns: readonly string[];
  readonly parentColumns: readonly string[];
}

const foreignKeys = `
  SELECT conname AS name, conrelid::regclass::text AS child, confrelid::regclass::text AS parent,
    (SELECT array_agg(attname::text ORDER BY at) FROM unnest(conkey) WITH ORDINALITY key(num, at)
       JOIN pg_attribute ON attrelid = conrelid AND attnum = num) AS "childColumns",
    (SELECT array_agg(attname::text ORDER BY at) FROM unnest(confkey) WITH ORDINALITY key(num, at)
       JOIN pg_attribute ON attrelid = confrelid AND attnum = num) AS "parentColumns"
  FROM pg_constraint WHERE contype = 'f'`;

/** Rows that name a record which is not there, looked for along every foreign key. */
async function orphans(pool: pg.Pool): Promise<Fault[]> {
  const { rows } = await pool.query<ForeignKey>(foreignKeys);
  return Promise.all(
    rows.map(async ({ name, child, parent, childColumns, parentColumns }) => {
      const same = childColumns.map((column, at) => `parent."${parentColumns[at]}" = child."${column}"`);
      const named = childColumns.map((column) => `child."${column}" IS NOT NULL`);
      const text = `
        SELECT count(*)::int AS count FROM ${child} child
        WHERE ${named.join(' AND ')} AND NOT EXISTS (SELECT FROM ${parent} parent WHERE ${same.join(' AND ')})`;
      const found = await pool.query<{ count: number }>(text);
      return { what: `a row is an orphan by ${name}`, count: found.rows[0]?.count ?? 0 };
    }),
  );
}
