/** The phone itself: its clock, its tabs, a pairing that ends, and who holds it next. */
import type { Browser } from '@playwright/test';
import request from 'supertest';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.ts';
import { type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import {
  type DeskPhone,
  deskPhone,
  draftsOf,
  eventually,
  revisionsOf,
  type ServiceWithDesk,
  serviceWithDesk,
} from '../support/desk-phone.ts';

let service: ServiceWithDesk;
let browser: Browser;
let setting: CardSetting;
let phone: DeskPhone;
let first: string;
let second: string;

beforeAll(async () => {
  [service, browser] = await Promise.all([serviceWithDesk(), openBrowser()]);
});
afterAll(async () => {
  await browser.close();
  await service.close();
});
beforeEach(async () => {
  setting = await setUpClass(service, { entries: 2, judges: 2 });
  [first = '', second = ''] = setting.entryIds;
  phone = await deskPhone({ service, browser, setting });
});
afterEach(() => phone.close());

const go = goOf(['1', '0', '0']);

/** The office takes every phone of the show back. */
async function revokeAll(): Promise<void> {
  const office = await setting.pass('office');
  const address = `/v1/shows/${setting.showId}/phones`;
  const { body } = await request(service.app.server).get(address).use(office);
  for (const { id } of body.items) {
    await request(service.app.server).delete(`${address}/${id}?why=lost`).use(office).expect(204);
  }
}

describe('a clock that is wrong by hours', () => {
  it.each([
    ['behind', -5],
    ['ahead', 7],
  ])('%s is told, and the card is signed and received all the same', async (_, hours) => {
    await phone.page.clock.install({ time: Date.now() + hours * 3_600_000 });
    await phone.reload();
    await phone.untilDay('here');
    await phone.tryNow();
    await eventually(async () => Math.round(((await phone.signal()).clockAheadSeconds ?? 0) / 3_600)).toBe(
      hours,
    );
    for (const entry of [first, second]) await phone.write(entry, go);
    await phone.sign();
    await phone.until('signed-and-received');
    expect(await revisionsOf(service, setting)).toHaveLength(1);
  });

  it('in 1970, after a flat battery, does not keep the judge from signing', async () => {
    await phone.page.clock.install({ time: 86_400_000 });
    await phone.reload();
    await phone.untilDay('here');
    for (const entry of [first, second]) await phone.write(entry, go);
    await phone.sign();
    await phone.until('signed-and-received');
  });
});

describe('a pairing that the office ended', () => {
  it('leaves the work on the phone, to be read, exported and gone on with, and says so', async () => {
    await phone.write(first, go);
    await phone.until('at-the-service');
    await phone.offline();
    await phone.write(second, goOf(['0', '1', '0']));
    await revokeAll();
    await phone.online();
    await phone.tryNow();
    await phone.untilDay('revoked');
    await phone.reload();
    await phone.untilDay('revoked');
    expect(await phone.state()).toEqual({ is: 'only-on-this-phone', unsent: 1 });
    expect(await phone.write(second, goOf(['0', '1', '1']))).toEqual({ ok: true });
    expect(await phone.sign()).toEqual({ ok: false, why: 'revoked' });
    const text = JSON.parse(await phone.page.evaluate(() => window.desk.exportText()));
    expect(text).toMatchObject({
      ...{ form: 'ringledger phone export 1', show: 'Larch Valley Spring Show', judge: 'Judge 1' },
      classes: [
        {
          number: 1,
          goes: [
            { backNumber: 101, go, total: '74', atTheService: true },
            { backNumber: 102, go: goOf(['0', '1', '1']), total: '75', atTheService: false },
          ],
        },
      ],
    });
  });

  it('goes on where it was once the phone is paired for the same judge again; she signs with the new key', async () => {
    await phone.offline();
    for (const entry of [first, second]) await phone.write(entry, go);
    await phone.sign();
    await revokeAll();
    await phone.online();
    await phone.tryNow();
    await phone.untilDay('revoked');
    await phone.page.evaluate(() => window.forgetKey());
    await phone.reload();
    expect(await phone.day()).toBe('revoked');
    await phone.pair('judge');
    await phone.until('at-the-service');
    expect(Object.keys(await draftsOf(service, setting))).toHaveLength(2);
    expect(await phone.sign()).toEqual({ ok: true, revision: 1 });
    await phone.until('signed-and-received');
  });

  it('is not sent in the name of somebody else who is paired next; it is kept aside for its judge', async () => {
    await phone.offline();
    await phone.write(first, go);
    await revokeAll();
    await phone.online();
    await phone.page.evaluate(() => window.forgetKey());
    await phone.pair('judge', 1);
    expect((await phone.go(first)).go).toEqual({});
    const left = await phone.page.evaluate(() => window.desk.leftBehind.value);
    expect(left).toMatchObject([{ judge: 'Judge 1' }]);
    expect(JSON.parse(left[0]?.text ?? '')).toMatchObject({ classes: [{ goes: [{ backNumber: 101, go }] }] });
    expect(await draftsOf(service, setting, 0)).toEqual({});
    expect(await draftsOf(service, setting, 1)).toEqual({});
  });
});

describe('a phone that is let go', () => {
  it('first says what would be lost, then keeps nothing, and the service knows', async () => {
    await phone.offline();
    await phone.write(first, go);
    await phone.context.route('**/goes/*', (route) => route.abort());
    await phone.online();
    const letGo = (evenUnsent: boolean) =>
      phone.page.evaluate((even) => window.desk.letGo({ evenUnsent: even }), evenUnsent);
    expect(await letGo(false)).toEqual({ ok: false, why: 'unsent', unsent: 1 });
    expect(await letGo(true)).toEqual({ ok: true, told: true });
    expect(await phone.day()).toBe('not-paired');
    const kept = await phone.page.evaluate(async () => {
      const names = (await indexedDB.databases()).map(({ name = '' }) => name);
      const counts = names.map(
        (name) =>
          new Promise<number>((resolve) => {
            const opening = indexedDB.open(name);
            opening.onsuccess = () => {
              const shelves = Array.from(opening.result.objectStoreNames);
              if (shelves.length === 0) return resolve(0);
              const reading = opening.result.transaction(shelves);
              let sum = 0;
              for (const shelf of shelves) {
                const counting = reading.objectStore(shelf).count();
                counting.onsuccess = () => {
                  sum += counting.result;
                };
              }
              reading.oncomplete = () => resolve(sum);
            };
          }),
      );
      return (await Promise.all(counts)).reduce((sum, count) => sum + count, 0);
    });
    expect(kept).toBe(0);
    const phones = await service.parts.db.prisma.phone.findMany({ where: { showId: setting.showId } });
    expect(phones.every(({ revokedAt }) => revokedAt !== null)).toBe(true);
  });

  it('is let go without signal too, and says that nobody was told', async () => {
    await phone.offline();
    expect(await phone.page.evaluate(() => window.letGoOfPhone())).toEqual({ ok: true, told: false });
    await eventually(phone.day).toBe('not-paired');
  });
});

describe('two tabs of one phone', () => {
  it('show the same, and what either writes is sent once', async () => {
    const other = await phone.context.newPage();
    await other.goto(phone.page.url());
    await eventually(() => other.title()).toBe('Desk is open');
    await phone.write(first, go);
    const seen = (entry: string) =>
      other.evaluate(([id, one]) => window.desk.goOf(id, one).value.go, [phone.classId, entry] as const);
    await eventually(() => seen(first)).toEqual(go);
    const marks = ['0.5', '1', '1.5'];
    const tap = ([id, entry, mark, position]: readonly [string, string, string, number]) =>
      window.desk.writeGo(id, entry, (kept) => ({
        ...kept,
        maneuvers: [...(kept.maneuvers ?? []), { position, mark }],
      }));
    await Promise.all(
      marks.map((mark, index) =>
        (index % 2 === 0 ? other : phone.page).evaluate(tap, [
          phone.classId,
          second,
          mark,
          index + 1,
        ] as const),
      ),
    );
    await eventually(async () => (await seen(second)).maneuvers?.length).toBe(3);
    await phone.until('at-the-service');
    expect(await phone.conflicts()).toEqual([]);
    const kept = JSON.stringify((await draftsOf(service, setting))[second]?.content);
    for (const mark of marks) expect(kept).toContain(`"mark":"${mark}"`);
  });

  it('go on sending when the one that sent is closed', async () => {
    const other = await phone.context.newPage();
    await other.goto(phone.page.url());
    await eventually(() => other.title()).toBe('Desk is open');
    await phone.page.close();
    phone.page = other;
    await phone.write(first, go);
    await phone.until('at-the-service');
  });

  it('are both let go', async () => {
    const other = await phone.context.newPage();
    await other.goto(phone.page.url());
    await eventually(() => other.title()).toBe('Desk is open');
    await phone.page.evaluate(() => window.desk.letGo());
    await eventually(() => other.evaluate(() => window.desk.day.value.is)).toBe('not-paired');
  });
});
