/** The board while one looks: what is posted comes by itself, by a stream or by asking; a lost connection is said. */
import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openBrowser, openPhone, see } from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let board: string;

beforeAll(async () => {
  service = await buildTestApp();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await service.close();
});
beforeEach(async () => {
  judged = await setUpJudgedClass(service);
  await judged.sign(0, goesOf(['1', '1', '1'], ['0', '0', '0'], ['-1', '0', '0']));
  board = `${service.address}/shows/${judged.showId}`;
});

const post = async (state: string, reason?: string) =>
  expect((await judged.publish(state, reason)).status).toBe(201);
const posted = (page: Page) => page.locator('section.posted');
const patient = { timeout: 30_000 };

describe('the board while one looks', () => {
  it('shows a class when it is posted, says so politely, and marks it until its page was read', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(board);
    await see(page.getByText('Live: what happens')).toBeVisible(patient);
    await see(posted(page)).toContainText('Nothing is posted yet');
    await post('provisional');
    await see(posted(page)).toContainText('posted, not yet official', patient);
    await see(page.getByRole('status').filter({ hasText: 'Class 1, Class 1' })).toHaveText(
      'Class 1, Class 1: the result has been posted.',
    );
    await see(posted(page).getByText('new', { exact: true })).toBeVisible();
    await page.reload();
    await see(posted(page).getByText('new', { exact: true })).toBeVisible(patient);
    await posted(page).getByRole('link').click();
    await see(page.getByRole('heading', { name: 'Places' })).toBeVisible();
    await see
      .poll(() => page.evaluate(() => Object.values(localStorage).join()), patient)
      .toContain(`"${judged.classId}":1`);
    await page.goto(board);
    await see(page.getByText('Live: what happens')).toBeVisible(patient);
    await see(posted(page).getByText('new', { exact: true })).toHaveCount(0);
    await phone.close();
  });

  it('brings the result to whoever waits at the page of the class, and a correction with its reason', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${board}/classes/1`);
    await see(page.getByText('Live: what happens')).toBeVisible(patient);
    await post('provisional');
    await see(page.getByRole('heading', { name: 'Places' })).toBeVisible(patient);
    await post('official');
    await judged.amend(
      0,
      goesOf(['0', '0', '0'], ['1', '1', '1'], ['-1', '0', '0']),
      'Two lines changed places.',
    );
    await post('corrected', 'Judge 1 wrote two goes in each other’s line.');
    await see(page.getByText('Changed because: Judge 1 wrote').first()).toBeVisible(patient);
    await see(page.locator('.placing tbody').first()).toContainText('102');
    await phone.close();
  });

  it('asks every few seconds where no stream gets through', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.route('**/events', (route) => route.abort());
    await page.goto(board);
    await see(page.getByText('Looks for news')).toBeVisible(patient);
    await post('provisional');
    await see(posted(page)).toContainText('posted, not yet official', { timeout: 45_000 });
    await phone.close();
  });

  it('keeps what it shows when the service does not answer, says since when, and goes on by itself', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    const cut = ['**/events', '**/*as=answers*'];
    for (const way of cut) await page.route(way, (route) => route.abort());
    await page.goto(board);
    const lost = page.getByText(/^No connection\. What you see is from \d+:\d\d/);
    await see(lost).toBeVisible(patient);
    await see(page.getByRole('heading', { name: 'Larch Valley Spring Show' })).toBeVisible();
    for (const way of cut) await page.unroute(way);
    await see(page.getByText('The connection is back.')).toBeAttached({ timeout: 45_000 });
    await see(lost).toHaveCount(0);
    await phone.close();
  });
});
