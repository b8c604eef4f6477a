/** A whole card on the judge's page, in a real browser over the real service: by taps, by keys, by shorthand. */
import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { expectNoSidewaysScroll, openBrowser } from '../support/browser.ts';
import { addPlaces, type CardSetting, setUpClass } from '../support/card-setting.ts';
import { draftsAtService, type JudgePhone, judgePhone, see } from '../support/judge-phone.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

let service: TestApp;
let browser: Browser;

beforeAll(async () => {
  service = await buildTestApp();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

const total = (phone: JudgePhone) => phone.page.locator('.total .sum dd');
const inHand = (phone: JudgePhone) => phone.page.locator('.in-hand h2');
const told = (phone: JudgePhone) => phone.page.locator('.total [role="status"]');

/** What the service has, once it has everything. */
async function atService(phone: JudgePhone, setting: CardSetting) {
  await phone.open('');
  await see(phone.page.locator('.card-state')).toContainText('At the service');
  return draftsAtService(service, setting);
}

const horsemanship = (marks: readonly string[], form: string) => ({
  maneuvers: marks.map((mark, index) => ({ position: index + 1, mark })),
  extras: { 'form-and-effectiveness': form },
});

describe('a card by taps', () => {
  let setting: CardSetting;
  let phone: JudgePhone;

  beforeAll(async () => {
    setting = await setUpClass(service, { entries: 3 });
    phone = await judgePhone({ service, browser, setting });
  });
  afterAll(() => phone.close());

  it('each mark is one tap, the next maneuver comes by itself, the total is always right', async () => {
    await phone.open('');
    await phone.page.getByRole('button', { name: 'Next: 101' }).click();
    await see(inHand(phone)).toHaveText('1Walk to B');
    await phone.mark('plus one half');
    await see(inHand(phone)).toHaveText('2Jog a circle left');
    await see(total(phone)).toHaveText('70½');
    await see(told(phone)).toHaveText('Total 70 and a half');
    await phone.mark('plus 1 and a half');
    await phone.mark('minus 1');
    await see(inHand(phone)).toHaveText('Fform and effectiveness');
    await phone.mark('3');
    await see(total(phone)).toHaveText('74');
    await see(inHand(phone)).toHaveText('All marked');
  });

  it('a penalty is one tap against the maneuver in hand, counted, and taken off again', async () => {
    const { page } = phone;
    await page.locator('.staff button').nth(1).click();
    const missedLead = page.locator('.penalty').filter({ hasText: 'missed lead' });
    await missedLead.click();
    await missedLead.click();
    await see(missedLead).toContainText('×2');
    await see(total(phone)).toHaveText('64');
    await page.getByRole('button', { name: /^Take off one of 2: missed lead/ }).click();
    await see(total(phone)).toHaveText('69');
  });

  it('undo takes back the last tap, and its maneuver is in hand again', async () => {
    const { page } = phone;
    await page.locator('.staff button').nth(2).click();
    await phone.mark('minus 3');
    await see(total(phone)).toHaveText('67');
    await page.getByRole('button', { name: 'Undo' }).click();
    await see(total(phone)).toHaveText('69');
    await see(inHand(phone)).toHaveText('3Lope to C');
  });

  it('a maneuver that was not seen is neither a zero nor a fault', async () => {
    const { page } = phone;
    await page.getByRole('button', { name: 'Not seen' }).click();
    await see(total(phone)).toHaveText('70');
    await page.locator('.staff button').nth(2).click();
    await phone.mark('minus 1');
    await see(total(phone)).toHaveText('69');
  });

  it('a remark of the maneuver and of the go stay, one before its mark too', async () => {
    const { page } = phone;
    await page.getByRole('button', { name: 'Next: 102' }).click();
    await page.getByRole('button', { name: 'Remark', exact: true }).click();
    await page.getByLabel('On maneuver 1').fill('late at B');
    await page.getByLabel('On the whole go').fill('hat blew off');
    await page.getByRole('button', { name: 'Close' }).click();
    for (const said of ['0', 'plus 1', 'plus one half', '3']) await phone.mark(said);
    await see(total(phone)).toHaveText('74½');
  });

  it('a ruling says what it does on this sheet, and bars the total where it does', async () => {
    const { page } = phone;
    await page.getByRole('button', { name: 'Next: 103' }).click();
    await page.getByRole('button', { name: 'Ruling', exact: true }).click();
    await see(page.getByRole('button', { name: /off pattern/ })).toContainText('placed below all');
    await page.getByRole('button', { name: /excused/ }).click();
    await see(total(phone)).toHaveText('—');
  });

  it('all of it is at the service, letter by letter', async () => {
    const [first, second, third] = setting.entryIds;
    expect(await atService(phone, setting)).toEqual({
      [first ?? '']: {
        ...horsemanship(['0.5', '1.5', '-1'], '3'),
        penalties: [{ code: 'lead-missed', position: 2 }],
      },
      [second ?? '']: {
        maneuvers: [
          { position: 1, mark: '0', remark: 'late at B' },
          { position: 2, mark: '1' },
          { position: 3, mark: '0.5' },
        ],
        extras: { 'form-and-effectiveness': '3' },
        remark: 'hat blew off',
      },
      [third ?? '']: { ruling: { code: 'excused' } },
    });
  });

  it('is signed, is read only then, and is amended with a reason', async () => {
    const { page } = phone;
    await phone.open('/sign');
    await see(page.getByRole('heading', { name: 'Nothing is missing.' })).toBeVisible();
    await page.getByRole('button', { name: 'Sign this card' }).click();
    await see(page.locator('.card-state')).toContainText('Signed and received');
    await phone.openGo(0);
    await see(page.locator('.marks')).toHaveCount(0);
    await phone.open('/sign');
    await page.getByRole('button', { name: 'Amend this card' }).click();
    await see(page.getByRole('heading', { name: 'All goes' })).toBeVisible();
    await page.getByRole('link', { name: '101' }).click();
    await page.locator('.staff button').nth(0).click();
    await phone.mark('plus 1');
    await see(total(phone)).toHaveText('69½');
    await phone.open('/sign');
    await page.getByRole('button', { name: 'Sign the amendment' }).click();
    await see(page.getByText('Write why you amend it')).toBeVisible();
    await page.getByLabel('Why do you amend it?').fill('the first mark was typed wrongly');
    await page.getByRole('button', { name: 'Sign the amendment' }).click();
    await see(page.locator('.card-state')).toContainText('revision 2');
    const revisions = await service.parts.db.prisma.cardRevision.findMany({
      where: { card: { seatId: setting.seatIds[0] ?? '' } },
      orderBy: { revision: 'asc' },
    });
    expect(revisions.map(({ revision, amendmentReason }) => [revision, amendmentReason])).toEqual([
      [1, null],
      [2, 'the first mark was typed wrongly'],
    ]);
  });
});

describe('a card by the keyboard alone', () => {
  it('marks, penalties, not seen, undo, remarks and the signature', async () => {
    const setting = await setUpClass(service, { entries: 2 });
    const phone = await judgePhone({
      service,
      browser,
      setting,
      options: { viewport: { width: 1280, height: 800 } },
    });
    const { page } = phone;
    const type = async (keys: readonly string[]) => {
      for (const key of keys) await page.keyboard.press(key);
    };
    await phone.openGo(0);
    await type(['+', '1', '/', '2', 'Enter']);
    await see(inHand(phone)).toHaveText('2Jog a circle left');
    await type(['n']);
    await see(inHand(phone)).toHaveText('3Lope to C');
    await type(['-', '1', 'Space', 'p', '5', 'b', 'Enter']);
    await see(total(phone)).toHaveText('64½');
    await type(['f', '4', 'Enter']);
    await see(total(phone)).toHaveText('68½');
    await type(['ArrowLeft', 'ArrowLeft', '0', 'Enter']);
    await see(total(phone)).toHaveText('69½');
    await type(['u']);
    await see(total(phone)).toHaveText('68½');
    await type(['?']);
    await see(page.getByRole('dialog')).toContainText('not seen');
    await type(['Escape', 'Enter']);
    await see(page.getByRole('heading', { level: 1 })).toContainText('102');
    await page.keyboard.type('1, 1, 1, f3');
    await type(['Enter']);
    await see(total(phone)).toHaveText('76');
    const [first, second] = setting.entryIds;
    expect(await atService(phone, setting)).toEqual({
      [first ?? '']: {
        maneuvers: [
          { position: 1, mark: '0.5' },
          { position: 2, notSeen: true },
          { position: 3, mark: '-1' },
        ],
        penalties: [{ code: 'lead-missed', position: 3 }],
        extras: { 'form-and-effectiveness': '4' },
      },
      [second ?? '']: horsemanship(['1', '1', '1'], '3'),
    });
    await phone.close();
  });
});

describe('a card by shorthand', () => {
  it('fills the marks; what it does not understand it says, and changes nothing', async () => {
    const setting = await setUpClass(service, { entries: 1 });
    const phone = await judgePhone({ service, browser, setting });
    const { page } = phone;
    await phone.openGo(0);
    await page.getByRole('button', { name: 'Line' }).click();
    const line = page.getByLabel('Shorthand');
    await line.fill('plus half, perhaps, zero');
    await line.press('Enter');
    await see(page.getByText('Not understood: perhaps.')).toBeVisible();
    await see(total(phone)).toHaveText('70');
    await line.fill('plus half, minus two penalty five, zero, form four');
    await line.press('Enter');
    await page.getByRole('button', { name: /^p5b missed lead/ }).click();
    await line.press('Enter');
    await see(total(phone)).toHaveText('67½');
    expect(await atService(phone, setting)).toEqual({
      [setting.entryIds[0] ?? '']: {
        ...horsemanship(['0.5', '-2', '0'], '4'),
        penalties: [{ code: 'lead-missed', position: 2 }],
      },
    });
    await phone.close();
  });
});

describe('other sheets', () => {
  it('one mark out of a hundred is two taps', async () => {
    const setting = await setUpClass(service, { sheet: 'equitation-one-mark', entries: 1 });
    const phone = await judgePhone({ service, browser, setting });
    await phone.openGo(0);
    await phone.mark('From 80');
    await phone.mark('84 and a half');
    await see(total(phone)).toHaveText('84½');
    await phone.close();
  });

  it('a dressage test has a mark from 0 to 10 in one tap, and its errors', async () => {
    const setting = await setUpClass(service, { sheet: 'dressage-training', entries: 1 });
    const phone = await judgePhone({ service, browser, setting });
    await phone.openGo(0);
    for (const mark of ['7', '6 and a half', '8', '7', '7', '7', '7', '7']) await phone.mark(mark);
    await see(total(phone)).toHaveText('70.5 %');
    await phone.page.getByRole('button', { name: 'One more error' }).click();
    await see(total(phone)).toHaveText('68.5 %');
    await phone.close();
  });

  it('a time is typed, with a comma or a point', async () => {
    const setting = await setUpClass(service, { sheet: 'timed-barrels', entries: 1 });
    const phone = await judgePhone({ service, browser, setting });
    await phone.openGo(0);
    const field = phone.page.getByLabel('Time in seconds');
    await field.fill('17,482');
    await field.press('Enter');
    await phone.page.locator('.penalty').first().click();
    await see(total(phone)).toHaveText('22.482 s');
    await phone.close();
  });

  it('a rail class is placed by tapping numbers, and by typing them', async () => {
    const setting = await setUpClass(service, {
      sheet: 'rail-pleasure-first-6',
      merge: addPlaces,
      entries: 4,
    });
    const phone = await judgePhone({ service, browser, setting });
    const { page } = phone;
    await phone.open('/places');
    for (const number of ['103', '101'])
      await page.locator('.rail-numbers').getByRole('button', { name: number }).click();
    const field = page.getByLabel('Or type a number');
    for (const number of ['104', '102']) {
      await field.fill(number);
      await field.press('Enter');
      await see(field).toHaveValue('');
    }
    const lines = page.locator('.placed-line .number');
    await see(lines).toHaveText(['103', '101', '104', '102']);
    await page.locator('.placed-line').nth(1).press('Alt+ArrowUp');
    await see(lines).toHaveText(['101', '103', '104', '102']);
    await expectNoSidewaysScroll(page);
    await page.getByRole('button', { name: 'Sign' }).click();
    await page.getByRole('button', { name: 'Sign this card' }).click();
    await see(page.locator('.card-state')).toContainText('Signed and received');
    await phone.close();
  });
});

describe('ties of her own', () => {
  it('are marked, and broken by ordering', async () => {
    const setting = await setUpClass(service, { entries: 2, merge: addPlaces });
    const phone = await judgePhone({ service, browser, setting });
    const { page } = phone;
    for (const index of [0, 1]) {
      await phone.openGo(index);
      for (const said of ['0', '0', '0', '3']) await phone.mark(said);
      await see(inHand(phone)).toHaveText('All marked');
    }
    await phone.open('/sign');
    await page.getByRole('link', { name: /are tied/ }).click();
    await see(page.getByText('Tied: 101, 102')).toBeVisible();
    await page.getByRole('button', { name: '102 up' }).click();
    await see(page.getByText('Tied, ordered by you: 102, 101')).toBeVisible();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await see(page.getByRole('heading', { name: 'Nothing is missing.' })).toBeVisible();
    await phone.close();
  });
});

describe('no signal', () => {
  it('a go is marked, and says where it is', async () => {
    const setting = await setUpClass(service, { entries: 1 });
    const phone = await judgePhone({ service, browser, setting });
    await phone.openGo(0);
    const asked: string[] = [];
    await phone.context.setOffline(true);
    phone.page.on('request', (request) => asked.push(request.url()));
    for (const said of ['plus 1', 'plus 1', 'plus 1', '4']) await phone.mark(said);
    await see(total(phone)).toHaveText('77');
    await see(phone.page.locator('.go-head .state')).toHaveText('only on this phone');
    expect(asked.filter((url) => !url.includes('/v1/'))).toEqual([]);
    await phone.context.setOffline(false);
    await see(phone.page.locator('.go-head .state')).toHaveText('at the service');
    await phone.close();
  });
});
