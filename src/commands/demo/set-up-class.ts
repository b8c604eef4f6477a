/** One class from the program to the ring: entries, panel, order of go. */
import type { Asked } from './api.ts';
import { type DemoClass, talesOf } from './demo-files.ts';
import type { ShowGround } from './set-up-show.ts';

export interface ReadyClass {
  readonly id: string;
  /** Class entry ids by back number, late adds too. */
  readonly classEntries: ReadonlyMap<number, string>;
  /** In the order of the panel. */
  readonly seats: readonly ReadySeat[];
}

export interface ReadySeat {
  readonly seatId: string;
  /** The show's judge of this number sits there. */
  readonly judge: number;
}

/** The office's verbs on one class. */
interface ClassOffice {
  readonly ask: <Body>(
    method: Asked['method'],
    path: string,
    more?: Pick<Asked, 'body' | 'ifMatch'>,
  ) => Promise<{ readonly body: Body; readonly etag: string }>;
}

export async function setUpClass(ground: ShowGround, demoClass: DemoClass): Promise<ReadyClass> {
  const { api, showId, secretary: as } = ground;
  const created = await api.ask<{ id: string }>({
    method: 'POST',
    path: `/shows/${showId}/classes`,
    as,
    body: newClass(ground, demoClass),
  });
  const classId = created.body.id;
  const office: ClassOffice = {
    ask: (method, path, more = {}) =>
      api.ask({ method, path: `/shows/${showId}/classes/${classId}${path}`, as, ...more }),
  };
  const classEntries = await enterAll(office, ground, demoClass.field);
  const seats = await seatPanel(office, ground, { demoClass, classVersion: created.etag });
  for (const { entry, reason } of talesOf(demoClass, 'scratched')) {
    await setStatus(office, classEntries.get(entry), { status: 'scratched', reason });
  }
  for (const { entry, url } of talesOf(demoClass, 'video')) {
    await office.ask('PUT', `/entries/${classEntries.get(entry)}/video`, { body: { url } });
  }
  const ready = { id: classId, classEntries, seats };
  if (demoClass.state === 'cancelled') await office.ask('POST', '/cancellation');
  if (neverDrawn.has(demoClass.state)) return ready;
  await office.ask('POST', '/order-of-go/draws', { body: {} });
  for (const { entry, reason } of talesOf(demoClass, 'late-add')) {
    classEntries.set(entry, await enter(office, { entryId: ground.entries.get(entry), reason }));
  }
  if (demoClass.state === 'drawn') return ready;
  await office.ask('POST', '/calls');
  for (const { entry, reason } of talesOf(demoClass, 'no-show')) {
    await setStatus(office, classEntries.get(entry), { status: 'no-show', reason });
  }
  return ready;
}

const neverDrawn: ReadonlySet<DemoClass['state']> = new Set(['setting-up', 'cancelled', 'combined']);

function newClass({ rings, patterns }: ShowGround, demoClass: DemoClass): Record<string, unknown> {
  const { number, name, discipline, division, youth, sheet, pattern, placingRule, ring, at } = demoClass;
  return {
    ...{ number, name, discipline, division, youth, placingRule },
    sheet: { code: sheet },
    patternId: pattern === null ? null : patterns.get(pattern),
    ringId: rings.get(ring),
    scheduledAt: at,
  };
}

async function enterAll(
  office: ClassOffice,
  { entries }: ShowGround,
  field: readonly number[],
): Promise<Map<number, string>> {
  const classEntries = new Map<number, string>();
  for (const backNumber of field) {
    classEntries.set(backNumber, await enter(office, { entryId: entries.get(backNumber) }));
  }
  return classEntries;
}

async function enter(
  office: ClassOffice,
  body: { entryId: string | undefined; reason?: string },
): Promise<string> {
  const { body: added } = await office.ask<{ id: string }>('POST', '/entries', { body });
  return added.id;
}

async function setStatus(
  office: ClassOffice,
  classEntryId: string | undefined,
  body: { readonly status: string; readonly reason: string },
): Promise<void> {
  await office.ask('PUT', `/entries/${classEntryId}/status`, { body });
}

interface WantedPanel {
  readonly demoClass: DemoClass;
  readonly classVersion: string;
}

/** The first judge calls the class; ties that are left go to the judges in the order of their seats. */
async function seatPanel(
  office: ClassOffice,
  { judges }: ShowGround,
  { demoClass, classVersion }: WantedPanel,
): Promise<ReadySeat[]> {
  if (demoClass.judges.length === 0) return [];
  const seats = demoClass.judges.map((number, index) => {
    const personId = judges[number - 1];
    if (demoClass.refereeSeat === index + 1) return { personId, role: 'referee' };
    return { personId, role: 'judge', callOrder: index + 1, tieOrder: index + 1 };
  });
  const { body: panel } = await office.ask<{ seats: { id: string; seatOrder: number }[] }>('PUT', '/panel', {
    ifMatch: classVersion,
    body: { seats },
  });
  return panel.seats.map(({ id, seatOrder }) => ({
    seatId: id,
    judge: demoClass.judges[seatOrder - 1] ?? Number.NaN,
  }));
}
