/** Pages that the service renders: there without JavaScript, taken over by the browser, in the reader's language. */
import { type Browser, expect as see } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, openBrowser, openDesk, openPhone } from '../support/browser.ts';
import { type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let board: string;

beforeAll(async () => {
  service = await buildTestApp();
  judged = await setUpJudgedClass(service);
  browser = await openBrowser();
  board = `${service.address}/shows/${judged.showId}`;
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

describe('a page that the service renders', () => {
  it('says what it has to say without JavaScript', async () => {
    const phone = await openPhone(browser, { javaScriptEnabled: false });
    const page = await phone.newPage();
    await page.goto(board);
    await see(page.getByRole('heading', { level: 1 })).toContainText('Larch Valley Spring Show');
    await phone.close();
  });

  it('is in the language that the browser asks for, and in the one that was chosen', async () => {
    const desk = await openDesk(browser, { locale: 'de-AT' });
    const page = await desk.newPage();
    await page.goto(board);
    await see(page.locator('html')).toHaveAttribute('lang', 'de');
    await page.goto(`${board}?language=en&theme=glare`);
    await page.goto(board);
    await see(page.locator('html')).toHaveAttribute('lang', 'en');
    await see(page.locator('html')).toHaveAttribute('data-theme', 'glare');
    await desk.close();
  });

  it('is taken over by its script without a complaint of the browser, and is accessible', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    const complaints: string[] = [];
    page.on('console', (line) => line.type() === 'error' && complaints.push(line.text()));
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(board);
    await page.waitForLoadState('load');
    await expectAccessible(page);
    expect(complaints).toEqual([]);
    await desk.close();
  });

  it('is not there for a show that is not there', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    const answer = await page.goto(`${service.address}/shows/${crypto.randomUUID()}`);
    expect(answer?.status()).toBe(404);
    await desk.close();
  });
});
