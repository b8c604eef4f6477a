/** The posted result as everyone may read it; the busiest page of a show day. */
import { createHash } from 'node:crypto';
import { LRUCache } from 'lru-cache';
import { didNotGo } from '../engine/sentences/placing-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import { speeches } from '../language/index.ts';
import type { Database } from '../platform/database.ts';
import { problem } from '../platform/problems/index.ts';
import {
  cardAnswers,
  cautionAnswer,
  classHead,
  didNotGoAnswer,
  postingSummaryAnswer,
  resultAnswers,
  ruleAnswer,
  whoIsWho,
} from './answers.ts';
import { type ClassRecords, loadClassRecords, type PostingOnRecord, type Reader } from './class-records.ts';
import { sheetAnswer } from './marks-answer.ts';
import { postedCards } from './posted-cards.ts';
import type { PostingBody } from './posting-body.ts';
import { SharedLookUp } from './shared-look-up.ts';
import { readMark, readWholePostings } from './statements.ts';

export interface SentResult {
  /** The whole answer as it is sent: JSON in UTF-8. */
  readonly bytes: Buffer;
  readonly etag: string;
}

/** A show's ledger moves on with everything that can change an answer: name rules, a posting, a scratch. */
interface Kept extends SentResult {
  readonly sequence: number | null;
}

/** Keeps answers as long as nothing at their show has changed; one for each database. */
export class PostedResults {
  readonly #kept = new LRUCache<string, Kept>({
    max: 500,
    maxSize: 64 * 1024 * 1024,
    sizeCalculation: ({ bytes }) => bytes.length,
  });
  readonly #db: Database;

  /** When a class is called out, a whole show ground reads the same page at once; each language for itself. */
  readonly #shared = new Map(
    [...speeches].map(([language, speech]) => [
      language,
      new SharedLookUp((classId) => this.#look(classId, speech)),
    ]),
  );

  constructor(db: Database) {
    this.#db = db;
  }

  /** As it stood when it was asked for, or later. Throws not_found, class_not_posted. */
  read(classId: string, { language }: Speech): Promise<SentResult> {
    const shared = this.#shared.get(language);
    if (shared === undefined) throw new Error(`results are not told in "${language}"`);
    return shared.ask(classId);
  }

  async #look(classId: string, speech: Speech): Promise<SentResult> {
    const mark = await this.#db.sql.row<{ sequence: number | null }>(readMark, [classId]);
    if (mark === undefined) throw problem('not_found', { detail: 'There is no such class.' });
    const key = `${speech.language} ${classId}`;
    const kept = this.#kept.get(key);
    if (kept !== undefined && kept.sequence === mark.sequence) return kept;
    const bytes = Buffer.from(JSON.stringify(await readPostedResult(this.#db, classId, speech)));
    const fresh = {
      bytes,
      etag: `"${createHash('sha256').update(bytes).digest('base64url')}"`,
      sequence: mark.sequence,
    };
    this.#kept.set(key, fresh);
    return fresh;
  }
}

export type PostedResult = Awaited<ReturnType<typeof readPostedResult>>;

/** Names in the form that is public now. Throws not_found, class_not_posted. */
export async function readPostedResult(reader: Reader, classId: string, speech: Speech) {
  const records = await loadClassRecords(reader, classId);
  const posting = mustBePosted(records);
  const { body } = posting;
  return {
    practice: records.ofClass.practice,
    class: classHead(records),
    posting: postingSummaryAnswer(posting),
    rule: ruleAnswer(records, body, speech),
    results: resultAnswers(records, body, speech),
    didNotGo: didNotGoAnswer(records, body),
    sheet: sheetAnswer(records.ofClass, speech),
    cards: await publishedCards(reader, { records, posting, speech }),
    caution: cautionAnswer(speech),
  };
}

interface EntryAsked {
  readonly classId: string;
  /** By the number that was worn then, or by the id that never changes. */
  readonly entry: { readonly backNumber: number } | { readonly classEntryId: string };
  readonly speech: Speech;
}

/** One entry: place, reasons, and what each judge gave. Throws not_found, class_not_posted. */
export async function readEntryResult(reader: Reader, { classId, entry: asked, speech }: EntryAsked) {
  const records = await loadClassRecords(reader, classId);
  const posting = mustBePosted(records);
  const { body } = posting;
  const entry = body.entries.find((one) =>
    'backNumber' in asked ? one.backNumber === asked.backNumber : one.id === asked.classEntryId,
  );
  if (entry === undefined) throw problem('not_found', { detail: 'The entry is not in the posted result.' });
  return {
    practice: records.ofClass.practice,
    class: classHead(records),
    posting: postingSummaryAnswer(posting),
    ...whoIsWho(records, body).shown(entry.id),
    rule: ruleAnswer(records, body, speech),
    results: resultsOf({ records, speech }, body, entry.id),
    sheet: sheetAnswer(records.ofClass, speech),
    cards: await publishedCards(reader, { records, posting, speech, only: entry.id }),
    history: await historyOf(reader, { records, speech }, entry.id),
  };
}

interface TellingOf {
  readonly records: ClassRecords;
  readonly speech: Speech;
}

/** What was posted before stays readable: each version with what it said of the entry. */
async function historyOf(reader: Reader, { records, speech }: TellingOf, entry: string) {
  const postings = await reader.sql.rows<PostingOnRecord>(readWholePostings, [records.ofClass.id]);
  return postings.map(({ id, version, state, reason, postedAt, body }) => ({
    ...{ id, version, state, reason, postedAt: postedAt.toISOString() },
    results: resultsOf({ records, speech }, body, entry),
  }));
}

const resultsOf = ({ records, speech }: TellingOf, body: PostingBody, entry: string) =>
  resultAnswers(records, body, speech).map((result) => entryResult(result, entry, speech));

type ResultAnswer = ReturnType<typeof resultAnswers>[number];

function entryResult({ judge, placings, unplaced }: ResultAnswer, entry: string, speech: Speech) {
  const of = placings.length;
  const placed = placings.find(({ classEntryId }) => classEntryId === entry);
  if (placed !== undefined) {
    const { place, tied, total, because } = placed;
    return { judge, of, place, tied, total, because };
  }
  const why = unplaced.find(({ classEntryId }) => classEntryId === entry)?.why ?? didNotGo(speech);
  return { judge, of, place: null, tied: false, total: null, because: [why] };
}

export function mustBePosted({ lastPosting }: ClassRecords): PostingOnRecord {
  if (lastPosting === undefined) throw problem('class_not_posted');
  return lastPosting;
}

/** The judges' cards as the show publishes them: never, with the posting, or once it is official. */
async function publishedCards(
  reader: Reader,
  {
    records,
    posting,
    speech,
    only,
  }: {
    records: ClassRecords;
    posting: PostingOnRecord & { body: PostingBody };
    speech: Speech;
    only?: string;
  },
) {
  const { publishCards } = records.ofClass;
  const isOpen =
    publishCards === 'with-posting' || (publishCards === 'when-official' && posting.state !== 'provisional');
  if (!isOpen) return [];
  const { body } = posting;
  return cardAnswers(records, { body, cards: await postedCards(reader, records, body), speech, only });
}
