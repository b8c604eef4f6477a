/** Requests and answers of tabulating and posting. */
import { z } from 'zod';
import { parseDecimal } from '../engine/numbers/exact.ts';
import { marksOfGo, sheetOfResult } from './marks-answer.ts';

const id = z.uuid();
const instant = z.iso.datetime({ offset: true });
const number = z
  .string()
  .describe('An exact number as text: "214.5", or a fraction "214/3" where it never ends.');
/** Class numbers, back numbers, places, versions: they count from 1. */
const ordinal = z.int().min(1).max(1_000_000);
const words = z.string().trim().min(1).max(1000);

/** Beside the mark in the name of the show: so that no reader of an answer can take it for a real result. */
const practice = z.boolean().describe('A rehearsal: nothing of it counts.');

export const classParams = z.strictObject({ classId: id });
export const postingParams = z.strictObject({ postingId: id });
export const entryParams = z.strictObject({
  classId: id,
  backNumber: z.coerce.number().int().min(1).max(99_999),
});
export const showParams = z.strictObject({ showId: id });

/** What the office may decide about a tie. `declined`: the run-off was declined, and the chain goes on. */
export const rulingKinds = ['run-off', 're-work', 'judge', 'coin', 'share', 'declined'] as const;

export const rulingRequest = z
  .strictObject({
    kind: z.enum(rulingKinds),
    order: z
      .array(z.array(id).min(1))
      .min(1)
      .describe('Class entries, best group first. To share a place put them in one group.'),
    decidedBy: words.max(200).describe('Who decided: the call judge, the steward, show management.'),
    why: words.describe('What it was decided by, in words that exhibitors will read.'),
  })
  .describe(
    'A tie decided outside the arithmetic. It stands for ever; a later ruling on the same entries goes before it.',
  );

export const rulingAnswer = z.object({
  id,
  kind: z.enum(rulingKinds),
  order: z.array(z.array(id)),
  decidedBy: z.string(),
  why: z.string(),
  ruledAt: instant,
});

export const postingRequest = z
  .strictObject({
    state: z.enum(['provisional', 'official', 'corrected']),
    reason: words.optional().describe('Why it changed; needed wherever a posted result changes.'),
  })
  .describe('Posts what the preview shows; its ETag goes into If-Match, so that nothing is posted unseen.');

export const postingSummary = z.object({
  id,
  classId: id,
  version: ordinal,
  state: z.enum(['provisional', 'official', 'corrected']),
  reason: z.string().nullable(),
  postedAt: instant,
  bodyHash: z.string().describe('SHA-256 over the canonical form (RFC 8785) of the body.'),
  ruleHash: z.string(),
  ledger: z
    .object({ sequence: ordinal, hash: z.string() })
    .describe(
      "Head of the show's ledger when it was posted: write it down, and nothing before it can be changed unseen.",
    ),
  jws: z
    .string()
    .describe('The posting as the service signed it (RFC 7515); the keys stand at /.well-known/jwks.json.'),
});

const placedLine = z.object({
  classEntryId: id,
  backNumber: ordinal,
  name: z.string().describe('As far as it is public.'),
  horse: z.string().nullable(),
  place: ordinal,
  tied: z.boolean(),
  total: number.nullable(),
  because: z.array(z.string()).describe('Why it stands there, in sentences.'),
});

const unplacedLine = z.object({
  classEntryId: id,
  backNumber: ordinal,
  name: z.string(),
  horse: z.string().nullable(),
  why: z.string(),
});

const absentLine = z.object({
  backNumber: ordinal,
  name: z.string(),
  horse: z.string().nullable(),
  status: z.string(),
});

const judgeSeat = z.object({ seatId: id, seatOrder: ordinal, name: z.string() });

const oneResult = z.object({
  judge: judgeSeat.nullable().describe('null: the judges are merged.'),
  placings: z.array(placedLine),
  unplaced: z.array(unplacedLine),
});

const cardGo = z.object({
  backNumber: ordinal,
  place: z
    .string()
    .nullable()
    .describe('Place on this card; "2.5" never occurs here, ties hold the better place.'),
  score: number.nullable(),
  parts: z.array(z.string()).describe("The score part by part, in the judge's order."),
  remarks: z.array(z.string()),
  marks: marksOfGo.nullable().describe('null: the judge ranked the go and wrote nothing else about it.'),
});

const publishedCard = z.object({
  seatId: id,
  seatOrder: ordinal,
  judge: z.string(),
  revision: ordinal,
  goes: z.array(cardGo),
});

const classHead = z.object({
  id,
  showId: id,
  number: ordinal,
  name: z.string(),
  discipline: z.string(),
  division: z.string().nullable(),
});

export const resultAnswer = z
  .object({
    practice,
    class: classHead,
    posting: postingSummary,
    rule: z.array(z.string()).describe('How the class is placed, in sentences.'),
    results: z.array(oneResult),
    didNotGo: z.array(absentLine),
    sheet: sheetOfResult,
    cards: z.array(publishedCard).describe('Empty where the show does not publish cards, or not yet.'),
    caution: z.string(),
  })
  .describe('The posted result as everyone may read it.');

export const openTieAnswer = z.object({
  judge: id.nullable(),
  place: ordinal,
  classEntryIds: z.array(id),
  backNumbers: z.array(ordinal),
  waitsFor: z.enum(['run-off', 'chain-ended']),
  sentence: z.string(),
  mayBeRuled: z.array(z.enum(rulingKinds)),
});

