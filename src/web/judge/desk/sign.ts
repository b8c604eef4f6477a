/** The judge signs on her phone, with or without signal: the signature is on the disk before the screen says so. */
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import { canonicalText } from '../../../evidence/index.ts';
import { type Amending, cardStatement, type PhoneKey, signCard } from '../../../phone/index.ts';
import { checkContent, contentFromWritings, waitingSignature } from './card-content.ts';
import { signedContent } from './class-view.ts';
import type { DayClass } from './day-types.ts';
import { changeClass, type DeskRoom, isNotKept } from './desk-room.ts';
import type { SignCheck, SignOutcome } from './desk-types.ts';
import type { KeptSignature } from './records.ts';
import type { StoreChange } from './store.ts';

export interface Signing {
  readonly room: DeskRoom;
  readonly key: PhoneKey;
  readonly showId: string;
}

/** Something changed between reading and signing (the other phone, another tab): it is looked at again. */
const attempts = 3;

export function checkSignable({ mirror }: Pick<DeskRoom, 'mirror'>, classId: string): SignCheck | undefined {
  const one = mirror.onDesk(classId);
  if (one === undefined) return undefined;
  const conflicts = [...one.writings.values()].filter(({ conflict }) => conflict !== null).length;
  return checkContent(one.day, contentFromWritings(one.day, one.writings.values()), conflicts);
}

export async function signClass(signing: Signing, classId: string): Promise<SignOutcome> {
  for (let attempt = 1; attempt <= attempts; attempt += 1) {
    const one = signing.room.mirror.onDesk(classId);
    const check = checkSignable(signing.room, classId);
    if (one === undefined || check === undefined) return { ok: false, why: 'unknown-class' };
    if (one.day.withdrawn) return { ok: false, why: 'withdrawn' };
    if (signedContent(one) !== undefined) return { ok: false, why: 'already-signed' };
    if (!check.mayBeSigned) return { ok: false, why: 'not-signable', check };
    const made = await makeSignature(signing, { day: one.day, content: check.content });
    const kept = await keep(signing.room, made, async (change) => {
      const writings = await change.objectStore('writings').index('ofClass').getAll(classId);
      const day = (await change.objectStore('classes').get(classId))?.day;
      if (day === undefined || (await lastSigned(change, day)) !== undefined) return false;
      return canonicalText(contentFromWritings(day, writings)) === canonicalText(check.content);
    });
    if (kept !== 'changed') return kept;
    await signing.room.mirror.loadClass(classId);
  }
  return { ok: false, why: 'not-kept' };
}

export interface AskedAmendment {
  readonly classId: string;
  readonly content: CardContent;
  readonly reason: string;
}

/** Of the last signature, though it may not have been received yet: they are sent one after the other. */
export async function amendClass(signing: Signing, asked: AskedAmendment): Promise<SignOutcome> {
  const { classId, content, reason } = asked;
  const one = signing.room.mirror.onDesk(classId);
  if (one === undefined) return { ok: false, why: 'unknown-class' };
  const { day } = one;
  if (day.withdrawn) return { ok: false, why: 'withdrawn' };
  const last = waitingSignature(one.signatures) ?? day.card.signed;
  if (last === null) return { ok: false, why: 'not-signed' };
  if (reason.trim() === '') return { ok: false, why: 'reason-missing' };
  const check = checkContent(day, content, 0);
  if (!check.mayBeSigned) return { ok: false, why: 'not-signable', check };
  const { revision, contentHash } = last;
  const made = await makeSignature(signing, { day, content, amending: { revision, contentHash, reason } });
  if (made.contentHash === contentHash) return { ok: false, why: 'changes-nothing' };
  const kept = await keep(signing.room, made, async (change) => {
    const now = (await change.objectStore('classes').get(classId))?.day;
    if (now === undefined || (await lastSigned(change, now)) !== contentHash) return false;
    await change.objectStore('amendments').delete(classId);
    return true;
  });
  return kept === 'changed' ? { ok: false, why: 'not-kept' } : kept;
}

/** Hash of what was signed last; `undefined`: nothing was. */
async function lastSigned(change: StoreChange, { classId, card }: DayClass): Promise<string | undefined> {
  const signatures = await change.objectStore('signatures').index('ofClass').getAll(classId);
  signatures.sort((a, b) => a.madeAt - b.madeAt);
  return waitingSignature(signatures)?.contentHash ?? card.signed?.contentHash;
}

/** `changed`: what was signed is no longer what stands, and nothing was kept. */
async function keep(
  room: DeskRoom,
  made: KeptSignature,
  stillHolds: (change: StoreChange) => Promise<boolean>,
): Promise<SignOutcome | 'changed'> {
  try {
    const kept = await changeClass(room, made.classId, async (change) => {
      if (!(await stillHolds(change))) return false;
      const others = await change.objectStore('signatures').index('ofClass').getAll(made.classId);
      const madeAt = Math.max(0, ...others.map((one) => one.madeAt)) + 1;
      await change.objectStore('signatures').put({ ...made, madeAt });
      return true;
    });
    if (!kept) return 'changed';
    room.wake();
    return { ok: true, revision: made.revision };
  } catch (error) {
    if (isNotKept(error)) return { ok: false, why: 'not-kept' };
    throw error;
  }
}

interface ToSign {
  readonly day: DayClass;
  readonly content: CardContent;
  readonly amending?: Amending;
}

async function makeSignature(
  { key, showId }: Signing,
  { day, content, amending }: ToSign,
): Promise<KeptSignature> {
  const { classId, seatId, sheetName: sheet, card } = day;
  const signedAt = aMomentThatIsTaken(new Date());
  const statement = cardStatement(
    { id: card.cardId, showId, classId, seatId, sheet },
    { content, signedAt, ...(amending === undefined ? {} : { amending }) },
  );
  const { revision, reason } = statement;
  return {
    ...{ id: crypto.randomUUID(), classId, revision, reason, content },
    jws: await signCard(key, statement),
    contentHash: await hashOf(canonicalText(content)),
    ...{ signedAt: statement.signedAt, madeAt: 0 },
    ...{ state: 'waiting', problem: null, differences: 0 },
  };
}

/** The form of a statement takes the years 2000 to 2199. A phone that lost its clock says 1970, and must sign all the same. */
function aMomentThatIsTaken(clock: Date): Date {
  const [first, last] = [Date.UTC(2000, 0, 1), Date.UTC(2199, 11, 31)];
  return new Date(Math.min(Math.max(clock.getTime(), first), last));
}

async function hashOf(text: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
