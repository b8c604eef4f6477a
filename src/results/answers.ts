/** Tabulations and postings as they are answered: names joined at reading, reasons in sentences. */
import { fromRecordText, readingText, recordText } from '../engine/numbers/number-text.ts';
import type { Placing } from '../engine/placing/types.ts';
import { because, whyUnplaced } from '../engine/sentences/placing-sentences.ts';
import { ruleSentences } from '../engine/sentences/rule-words.ts';
import { scoreSentences } from '../engine/sentences/score-sentences.ts';
import { type ClassRecords, type EntryOnRecord, type PostingSummary, shownName } from './class-records.ts';
import { type BodyResult, type PostingBody, went } from './posting-body.ts';
import { spokenNames } from './spoken-names.ts';
import type { CountedCard } from './tabulate-class.ts';

export const caution =
  'Ringledger records and adds up; it does not rule. The governing body and the decisions of the judges, the steward and the ground jury stand over it.';

export function classHead({ head }: ClassRecords) {
  const { id, showId, number, name, discipline, division } = head;
  return { id, showId, number, name, discipline, division };
}

export function postingSummaryAnswer({
  id,
  classId,
  version,
  state,
  reason,
  postedAt,
  bodyHash,
  ruleHash,
}: PostingSummary) {
  return { id, classId, version, state, reason, postedAt: postedAt.toISOString(), bodyHash, ruleHash };
}

export const ruleAnswer = (records: ClassRecords, body: PostingBody) =>
  ruleSentences(body.rule, spokenNames(records));

/** Who is who in a body: entries as they were then, names as they may be shown now. */
export function whoIsWho(records: ClassRecords, body: PostingBody) {
  const onRecord = new Map(records.entries.map((entry) => [entry.id, entry]));
  const posted = new Map(body.entries.map((entry) => [entry.id, entry]));
  const backNumber = (id: string) => posted.get(id)?.backNumber ?? onRecord.get(id)?.backNumber ?? 0;
  const name = (id: string) => {
    const entry = onRecord.get(id);
    return entry === undefined ? `No. ${backNumber(id)}` : shownName(records, entry);
  };
  return { backNumber, name };
}

export function resultAnswers(records: ClassRecords, body: PostingBody) {
  const { backNumber, name } = whoIsWho(records, body);
  const names = spokenNames(records);
  return body.results.map((result) => {
    const placing = placingOf(result);
    return {
      judge: judgeAnswer(records, result.judge),
      placings: result.placed.map(({ entry, place, tied, total }) => ({
        classEntryId: entry,
        backNumber: backNumber(entry),
        name: name(entry),
        place,
        tied,
        total,
        because: because(placing, entry, names),
      })),
      unplaced: result.unplaced.map((line) => ({
        classEntryId: line.entry,
        backNumber: backNumber(line.entry),
        name: name(line.entry),
        why: whyUnplaced(line, names),
      })),
    };
  });
}

export function didNotGoAnswer(records: ClassRecords, body: PostingBody) {
  const { backNumber, name } = whoIsWho(records, body);
  return body.entries
    .filter(({ status }) => !went(status))
    .map(({ id, status }) => ({ backNumber: backNumber(id), name: name(id), status }));
}

export function judgeAnswer({ everySeat }: ClassRecords, seatId: string | null) {
  const seat = everySeat.find(({ id }) => id === seatId);
  return seat === undefined ? null : { seatId: seat.id, seatOrder: seat.seatOrder, name: seat.judge };
}

/** The placing that a body recorded, for the sentences. */
export function placingOf({ placed, unplaced, reasons, notes, openTies }: BodyResult): Placing {
  return {
    placed: placed.map((line) => ({
      ...line,
      total: line.total === null ? undefined : fromRecordText(line.total),
    })),
    unplaced,
    reasons,
    notes,
    openTies,
  };
}

/** Each judge's card, go by go; `only`: one entry's goes. */
export function cardAnswers(records: ClassRecords, cards: readonly CountedCard[], only?: string) {
  const names = spokenNames(records);
  const entries = records.entries.filter(({ id }) => only === undefined || id === only);
  return cards.map(({ seat, content, checked, onPanel }) => ({
    seatId: seat.id,
    seatOrder: seat.seatOrder,
    judge: seat.judge,
    revision: seat.revision ?? 0,
    goes: entries
      .filter(({ status }) => went(status))
      .map((entry: EntryOnRecord) => {
        const line = onPanel.lines.get(entry.id);
        const go = checked.goes.get(entry.id);
        return {
          backNumber: entry.backNumber,
          place: line === undefined ? null : readingText(line.place),
          score: go?.score === undefined ? null : recordText(go.score),
          parts: go === undefined ? [] : [...scoreSentences(go, records.head.sheet, names)],
          remarks: remarksOn(content.goes[entry.id]),
        };
      }),
  }));
}

function remarksOn(go: CountedCard['content']['goes'][string] | undefined): string[] {
  const onManeuvers = (go?.maneuvers ?? []).map(({ remark }) => remark);
  return [...onManeuvers, go?.ruling?.remark, go?.remark].filter((remark) => remark !== undefined);
}
