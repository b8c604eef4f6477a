/** One go of a card as its judge sees it: what she wrote, what it comes to so far, what is missing. */
import { z } from 'zod';
import type { Speech } from '../engine/sentences/speech.ts';
import { runningScore } from '../engine/sheets/score-go.ts';
import type { Go } from '../engine/sheets/types.ts';
import { type CardRecord, type EntryRecord, isBlank } from './card-record.ts';
import { goSchema } from './card-schemas.ts';
import { cardTeller, goFaultsShown, isStillMissing } from './fault-words.ts';
import { scoreView, scoreViewSchema } from './score-view.ts';

export const fieldFault = z.strictObject({
  field: z.string().describe('JSON pointer.'),
  message: z.string(),
});

export const goViewSchema = z
  .strictObject({
    classEntryId: z.string(),
    backNumber: z.int(),
    goPosition: z.int().nullable().describe('Place in the order of go; null: not drawn yet.'),
    status: z.string().describe('entered, checked-in, scratched, no-show, excused or moved.'),
    version: z.int().nullable().describe('Of the draft, as in the ETag; null: nothing saved, or signed.'),
    savedAt: z.string().nullable(),
    content: goSchema.nullable().describe('What the judge wrote; null: nothing yet.'),
    score: scoreViewSchema.nullable().describe('As far as it is written; null: nothing yet.'),
    missing: z.array(fieldFault).describe('What is not written yet, in words.'),
    faults: z.array(fieldFault).describe('What the sheet does not allow, in words.'),
  })
  .meta({ id: 'CardGo' });
export type GoView = z.output<typeof goViewSchema>;

/** What is shown of a go: a draft with its version, or a go of a signed card. */
export interface ShownGo {
  readonly content: Go;
  readonly version?: number;
  readonly savedAt?: Date;
}

interface GoToShow {
  readonly card: CardRecord;
  readonly entry: EntryRecord;
  readonly shown: ShownGo | undefined;
  readonly speech: Speech;
}

export function goView({ card, entry, shown, speech }: GoToShow): GoView {
  const { id: classEntryId, backNumber, goPosition, status } = entry;
  const head = { classEntryId, backNumber, goPosition, status };
  const version = shown?.version ?? null;
  const savedAt = shown?.savedAt?.toISOString() ?? null;
  if (shown === undefined || isBlank(shown.content)) {
    return { ...head, version, savedAt, content: null, score: null, missing: [], faults: [] };
  }
  const { maneuvers, sheet } = card;
  const reading = runningScore(sheet, maneuvers, shown.content);
  const teller = cardTeller({ maneuvers, entries: [entry] }, speech);
  const stands = reading.tier === 'not-placed';
  const missing = stands ? [] : reading.faults.filter(isStillMissing);
  const faults = reading.faults.filter((fault) => !isStillMissing(fault));
  return {
    ...head,
    version,
    savedAt,
    content: shown.content,
    score: scoreView({ ...reading, score: stands ? undefined : reading.score }),
    missing: goFaultsShown(missing, teller),
    faults: goFaultsShown(faults, teller),
  };
}
