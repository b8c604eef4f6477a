/** A judge and her scribe write on one seat, each on her own phone. */
import type { Browser } from '@playwright/test';
import request from 'supertest';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.ts';
import { addEntry, type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
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
let judge: DeskPhone;
let scribe: DeskPhone;
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
  setting = await setUpClass(service, { entries: 2 });
  [first = '', second = ''] = setting.entryIds;
  judge = await deskPhone({ service, browser, setting });
  scribe = await deskPhone({ service, browser, setting, role: 'scribe' });
});
afterEach(async () => {
  await judge.close();
  await scribe.close();
});

const done = { ok: true };
const draft = async (entry: string) => (await draftsOf(service, setting))[entry]?.content;

/** Both saw the same, and each changes it while the judge hears nothing. */
async function bothWrite(hers: ReturnType<typeof goOf>, his: ReturnType<typeof goOf>): Promise<void> {
  await scribe.write(first, goOf(['0', '0', '0']));
  await scribe.until('at-the-service');
  await judge.tryNow();
  await judge.untilGo(first, goOf(['0', '0', '0']));
  await judge.offline();
  await judge.write(first, hers);
  await scribe.write(first, his);
  await eventually(() => draft(first)).toEqual(his);
  await judge.online();
  await judge.tryNow();
  await judge.untilConflicts(1);
}

describe('what the scribe writes', () => {
  it('comes to the judge while she has the class open, and she signs it; the scribe never does', async () => {
    await judge.marking();
    await scribe.write(first, goOf(['1', '0', '0']));
    await scribe.write(second, goOf(['0', '1', '0']));
    await judge.untilGo(first, goOf(['1', '0', '0']));
    await judge.untilGo(second, goOf(['0', '1', '0']));
    expect(await scribe.sign()).toEqual({ ok: false, why: 'scribe-phone' });
    expect(await judge.sign()).toEqual({ ok: true, revision: 1 });
    await judge.until('signed-and-received');
    await scribe.tryNow();
    await scribe.until('signed-and-received');
    expect(await scribe.write(first, goOf(['0', '0', '0']))).toEqual({ ok: false, why: 'signed' });
  });

  it('never overwrites what the judge has not sent yet, and both versions are shown', async () => {
    const [hers, his] = [goOf(['1', '0', '0']), goOf(['2', '0', '0'])];
    await bothWrite(hers, his);
    expect((await judge.go(first)).go).toEqual(hers);
    expect((await judge.go(first)).state).toEqual({ is: 'conflict' });
    expect(await judge.conflicts()).toMatchObject([
      {
        ...{ kind: 'go', classEntryId: first, backNumber: 101, mine: hers, theirs: his },
        ...{ theirVersion: 2, theirsIsSigned: false, together: null },
      },
    ]);
    expect(await draft(first)).toEqual(his);
  });

  it('is put together with hers where they contradict each other nowhere', async () => {
    await bothWrite(goOf(['1', '0', '0']), goOf(['0', '0', '-1']));
    expect(await judge.conflicts()).toMatchObject([{ together: goOf(['1', '0', '-1']) }]);
  });

  it('is no conflict where it is the same', async () => {
    await judge.offline();
    await judge.write(first, goOf(['1', '0', '0']));
    await scribe.write(first, goOf(['1', '0', '0']));
    await scribe.until('at-the-service');
    await judge.online();
    await judge.tryNow();
    await judge.until('at-the-service');
    expect(await judge.conflicts()).toEqual([]);
    expect((await draftsOf(service, setting))[first]?.version).toBe(1);
  });
});

describe('a conflict', () => {
  const [hers, his] = [goOf(['1', '0', '0']), goOf(['2', '0', '0'])];
  beforeEach(() => bothWrite(hers, his));

  it('is settled by hers, which then stands on both phones', async () => {
    expect(await judge.settle({ take: 'mine' })).toEqual(done);
    await judge.until('at-the-service');
    expect(await draft(first)).toEqual(hers);
    await scribe.tryNow();
    await scribe.untilGo(first, hers);
  });

  it('is settled by theirs, and undo brings hers back', async () => {
    expect(await judge.settle({ take: 'theirs' })).toEqual(done);
    await judge.until('at-the-service');
    expect((await judge.go(first)).go).toEqual(his);
    expect(await judge.undo(first)).toEqual(done);
    await eventually(() => draft(first)).toEqual(hers);
  });

  it('is settled by what she puts together, and outlives a reload until then', async () => {
    await judge.reload();
    await judge.untilConflicts(1);
    expect(await judge.settle({ take: 'merged', go: goOf(['9', '0', '0']) })).toMatchObject({
      why: 'not-on-sheet',
    });
    expect(await judge.settle({ take: 'merged', go: goOf(['1.5', '0', '0']) })).toEqual(done);
    await eventually(() => draft(first)).toEqual(goOf(['1.5', '0', '0']));
    await judge.until('at-the-service');
  });

  it('keeps the card from being signed', async () => {
    await judge.write(second, goOf(['0', '0', '0']));
    expect(await judge.sign()).toMatchObject({ ok: false, why: 'not-signable', check: { conflicts: 1 } });
  });
});

