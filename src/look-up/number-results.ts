/** One entry with all that was posted of it, class by class, as its family reads it. */
import type { Speech } from '../engine/sentences/speech.ts';
import { readPublicPattern } from '../office/index.ts';
import type { Database } from '../platform/database.ts';
import { Problem, type ProblemCode } from '../platform/problems/index.ts';
import { readEntryResult } from '../results/index.ts';
import type { ClassLine } from './class-lines.ts';
import type { LookUp } from './look-up.ts';

interface Asked {
  readonly showId: string;
  readonly backNumber: number;
  readonly speech: Speech;
}

/** Throws not_found. */
export async function readNumberResults(db: Database, lookUp: LookUp, { showId, backNumber, speech }: Asked) {
  const { classes, ...head } = await lookUp.number(showId, backNumber);
  const read = classes.map(async ({ results: _, ...line }) => ({
    ...line,
    posted: await postedOf(db, line, speech),
    pattern: await unless(readPublicPattern(db, line.classId), 'not_found', 'pattern_not_public'),
  }));
  return { ...head, classes: await Promise.all(read) };
}

async function postedOf(
  db: Database,
  { classId, classEntryId, posting }: Omit<ClassLine, 'results'>,
  speech: Speech,
) {
  if (posting === null) return null;
  const asked = { classId, entry: { classEntryId }, speech };
  const found = await unless(readEntryResult(db, asked), 'not_found', 'class_not_posted');
  if (found === null) return null;
  const { rule, results, sheet, history, cards } = found;
  return {
    ...{ rule, results, sheet, history },
    cards: cards.map(({ goes: [go], ...card }) => ({ ...card, go: go === undefined ? null : goOf(go) })),
  };
}

type Go = Awaited<ReturnType<typeof readEntryResult>>['cards'][number]['goes'][number];

/** The number is the entry's, and the figures stand in `marks`: the sentences that tell them again are left out. */
const goOf = ({ place, score, remarks, marks }: Go) => ({ place, score, remarks, marks });

/** `null` where it is refused for one of these reasons: then there is nothing to show of it. */
async function unless<Found>(
  reading: Promise<Found>,
  ...codes: readonly ProblemCode[]
): Promise<Found | null> {
  try {
    return await reading;
  } catch (error) {
    if (error instanceof Problem && codes.includes(error.code)) return null;
    throw error;
  }
}
