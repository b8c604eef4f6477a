/** What the service says of the day goes into the store, and never over what is unsent here. */
import { canonicalText } from '../../../evidence/index.ts';
import { isGoing } from './card-content.ts';
import type { Day, DayCard, DayClass } from './day-types.ts';
import { type KeptSignature, orderPart, type Writing } from './records.ts';
import { isUnsent, type StoreChange } from './store.ts';
import { blankWriting, type Heard, heard, inConflict, sameWritten } from './writing.ts';

/** Classes of the day, one class alone among them. Their order is that of the program where `whole`. */
export async function takeClasses(
  change: StoreChange,
  { classes }: Pick<Day, 'classes'>,
  whole: boolean,
): Promise<void> {
  const shelf = change.objectStore('classes');
  for (const [at, day] of classes.entries()) {
    const kept = await shelf.get(day.classId);
    const known = withKnownSignature(day, kept?.day.card.signed ?? null);
    if (whole || kept !== undefined) {
      await shelf.put({ classId: day.classId, at: whole ? at : (kept?.at ?? at), day: known });
      await takeCard(change, known);
    }
  }
  if (whole) await letClassesGo(change, new Set(classes.map(({ classId }) => classId)));
}

/** An answer that was made before the signature came in knows nothing of it. */
function withKnownSignature(day: DayClass, known: DayCard['signed']): DayClass {
  const { card } = day;
  if (known === null || (card.signed?.revision ?? 0) >= known.revision) return day;
  return { ...day, card: { ...card, opened: true, signed: known } };
}

/** She sits on that panel no more. What is unsent stays and can be read; the rest goes. */
async function letClassesGo(change: StoreChange, still: ReadonlySet<string>): Promise<void> {
  const shelf = change.objectStore('classes');
  for (const kept of await shelf.getAll()) {
    const { classId } = kept;
    if (still.has(classId)) continue;
    const writings = await change.objectStore('writings').index('ofClass').getAll(classId);
    const signatures = await change.objectStore('signatures').index('ofClass').getAll(classId);
    const hasWork = writings.some(isUnsent) || signatures.some(({ state }) => state === 'waiting');
    if (hasWork) {
      await shelf.put({ ...kept, day: { ...kept.day, withdrawn: true } });
      continue;
    }
    await shelf.delete(classId);
    await change.objectStore('amendments').delete(classId);
    for (const { part } of writings) await change.objectStore('writings').delete([classId, part]);
    for (const { id } of signatures) await change.objectStore('signatures').delete(id);
  }
}

async function takeCard(change: StoreChange, day: DayClass): Promise<void> {
  const now = new Date();
  const { classId, card } = day;
  for (const draft of card.goes) await takeDraft(change, { classId, part: draft.classEntryId, draft, now });
  if (card.order !== null) await takeDraft(change, { classId, part: orderPart, draft: card.order, now });
  if (card.signed !== null) await takeSigned(change, day, card.signed);
  await tryAgainWhoGoes(change, day);
}

interface ToTake {
  readonly classId: string;
  readonly part: string;
  readonly draft: Heard;
  readonly now: Date;
}

async function takeDraft(change: StoreChange, { classId, part, draft, now }: ToTake): Promise<void> {
  const shelf = change.objectStore('writings');
  const { version, savedAt, content } = draft;
  const writing = (await shelf.get([classId, part])) ?? blankWriting(classId, part);
  const taken = heard(writing, { version, savedAt, content }, now);
  if (taken !== writing) await shelf.put(taken);
}

/** The card is signed: by this phone, whose answer was lost, or by another, or it came in on paper. */
async function takeSigned(
  change: StoreChange,
  { classId }: DayClass,
  signed: NonNullable<DayCard['signed']>,
): Promise<void> {
  const signatures = await change.objectStore('signatures').index('ofClass').getAll(classId);
  const isOurs = ({ state, revision, contentHash }: KeptSignature) =>
    state === 'waiting' && revision === signed.revision && contentHash === signed.contentHash;
  const ours = signatures.find(isOurs);
  for (const signature of signatures) {
    const came = signature.state === 'waiting' && ours !== undefined && signature.madeAt <= ours.madeAt;
    if (came) await change.objectStore('signatures').put({ ...signature, state: 'received' });
  }
  // While a signature of this phone waits, what is written belongs to it: the service decides about that one first.
  const stillWaits = signatures.some((one) => one.state === 'waiting' && one.madeAt > (ours?.madeAt ?? 0));
  if (!stillWaits) await faceSigned(change, classId, signed);
}

/** What was written here and is not on the signed card is shown beside it. */
export async function faceSigned(
  change: StoreChange,
  classId: string,
  { content, receivedAt }: NonNullable<DayCard['signed']>,
): Promise<void> {
  const { goes, ...order } = content;
  const shelf = change.objectStore('writings');
  for (const writing of await shelf.index('ofClass').getAll(classId)) {
    if (!isUnsent(writing)) continue;
    const theirs = writing.part === orderPart ? order : (goes[writing.part] ?? {});
    const faced = sameWritten(theirs, writing.content)
      ? asSent(writing)
      : againstSigned(writing, receivedAt, theirs);
    if (canonicalText(faced) !== canonicalText(writing)) await shelf.put(faced);
  }
}

function asSent(writing: Writing): Writing {
  const { unsentSince: _, ...rest } = writing;
  return { ...rest, tried: [], conflict: null, refused: null };
}

const againstSigned = (writing: Writing, savedAt: string, theirs: Writing['content']): Writing =>
  writing.conflict?.signed === true
    ? writing
    : inConflict(
        { ...writing, refused: null },
        { theirs, version: null, savedAt, foundAt: new Date().toISOString(), signed: true },
      );

/** An entry that was taken out and goes after all: what was refused for it may come in now. */
async function tryAgainWhoGoes(change: StoreChange, { classId, entries }: DayClass): Promise<void> {
  const going = new Set(entries.filter(isGoing).map(({ classEntryId }) => classEntryId));
  const shelf = change.objectStore('writings');
  for (const writing of await shelf.index('ofClass').getAll(classId)) {
    if (writing.refused?.code === 'entry_not_going' && going.has(writing.part)) {
      await shelf.put({ ...writing, refused: null });
    }
  }
}