describe('a card that the judge signed with no signal, while her scribe wrote on', () => {
  const hers = goOf(['1', '0', '0']);
  const his = goOf(['2', '0', '0']);
  beforeEach(async () => {
    await scribe.write(first, goOf(['0', '0', '0']));
    await scribe.until('at-the-service');
    await judge.tryNow();
    await judge.untilGo(first, goOf(['0', '0', '0']));
    await judge.offline();
    await judge.write(first, hers);
    await judge.write(second, hers);
    expect(await judge.sign()).toEqual({ ok: true, revision: 1 });
    await scribe.write(first, his);
    await eventually(() => draft(first)).toEqual(his);
    await judge.online();
    await judge.tryNow();
    await judge.untilConflicts(1);
  });

  it('is held back, and goes out as it was signed once she keeps her own', async () => {
    expect(await judge.state()).toMatchObject({
      is: 'signed-on-this-phone',
      signature: { heldByConflicts: true },
    });
    expect(await revisionsOf(service, setting)).toEqual([]);
    await judge.settle({ take: 'mine' });
    await judge.until('signed-and-received');
    expect(await revisionsOf(service, setting)).toMatchObject([
      { revision: 1, content: { goes: { [first]: hers, [second]: hers } } },
    ]);
  });

  it('is signed again where she takes theirs', async () => {
    await judge.settle({ take: 'theirs' });
    await judge.until('at-the-service');
    expect(await revisionsOf(service, setting)).toEqual([]);
    expect(await judge.sign()).toEqual({ ok: true, revision: 1 });
    await judge.until('signed-and-received');
    expect(await revisionsOf(service, setting)).toMatchObject([{ content: { goes: { [first]: his } } }]);
  });
});

describe('a signature that the service refuses', () => {
  it('for what the scribe saved in the last moment, shows both; the judge chooses and signs again', async () => {
    for (const entry of [first, second]) await judge.write(entry, goOf(['0', '0', '0']));
    await judge.until('at-the-service');
    await judge.context.route('**/signatures', (route) => route.abort());
    await judge.sign();
    await scribe.tryNow();
    await scribe.untilGo(first, goOf(['0', '0', '0']));
    await scribe.write(first, goOf(['2', '0', '0']));
    await eventually(() => draft(first)).toEqual(goOf(['2', '0', '0']));
    await judge.context.unroute('**/signatures');
    await judge.tryNow();
    await judge.until('signature-refused');
    expect(await judge.state()).toMatchObject({
      problem: { code: 'card_differs_from_draft' },
      differences: 1,
    });
    expect(await judge.conflicts()).toMatchObject([
      { mine: goOf(['0', '0', '0']), theirs: goOf(['2', '0', '0']) },
    ]);
    await judge.settle({ take: 'mine' });
    expect(await judge.sign()).toEqual({ ok: true, revision: 1 });
    await judge.until('signed-and-received');
    expect(await revisionsOf(service, setting)).toMatchObject([
      { content: { goes: { [first]: goOf(['0', '0', '0']) } } },
    ]);
  });

  it('because somebody was added late, says so, and the card can be finished', async () => {
    await judge.offline();
    for (const entry of [first, second]) await judge.write(entry, goOf(['0', '0', '0']));
    await judge.sign();
    const late = await addEntry(service, { ...setting, go: 3 });
    await judge.online();
    await judge.tryNow();
    await judge.until('signature-refused');
    expect(await judge.state()).toMatchObject({ problem: { code: 'card_incomplete' } });
    await judge.tryNow();
    await eventually(async () => (await judge.write(late, goOf(['1', '1', '1']))).ok).toBe(true);
    expect(await judge.sign()).toEqual({ ok: true, revision: 1 });
    await judge.until('signed-and-received');
    expect(Object.keys((await revisionsOf(service, setting))[0]?.content as object)).toEqual(['goes']);
  });

  it('because another phone of the judge had signed, shows what stands on the signed card', async () => {
    const other = await deskPhone({ service, browser, setting });
    await judge.offline();
    for (const entry of [first, second]) await judge.write(entry, goOf(['0', '0', '0']));
    await judge.sign();
    for (const entry of [first, second]) await other.write(entry, goOf(['1', '1', '1']));
    await other.sign();
    await other.until('signed-and-received');
    await other.close();
    await judge.online();
    await judge.tryNow();
    await judge.until('signature-refused');
    expect(await judge.state()).toMatchObject({ problem: { code: 'card_already_signed' } });
    await judge.tryNow();
    await eventually(async () => (await judge.conflicts()).every((one) => one.theirsIsSigned)).toBe(true);
    await judge.untilConflicts(2);
    expect(await judge.settle({ take: 'mine' })).toEqual({ ok: false, why: 'signed' });
    expect(await judge.settle({ take: 'theirs' })).toEqual(done);
    expect(await judge.settle({ take: 'theirs' })).toEqual(done);
    await judge.page.evaluate((id) => window.desk.dismissSignature(id), judge.classId);
    expect(await judge.state()).toMatchObject({ is: 'signed-and-received', revision: 1, leftOver: 0 });
    expect((await judge.go(first)).go).toEqual(goOf(['1', '1', '1']));
  });
});

