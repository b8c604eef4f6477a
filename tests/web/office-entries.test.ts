/** Entries of the show and of a class at the office: what is worked out, and a morning at the desk by keyboard. */
import { type Browser, expect as expectOfPage, type Page } from '@playwright/test';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { combinePreview, splitPreview } from '../../src/web/office/entries/class-moves.ts';
import { type Entry, foundEntries, isNamed } from '../../src/web/office/entries/entry-search.ts';
import { freeNumbers } from '../../src/web/office/entries/free-numbers.ts';
import { broughtUpToDate, moved, whoMoved } from '../../src/web/office/entries/order-by-hand.ts';
import { type Draw, repeated, shellLine } from '../../src/web/office/entries/repeat-draw.ts';
import { expectAccessible, expectNoSidewaysScroll, openBrowser, phoneSize } from '../support/browser.ts';
import { type CardSetting, setUpClass } from '../support/card-setting.ts';
import { openOffice, tabTo } from '../support/office-desk.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type OfficePass, passFor } from '../support/test-passes.ts';

/** Two cores may be shared by many tests. */
const see = expectOfPage.configure({ timeout: 60_000 });
const patient = { timeout: 300_000 };

const entry = (backNumber: number, exhibitor: string, horse: string): Entry => ({
  ...{ id: String(backNumber), backNumber, owner: null, version: 1 },
  ...{ exhibitor: { id: exhibitor, name: exhibitor }, horse: { id: horse, name: horse } },
});

describe('what is worked out at the desk', () => {
  it('a number finds itself first, then those that begin so; letters find a name however it is spelled', () => {
    const all = [
      entry(21, 'Ünal Straße', 'Kite'),
      entry(210, 'Ada Quist', 'Small Hours'),
      entry(2, 'Bo Lind', 'Fox'),
    ];
    expect(foundEntries(all, '21').map(({ backNumber }) => backNumber)).toEqual([21, 210]);
    expect(foundEntries(all, 'unal strasse').map(({ backNumber }) => backNumber)).toEqual([21]);
    expect(foundEntries(all, 'hours').map(({ backNumber }) => backNumber)).toEqual([210]);
    expect(isNamed('Ada Quist', 'uist')).toBe(false);
  });

  it('the next free number follows the highest, and gaps are named', () => {
    expect(freeNumbers([101, 102, 105])).toEqual({ next: 106, between: [103, 104] });
    expect(freeNumbers([])).toEqual({ next: 1, between: [] });
  });

  it('one entry moves and the others close up; who came or went meanwhile is brought in', () => {
    expect(moved(['a', 'b', 'c'], 'c', 0)).toEqual(['c', 'a', 'b']);
    expect(moved(['a', 'b', 'c'], 'a', 9)).toEqual(['b', 'c', 'a']);
    expect(moved(['a', 'b'], 'x', 0)).toEqual(['a', 'b']);
    expect(whoMoved(['a', 'b', 'c'], ['b', 'a', 'c'])).toEqual(['b', 'a']);
    expect(broughtUpToDate(['c', 'a'], ['a', 'b'])).toEqual(['a', 'b']);
  });

  it('a draw is repeated from its seed, and one that was altered is found out', () => {
    const drawn = [112, 118, 131].map((backNumber) => ({
      id: String(backNumber),
      backNumber,
      rider: String(backNumber),
    }));
    // Lots of the guide: 577c… 118, 5a2f… 131, da09… 112.
    const seed = 'e3e65bea693608ab2ed05b1199d6f2c3';
    const draw = { seed, enoughGap: null, order: ['118', '131', '112'] } as unknown as Draw;
    expect(repeated(draw, drawn)).toBe('same');
    expect(repeated({ ...draw, order: ['131', '118', '112'] }, drawn)).toBe('differs');
    expect(repeated(draw, drawn.slice(1))).toBe('not-here');
    expect(shellLine(draw, [131, 112, 118])).toContain('for n in 112 118 131; do');
  });

  it('a preview says who moves, who stays, and who is in both classes already', () => {
    const some = (id: string, entryId: string, status = 'entered') => ({
      id,
      entryId,
      backNumber: 1,
      status,
    });
    const here = [some('1', 'a'), some('2', 'b'), some('3', 'c', 'moved')];
    expect(splitPreview(here, new Set(['2']))).toEqual({ move: [here[1]], stay: [here[0]] });
    const there = [some('4', 'b'), some('5', 'd')];
    expect(combinePreview(here, [there])).toEqual({ join: [there[1]], inBoth: [there[0]] });
  });
});

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

