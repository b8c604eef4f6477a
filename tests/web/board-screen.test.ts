/** The board on a screen at the ring: sheets that take turns, stop when told, and give way to what was just posted. */
import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSidewaysScroll, openBrowser, phoneSize, see } from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let screen: string;

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
  screen = `${service.address}/shows/${judged.showId}/screen`;
});

const large = { viewport: { width: 1920, height: 1080 }, locale: 'en-US' };
const patient = { timeout: 30_000 };

describe('the board on a screen', () => {
  it('shows one sheet at a time, steps by keys, stops by the space bar, and goes on by itself', async () => {
    const wall = await browser.newContext({ ...large, reducedMotion: 'reduce' });
    const page = await wall.newPage();
    await page.goto(screen);
    await see(page.locator('.slide')).toHaveCount(1, patient);
    await see(page.getByRole('heading', { name: 'Now' })).toBeVisible();
    await page.keyboard.press(' ');
    await see(page.getByRole('button', { name: 'Go on' })).toBeVisible();
    await page.keyboard.press('ArrowRight');
    await see(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible();
    await page.keyboard.press('ArrowLeft');
    await see(page.getByRole('heading', { name: 'Now' })).toBeVisible();
    await expectAccessible(page);
    const before = await page.getByRole('progressbar').getAttribute('value');
    await page.waitForTimeout(2_500);
    expect(await page.getByRole('progressbar').getAttribute('value')).toBe(before);
    await page.keyboard.press(' ');
    await see(page.getByRole('heading', { name: 'Next', exact: true })).toBeVisible(patient);
    await wall.close();
  });

  it('brings what was just posted onto the screen, in sight as a whole', async () => {
    const wall = await browser.newContext(large);
    const page = await wall.newPage();
    const heard = page.waitForResponse((answer) => answer.url().includes('as=answers'), patient);
    await page.goto(screen);
    await heard;
    expect((await judged.publish('provisional')).status).toBe(201);
    await see(page.locator('.slide.posted')).toContainText('101', patient);
    await see(page.locator('.slide-places tbody tr')).toHaveCount(3);
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(1080);
    await page.setViewportSize(phoneSize);
    await expectNoSidewaysScroll(page);
    await wall.close();
  });

  it('shows the crowd no error when the connection is lost, only of when the sheets are', async () => {
    const wall = await browser.newContext(large);
    const page = await wall.newPage();
    for (const way of ['**/events', '**/*as=answers*']) await page.route(way, (route) => route.abort());
    await page.goto(screen);
    await see(page.getByText(/^as of \d+:\d\d/)).toBeVisible(patient);
    await see(page.getByText('No connection')).toHaveCount(0);
    await see(page.locator('.slide')).toHaveCount(1);
    await wall.close();
  });

  it('without JavaScript lists all sheets, and says that they stand still', async () => {
    expect((await judged.publish('provisional')).status).toBe(201);
    const wall = await browser.newContext({ ...large, javaScriptEnabled: false });
    const page = await wall.newPage();
    await page.goto(screen);
    await see(page.locator('noscript')).toBeVisible();
    expect(await page.locator('noscript').textContent()).toContain('do not take turns by themselves');
    await see(page.locator('.slide')).toHaveCount(3);
    expect(await page.locator('meta[http-equiv]').count()).toBe(0);
    await wall.close();
  });
});
