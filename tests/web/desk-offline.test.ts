import type { Browser } from '@playwright/test';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { cardIdOf } from '../../src/evidence/index.ts';
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
beforeAll(async () => {
  [service, browser] = await Promise.all([serviceWithDesk(), openBrowser()]);
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

let setting: CardSetting;
let phone: DeskPhone;
let first: string;
let second: string;
let third: string;
beforeEach(async () => {
  setting = await setUpClass(service);
  [first = '', second = '', third = ''] = setting.entryIds;
  phone = await deskPhone({ service, browser, setting });
});
afterEach(() => phone.close());

const done = { ok: true };

describe('a phone with signal', () => {
  it('has its day, and sends each go as it is written', async () => {
    expect(await phone.state()).toEqual({ is: 'blank' });
    expect(await phone.write(first, goOf(['1', '0.5', '-1']))).toEqual(done);
    await phone.until('at-the-service');
    expect(await draftsOf(service, setting)).toEqual({
      [first]: { content: goOf(['1', '0.5', '-1']), version: 1 },
    });
    expect(await phone.go(first)).toMatchObject({ go: goOf(['1', '0.5', '-1']), undoable: 1 });
  });

  it('refuses what the sheet does not allow, and changes nothing', async () => {
    await phone.write(first, goOf(['1', '1', '1']));
    const refused = await phone.write(first, goOf(['9', '1', '1']));
    expect(refused).toMatchObject({
      ok: false,
      why: 'not-on-sheet',
      faults: [{ code: 'mark_out_of_range' }],
    });
    expect((await phone.go(first)).go).toEqual(goOf(['1', '1', '1']));
  });

  it('takes a change back, as often as there were changes, and the service follows', async () => {
    await phone.write(first, goOf(['1', '1', '1']));
    await phone.write(first, goOf(['2', '1', '1']));
    expect(await phone.undo(first)).toEqual(done);
    await phone.reload();
    expect((await phone.go(first)).go).toEqual(goOf(['1', '1', '1']));
    expect(await phone.undo(first)).toEqual(done);
    expect(await phone.undo(first)).toEqual({ ok: false, why: 'nothing-to-undo' });
    await eventually(async () => (await draftsOf(service, setting))[first]?.content ?? {}).toEqual({});
    await phone.until('blank');
  });

  it('loses none of many quick taps', async () => {
    const taps = ['0.5', '1', '-0.5'];
    await phone.page.evaluate(
      ([classId, entry, marks]) =>
        Promise.all(
          marks.map((mark, index) =>
            window.desk.writeGo(classId, entry, (kept) => ({
              ...kept,
              maneuvers: [...(kept.maneuvers ?? []), { position: index + 1, mark }],
            })),
          ),
        ),
      [phone.classId, first, taps] as const,
    );
    const maneuvers = taps.map((mark, index) => ({ position: index + 1, mark }));
    expect((await phone.go(first)).go).toEqual({ maneuvers });
    await eventually(async () => (await draftsOf(service, setting))[first]?.content).toEqual({ maneuvers });
  });
});

describe('a phone without signal', () => {
  it('judges a whole class and signs it, and all of it comes in once the signal is back', async () => {
    await phone.offline();
    const goes = {
      [first]: goOf(['1', '0', '1']),
      [second]: goOf(['0', '0', '0']),
      [third]: goOf(['1', '1', '1']),
    };
    for (const [entry, go] of Object.entries(goes)) expect(await phone.write(entry, go)).toEqual(done);
    expect(await phone.state()).toEqual({ is: 'only-on-this-phone', unsent: 3 });
    expect(await phone.sign()).toEqual({ ok: true, revision: 1 });
    expect(await phone.state()).toMatchObject({
      is: 'signed-on-this-phone',
      signature: { revision: 1, reason: null, heldByConflicts: false },
    });
    expect(await phone.write(first, goOf(['0', '0', '0']))).toEqual({ ok: false, why: 'signed' });
    expect(await revisionsOf(service, setting)).toEqual([]);
    await phone.online();
    await phone.tryNow();
    await phone.until('signed-and-received');
    const revisions = await revisionsOf(service, setting);
    expect(revisions).toMatchObject([
      { revision: 1, content: { goes }, cardId: cardIdOf(setting.seatIds[0] ?? '') },
    ]);
    expect(await phone.signal()).toMatchObject({ is: 'heard', unsent: 0 });
  });

  it('amends what it signed before anybody received it, and both revisions come in, in their order', async () => {
    await phone.offline();
    for (const entry of [first, second, third]) await phone.write(entry, goOf(['0', '0', '0']));
    await phone.sign();
    const goes = {
      [first]: goOf(['2', '0', '0']),
      [second]: goOf(['0', '0', '0']),
      [third]: goOf(['0', '0', '0']),
    };
    expect(await phone.amend({ goes }, '  ')).toEqual({ ok: false, why: 'reason-missing' });
    expect(await phone.amend({ goes }, 'A mark was missed')).toEqual({ ok: true, revision: 2 });
    expect(await phone.amend({ goes }, 'Again')).toEqual({ ok: false, why: 'changes-nothing' });
    await phone.online();
    await phone.tryNow();
    await eventually(async () => (await revisionsOf(service, setting)).length).toBe(2);
    await eventually(phone.state).toMatchObject({ is: 'signed-and-received', revision: 2 });
    expect((await revisionsOf(service, setting))[1]).toMatchObject({
      ...{ content: { goes }, amendmentReason: 'A mark was missed' },
    });
  });

  it('names what is missing instead of signing', async () => {
    await phone.offline();
    await phone.write(first, { maneuvers: [{ position: 1, mark: '1' }] });
    const refused = await phone.sign();
    expect(refused).toMatchObject({ ok: false, why: 'not-signable', check: { mayBeSigned: false } });
    const missing = 'check' in refused ? refused.check.missing : [];
    expect(new Set(missing.map(({ entry }) => entry))).toEqual(new Set([first, second, third]));
  });

  it('keeps what was written through a reload, a crash and a new page', async () => {
    await phone.offline();
    await phone.write(first, goOf(['1', '0', '1']));
    await phone.online();
    await phone.context.route('**/v1/**', (route) => route.abort());
    await phone.write(second, goOf(['0', '0.5', '0']));
    await phone.die();
    await phone.reopen();
    expect((await phone.go(first)).go).toEqual(goOf(['1', '0', '1']));
    expect((await phone.go(second)).go).toEqual(goOf(['0', '0.5', '0']));
    expect(await phone.state()).toEqual({ is: 'only-on-this-phone', unsent: 2 });
    await phone.context.unroute('**/v1/**');
    await phone.tryNow();
    await phone.until('at-the-service');
    expect(Object.keys(await draftsOf(service, setting))).toHaveLength(2);
  });

  it('has all or nothing of a write that is cut off in the middle, and never half', async () => {
    const written = phone.page
      .evaluate(
        ([classId, entry, go]) => {
          for (let at = 0; at < 40; at += 1) {
            const remark = `tap ${at}`;
            void window.desk.writeGo(classId, entry, { ...go, remark }).then(() => {
              document.title = remark;
            });
          }
          return new Promise((resolve) => setTimeout(resolve, 40));
        },
        [phone.classId, first, goOf(['1', '1', '1'])] as const,
      )
      .catch(() => undefined);
    await written;
    const seen = Number((await phone.page.title()).replace('tap ', ''));
    await phone.die();
    await phone.reopen();
    const { go } = await phone.go(first);
    expect(go).toMatchObject(goOf(['1', '1', '1']));
    expect(Number(go.remark?.replace('tap ', ''))).toBeGreaterThanOrEqual(seen);
    await eventually(async () => (await draftsOf(service, setting))[first]?.content).toEqual(go);
  });
});

describe('an answer that is lost on the way', () => {
  /** The service does its part, and the phone never hears of it. */
  const loseAnswers = (pattern: string, times: number) => {
    let left = times;
    return phone.context.route(pattern, async (route) => {
      if (left <= 0) return route.continue();
      left -= 1;
      await route.fetch();
      return route.abort();
    });
  };

  it('of a draft is no conflict with itself, though more was written since', async () => {
    await loseAnswers('**/goes/*', 1);
    await phone.write(first, goOf(['1', '0', '0']));
    await eventually(async () => (await draftsOf(service, setting))[first]?.version).toBe(1);
    await phone.write(first, goOf(['1', '1', '0']));
    await phone.until('at-the-service');
    expect(await phone.conflicts()).toEqual([]);
    expect(await draftsOf(service, setting)).toEqual({
      [first]: { content: goOf(['1', '1', '0']), version: 2 },
    });
  });

  it('of a signature, and of an amendment, does not double them', async () => {
    for (const entry of [first, second, third]) await phone.write(entry, goOf(['0', '0', '0']));
    await loseAnswers('**/signatures', 2);
    await phone.sign();
    await eventually(async () => (await revisionsOf(service, setting)).length).toBe(1);
    expect((await phone.state()).is).toBe('signed-on-this-phone');
    await phone.until('signed-and-received');
    await loseAnswers('**/amendments', 1);
    const goes = {
      [first]: goOf(['1', '0', '0']),
      [second]: goOf(['0', '0', '0']),
      [third]: goOf(['0', '0', '0']),
    };
    await phone.amend({ goes }, 'One half was missed');
    await eventually(phone.state).toMatchObject({ is: 'signed-and-received', revision: 2 });
    const revisions = await revisionsOf(service, setting);
    expect(revisions.map(({ revision }) => revision)).toEqual([1, 2]);
    const lines = await service.parts.db.prisma.ledgerLine.findMany({ where: { ledgerId: setting.showId } });
    const kinds = lines.map(({ type }) => type).filter((type) => type.startsWith('card.'));
    expect(kinds).toEqual(['card.opened', 'card.signed', 'card.amended']);
  });

  it('of the opening of the card opens it once', async () => {
    await loseAnswers('**/cards', 2);
    await phone.write(first, goOf(['1', '0', '0']));
    await phone.until('at-the-service');
    const opened = await service.parts.db.prisma.ledgerLine.count({
      where: { ledgerId: setting.showId, type: 'card.opened' },
    });
    expect(opened).toBe(1);
  });

  it('that comes from somebody in between is none', async () => {
    const portal = {
      status: 200,
      contentType: 'text/html',
      body: '<h1>Welcome to the camp ground network</h1>',
    };
    await phone.context.route('**/goes/*', (route) => route.fulfill(portal));
    await phone.write(first, goOf(['1', '0', '0']));
    await eventually(async () => (await phone.signal()).is).toBe('no-answer');
    expect((await phone.state()).is).toBe('only-on-this-phone');
    await phone.context.unroute('**/goes/*');
    await phone.tryNow();
    await phone.until('at-the-service');
  });
});