interface Desk {
  readonly setting: CardSetting;
  readonly pass: OfficePass;
  readonly open: (path: string, options?: object) => Promise<Page>;
  readonly get: (path: string) => Promise<request.Response>;
}

async function deskOf(role: 'secretary' | 'manager' = 'secretary'): Promise<Desk> {
  const setting = await setUpClass(service, { entries: 3 });
  const { showId } = setting;
  const pass = await passFor(service, { role, showId });
  return {
    ...{ setting, pass },
    open: async (path, options = {}) =>
      (await openOffice(browser, { service, pass, path: `/shows/${showId}${path}`, options })).page,
    get: (path) => request(service.app.server).get(`/v1/shows/${showId}${path}`).use(pass),
  };
}

const numbersOf = ({ body }: request.Response): number[] =>
  body.items.map(({ backNumber }: { backNumber: number }) => backNumber);

describe('a morning at the desk', patient, () => {
  it('a late entry by keyboard alone: it goes on after a lost answer, and nothing is there twice', async () => {
    const desk = await deskOf();
    const page = await desk.open('/entries/new');
    await see(page.getByLabel('Back number')).toHaveValue('104');
    await see(page.getByRole('combobox', { name: 'Exhibitor' })).toBeFocused();
    await page.keyboard.type('Tess Aldine');
    await tabTo(page, page.getByRole('combobox', { name: 'Horse' }));
    await page.keyboard.type('Small Hours');
    await page.getByLabel('Back number').fill('102');
    await see(page.getByText(/^102 is /)).toBeVisible();
    await page.getByLabel('Back number').fill('104');
    await tabTo(page, page.getByRole('checkbox', { name: /^1 / }));
    await page.keyboard.press('Space');
    await expectAccessible(page);
    // The service does it, and its answer is lost on the way.
    let lost = false;
    await page.route('**/v1/shows/*/entries', async (route) => {
      if (route.request().method() !== 'POST' || lost) return route.fallback();
      lost = true;
      await route.fetch();
      await route.abort();
    });
    const send = page.getByRole('button', { name: 'Enter', exact: true });
    await send.press('Enter');
    await see(page.getByRole('form', { name: 'Late entry' }).getByRole('alert')).toContainText(/\S/);
    await send.press('Enter');
    await see(page.getByRole('list', { name: 'Entered just now' })).toContainText('104');
    expect(numbersOf(await desk.get('/entries'))).toEqual([101, 102, 103, 104]);
    expect((await desk.get('/exhibitors')).body.items).toHaveLength(4);
    expect((await desk.get('/horses')).body.items).toHaveLength(4);
    expect(numbersOf(await desk.get(`/classes/${desk.setting.classId}/entries`))).toContain(104);
    await see(page.getByLabel('Back number')).toHaveValue('105');
    await page.getByRole('combobox', { name: 'Exhibitor' }).fill('tess');
    await page.getByRole('combobox', { name: 'Exhibitor' }).press('ArrowDown');
    await page.keyboard.press('Enter');
    await see(page.getByText('At the show already.')).toBeVisible();
    await see(page.getByRole('combobox', { name: 'Exhibitor' })).toHaveValue('Tess Aldine');
  });

  it('the entries of a class: scratched and taken back, drawn, set by hand with the keys', async () => {
    const desk = await deskOf();
    const { classId } = desk.setting;
    const page = await desk.open(`/classes/${classId}/entries`);
    const change = page.getByRole('button', { name: 'Change No. 102' });
    await change.press('Enter');
    await page.getByLabel('is scratched').check();
    await page.getByRole('textbox', { name: 'Why', exact: true }).fill('The horse is lame.');
    await page.getByRole('form', { name: 'Change No. 102' }).getByRole('button').press('Enter');
    await see(page.getByText('No. 102: scratched.')).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Take it back' }).press('Enter');
    await see(page.getByText('No. 102: entered.').first()).toBeVisible();

    await see(page.getByText(/Nobody can draw until it pleases/)).toBeVisible();
    await page.getByRole('button', { name: 'Draw the order of go' }).press('Enter');
    await see(page.getByText('How it came about')).toBeVisible();
    await page.getByText('How it came about').press('Enter');
    await see(page.getByText('This browser drew it again: the same order.').first()).toBeVisible();
    const before = numbersOf(await desk.get(`/classes/${classId}/entries`));
    const byHand = page.locator('details', { hasText: 'Set it by hand' });
    await byHand.locator('summary').press('Enter');
    const [first = 0] = before;
    await byHand.getByRole('button', { name: `No. ${first} goes later` }).press('End');
    await see(byHand.getByRole('listitem').last()).toContainText(String(first));
    await byHand.getByLabel('Why the order changes').fill('Her horse is not ready.');
    await expectAccessible(page);
    await byHand.getByRole('button', { name: 'Set this order' }).press('Enter');
    await see(page.getByText('The order of go is set.')).toBeVisible();
    expect(numbersOf(await desk.get(`/classes/${classId}/entries`))).toEqual([...before.slice(1), first]);
  });

  it('a class is split after a preview of who moves', async () => {
    const desk = await deskOf();
    const page = await desk.open(`/classes/${desk.setting.classId}/entries`);
    await page.getByText('Split this class').press('Enter');
    const form = page.getByRole('form', { name: 'Split this class' });
    await form.getByLabel('103').check();
    await form.getByLabel('Number of the new class').fill('7');
    await see(form.getByText('1 move to class 7: 103. 2 stay: 101, 102.')).toBeVisible();
    await form.getByLabel('Why', { exact: true }).fill('By age.');
    await form.getByRole('button', { name: 'Split' }).press('Enter');
    await see(page.getByText('1 entries are in class 7 now.')).toBeVisible();
    const { classes } = (await desk.get('/board')).body;
    expect(classes.map(({ number }: { number: number }) => number)).toEqual([1, 7]);
  });

  it('the word of a family is opened on purpose and leaves one line; a name is erased after its number is repeated', async () => {
    const desk = await deskOf('manager');
    const [first] = (await desk.get('/entries')).body.items;
    const page = await desk.open(`/entries/${first.id}`);
    await see(page.getByRole('heading', { level: 1 })).toContainText('101');
    const opened = async () => (await desk.get('/ledger?type=consent.opened')).body.items.length as number;
    expect(await opened()).toBe(0);
    await page.getByRole('button', { name: 'Open them; this leaves a line' }).press('Enter');
    const form = page.getByRole('form', { name: 'Record a word of the family' });
    await form.getByLabel('Her name may be public as').selectOption('first-name-and-initial');
    await form.getByRole('button', { name: 'Record it' }).press('Enter');
    await see(page.getByText('Holds:')).toBeVisible();
    expect(await opened()).toBe(1);
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Erase the name …' }).press('Enter');
    const dialog = page.getByRole('dialog');
    await see(dialog).toContainText('Nothing brings the name back.');
    const erase = dialog.getByRole('button', { name: 'Erase for good' });
    await see(erase).toHaveAttribute('aria-disabled', 'true');
    await dialog.getByLabel('Type the back number 101 once more').fill('101');
    await erase.press('Enter');
    await see(page.getByText('The name is erased.')).toBeVisible();
    expect((await desk.get(`/exhibitors/${first.exhibitor.id}`)).body.erasedAt).not.toBeNull();
  });

  it('on a phone nothing scrolls sideways, in German', async () => {
    const desk = await deskOf();
    const page = await desk.open('/entries?number=102', { viewport: phoneSize, locale: 'de-DE' });
    await see(page.getByRole('row').nth(1)).toContainText('102');
    for (const path of ['/entries', '/entries/new', `/classes/${desk.setting.classId}/entries`]) {
      await page.goto(`${service.address}/office/shows/${desk.setting.showId}${path}`);
      await see(page.getByRole('heading', { level: 1 })).toBeVisible();
      await see(page.getByText(path.endsWith('new') ? 'Pferd' : '102').first()).toBeVisible();
      await see(page.getByText('office-entries-')).toHaveCount(0);
      await expectNoSidewaysScroll(page);
    }
    await expectAccessible(page);
  });
});
