/** Prepared statements for the paths that must be fast. */
import type pg from 'pg';

/** Parsed once on each connection, then called by name. Names are unique over the whole program. */
export interface Statement {
  readonly name: string;
  readonly text: string;
}

export interface Sql {
  /** The rows, with the columns as the statement names them. Throws what PostgreSQL refuses. */
  readonly rows: <Row>(statement: Statement, values?: readonly unknown[]) => Promise<Row[]>;
  /** The first row, or `undefined`. */
  readonly row: <Row>(statement: Statement, values?: readonly unknown[]) => Promise<Row | undefined>;
}

/** `jsonb` values are given as objects and arrays wrapped by `json(...)`. */
export const json = (value: unknown): string => JSON.stringify(value);

export function sqlOver(client: pg.Pool | pg.ClientBase): Sql {
  const rows = async <Row>(statement: Statement, values: readonly unknown[] = []): Promise<Row[]> => {
    const { name, text } = statement;
    const answer = await client.query({ name, text, values: [...values] });
    return answer.rows as Row[];
  };
  return { rows, row: async <Row>(...call: Parameters<Sql['rows']>) => (await rows<Row>(...call))[0] };
}
