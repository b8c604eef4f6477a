/**
 * Sends what one class has unsent, in order: the card is opened, its goes, its own order, its signatures. What the
 * service answers is kept before the next is sent, so that a phone that dies at any moment goes on where it was.
 */
import type { DayCard, DayClass } from './day-types.ts';
import { changeClass, changePart, type DeskRoom } from './desk-room.ts';
import type { ServiceProblem } from './desk-types.ts';
import { orderPart, type Writing, type Written } from './records.ts';
import { sendSignature } from './send-signature.ts';
import { type Answered, plainProblem, type RefusedProblem, type Service } from './service.ts';
import { isUnsent } from './store.ts';
import { faceSigned } from './take-day.ts';
import { cameIn, confronted, forgottenThere, trying } from './writing.ts';

/** Why no more can be sent now. `undefined`: all that can be sent is. */
export type Stopped = Extract<Answered, { readonly is: 'no-answer' | 'ended' }> | undefined;

export interface Sending {
  readonly room: DeskRoom;
  readonly service: Service;
  readonly isJudge: boolean;
}

export async function sendCard(sending: Sending, classId: string): Promise<Stopped> {
  const { room } = sending;
  for (;;) {
    const one = room.mirror.onDesk(classId);
    if (one === undefined) return undefined;
    const writing = nextWriting(one.writings.values());
    const signature = one.signatures.find(({ state }) => state === 'waiting');
    const held = [...one.writings.values()].some(({ conflict }) => conflict !== null);
    const mayBeSigned = signature !== undefined && !held && sending.isJudge;
    if (writing === undefined && !mayBeSigned) return undefined;
    const stopped = one.day.card.opened
      ? writing !== undefined
        ? await sendWriting(sending, one.day, writing)
        : mayBeSigned
          ? await sendSignature(sending, one.day, signature)
          : undefined
      : await openCard(sending, one.day);
    if (stopped !== undefined) return stopped;
  }
}

/** The goes in the order in which they were written, the order of ties behind them, since it is about their scores. */
function nextWriting(writings: Iterable<Writing>): Writing | undefined {
  const rank = ({ part, unsentSince = 0 }: Writing) => (part === orderPart ? Infinity : unsentSince);
  return [...writings].filter(maySend).sort((a, b) => (rank(a) < rank(b) ? -1 : 1))[0];
}

export const maySend = (writing: Writing): boolean =>
  isUnsent(writing) && writing.conflict === null && writing.refused === null;

async function openCard({ room, service }: Sending, day: DayClass): Promise<Stopped> {
  const { classId, seatId } = day;
  const path = `/v1/classes/${classId}/cards`;
  const answer = await service.ask({ method: 'POST', path, body: { seatId } });
  switch (answer.is) {
    case 'done': {
      const cardId = idIn(answer.body);
      if (cardId === undefined) return nobody;
      await keepCard(room, classId, (card) => ({ ...card, opened: true, cardId }));
      return undefined;
    }
    case 'refused':
      return refuseAll(room, classId, answer.problem);
    case 'not-modified':
      return nobody;
    default:
      return answer;
  }
}

/** An answer that is none of ours. */
const nobody = { is: 'no-answer', waitSeconds: 0 } as const;

const idIn = (body: unknown): string | undefined =>
  typeof body === 'object' && body !== null && 'id' in body && typeof body.id === 'string'
    ? body.id
    : undefined;

export const keepCard = (room: DeskRoom, classId: string, next: (card: DayCard) => DayCard): Promise<void> =>
  changeClass(room, classId, async (change) => {
    const kept = await change.objectStore('classes').get(classId);
    if (kept === undefined) return;
    const day = { ...kept.day, card: next(kept.day.card) };
    await change.objectStore('classes').put({ ...kept, day });
  });

/** The card itself cannot be opened, so nothing of it comes in. */
async function refuseAll(room: DeskRoom, classId: string, problem: ServiceProblem): Promise<undefined> {
  const refused = plainProblem(problem);
  await changeClass(room, classId, async (change) => {
    const writings = change.objectStore('writings');
    for (const writing of await writings.index('ofClass').getAll(classId)) {
      if (maySend(writing)) await writings.put({ ...writing, refused });
    }
    const signatures = change.objectStore('signatures');
    for (const signature of await signatures.index('ofClass').getAll(classId)) {
      if (signature.state !== 'waiting') continue;
      const isFirst = signature.revision === 1;
      await signatures.put(
        isFirst
          ? { ...signature, state: 'refused', problem: refused }
          : { ...signature, state: 'taken-back' },
      );
    }
  });
}

async function sendWriting(sending: Sending, day: DayClass, writing: Writing): Promise<Stopped> {
  const { room, service } = sending;
  const { classId, part } = writing;
  const { cardId } = day.card;
  const sent = writing.content;
  const put = (next: (kept: Writing) => Writing) => changeWriting(room, { classId, part }, next);
  await put(trying);
  tellSending(room, { classId, part });
  const answer = await service.ask({
    method: 'PUT',
    path: `/v1/cards/${cardId}/${part === orderPart ? 'order' : `goes/${part}`}`,
    body: sent,
    headers:
      writing.seen.version === null ? { 'if-none-match': '*' } : { 'if-match': `"${writing.seen.version}"` },
  });
  tellSending(room, null);
  switch (answer.is) {
    case 'done': {
      const version = versionIn(answer.body);
      if (version === undefined) return nobody;
      await put((kept) => cameIn(kept, sent, version));
      return undefined;
    }
    case 'refused':
      await refusedWriting(sending, { day, writing, problem: answer.problem });
      return undefined;
    case 'not-modified':
      return nobody;
    default:
      return answer;
  }
}

const versionIn = (body: unknown): number | undefined =>
  typeof body === 'object' && body !== null && 'version' in body && typeof body.version === 'number'
    ? body.version
    : undefined;

export function tellSending({ mirror, tabs }: DeskRoom, now: { classId: string; part: string } | null): void {
  mirror.sending.value = now;
  tabs.tell({ kind: 'sending', now });
}

async function changeWriting(
  room: DeskRoom,
  { classId, part }: Pick<Writing, 'classId' | 'part'>,
  next: (kept: Writing) => Writing,
): Promise<void> {
  await changePart(room, async (change) => {
    const kept = await change.objectStore('writings').get([classId, part]);
    if (kept === undefined) return {};
    const writing = next(kept);
    await change.objectStore('writings').put(writing);
    return { writing };
  });
}

interface RefusedWriting {
  readonly day: DayClass;
  readonly writing: Writing;
  readonly problem: RefusedProblem;
}

async function refusedWriting({ room }: Sending, { day, writing, problem }: RefusedWriting): Promise<void> {
  if (problem.code === 'draft_changed_meanwhile') {
    const current = draftIn(problem.current);
    return changeWriting(room, writing, (kept) =>
      current === undefined ? forgottenThere(kept) : confronted(kept, current, new Date()),
    );
  }
  const refused = plainProblem(problem);
  await changeWriting(room, writing, (kept) => ({ ...kept, refused, tried: [] }));
  const { signed } = day.card;
  if (problem.code === 'card_already_signed' && signed !== null) {
    await changeClass(room, day.classId, (change) => faceSigned(change, day.classId, signed));
  }
}

function draftIn(current: unknown): { version: number; savedAt: string; content: Written } | undefined {
  if (typeof current !== 'object' || current === null || !('content' in current)) return undefined;
  const version = versionIn(current);
  const savedAt = 'savedAt' in current && typeof current.savedAt === 'string' ? current.savedAt : '';
  if (version === undefined) return undefined;
  return { version, savedAt, content: current.content as Written };
}
