/** The show that a request was about, by the ids in its address; what else it says is not looked at. */
import { z } from 'zod';
import type { Sql, Statement } from '../platform/sql.ts';

const looks: Readonly<Record<string, Statement>> = {
  showId: { name: 'refusal.show', text: 'SELECT id AS "showId" FROM show WHERE id = $1::uuid' },
  classId: {
    name: 'refusal.show-of-class',
    text: 'SELECT show_id AS "showId" FROM show_class WHERE id = $1::uuid',
  },
  seatId: {
    name: 'refusal.show-of-seat',
    text: 'SELECT show_id AS "showId" FROM panel_seat WHERE id = $1::uuid',
  },
  cardId: {
    name: 'refusal.show-of-card',
    text: `SELECT show_id AS "showId" FROM show_class
           WHERE id = (SELECT class_id FROM card WHERE id = $1::uuid)`,
  },
};

const uuid = z.uuid();

/** `undefined`: none, or one that is not here. `params` are those of the address, as they came. */
export async function showAskedFor(sql: Sql, params: unknown): Promise<string | undefined> {
  if (typeof params !== 'object' || params === null) return undefined;
  for (const [name, value] of Object.entries(params)) {
    const look = looks[name];
    const id = uuid.safeParse(value);
    if (look === undefined || !id.success) continue;
    const found = await sql.row<{ showId: string }>(look, [id.data]);
    if (found !== undefined) return found.showId;
  }
  return undefined;
}
