/** A mark, an order, an undo, a settled conflict: kept on the phone, then shown, then sent. */
import type { CardFault } from '../../../engine/sheets/card-types.ts';
import { draftFaults } from '../../../engine/sheets/score-go.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import { isGoing, maneuversOf } from './card-content.ts';
import { signedContent } from './class-view.ts';
import type { DayClass } from './day-types.ts';
import { changeClass, changePart, type DeskRoom, isNotKept } from './desk-room.ts';
import type { Amendment, Choice, Conflict, WriteOutcome } from './desk-types.ts';
import { orderPart, type Writing, type Written } from './records.ts';
import type { StoreChange } from './store.ts';
import { blankWriting, changed, sameWritten, settled, undone } from './writing.ts';

interface Part {
  readonly classId: string;
  readonly part: string;
}

export function write(room: DeskRoom, at: Part, next: (kept: Written) => Written): Promise<WriteOutcome> {
  return changeWriting(room, at, (writing, day) => {
    const content = next(writing.content);
    const faults = at.part === orderPart ? [] : faultsOf(day, at.part, content as Go);
    if (faults.length > 0) return { ok: false, why: 'not-on-sheet', faults };
    return sameWritten(content, writing.content) ? writing : changed(writing, content, Date.now());
  });
}

export const undo = (room: DeskRoom, at: Part): Promise<WriteOutcome> =>
  changeWriting(room, at, (writing) => undone(writing, Date.now()) ?? { ok: false, why: 'nothing-to-undo' });

/** What the service does not take is put away: the go is again as it is there, and an undo brings it back. */
export const putAway = (room: DeskRoom, at: Part): Promise<WriteOutcome> =>
  changeWriting(room, at, (writing) =>
    writing.refused === null ? writing : changed({ ...writing, tried: [] }, writing.seen.content, Date.now()),
  );

type Refused = Extract<WriteOutcome, { ok: false }>;

async function changeWriting(
  room: DeskRoom,
  { classId, part }: Part,
  next: (writing: Writing, day: DayClass) => Writing | Refused,
): Promise<WriteOutcome> {
  const day = room.mirror.onDesk(classId)?.day;
  if (day === undefined) return { ok: false, why: 'unknown-class' };
  const refused = mayNotBeWritten(day, part);
  if (refused !== undefined) return refused;
  try {
    const { outcome } = await changePart(room, async (change) => {
      if (await isSigned(change, classId)) return { outcome: { ok: false, why: 'signed' } as const };
      const kept = await change.objectStore('writings').get([classId, part]);
      const writing = next(kept ?? blankWriting(classId, part), day);
      if ('ok' in writing) return { outcome: writing };
      await change.objectStore('writings').put(writing);
      return { outcome: { ok: true } as const, writing };
    });
    if (outcome.ok) room.wake();
    return outcome;
  } catch (error) {
    if (isNotKept(error)) return { ok: false, why: 'not-kept' };
    throw error;
  }
}

function mayNotBeWritten(day: DayClass, part: string): Refused | undefined {
  if (day.withdrawn) return { ok: false, why: 'withdrawn' };
  if (part === orderPart) return undefined;
  const entry = day.entries.find(({ classEntryId }) => classEntryId === part);
  return entry !== undefined && isGoing(entry) ? undefined : { ok: false, why: 'not-going' };
}

export async function isSigned(change: StoreChange, classId: string): Promise<boolean> {
  const kept = await change.objectStore('classes').get(classId);
  const signatures = await change.objectStore('signatures').index('ofClass').getAll(classId);
  signatures.sort((a, b) => a.madeAt - b.madeAt);
  if (kept === undefined) return false;
  return signedContent({ day: kept.day, writings: new Map(), signatures, sending: null }) !== undefined;
}

const faultsOf = (day: DayClass, entry: string, go: Go): CardFault[] =>
  draftFaults(day.sheet, maneuversOf(day), go).map((fault) => ({
    ...fault,
    at: `/goes/${entry}${fault.at}`,
    entry,
  }));

/**
 * A signature that waits holds what was mine. Where something else shall stand it is taken back: it was never sent,
 * because conflicts hold it, and the judge signs again.
 */
export async function settle(room: DeskRoom, conflict: Conflict, choice: Choice): Promise<WriteOutcome> {
  const { classId } = conflict;
  const part = conflict.kind === 'go' ? conflict.classEntryId : orderPart;
  const day = room.mirror.onDesk(classId)?.day;
  if (day === undefined) return { ok: false, why: 'unknown-class' };
  try {
    const outcome = await changeClass(room, classId, async (change): Promise<WriteOutcome> => {
      const writing = await change.objectStore('writings').get([classId, part]);
      if (writing === undefined || writing.conflict === null) return { ok: false, why: 'no-conflict' };
      if (writing.conflict.signed && choice.take !== 'theirs') return { ok: false, why: 'signed' };
      const content = contentFor(choice, writing);
      const faults = conflict.kind === 'go' ? faultsOf(day, part, content as Go) : [];
      if (faults.length > 0) return { ok: false, why: 'not-on-sheet', faults };
      await change.objectStore('writings').put(settled(writing, content, Date.now()));
      if (!sameWritten(content, writing.content)) await takeBackSignatures(change, classId);
      return { ok: true };
    });
    if (outcome.ok) room.wake();
    return outcome;
  } catch (error) {
    if (isNotKept(error)) return { ok: false, why: 'not-kept' };
    throw error;
  }
}

function contentFor(choice: Choice, { content, conflict }: Writing): Written {
  switch (choice.take) {
    case 'mine':
      return content;
    case 'theirs':
      return conflict?.theirs ?? {};
    case 'merged':
      return choice.go;
  }
}

/** Those that wait; what was received stands. */
export async function takeBackSignatures(change: StoreChange, classId: string): Promise<void> {
  const shelf = change.objectStore('signatures');
  for (const signature of await shelf.index('ofClass').getAll(classId)) {
    if (signature.state === 'waiting') await shelf.put({ ...signature, state: 'taken-back' });
  }
}

/** An amendment as far as it is written; `null` throws it away. */
export async function keepAmendment(
  room: DeskRoom,
  classId: string,
  amendment: Amendment | null,
): Promise<WriteOutcome> {
  try {
    await changeClass(room, classId, async (change) => {
      const shelf = change.objectStore('amendments');
      await (amendment === null ? shelf.delete(classId) : shelf.put({ classId, ...amendment }));
    });
    return { ok: true };
  } catch (error) {
    if (isNotKept(error)) return { ok: false, why: 'not-kept' };
    throw error;
  }
}

/** A signature that was refused is looked at and put away; the card is as it was before it. */
export async function dismissSignature(room: DeskRoom, classId: string): Promise<WriteOutcome> {
  try {
    await changeClass(room, classId, async (change) => {
      const shelf = change.objectStore('signatures');
      for (const signature of await shelf.index('ofClass').getAll(classId)) {
        if (signature.state === 'refused') await shelf.put({ ...signature, state: 'taken-back' });
      }
    });
    return { ok: true };
  } catch (error) {
    if (isNotKept(error)) return { ok: false, why: 'not-kept' };
    throw error;
  }
}