describe('the order of go', () => {
  it('brings late adds and scratches while a class is marked, and what was written of a scratch is kept', async () => {
    await judge.marking();
    await judge.write(first, goOf(['1', '0', '0']));
    await judge.until('at-the-service');
    await judge.offline();
    await judge.write(first, goOf(['1', '1', '0']));
    const late = await addEntry(service, { ...setting, go: 7 });
    await service.parts.db.prisma.classEntry.update({
      where: { id: first },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    await judge.online();
    await judge.tryNow();
    const entries = () =>
      judge.page.evaluate((id) => window.desk.classOf(id).value?.entries ?? [], judge.classId);
    await eventually(async () => (await entries()).map((one) => one.classEntryId)).toContain(late);
    expect(await entries()).toMatchObject([
      { backNumber: 101, status: 'scratched' },
      {},
      { backNumber: 107 },
    ]);
    await eventually(async () => (await judge.go(first)).state).toMatchObject({
      is: 'refused',
      problem: { code: 'entry_not_going' },
    });
    expect((await judge.go(first)).go).toEqual(goOf(['1', '1', '0']));
    const check = await judge.page.evaluate((id) => window.desk.checkSignable(id).content, judge.classId);
    expect(Object.keys(check.goes)).toEqual([]);
    await service.parts.db.prisma.classEntry.update({
      where: { id: first },
      data: { status: 'checked-in', statusReason: null },
    });
    await judge.tryNow();
    await eventually(() => draft(first)).toEqual(goOf(['1', '1', '0']));
  });
});

describe('a rail class', () => {
  it('is ranked with no signal, and the ranking comes in', async () => {
    const rail = await setUpClass(service, { sheet: 'rail-pleasure-first-6', entries: 2 });
    const phone = await deskPhone({ service, browser, setting: rail });
    const [one = '', other = ''] = rail.entryIds;
    await phone.offline();
    const write = (ranking: string[][]) =>
      phone.page.evaluate(([id, order]) => window.desk.writeOrder(id, { ranking: order }), [
        phone.classId,
        ranking,
      ] as const);
    expect(await write([[one], [other]])).toEqual(done);
    expect(await write([[other], [one]])).toEqual(done);
    await phone.page.evaluate((id) => window.desk.undoOrder(id), phone.classId);
    expect(await phone.sign()).toEqual({ ok: true, revision: 1 });
    await phone.online();
    await phone.tryNow();
    await phone.until('signed-and-received');
    expect(await revisionsOf(service, rail)).toMatchObject([
      { content: { goes: {}, ranking: [[one], [other]] } },
    ]);
    await phone.close();
  });
});

describe('a judge who left the panel', () => {
  it('is told, and writes no more', async () => {
    await judge.write(first, goOf(['1', '0', '0']));
    await judge.until('at-the-service');
    const office = await setting.pass('office');
    const withdrawal = { reason: 'taken ill', replacementId: null };
    const address = `/v1/shows/${setting.showId}/classes/${setting.classId}/panel/${setting.seatIds[0]}/withdrawal`;
    const told = await request(service.app.server).post(address).use(office).send(withdrawal);
    expect([200, 201]).toContain(told.status);
    await judge.tryNow();
    await eventually(() => judge.write(first, goOf(['1', '1', '1']))).toEqual({
      ok: false,
      why: 'withdrawn',
    });
  });
});
