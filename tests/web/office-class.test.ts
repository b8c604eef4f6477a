/** The class in hand: cards come in, a tie is ruled, the result is posted, made official and corrected. */
import { type Browser, expect as expectOfPage, type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import {
  expectAccessible,
  expectNoSidewaysScroll,
  openBrowser,
  openDesk,
  phoneSize,
} from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

/** Two cores may be shared by many tests. */
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });
const see = expectOfPage.configure({ timeout: 20_000 });

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

async function openClass(judged: JudgedClass, locale = 'en-US'): Promise<Page> {
  const desk = await openDesk(browser, { locale });
  await desk.addInitScript(
    (token) => sessionStorage.setItem('ringledger-session', token),
    judged.office.token,
  );
  const page = await desk.newPage();
  await page.goto(`${service.address}/office/shows/${judged.showId}/classes/${judged.classId}`);
  return page;
}

const part = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

const level = [
  ['1', '1', '0'],
  ['0', '1', '1'],
  ['-1', '0', '0'],
] as const;

describe('the class in hand', () => {
  it('goes from three cards over a ruled tie to a posted, an official and a corrected result', async () => {
    const judged = await setUpJudgedClass(service, { judges: 3 });
    const page = await openClass(judged);
    const next = page.locator('.next');
    const cards = part(page, 'Cards');
    await see(page.getByRole('heading', { level: 1, name: 'Class 1: Class 1' })).toBeVisible();
    await see(cards.getByRole('row', { name: /Judge 2/ })).toContainText('waiting');

    await judged.sign(0, goesOf(...level));
    await see(cards.getByRole('row', { name: /Judge 1/ })).toContainText('signed');
    await see(next).toContainText('Still missing: Judge 2, Judge 3. In: 1.');
    await judged.sign(1, goesOf(...level));
    await judged.sign(2, goesOf(...level));

    await see(next).toContainText('One tie needs a ruling');
    await see(part(page, 'Ties')).toContainText('101');
    await expectAccessible(page);
    await part(page, 'Ties').getByRole('button', { name: 'Record the decision' }).click();
    const form = page.getByRole('form', { name: 'Record the ruling' });
    await form.getByLabel('Decided by').selectOption('judge');
    await form.getByLabel('101', { exact: true }).selectOption('2');
    await form.getByLabel('102', { exact: true }).selectOption('1');
    await form.getByRole('button', { name: 'Record the ruling' }).click();
    await see(form.locator('.field-fault').first()).toBeVisible();
    await form.getByLabel('Who decided').fill('Call judge Judge 1');
    await form.getByLabel('Why', { exact: true }).fill('The better stop in the work-off.');
    await form.getByRole('button', { name: 'Record the ruling' }).click();
    await see(part(page, 'Rulings')).toContainText('The better stop in the work-off.');
    await see(next).toContainText('read the preview and post it');
    const preview = part(page, 'Preview').getByRole('row');
    await see(preview.nth(1)).toContainText('102');
    await see(preview.nth(2)).toContainText('101');

    await page.getByRole('button', { name: 'Post this result' }).click();
    await see(part(page, 'Posted')).toContainText('Version 1, provisional');
    await page.getByRole('button', { name: 'Make it official' }).click();
    await expectAccessible(page);
    await page.getByRole('dialog').getByRole('button', { name: 'It is official' }).click();
    await see(part(page, 'Posted')).toContainText('Version 2, official');
    await see(next).toContainText('Nothing is to be done');

    const better = [['1', '1', '1'], level[1], level[2]] as const;
    await judged.amend(0, goesOf(...better), 'Maneuver 3 of 101 was read wrongly.');
    await see(next).toContainText('no longer what the cards say');
    const correct = part(page, 'Correct');
    await see(correct).toContainText('Judge 1 amended her card: revision 1 before, 2 now.');
    await see(correct).toContainText('101: place 2 before, place 1 now.');
    const was = correct.getByRole('row', { name: /^101/ }).getByRole('cell');
    await see(was.nth(0)).toHaveText('place 2');
    await see(was.nth(1)).toHaveText('place 1');
    await expectAccessible(page);
    await correct.getByRole('button', { name: 'Post the correction' }).click();
    await see(correct.getByRole('alert').first()).not.toBeEmpty();
    await correct.getByLabel('Why it changes').fill('Judge 1 amended maneuver 3 of 101.');
    await correct.getByRole('button', { name: 'Post the correction' }).click();
    await see(part(page, 'Posted')).toContainText('Version 3, corrected');
    await see(part(page, 'Posted')).toContainText('Judge 1 amended maneuver 3 of 101.');

    const posted = await judged.get('/result').expect(200);
    expect(posted.body.posting).toMatchObject({ version: 3, state: 'corrected' });
    expect(posted.body.results[0].placings[0].backNumber).toBe(101);
    await page.context().close();
  });

  it('posts nothing that was not looked at: what changed meanwhile is shown first', async () => {
    const judged = await setUpJudgedClass(service, { judges: 1 });
    await judged.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['-1', '0', '0']));
    const page = await openClass(judged);
    const post = page.getByRole('button', { name: 'Post this result' });
    await see(post).toBeVisible();
    await judged.amend(
      0,
      goesOf(['0', '0', '0'], ['1', '0', '0'], ['-1', '0', '0']),
      'Two lines were swapped.',
    );
    await see(page.getByText('The preview changed while you were reading it.')).toBeVisible();
    await see(page.getByText('102: place 2 before, place 1 now.')).toBeVisible();
    await page.getByRole('button', { name: 'I have read it, go on with this' }).click();
    await post.click();
    await see(part(page, 'Posted')).toContainText('Version 1, provisional');
    await page.context().close();
  });

  it('keeps the place of the cursor while cards come in', async () => {
    const judged = await setUpJudgedClass(service, { judges: 2 });
    const page = await openClass(judged);
    const row = part(page, 'Cards').getByRole('row', { name: /Judge 1/ });
    await row.getByRole('button', { name: 'Phones' }).focus();
    await judged.sign(1, goesOf(...level));
    await see(part(page, 'Cards').getByRole('row', { name: /Judge 2/ })).toContainText('signed');
    await see(row.getByRole('button', { name: 'Phones' })).toBeFocused();
    await page.context().close();
  });

  it('tells what to say to a judge whose card is missing, and notes that it was said', async () => {
    const judged = await setUpJudgedClass(service, { judges: 2 });
    await judged.openCard(0);
    await judged.sign(1, goesOf(...level));
    const page = await openClass(judged);
    await page.getByRole('button', { name: 'Chase Judge 1' }).click();
    await see(page.getByLabel('What to say')).toHaveValue(/Class 1 \(Class 1\).*nothing of your card yet/);
    await page.getByRole('button', { name: 'Note: called' }).click();
    await see(page.getByText(/Called at .*noted in this window only/)).toBeVisible();
    await expectAccessible(page);
    await page.context().close();
  });

  it('pairs a phone by a code that is shown large, and takes a phone off with the reason', async () => {
    const judged = await setUpJudgedClass(service, { judges: 1 });
    await judged.judge(0);
    const page = await openClass(judged);
    await page.getByRole('button', { name: 'Phones Judge 1' }).click();
    await page.getByRole('button', { name: "Pair judge's phone Judge 1" }).click();
    const dialog = page.getByRole('dialog', { name: 'Phone of judge Judge 1' });
    await dialog.getByRole('button', { name: 'Make the code' }).click();
    await see(dialog.locator('.code')).toHaveText(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/);
    await see(dialog.getByRole('img', { name: /QR code/ })).toBeVisible();
    await expectAccessible(page);
    await dialog.getByRole('button', { name: 'Done' }).click();
    await page.getByRole('button', { name: 'Take off Judge 1' }).click();
    await page.getByLabel('Why').fill('It was left at the barn.');
    await page.getByRole('button', { name: 'Take it off' }).click();
    await see(
      part(page, 'Cards')
        .getByRole('row', { name: /Judge 1/ })
        .first(),
    ).toContainText('no phone');
    await page.context().close();
  });
});

