/** Asks for the day, or for one class of it, and keeps what has changed. */
import { forgetRemarks } from '../go/waiting-remarks.ts';
import type { Day } from './day-types.ts';
import type { DeskRoom } from './desk-room.ts';
import type { ServiceProblem } from './desk-types.ts';
import { packAside } from './left-behind.ts';
import { type KeptPhone, thisPhone } from './records.ts';
import type { Stopped } from './send-card.ts';
import type { Service } from './service.ts';
import { change, phoneIn } from './store.ts';
import { takeClasses } from './take-day.ts';
import { takeBackSignatures } from './write.ts';

export interface AskingDay {
  readonly room: DeskRoom;
  readonly service: Service;
  readonly thumbprint: string;
}

const path = '/v1/phones/current/day';

/** The whole day. `gate`: this phone has no seats and never will. */
export async function askWholeDay(asking: AskingDay): Promise<Stopped | 'gate'> {
  const { room, service, thumbprint } = asking;
  const known = room.mirror.phone.peek();
  const etag = known?.thumbprint === thumbprint && known.ended === null ? known.etag : null;
  const answer = await service.ask({
    method: 'GET',
    path,
    ...(etag === null ? {} : { headers: { 'if-none-match': etag } }),
  });
  switch (answer.is) {
    case 'done': {
      if (!isDay(answer.body)) return { is: 'no-answer', waitSeconds: 0 };
      await keepDay(asking, answer.body, answer.etag);
      return undefined;
    }
    case 'not-modified':
      return undefined;
    case 'refused':
      return answer.problem.code === 'not_allowed' ? 'gate' : { is: 'no-answer', waitSeconds: 0 };
    default:
      return answer;
  }
}

async function keepDay({ room, thumbprint }: AskingDay, day: Day, etag: string | null): Promise<void> {
  const { store, mirror, tabs } = room;
  const kept: KeptPhone = {
    ...{ place: thisPhone, thumbprint, phone: day.phone, etag, ended: null },
    heardAt: new Date().toISOString(),
  };
  const isAnothers = await change(store, async (change) => {
    const before = await phoneIn(change);
    const isNewKey = before !== undefined && before.thumbprint !== thumbprint;
    const packed = isNewKey && (await pairedAnew(change, before, day));
    await takeClasses(change, day, true);
    await change.objectStore('phone').put(kept);
    return packed;
  });
  // They stand beside the store, and would go onto the card of whoever judges now.
  if (isAnothers) forgetRemarks();
  await mirror.loadAll();
  tabs.tell({ kind: 'all' });
}

/**
 * Another key. For the same judge the work goes on, but what the old key signed is signed again; the work of anybody
 * else is packed aside. Was it?
 */
async function pairedAnew(
  change: Parameters<typeof packAside>[0],
  before: KeptPhone,
  { phone }: Day,
): Promise<boolean> {
  const isSame =
    before.phone?.show.id === phone.show.id && before.phone.judge.personId === phone.judge.personId;
  if (!isSame) {
    await packAside(change, before);
    return true;
  }
  for (const { classId } of await change.objectStore('classes').getAll()) {
    await takeBackSignatures(change, classId);
  }
  return false;
}

/** One class, as often as somebody looks at it. */
export class ClassNews {
  readonly #asking: AskingDay;
  #last: { readonly classId: string; readonly etag: string | null } | undefined;

  constructor(asking: AskingDay) {
    this.#asking = asking;
  }

  async ask(classId: string): Promise<Stopped> {
    const { room, service } = this.#asking;
    const etag = this.#last?.classId === classId ? this.#last.etag : null;
    const answer = await service.ask({
      method: 'GET',
      path: `${path}?classId=${classId}`,
      ...(etag === null ? {} : { headers: { 'if-none-match': etag } }),
    });
    if (answer.is === 'no-answer' || answer.is === 'ended') return answer;
    if (answer.is !== 'done' || !isDay(answer.body)) return undefined;
    const { body } = answer;
    await change(room.store, (change) => takeClasses(change, body, false));
    this.#last = { classId, etag: answer.etag };
    await room.mirror.loadClass(classId);
    room.tabs.tell({ kind: 'classes', classIds: [classId] });
    return undefined;
  }
}

const isDay = (body: unknown): body is Day =>
  typeof body === 'object' &&
  body !== null &&
  'phone' in body &&
  'classes' in body &&
  Array.isArray(body.classes);

/** The service takes nothing of this phone any more: that is kept, so that it is known without signal too. */
export async function keepEnding({ room, thumbprint }: AskingDay, ended: ServiceProblem): Promise<void> {
  const { store, mirror, tabs } = room;
  await change(store, async (change) => {
    const kept = await phoneIn(change);
    const nothing = { place: thisPhone, thumbprint, phone: null, heardAt: null, etag: null } as const;
    await change.objectStore('phone').put({ ...(kept ?? nothing), ended });
  });
  await mirror.loadAll();
  tabs.tell({ kind: 'all' });
}
