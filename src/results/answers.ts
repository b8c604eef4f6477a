/** Tabulations and postings as they are answered: names joined at reading, reasons in sentences. */
import { fromRecordText, readingText, recordText } from '../engine/numbers/number-text.ts';
import type { Placing } from '../engine/placing/types.ts';
import { because, caution, whyUnplaced } from '../engine/sentences/placing-sentences.ts';
import { ruleSentences } from '../engine/sentences/rule-words.ts';
import { scoreSentences } from '../engine/sentences/score-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import type { Go } from '../engine/sheets/types.ts';
import { isGoing, type LoadedSeat } from '../office/index.ts';
import type { ClassRecords, PostingSummary } from './class-records.ts';
import { marksAnswer } from './marks-answer.ts';
import type { BodyResult, PostingBody } from './posting-body.ts';
import type { CountedCard } from './read-cards.ts';
import { tellerOf } from './spoken-names.ts';

export function classHead({ ofClass }: ClassRecords) {
  const { id, showId, number, name, discipline, division } = ofClass;
  return { id, showId, number, name, discipline, division };
}

export function postingSummaryAnswer({ id, classId, version, state, reason, ...posting }: PostingSummary) {
  const { postedAt, bodyHash, ruleHash, ledger, jws } = posting;
  return {
    ...{ id, classId, version, state, reason, bodyHash, ruleHash, ledger, jws },
    postedAt: postedAt.toISOString(),
  };
}

export const cautionAnswer = (speech: Speech): string => caution(speech);

export const ruleAnswer = (records: ClassRecords, body: PostingBody, speech: Speech) =>
  ruleSentences(body.rule, tellerOf(records, speech));

/** Who is who in a body: back numbers as they were then, names as they may be shown now. */
export function whoIsWho({ entries }: ClassRecords, body: PostingBody) {
  const names = new Map(entries.map((entry) => [entry.classEntryId, entry]));
  const posted = new Map(body.entries.map((entry) => [entry.id, entry.backNumber]));
  const backNumber = (id: string) => posted.get(id) ?? names.get(id)?.backNumber ?? 0;
  const shown = (id: string) => {
    const entry = names.get(id);
    return {
      backNumber: backNumber(id),
      name: entry?.exhibitor ?? `No. ${backNumber(id)}`,
      horse: entry?.horse ?? null,
    };
  };
  return { backNumber, shown };
}

export function resultAnswers(records: ClassRecords, body: PostingBody, speech: Speech) {
  const { shown } = whoIsWho(records, body);
  const teller = tellerOf(records, speech);
  return body.results.map((result) => {
    const placing = placingOf(result);
    return {
      judge: judgeAnswer(records, result.judge),
      placings: result.placed.map(({ entry, place, tied, total }) => ({
        classEntryId: entry,
        ...shown(entry),
        place,
        tied,
        total,
        because: because(placing, entry, teller),
      })),
      unplaced: result.unplaced.map((line) => ({
        classEntryId: line.entry,
        ...shown(line.entry),
        why: whyUnplaced(line, teller),
      })),
    };
  });
}

export function didNotGoAnswer(records: ClassRecords, body: PostingBody) {
  const { shown } = whoIsWho(records, body);
  return body.entries
    .filter(({ status }) => !isGoing(status))
    .map(({ id, status }) => ({ ...shown(id), status }));
}

export function judgeAnswer({ ofClass }: ClassRecords, seatId: string | null) {
  const seat = ofClass.seats.find(({ id }) => id === seatId);
  return seat === undefined ? null : { seatId: seat.id, seatOrder: seat.seatOrder, name: seat.personName };
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

/** Each judge's card, go by go in the order of the posting; `only`: one entry's goes. */
export function cardAnswers(
  records: ClassRecords,
  {
    body,
    cards,
    speech,
    only,
  }: {
    readonly body: PostingBody;
    readonly cards: readonly CountedCard<LoadedSeat>[];
    readonly speech: Speech;
    readonly only?: string | undefined;
  },
) {
  const sheet = records.ofClass.sheet.definition;
  const teller = { ...tellerOf(records, speech), sheet };
  const went = body.entries.filter(
    ({ id, status }) => isGoing(status) && (only === undefined || id === only),
  );
  return cards.map(({ seat, signed, checked, onPanel }) => ({
    seatId: seat.id,
    seatOrder: seat.seatOrder,
    judge: seat.personName,
    revision: signed.revision,
    goes: went.map(({ id, backNumber }) => {
      const line = onPanel.lines.get(id);
      const go = checked.goes.get(id);
      return {
        backNumber,
        place: line === undefined ? null : readingText(line.place),
        score: go?.score === undefined ? null : recordText(go.score),
        parts: go === undefined ? [] : [...scoreSentences(go, teller)],
        remarks: remarksOn(signed.content.goes[id]),
        marks: go === undefined ? null : marksAnswer(sheet, go, signed.content.goes[id]),
      };
    }),
  }));
}

function remarksOn(go: Go | undefined): string[] {
  const onManeuvers = (go?.maneuvers ?? []).map(({ remark }) => remark);
  return [...onManeuvers, go?.ruling?.remark, go?.remark].filter((remark) => remark !== undefined);
}
