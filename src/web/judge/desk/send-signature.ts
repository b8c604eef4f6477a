/** A signature, or an amendment, as the phone made it; what becomes of it is kept. */
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import type { DayCard, DayClass } from './day-types.ts';
import { changeClass } from './desk-room.ts';
import { type KeptSignature, orderPart, type Writing, type Written } from './records.ts';
import type { Sending, Stopped } from './send-card.ts';
import { plainProblem, type RefusedProblem } from './service.ts';
import type { StoreChange } from './store.ts';
import { faceSigned } from './take-day.ts';
import { blankWriting, inConflict } from './writing.ts';

export async function sendSignature(
  { room, service }: Sending,
  day: DayClass,
  signature: KeptSignature,
): Promise<Stopped> {
  const kind = signature.revision === 1 ? 'signatures' : 'amendments';
  const answer = await service.ask({
    method: 'POST',
    path: `/v1/cards/${day.card.cardId}/${kind}`,
    body: { jws: signature.jws },
    headers: { 'idempotency-key': signature.id },
  });
  const { classId } = day;
  switch (answer.is) {
    case 'done': {
      const signed = signedIn(answer.body, signature);
      if (signed === undefined) return { is: 'no-answer', waitSeconds: 0 };
      await changeClass(room, classId, (change) => receive(change, { signature, signed }));
      return undefined;
    }
    case 'refused':
      await changeClass(room, classId, (change) =>
        refuse(change, { day, signature, problem: answer.problem }),
      );
      return undefined;
    case 'not-modified':
      return { is: 'no-answer', waitSeconds: 0 };
    default:
      return answer;
  }
}

type SignedCard = NonNullable<DayCard['signed']>;

/** `undefined`: that is no answer of the service. */
function signedIn(body: unknown, signature: KeptSignature): SignedCard | undefined {
  if (typeof body !== 'object' || body === null || !('receivedAt' in body)) return undefined;
  const { revision, contentHash, signedAt, content, reason } = signature;
  return { revision, contentHash, signedAt, content, reason, receivedAt: String(body.receivedAt) };
}

async function receive(
  change: StoreChange,
  { signature, signed }: { readonly signature: KeptSignature; readonly signed: SignedCard },
): Promise<void> {
  const { classId } = signature;
  await change.objectStore('signatures').put({ ...signature, state: 'received' });
  const kept = await change.objectStore('classes').get(classId);
  if (kept === undefined) return;
  const card = { ...kept.day.card, signed };
  await change.objectStore('classes').put({ ...kept, day: { ...kept.day, card } });
}

interface RefusedSignature {
  readonly day: DayClass;
  readonly signature: KeptSignature;
  readonly problem: RefusedProblem;
}

/** The card is open again; what was signed after the refused one falls with it. */
async function refuse(change: StoreChange, { day, signature, problem }: RefusedSignature): Promise<void> {
  const shelf = change.objectStore('signatures');
  const { classId } = day;
  for (const one of await shelf.index('ofClass').getAll(classId)) {
    if (one.state === 'waiting' && one.madeAt > signature.madeAt)
      await shelf.put({ ...one, state: 'taken-back' });
  }
  const differences = problem.code === 'card_differs_from_draft' ? differencesIn(problem) : [];
  const kept = { problem: plainProblem(problem), differences: differences.length };
  await shelf.put({ ...signature, state: 'refused', ...kept });
  for (const one of differences) await face(change, { classId, content: signature.content, difference: one });
  if (day.card.signed !== null) await faceSigned(change, classId, day.card.signed);
}

/** As the service spells them. */
type Difference =
  | { readonly classEntryId: string; readonly draft: Go }
  | { readonly part: 'ownOrder' | 'ranking'; readonly draft: readonly (readonly string[])[] };

const differencesIn = ({ differences }: RefusedProblem): readonly Difference[] =>
  Array.isArray(differences) ? differences : [];

/** Her signature against what the other phone had saved: both are shown, and she chooses. */
async function face(
  change: StoreChange,
  asked: { readonly classId: string; readonly content: CardContent; readonly difference: Difference },
): Promise<void> {
  const { classId, content, difference } = asked;
  const part = 'part' in difference ? orderPart : difference.classEntryId;
  const shelf = change.objectStore('writings');
  const writing: Writing = (await shelf.get([classId, part])) ?? blankWriting(classId, part);
  const { goes, ...order } = content;
  const mine: Written = part === orderPart ? order : (goes[part] ?? {});
  const theirs: Written =
    'part' in difference ? { ...order, [difference.part]: difference.draft } : difference.draft;
  const found = { theirs, version: null, savedAt: null, foundAt: new Date().toISOString(), signed: false };
  await shelf.put(inConflict({ ...writing, content: mine, unsentSince: Date.now() }, found));
}