export const tabulationAnswer = z
  .object({
    practice,
    class: classHead,
    state: z.string(),
    cardsMissing: z.array(
      z.object({
        seatId: id,
        seatOrder: ordinal,
        judge: z.string(),
        why: z.enum(['not-signed', 'to-be-amended']),
      }),
    ),
    rule: z.array(z.string()),
    results: z.array(oneResult),
    didNotGo: z.array(absentLine),
    cards: z
      .array(publishedCard)
      .describe(
        'The signed cards, so that the judges can be read side by side; none is hidden from the office.',
      ),
    openTies: z.array(openTieAnswer),
    ownTies: z
      .array(z.object({ seatId: id, judge: z.string(), backNumbers: z.array(ordinal) }))
      .describe("Ties on one judge's own card: they are hers to break."),
    changedSincePosting: z.boolean(),
    body: z.unknown().describe('What would be posted: typed reasons and all.'),
  })
  .describe('The merged result of the cards that are signed so far. Nothing is posted by reading it.');

export const postingsAnswer = z.object({ practice, postings: z.array(postingSummary) });
export const postingAnswer = postingSummary.extend({
  practice,
  body: z.unknown().describe('The posting as it was hashed; api-docs/guide.md says how to repeat it.'),
});

const entryResult = z.object({
  judge: judgeSeat.nullable().describe('null: the judges are merged.'),
  place: ordinal.nullable(),
  of: z.int(),
  tied: z.boolean(),
  total: number.nullable(),
  because: z.array(z.string()),
});

export const entryAnswer = z
  .object({
    practice,
    class: classHead,
    posting: postingSummary,
    backNumber: ordinal,
    name: z.string(),
    horse: z.string().nullable(),
    rule: z.array(z.string()).describe('How the class is placed, in sentences.'),
    results: z.array(entryResult),
    sheet: sheetOfResult,
    cards: z.array(publishedCard),
    history: z
      .array(
        z.object({
          ...{ id, version: ordinal, state: postingSummary.shape.state },
          ...{ reason: z.string().nullable(), postedAt: instant },
          results: z.array(entryResult),
        }),
      )
      .describe('What each posting of the class said of the entry, the first one first.'),
  })
  .describe(
    'One entry of a posted result: place, reasons, and what each judge gave where cards are published.',
  );

export const rulingsAnswer = z.object({ rulings: z.array(rulingAnswer) });

export const marginsQuery = z.strictObject({
  upTo: z.coerce
    .number()
    .int()
    .min(1)
    .max(50)
    .default(10)
    .describe('Pairs of neighbors, from first place down.'),
});

export const marginsAnswer = z
  .object({
    margins: z.array(
      z.object({
        judge: judgeSeat.nullable().describe('null: the judges are merged.'),
        place: ordinal,
        ahead: ordinal.describe('Back number.'),
        behind: ordinal.describe('Back number.'),
        change: z.unknown(),
        sentence: z.string(),
      }),
    ),
  })
  .describe('For each two neighbors the smallest change on one card that would have swapped them.');

export const agreementAnswer = z.object({
  agreement: z.unknown(),
  sentences: z.array(z.string()),
  judges: z
    .array(
      judgeSeat.extend({
        better: z.enum(['higher', 'lower']).describe('Is more better, or less (times)?'),
        goes: z
          .array(
            z.object({
              backNumber: ordinal,
              goPosition: ordinal.nullable().describe('From 1; null: not in the order of go.'),
              place: z.string().describe('Place on this card; tied entries hold the better place.'),
              score: number.nullable(),
            }),
          )
          .describe('In the order of go.'),
      }),
    )
    .describe('What each judge gave, in the order of the panel.'),
});

export const boardAnswer = z.object({
  show: z.object({ id, name: z.string(), place: z.string(), timeZone: z.string(), practice }),
  classes: z.array(
    z.object({
      id,
      number: ordinal,
      name: z.string(),
      ring: z.string().nullable(),
      scheduledAt: instant.nullable(),
      state: z.string(),
      cardsIn: z.int(),
      cardsExpected: z.int(),
      postingVersion: z.int().nullable(),
      postedAt: instant.nullable().describe('When it was posted last.'),
    }),
  ),
});

const likeThis = 'it must be a class id, a colon and a weight, as in 0198...:0.5';
const weightedClass = z
  .string()
  .regex(/^[0-9a-f-]{36}:\d{1,4}(\.\d{1,4})?$/, likeThis)
  .refine(
    (text) => (parseDecimal(text.slice(37))?.compare(0) ?? 0) > 0,
    'the weight must be a decimal of more than 0',
  )
  .transform((text) => {
    return { classId: text.slice(0, 36), weight: text.slice(37) };
  });

export const combinationQuery = z.strictObject({
  phase: z
    .union([weightedClass.transform((phase) => [phase]), z.array(weightedClass)], { error: likeThis })
    .refine((phases) => phases.length >= 2 && phases.length <= 20, 'name two classes or more, twenty at most')
    .refine(
      (phases) => new Set(phases.map(({ classId }) => classId)).size === phases.length,
      'a class stands in it twice',
    )
    .describe('Class id and weight, as `0198...:0.5`; repeat it for each class. The last one breaks ties.'),
  withoutPlace: z
    .enum(['not-placed', 'next', 'mean'])
    .default('not-placed')
    .describe('What an entry without a place in one of the classes counts as there. No rule book states it.'),
});

export const combinationAnswer = z
  .object({
    practice,
    phases: z.array(z.object({ classId: id, number: ordinal, name: z.string(), weight: number })),
    placings: z.array(placedLine.omit({ classEntryId: true })),
    unplaced: z.array(unplacedLine.omit({ classEntryId: true })),
  })
  .describe('Posted classes combined: places times weights, added; the least total is first.');
