/** The board to look at: without a script, on a phone, on paper, in both languages, in each light. */
import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  deskSize,
  expectAccessible,
  expectNoSidewaysScroll,
  openBrowser,
  openDesk,
  openPhone,
  see,
} from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let show: string;

beforeAll(async () => {
  service = await buildTestApp();
  judged = await setUpJudgedClass(service, { judges: 2 });
  await judged.sign(0, goesOf(['1', '1', '1'], ['0', '0', '-0.5'], ['-1', '0', '0']));
  await judged.sign(1, goesOf(['1', '0.5', '1'], ['0', '0', '0'], ['-1', '0', '0']));
  for (const state of ['provisional', 'official']) {
    expect((await judged.publish(state)).status).toBe(201);
  }
  await judged.amend(0, goesOf(['0', '0', '-0.5'], ['1', '1', '1'], ['-1', '0', '0']), 'Two lines.');
  await judged.amend(1, goesOf(['0', '0', '0'], ['1', '0.5', '1'], ['-1', '0', '0']), 'Two lines.');
  expect((await judged.publish('corrected', 'Two goes had changed places.')).status).toBe(201);
  show = `${service.address}/shows/${judged.showId}`;
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

describe('the board without JavaScript', () => {
  it('leads from the shows to the reasons, the cards and every posting', async () => {
    const phone = await openPhone(browser, { javaScriptEnabled: false });
    const page = await phone.newPage();
    await page.goto(service.address);
    await page.getByRole('link', { name: 'Larch Valley Spring Show' }).click();
    await see(page.locator('noscript')).toBeVisible();
    expect(await page.locator('noscript').textContent()).toContain('does not move by itself');
    await page.getByRole('link', { name: /Class 1/ }).click();
    const first = page.locator('.placing tbody').first();
    await see(first).toContainText('102');
    await see(first).toContainText(/First: .+ = /);
    await see(page.getByText('Changed because: Two goes had changed places.').first()).toBeVisible();
    await page.getByText('Card of Judge 2').first().click();
    const card = page.getByRole('table', { name: 'Card of Judge 2' });
    await see(card.getByRole('columnheader', { name: '2 Jog a circle left' })).toBeAttached();
    await see(card.locator('tbody').first()).toContainText('+½');
    await see(card.locator('tbody').first()).toContainText('plus one half');
    await page.getByRole('link', { name: 'Read version 1' }).click();
    await see(page.getByRole('heading', { name: 'Version 1, replaced since' })).toBeVisible();
    const before = page.locator('.older tbody tr').first();
    await see(before.locator('.place')).toHaveText('1');
    await see(before.locator('.place-now')).toHaveText('2');
    await phone.close();
  });

  it('gives the result as a table, the signed posting and the head of the ledger to whoever checks', async () => {
    const phone = await openPhone(browser, { javaScriptEnabled: false });
    const page = await phone.newPage();
    await page.goto(`${show}/classes/1`);
    const { posting } = await (await fetch(`${service.address}/v1/classes/${judged.classId}/result`)).json();
    await see(page.locator('.check')).toContainText(posting.ledger.hash);
    const signed = await page.getByRole('link', { name: 'as the service signed it' }).getAttribute('href');
    expect((await (await fetch(service.address + signed)).json()).jws).toBe(posting.jws);
    const table = await page.getByRole('link', { name: '(CSV)' }).getAttribute('href');
    expect(await (await fetch(service.address + table)).text()).toContain('"102"');
    await phone.close();
  });

  it('describes itself to whoever is sent the address, without a name', async () => {
    const html = await (await fetch(`${show}/classes/1`)).text();
    const [, description = ''] = /<meta name="description" content="([^"]+)"/.exec(html) ?? [];
    expect(html).toContain('<title>Class 1, Class 1: Larch Valley Spring Show</title>');
    expect(description).toContain('3 entries are placed');
    expect(description).not.toContain('Exhibitor');
  });

  it('says of cards that are not published when they will be', async () => {
    const words = {
      never: 'The show does not publish the cards of this class.',
      'when-official': 'The cards of this class are published when the result is official.',
    };
    for (const [publishCards, said] of Object.entries(words)) {
      const closed = await setUpJudgedClass(service, { publishCards });
      await closed.sign(0, goesOf(['1', '1', '1'], ['0', '0', '0'], ['-1', '0', '0']));
      expect((await closed.publish('provisional')).status).toBe(201);
      const html = await (await fetch(`${service.address}/shows/${closed.showId}/classes/1`)).text();
      expect(html).toContain(said);
      expect(html).not.toContain('Card of Judge 1');
    }
  });
});

describe('the board in each light and language', () => {
  const pages = { shows: '', board: '/shows/:show', class: '/shows/:show/classes/1' };
  const choices = [
    { language: 'en', theme: 'light' },
    { language: 'de', theme: 'dark' },
    { language: 'de', theme: 'glare' },
  ];
  const all = Object.entries(pages).flatMap(([name, path]) => choices.map((one) => ({ name, path, ...one })));
  for (const { name, path, language, theme } of all) {
    it(`${name}, ${language}, ${theme}: nothing scrolls sideways on a phone, and all of it is accessible`, async () => {
      const phone = await openPhone(browser, { reducedMotion: 'reduce' });
      const page = await phone.newPage();
      const address = service.address + path.replace(':show', judged.showId);
      await page.goto(`${address}?language=${language}&theme=${theme}`);
      await see(page.locator('html')).toHaveAttribute('lang', language);
      for (const card of await page.locator('details.card-of').all()) await card.locator('summary').click();
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
      await page.setViewportSize(deskSize);
      await expectAccessible(page);
      await phone.close();
    });
  }
});

describe('a class on paper', () => {
  it('is black on white, without the ways to elsewhere, with all cards, and says what it is', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    await page.goto(`${show}/classes/1?theme=dark`);
    await page.emulateMedia({ media: 'print' });
    await see(page.getByRole('navigation')).toBeHidden();
    await see(page.getByText('Language')).toBeHidden();
    await see(page.getByRole('table', { name: 'Card of Judge 2' })).toBeVisible();
    const foot = page.locator('.printed-foot');
    await see(foot).toContainText(
      /Larch Valley Spring Show, class 1, version 3 \(official, corrected\), posted/,
    );
    await see(foot).toContainText(/[0-9a-f]{64}/);
    const [ink, paper] = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.body);
      return [color, backgroundColor];
    });
    expect(ink).toBe('rgb(0, 0, 0)');
    expect(paper).toBe('rgba(0, 0, 0, 0)');
    await desk.close();
  });
});
