/**
 * A late entry at the desk: exhibitor, horse, back number and classes out of one form. Each step that is done stays
 * done: whatever fails in between, the form is sent again and goes on from there, and nothing is there twice.
 */
import type { Answer } from '../../shared/api.ts';
import { ask, type Outcome, type Refused } from '../ask.ts';

export interface LateEntry {
  readonly exhibitor: { readonly id: string } | { readonly name: string; readonly bornOn: string | null };
  readonly horse: { readonly id: string } | { readonly name: string };
  readonly backNumber: number;
  readonly classIds: readonly string[];
  /** Needed where the order of go is drawn. */
  readonly reason: string;
}

/** What is done of it so far. */
export interface Made {
  readonly exhibitor?: { readonly id: string; readonly version: number; readonly as: string };
  readonly horse?: { readonly id: string; readonly as: string };
  readonly entry?: { readonly id: string; readonly version: number; readonly as: string };
  readonly classIds?: readonly string[];
}

export type Step = 'exhibitor' | 'horse' | 'entry' | 'classes';

export interface LateEntryOutcome {
  readonly made: Made;
  /** `undefined`: all of it is done. */
  readonly refused: { readonly step: Step; readonly classId?: string; readonly why: Refused } | undefined;
}

type Exhibitor = Answer<'/v1/shows/{showId}/exhibitors', 'post'>;
type Horse = Answer<'/v1/shows/{showId}/horses', 'post'>;
type Entry = Answer<'/v1/shows/{showId}/entries', 'post'>;

/** Never rejects. `known`: what an earlier sending of the same form made. */
export async function sendLateEntry(showId: string, late: LateEntry, known: Made): Promise<LateEntryOutcome> {
  const show = `/v1/shows/${showId}`;
  let made = known;
  const exhibitor = await exhibitorOf(show, late, made);
  if (!exhibitor.ok) return { made, refused: { step: 'exhibitor', why: exhibitor } };
  made = { ...made, exhibitor: exhibitor.body };
  const horse = await horseOf(show, late, made);
  if (!horse.ok) return { made, refused: { step: 'horse', why: horse } };
  made = { ...made, horse: horse.body };
  const ids = { exhibitorId: exhibitor.body.id, horseId: horse.body.id };
  const entry = await entryOf(show, { backNumber: late.backNumber, ...ids }, made);
  if (!entry.ok) return { made, refused: { step: 'entry', why: entry } };
  return enterClasses(show, late, { ...made, entry: entry.body });
}

type Step1 = Promise<Outcome<NonNullable<Made['exhibitor']>>>;

async function exhibitorOf(show: string, { exhibitor }: LateEntry, { exhibitor: before }: Made): Step1 {
  const as = JSON.stringify(exhibitor);
  if (before?.as === as) return done(before);
  if ('id' in exhibitor) return done({ id: exhibitor.id, version: 0, as });
  // A name that was made a moment ago and is spelled anew is put right, not made again.
  const isOurs = before !== undefined && before.version > 0;
  const outcome = await ask<Exhibitor>(
    isOurs
      ? {
          ...{ method: 'PATCH', path: `${show}/exhibitors/${before.id}`, body: exhibitor },
          ifMatch: `"${before.version}"`,
        }
      : { method: 'POST', path: `${show}/exhibitors`, body: exhibitor },
  );
  return outcome.ok ? done({ id: outcome.body.id, version: outcome.body.version, as }) : outcome;
}

async function horseOf(
  show: string,
  { horse }: LateEntry,
  { horse: before }: Made,
): Promise<Outcome<NonNullable<Made['horse']>>> {
  const as = JSON.stringify(horse);
  if (before?.as === as) return done(before);
  if ('id' in horse) return done({ id: horse.id, as });
  const outcome = await ask<Horse>({ method: 'POST', path: `${show}/horses`, body: horse });
  return outcome.ok ? done({ id: outcome.body.id, as }) : outcome;
}

interface NewEntry {
  readonly backNumber: number;
  readonly exhibitorId: string;
  readonly horseId: string;
}

async function entryOf(
  show: string,
  body: NewEntry,
  { entry: before }: Made,
): Promise<Outcome<NonNullable<Made['entry']>>> {
  const as = JSON.stringify(body);
  if (before?.as === as) return done(before);
  const outcome = await ask<Entry>(
    before === undefined
      ? { method: 'POST', path: `${show}/entries`, body }
      : { method: 'PATCH', path: `${show}/entries/${before.id}`, body, ifMatch: `"${before.version}"` },
  );
  return outcome.ok ? done({ id: outcome.body.id, version: outcome.body.version, as }) : outcome;
}

/** Each class by itself: one that is closed keeps nobody out of the others. */
async function enterClasses(
  show: string,
  { classIds, reason }: LateEntry,
  made: Made,
): Promise<LateEntryOutcome> {
  const entered = [...(made.classIds ?? [])];
  let refused: LateEntryOutcome['refused'];
  for (const classId of classIds.filter((id) => !entered.includes(id))) {
    const body = { entryId: made.entry?.id, reason: reason.trim() === '' ? null : reason };
    const outcome = await ask({ method: 'POST', path: `${show}/classes/${classId}/entries`, body });
    if (outcome.ok || outcome.code === 'already_entered') entered.push(classId);
    else refused ??= { step: 'classes', classId, why: outcome };
  }
  return { made: { ...made, classIds: entered }, refused };
}

const done = <Body>(body: Body): Outcome<Body> => ({ ok: true, body, etag: undefined });
