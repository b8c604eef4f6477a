/** What the announcer reads out: the placings of the last posting from the last place to the first. */
import { z } from 'zod';
import { spokenNotes } from '../office/index.ts';
import { classHead, judgeAnswer, whoIsWho } from './answers.ts';
import { type ClassRecords, loadClassRecords, type Reader } from './class-records.ts';
import type { PostingBody } from './posting-body.ts';
import { mustBePosted } from './read-result.ts';
import { resultAnswer } from './schemas.ts';

const { class: head, posting, results } = resultAnswer.shape;
const { judge, placings } = results.element.shape;
const { id, version, state, postedAt, reason } = posting.shape;

const announced = placings.element.pick({
  ...{ classEntryId: true, backNumber: true, name: true, horse: true },
  ...{ place: true, tied: true, total: true },
});

export const announcementAnswer = z
  .strictObject({
    practice: resultAnswer.shape.practice,
    class: head,
    posting: z.strictObject({ id, version, state, postedAt, reason }),
    judges: z.array(z.string()).describe('Whose cards were counted, in the order of the panel.'),
    results: z.array(
      z.strictObject({
        judge,
        placings: z
          .array(
            announced.extend({
              spokenAs: z
                .string()
                .nullable()
                .describe('How the name is spoken; null: not said, or more than is public.'),
              horseSpokenAs: z.string().nullable(),
            }),
          )
          .describe('The last place first. Who is not placed is not announced.'),
      }),
    ),
  })
  .describe('The posted result as it is announced. Names are in the form that is public.');
export type Announcement = z.output<typeof announcementAnswer>;

/** Throws not_found, class_not_posted. */
export async function readAnnouncement(reader: Reader, classId: string): Promise<Announcement> {
  const records = await loadClassRecords(reader, classId);
  const { body, ...last } = mustBePosted(records);
  const notes = new Map((await spokenNotes(reader, classId)).map((note) => [note.classEntryId, note]));
  const { shown } = whoIsWho(records, body);
  return {
    practice: records.ofClass.practice,
    class: classHead(records),
    posting: {
      ...{ id: last.id, version: last.version, state: last.state, reason: last.reason },
      postedAt: last.postedAt.toISOString(),
    },
    judges: judgesOf(records, body),
    results: body.results.map((result) => ({
      judge: judgeAnswer(records, result.judge),
      placings: result.placed.toReversed().map(({ entry, place, tied, total }) => ({
        ...{ classEntryId: entry, ...shown(entry), place, tied, total },
        spokenAs: notes.get(entry)?.spokenAs ?? null,
        horseSpokenAs: notes.get(entry)?.horseSpokenAs ?? null,
      })),
    })),
  };
}

const judgesOf = (records: ClassRecords, { cards }: PostingBody): string[] =>
  cards
    .map(({ seatId }) => judgeAnswer(records, seatId))
    .filter((seat) => seat !== null)
    .sort((one, other) => one.seatOrder - other.seatOrder)
    .map(({ name }) => name);
