/** How the records of an archive stand in the database: one description for reading them and for writing them. */
import type { Statement } from '../../platform/sql.ts';

/** How a column is spelled in an archive, and as which type it is written. */
const spellings = {
  uuid: { type: 'uuid', read: plain, write: plain },
  uuids: { type: 'uuid[]', read: plain, write: plain },
  text: { type: 'text', read: plain, write: plain },
  int: { type: 'integer', read: plain, write: plain },
  boolean: { type: 'boolean', read: plain, write: plain },
  json: { type: 'jsonb', read: plain, write: plain },
  day: { type: 'date', read: (column: string) => `to_char(${column}, 'YYYY-MM-DD')`, write: plain },
  instant: {
    type: 'timestamptz',
    read: (column: string) => `to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`,
    write: plain,
  },
  decimal: { type: 'numeric', read: (column: string) => `trim_scale(${column})::text`, write: plain },
  base64: {
    type: 'text',
    read: (column: string) => `translate(encode(${column}, 'base64'), E'\\n', '')`,
    write: (column: string) => `decode(${column}, 'base64')`,
  },
} as const;

function plain(column: string): string {
  return column;
}

export type Spelling = keyof typeof spellings;

export interface StoredTable<Row> {
  readonly table: string;
  /** In the archive's spelling, by the name of the member. */
  readonly columns: Readonly<Record<keyof Row & string, Spelling>>;
  /** Which rows are of the show `$1`. */
  readonly ofShow: string;
  /** The same order in every archive. */
  readonly orderBy: string;
}

/** Where the column is not called as the member. */
const ownNames: Readonly<Record<string, string>> = { replacesId: 'replaces_seat_id' };

const columnOf = (member: string): string =>
  ownNames[member] ?? member.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const membersOf = <Row>({ columns }: StoredTable<Row>): [string, Spelling][] => Object.entries(columns);

export function readStatement<Row>(stored: StoredTable<Row>): Statement {
  const { table, ofShow, orderBy } = stored;
  const columns = membersOf(stored).map(([member, spelling]) => {
    return `${spellings[spelling].read(columnOf(member))} AS "${member}"`;
  });
  return {
    name: `archive.read-${table}`,
    text: `SELECT ${columns.join(', ')} FROM "${table}" WHERE ${ofShow} ORDER BY ${orderBy}`,
  };
}

/** All rows at once, as one JSON array. */
export function writeStatement<Row>(stored: StoredTable<Row>): Statement {
  const members = membersOf(stored);
  const into = members.map(([member]) => columnOf(member));
  const types = members.map(([member, spelling]) => `"${member}" ${spellings[spelling].type}`);
  const values = members.map(([member, spelling]) => spellings[spelling].write(`row."${member}"`));
  return {
    name: `archive.write-${stored.table}`,
    text: `INSERT INTO "${stored.table}" (${into.join(', ')})
           SELECT ${values.join(', ')} FROM jsonb_to_recordset($1::jsonb) AS row (${types.join(', ')})`,
  };
}
