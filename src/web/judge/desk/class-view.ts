/** What is kept of one class, told as the screen shows it. */
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import { contentFromWritings, waitingSignature } from './card-content.ts';
import type { CardOrder, DayClass } from './day-types.ts';
import type {
  CardState,
  Conflict,
  GoOnDesk,
  OrderOnDesk,
  SignatureHere,
  WrittenState,
} from './desk-types.ts';
import { type KeptSignature, orderPart, type Writing } from './records.ts';
import { isUnsent } from './store.ts';
import { together } from './together.ts';
import { sameWritten } from './writing.ts';

export interface ClassOnDesk {
  readonly day: DayClass;
  readonly writings: ReadonlyMap<string, Writing>;
  /** In the order in which they were made. */
  readonly signatures: readonly KeptSignature[];
  /** The part that is being sent this very moment; `null`: none. */
  readonly sending: string | null;
}

/** The content that was signed last, here or elsewhere; `undefined`: the card is open. */
export function signedContent({ day, signatures }: ClassOnDesk): CardContent | undefined {
  return waitingSignature(signatures)?.content ?? day.card.signed?.content;
}

export const contentOnDesk = (one: ClassOnDesk): CardContent =>
  signedContent(one) ?? contentFromWritings(one.day, one.writings.values());

export function goOnDesk(one: ClassOnDesk, classEntryId: string): GoOnDesk {
  const signed = signedContent(one);
  if (signed !== undefined) return { go: signed.goes[classEntryId] ?? {}, ...asSigned };
  const writing = one.writings.get(classEntryId);
  return { go: (writing?.content ?? {}) as Go, ...standingOf(writing, one.sending) };
}

export function orderOnDesk(one: ClassOnDesk): OrderOnDesk {
  const signed = signedContent(one);
  if (signed !== undefined) {
    const { goes: _, ...order } = signed;
    return { order, ...asSigned };
  }
  const writing = one.writings.get(orderPart);
  return { order: (writing?.content ?? {}) as CardOrder, ...standingOf(writing, one.sending) };
}

const asSigned = { state: { is: 'signed' }, undoable: 0 } as const;

const standingOf = (writing: Writing | undefined, sending: string | null) => ({
  state: stateOfWriting(writing, sending),
  undoable: writing?.before.length ?? 0,
});

function stateOfWriting(writing: Writing | undefined, sending: string | null): WrittenState {
  if (writing === undefined) return { is: 'blank' };
  if (writing.conflict !== null) return { is: 'conflict' };
  if (writing.refused !== null) return { is: 'refused', problem: writing.refused };
  if (isUnsent(writing)) return { is: sending === writing.part ? 'on-its-way' : 'only-on-this-phone' };
  return sameWritten(writing.content, {}) ? { is: 'blank' } : { is: 'at-the-service' };
}

export function cardStateOf(one: ClassOnDesk): CardState {
  const { day, signatures, sending } = one;
  const writings = [...one.writings.values()];
  const conflicts = writings.filter(({ conflict }) => conflict !== null);
  const waiting = waitingSignature(signatures);
  if (waiting !== undefined) {
    return { is: 'signed-on-this-phone', signature: signatureHere(waiting, conflicts.length > 0) };
  }
  const last = signatures.at(-1);
  if (last?.state === 'refused' && last.problem !== null) {
    const { problem, differences } = last;
    return { is: 'signature-refused', signature: signatureHere(last, false), problem, differences };
  }
  if (day.card.signed !== null) {
    const { revision, receivedAt } = day.card.signed;
    return { is: 'signed-and-received', revision, receivedAt, leftOver: conflicts.length };
  }
  if (conflicts.length > 0) return { is: 'conflict', count: conflicts.length };
  const refused = writings.find((writing) => writing.refused !== null)?.refused;
  if (refused) return { is: 'refused', problem: refused };
  const unsent = writings.filter(isUnsent).length;
  if (unsent > 0) return { is: sending === null ? 'only-on-this-phone' : 'on-its-way', unsent };
  const isBlank = writings.every(({ content }) => sameWritten(content, {}));
  return isBlank ? { is: 'blank' } : { is: 'at-the-service' };
}

const signatureHere = (
  { revision, signedAt, reason }: KeptSignature,
  heldByConflicts: boolean,
): SignatureHere => ({ revision, signedAt, reason, heldByConflicts });

export function conflictsOf({ day, writings }: ClassOnDesk): Conflict[] {
  return [...writings.values()].flatMap((writing): Conflict[] => {
    const { classId, part, content, conflict, seen } = writing;
    if (conflict === null) return [];
    const { version, savedAt, foundAt, signed } = conflict;
    const head = { classId, theirVersion: version, theirSavedAt: savedAt, foundAt, theirsIsSigned: signed };
    if (part === orderPart) {
      const theirs = conflict.theirs as CardOrder | null;
      return [{ kind: 'order', ...head, mine: content as CardOrder, theirs }];
    }
    const backNumber = day.entries.find(({ classEntryId }) => classEntryId === part)?.backNumber ?? 0;
    const [mine, theirs] = [content as Go, conflict.theirs as Go | null];
    const both = theirs === null || signed ? null : together(seen.content as Go, mine, theirs);
    return [{ kind: 'go', ...head, classEntryId: part, backNumber, mine, theirs, together: both }];
  });
}
