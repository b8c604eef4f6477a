/** What a family sends and reads, and what the office does. */
import { z } from 'zod';
import { id } from '../platform/http/id.ts';
import { nameText, wording } from '../platform/http/text.ts';

export { id };

/** A moment, in UTC. */
const instant = z.iso.datetime();
const version = z.int().min(1).max(1_000_000);
const backNumber = z.int().min(1).max(99_999);

export const abouts = ['place', 'marks', 'who-rode', 'something-else'] as const;
export const queryStates = ['open', 'answered', 'withdrawn'] as const;
/** The result is right as it is; it was corrected; or there was something to say and nothing to change. */
export const outcomes = ['stands', 'corrected', 'explained'] as const;

const mostCharacters = 1_000;

export const newQuery = z.strictObject({
  about: z.enum(abouts),
  words: wording
    .refine((text) => [...text].length <= mostCharacters, `it must have at most ${mostCharacters} characters`)
    .describe('What looks wrong. The office alone reads it.')
    .meta({ maxLength: mostCharacters }),
  backNumber: backNumber.nullable().default(null).describe('Whom it is about; null: the class as a whole.'),
  postingVersion: version
    .nullable()
    .default(null)
    .describe('Which posting was looked at; null: the last one, if there is any.'),
  reachedBy: nameText
    .nullable()
    .default(null)
    .describe('How the office can reach whoever asks: a telephone, a stall. The office alone sees it.'),
});
export type NewQuery = z.infer<typeof newQuery>;

export const askedBody = z
  .strictObject({
    id,
    followCode: z
      .string()
      .describe('With it the query is read without an account. Keep it: it is not given again.'),
  })
  .describe('Sent twice with one Idempotency-Key it is one query, and the same code is given again.');

const classOfQuery = z.strictObject({ id, number: z.int(), name: z.string() });

const query = {
  id,
  class: classOfQuery,
  backNumber: backNumber.nullable(),
  postingVersion: version.nullable(),
  about: z.enum(abouts),
  words: z.string().nullable().describe('null: withdrawn or erased.'),
  state: z.enum(queryStates),
  askedAt: instant,
  withdrawnAt: instant.nullable(),
  erasedAt: instant.nullable(),
};

const answer = {
  id,
  words: z.string().nullable().describe('null: erased.'),
  outcome: z.enum(outcomes),
  answeredAt: instant,
};

export const followedBody = z
  .strictObject({
    show: z.strictObject({ id, name: z.string(), timeZone: z.string(), practice: z.boolean() }),
    ...query,
    answers: z.array(z.strictObject(answer)),
  })
  .describe('As whoever asked follows it. How she can be reached is not told back.');
export type FollowedBody = z.infer<typeof followedBody>;

export const officeQuery = z.strictObject({
  ...query,
  reachedBy: z.string().nullable(),
  lastPostingVersion: version.nullable(),
  answers: z.array(
    z.strictObject({
      ...answer,
      answeredBy: z.strictObject({ accountId: id, name: z.string().nullable() }),
    }),
  ),
});
export type OfficeQuery = z.infer<typeof officeQuery>;

export const officeQueries = z.strictObject({ items: z.array(officeQuery) });

export const newAnswer = z.strictObject({
  words: wording.describe('For the family. It is not public.'),
  outcome: z.enum(outcomes).describe('What came of it.'),
});
export type NewAnswer = z.infer<typeof newAnswer>;

export const answerBody = z.strictObject({ ...answer, queryId: id });
export type AnswerBody = z.infer<typeof answerBody>;

export const erasedBody = z.strictObject({ id, erasedAt: instant });
