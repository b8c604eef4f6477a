/** The public entries of a show, ready to be looked up. Only what is public is in it, so only that can be found. */
import { LRUCache } from 'lru-cache';
import { publicEntriesOfShow, type ShowEntry } from '../office/index.ts';
import type { Database } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import type { Statement } from '../platform/sql.ts';
import { askedWords, foundWords } from './folded-words.ts';

const readMark: Statement = {
  name: 'look-up.read-mark',
  text: `
    SELECT head.sequence FROM show LEFT JOIN ledger_head head ON head.ledger_id = show.id
    WHERE show.id = $1::uuid`,
};

interface IndexedEntry {
  readonly entry: ShowEntry;
  readonly words: readonly string[];
}

interface ShowIndex {
  readonly sequence: number | null;
  readonly entries: readonly IndexedEntry[];
}

/** Kept as long as nothing at the show has changed: a name, a consent, an entry each move its ledger on. */
export class ShowIndexes {
  readonly #kept = new LRUCache<string, ShowIndex>({ max: 50 });
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** Who answers to every one of the words, by back number. Throws not_found. */
  async find(showId: string, words: string): Promise<ShowEntry[]> {
    const { entries } = await this.#of(showId);
    const asked = askedWords(words);
    if (asked.length === 0) return [];
    return entries.filter((one) => asked.every((word) => answersTo(one, word))).map(({ entry }) => entry);
  }

  /** Throws not_found. */
  async ofNumber(showId: string, backNumber: number): Promise<ShowEntry> {
    const { entries } = await this.#of(showId);
    const found = entries.find(({ entry }) => entry.backNumber === backNumber);
    if (found !== undefined) return found.entry;
    throw problem('not_found', { detail: `Nobody at this show wears back number ${backNumber}.` });
  }

  async #of(showId: string): Promise<ShowIndex> {
    const mark = await this.#db.sql.row<{ sequence: number | null }>(readMark, [showId]);
    if (mark === undefined) throw problem('not_found', { detail: 'There is no such show.' });
    const kept = this.#kept.get(showId);
    if (kept !== undefined && kept.sequence === mark.sequence) return kept;
    const entries = (await publicEntriesOfShow(this.#db, showId)).map(indexed);
    const fresh = { sequence: mark.sequence, entries };
    this.#kept.set(showId, fresh);
    return fresh;
  }
}

function indexed(entry: ShowEntry): IndexedEntry {
  const { isNamed, exhibitor, horse } = entry;
  return { entry, words: isNamed ? [...foundWords(exhibitor), ...foundWords(horse ?? '')] : [] };
}

/** A number is the back number or the beginning of a name; letters are the beginning of a name. */
const answersTo = ({ entry, words }: IndexedEntry, asked: string): boolean =>
  String(entry.backNumber) === asked || words.some((word) => word.startsWith(asked));
