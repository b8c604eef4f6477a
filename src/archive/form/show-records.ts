/** The show and its program, as they stand in an archive. A name is `null` where the archive is without names. */
import { z } from 'zod';
import {
  code,
  coneLetter,
  nameText,
  patternDrawing,
  placingRule,
  scoreSheet,
  spokenAs,
  videoAddress,
  wording,
} from '../../office/offline.ts';
import { asKept, day, id, instant, ordinal, sha256 } from './spellings.ts';

const name = asKept(nameText);
const words = asKept(wording);
/** Left out of an archive without names. */
const withheldName = name.nullable();
/** Not in archives of the first services; null where it is not said, or without names. */
const spoken = asKept(spokenAs).nullable().exactOptional();
const publicName = z.enum(['full', 'first-name-and-initial', 'back-number']);

export const show = z.strictObject({
  id,
  name,
  place: name,
  timeZone: z.string().min(1).max(64),
  firstDay: day,
  lastDay: day,
  minorPublicName: publicName,
  kind: z.enum(['official', 'practice']),
  rehearsalOfId: id.nullable(),
  version: ordinal,
  createdAt: instant,
});

export const ring = z.strictObject({ id, showId: id, name, createdAt: instant });
export const person = z.strictObject({ id, showId: id, name: withheldName, createdAt: instant });

export const sheet = z.strictObject({
  id,
  code,
  version: ordinal,
  definition: scoreSheet,
  hash: sha256,
  origin: z.enum(['bundled', 'added']),
  createdAt: instant,
});

export const pattern = z.strictObject({
  id,
  showId: id,
  name,
  version: ordinal,
  drawing: patternDrawing.nullable().exactOptional().describe('Not in archives of the first services.'),
  createdAt: instant,
});

export const maneuver = z.strictObject({
  patternId: id,
  position: ordinal,
  name,
  description: words.nullable(),
  startCone: coneLetter.nullable(),
  endCone: coneLetter.nullable(),
  gait: name.nullable(),
  leadOrDiagonal: z.enum(['left', 'right']).nullable(),
  coefficient: z.string().regex(/^\d{1,6}(\.\d{1,3})?$/),
});

export const showClass = z.strictObject({
  id,
  showId: id,
  number: ordinal,
  name,
  discipline: name,
  division: name.nullable(),
  youth: z.boolean(),
  sheetId: id,
  patternId: id.nullable(),
  placingRule,
  placesGiven: ordinal.nullable(),
  ringId: id.nullable(),
  day: day.nullable(),
  scheduledAt: instant.nullable(),
  publishCards: z.enum(['never', 'with-posting', 'when-official']),
  drawSeed: name,
  status: z.enum(['open', 'cancelled', 'combined']),
  openedAt: instant.nullable(),
  calledAt: instant.nullable(),
  version: ordinal,
  createdAt: instant,
});

export const seat = z.strictObject({
  id,
  showId: id,
  classId: id,
  personId: id,
  seatOrder: ordinal,
  role: z.enum(['judge', 'referee']),
  callOrder: ordinal.nullable(),
  tieOrder: ordinal.nullable(),
  withdrawnAt: instant.nullable(),
  withdrawnWhy: words.nullable(),
  replacesId: id.nullable(),
  createdAt: instant,
});

export const exhibitor = z.strictObject({
  id,
  showId: id,
  name: withheldName,
  bornOn: day.nullable(),
  spokenAs: spoken,
  publicName: publicName.nullable(),
  erasedAt: instant.nullable(),
  version: ordinal,
  createdAt: instant,
});

export const horse = z.strictObject({
  id,
  showId: id,
  name: withheldName,
  registrationNumber: withheldName,
  spokenAs: spoken,
  createdAt: instant,
});

export const owner = z.strictObject({ id, showId: id, name: withheldName, createdAt: instant });

export const entry = z.strictObject({
  id,
  showId: id,
  backNumber: ordinal,
  exhibitorId: id,
  horseId: id,
  ownerId: id.nullable(),
  version: ordinal,
  createdAt: instant,
});

export const classEntry = z.strictObject({
  id,
  showId: id,
  classId: id,
  entryId: id,
  goPosition: ordinal.nullable(),
  status: z.enum(['entered', 'checked-in', 'scratched', 'no-show', 'excused', 'moved']),
  statusReason: words.nullable(),
  addedLate: z.boolean(),
  videoUrl: videoAddress
    .nullable()
    .exactOptional()
    .describe('Not in archives of the first services; null without names.'),
  createdAt: instant,
  changedAt: instant,
});

export const relation = z.strictObject({
  id,
  showId: id,
  kind: z.enum(['split', 'combined']),
  fromClassId: id,
  toClassId: id,
  classEntryIds: z.array(id),
  reason: words.nullable(),
  relatedAt: instant,
});

export const draw = z.strictObject({
  id,
  classId: id,
  number: ordinal,
  kind: z.enum(['drawn', 'redrawn', 'by-hand', 'late-add']),
  seed: name.nullable(),
  enoughGap: ordinal.nullable(),
  leastGap: ordinal.nullable(),
  classEntryIds: z.array(id),
  reason: words.nullable(),
  drawnAt: instant,
});

export const consent = z.strictObject({
  id,
  showId: id,
  exhibitorId: id,
  publicName,
  givenBy: z.enum(['exhibitor', 'parent', 'guardian']),
  givenOn: day,
  how: z.enum(['signed-form', 'e-mail', 'in-person']),
  recordedBy: id,
  recordedAt: instant,
});
