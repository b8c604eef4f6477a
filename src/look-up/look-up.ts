/** Who is who at a show, for everyone: by back number, or by what is public of a name. */
import { isPractice, type ShowEntry, shownName } from '../office/index.ts';
import type { Database } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import { classLinesOf } from './class-lines.ts';
import { ShowIndexes } from './show-index.ts';

/** As many as one looks through on a phone; whoever seeks more types more of the name. */
const mostFound = 25;

const readShow: Statement = {
  name: 'look-up.read-show',
  text: 'SELECT id, name, place, time_zone AS "timeZone", kind FROM show WHERE id = $1::uuid',
};

interface ShowRow {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly timeZone: string;
  readonly kind: string;
}

export class LookUp {
  readonly #db: Database;
  readonly #indexes: ShowIndexes;

  constructor(db: Database) {
    this.#db = db;
    this.#indexes = new ShowIndexes(db);
  }

  /** Throws not_found. */
  async find(showId: string, words: string) {
    const show = await this.#showHead(showId);
    const found = await this.#indexes.find(showId, words);
    const entries = found.slice(0, mostFound);
    const classesOf = await classLinesOf(
      this.#db.sql,
      entries.map(({ entryId }) => entryId),
    );
    const answers = entries.map((entry) => ({ ...headOf(entry), classes: classesOf(entry.entryId) }));
    return { show, entries: answers, more: found.length > mostFound };
  }

  /** Throws not_found. */
  async number(showId: string, backNumber: number) {
    const show = await this.#showHead(showId);
    const entry = await this.#indexes.ofNumber(showId, backNumber);
    const classesOf = await classLinesOf(this.#db.sql, [entry.entryId]);
    return { show, ...headOf(entry), classes: classesOf(entry.entryId) };
  }

  async #showHead(showId: string) {
    const row = await this.#db.sql.row<ShowRow>(readShow, [showId]);
    if (row === undefined) throw problem('not_found', { detail: 'There is no such show.' });
    const { id, place, timeZone } = row;
    return { id, name: shownName(row), place, timeZone, practice: isPractice(row) };
  }
}

const headOf = ({ backNumber, exhibitor, horse }: ShowEntry) => ({ backNumber, name: exhibitor, horse });