describe('the office by keyboard', () => {
  it('finds a class by its number and an entry by its back number with "/"', async () => {
    const judged = await setUpJudgedClass(service, { judges: 1 });
    const page = await openClass(judged);
    await see(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.keyboard.press('d');
    await see(page.getByRole('heading', { level: 1, name: 'The day' })).toBeFocused();
    await page.keyboard.press('/');
    await page.keyboard.type('101');
    await see(page.getByRole('link', { name: /^101 / })).toBeVisible();
    await expectAccessible(page);
    await page.keyboard.press('Escape');
    await page.keyboard.type('1');
    await see(page.getByRole('link', { name: 'Class 1: Class 1' })).toBeVisible();
    await page.keyboard.press('Enter');
    await see(page.getByRole('heading', { level: 1, name: 'Class 1: Class 1' })).toBeFocused();
    await page.context().close();
  });

  it('shows its keys by "?", and lets them be switched off', async () => {
    const judged = await setUpJudgedClass(service, { judges: 1 });
    const page = await openClass(judged);
    await see(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.keyboard.press('?');
    const keys = page.getByRole('dialog', { name: 'Short keys' });
    await see(keys).toContainText('Find a class or a back number');
    await keys.getByRole('checkbox').uncheck();
    await page.keyboard.press('Escape');
    await page.keyboard.press('d');
    await see(page.getByRole('heading', { level: 1, name: 'Class 1: Class 1' })).toBeVisible();
    await page.context().close();
  });
});

describe('each screen of the office', () => {
  it('is accessible, and fits a phone, in both languages', async () => {
    const judged = await setUpJudgedClass(service, { judges: 2 });
    await judged.sign(0, goesOf(...level));
    for (const locale of ['en-US', 'de-DE']) {
      const page = await openClass(judged, locale);
      await page.setViewportSize(phoneSize);
      const show = `${service.address}/office/shows/${judged.showId}`;
      for (const path of [
        '',
        '/phones',
        '/ledger',
        `/classes/${judged.classId}`,
        `/classes/${judged.classId}/panel`,
      ]) {
        await page.goto(show + path);
        await see(page.getByRole('heading', { level: 1 })).toBeVisible();
        await see(page.getByText('One moment')).toHaveCount(0);
        await expectAccessible(page);
        await expectNoSidewaysScroll(page);
        expect(await page.locator('main').textContent()).not.toMatch(/office-|shared-/);
      }
      await page.context().close();
    }
  });

  it('puts what needs the office first, and says so in words', async () => {
    const judged = await setUpJudgedClass(service, { judges: 2 });
    await judged.sign(0, goesOf(...level));
    const page = await openClass(judged);
    await see(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.keyboard.press('d');
    const needs = part(page, 'Needs the office now');
    await see(needs).toContainText('One of 2 cards is missing; the others are in.');
    await judged.sign(1, goesOf(...level));
    await see(needs).toContainText('a tie is open');
    await page.context().close();
  });
});
