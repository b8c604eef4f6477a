/** A family's pages, as a family uses them: on a phone, on a bad connection, without an account. */
import type { Browser, Page } from '@playwright/test';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  expectAccessible,
  expectNoSidewaysScroll,
  openBrowser,
  openDesk,
  openPhone,
  see,
} from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let show: string;

const marked = {
  maneuvers: [
    { position: 1, mark: '0.5', remark: '[1:23] soft hands' },
    { position: 2, mark: '-1' },
    { position: 3, mark: '0' },
  ],
  extras: { 'form-and-effectiveness': '3' },
};

beforeAll(async () => {
  service = await buildTestApp();
  judged = await setUpJudgedClass(service, { judges: 2 });
  await judged.sign(0, [marked, ...goesOf(['0', '0', '0'], ['2', '0', '0'])]);
  await judged.sign(1, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
  await judged.publish('provisional');
  await judged.publish('official');
  await judged.amend(1, goesOf(['3', '2', '0'], ['0', '0', '0'], ['2', '0', '0']), 'Two marks were misread.');
  await judged.publish('corrected', 'Two marks of 101 were misread.');
  browser = await openBrowser();
  show = `${service.address}/shows/${judged.showId}`;
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

const officeAnswers = async (words: string) => {
  const http = request(service.app.server);
  const listed = await http.get(`/v1/shows/${judged.showId}/queries`).use(judged.office).expect(200);
  const open = listed.body.items.filter(({ state }: { state: string }) => state === 'open');
  for (const { id } of open) {
    const body = { words, outcome: 'stands' };
    await http.post(`/v1/queries/${id}/answers`).use(judged.office).send(body).expect(201);
  }
  return open;
};

async function typeQuery(page: Page, words: string) {
  await page.getByRole('button', { name: 'Ask the show office' }).click();
  await page.getByLabel('A mark or a penalty').check();
  await page.getByLabel('What looks wrong?').fill(words);
}
const sendIt = (page: Page) => page.getByRole('button', { name: 'Send to the show office' }).click();

describe('the page of a back number', () => {
  it('tells place, reasons, each judge beside the other and what was changed, without JavaScript', async () => {
    const phone = await openPhone(browser, { javaScriptEnabled: false });
    const page = await phone.newPage();
    await page.goto(`${show}/numbers/101`);
    await see(page.getByRole('heading', { level: 1 })).toContainText('Exhibitor 1');
    const part = page.getByRole('article', { name: 'Class 1' });
    await see(part).toContainText('Two marks of 101 were misread.');
    await see(part).toContainText('First: 72.5 + 78 = 150.5.');
    const table = part.getByRole('table', { name: 'Marks, judge by judge' });
    await see(table.getByRole('columnheader')).toHaveText(['Maneuver', /Judge 1/, /Judge 2/]);
    await see(table.getByRole('row', { name: /Walk to B/ }).getByRole('cell')).toHaveText([/\+½/, /\+3/]);
    await see(table.getByRole('row', { name: /^Score/ }).getByRole('cell')).toHaveText(['72.5', '78']);
    await part.getByText('Version 1, posted, not yet official').click();
    await see(part.getByText('place 2 of 3').last()).toBeVisible();
    // What stands in <noscript> is no text to Playwright's expectations.
    expect(await part.textContent()).toContain('Ask at the show office');
    await see(part.getByRole('button')).toHaveCount(0);
    await phone.close();
  });

  it('sets the time of a remark off, so that the moment is found in the own video', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    await page.goto(`${show}/numbers/101`);
    const remark = page.getByRole('listitem').filter({ hasText: 'soft hands' });
    await see(remark.locator('time')).toHaveAttribute('datetime', 'PT1M23S');
    await see(remark).not.toContainText('[');
    await see(page.getByText('A framed time is the moment in the video')).toBeVisible();
    await desk.close();
  });

  it('shows of a child what the family allows, and nothing more anywhere in the page', async () => {
    const own = await setUpJudgedClass(service);
    const { prisma } = service.parts.db;
    const entry = await prisma.entry.findFirstOrThrow({ where: { showId: own.showId, backNumber: 101 } });
    const born = { name: 'Adamaris Kesslerby', bornOn: new Date('2013-05-02') };
    await prisma.exhibitor.update({ where: { id: entry.exhibitorId }, data: born });
    await prisma.horse.update({ where: { id: entry.horseId }, data: { name: 'Tin Whistlewood' } });
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    await page.goto(`${service.address}/shows/${own.showId}/numbers/101`);
    await see(page.getByRole('heading', { level: 1 })).toContainText('No. 101');
    expect(await page.content()).not.toMatch(/Adamaris|Kesslerby|Whistlewood|2013-05-02/);
    await desk.close();
  });

  it('is accessible, fits a phone, asks not to be listed and sends no referrer', async () => {
    for (const path of ['numbers/101', 'find', 'find?words=exhibitor']) {
      const phone = await openPhone(browser);
      const page = await phone.newPage();
      const answer = await page.goto(`${show}/${path}`);
      expect(answer?.headers()['referrer-policy']).toBe('no-referrer');
      expect(await page.locator('meta[name=robots]').getAttribute('content')).toBe('noindex');
      if (path.startsWith('numbers')) await typeQuery(page, 'Only to look at the form.');
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      await phone.close();
    }
  });

  it('is not there for a number that nobody wears', async () => {
    const desk = await openDesk(browser);
    const page = await desk.newPage();
    expect((await page.goto(`${show}/numbers/999`))?.status()).toBe(404);
    await desk.close();
  });
});

describe('finding an entry', () => {
  it('works as a plain form without JavaScript', async () => {
    const phone = await openPhone(browser, { javaScriptEnabled: false });
    const page = await phone.newPage();
    await page.goto(`${show}/find`);
    await page.getByLabel(/Back number/).fill('102');
    await page.getByRole('button', { name: 'Find' }).click();
    await page.getByRole('link', { name: /102/ }).click();
    await see(page.getByRole('heading', { level: 1 })).toContainText('Exhibitor 2');
    await phone.close();
  });

  it('leaves no name in the address where there is a script, and says what to do where nobody is found', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${show}/find?words=exhibitor`);
    await see(page.getByText('3 entries answer to “exhibitor”.')).toBeVisible();
    await see(page).toHaveURL(`${show}/find`);
    await page.getByLabel(/Back number/).fill('Kesslerby');
    await page.getByRole('button', { name: 'Find' }).click();
    await see(page.getByText('Nobody answers to “Kesslerby”.')).toBeVisible();
    await see(page.getByText('a child may be listed by number alone', { exact: false })).toBeVisible();
    await see(page).toHaveURL(`${show}/find`);
    await phone.close();
  });

  it('keeps what was typed when the service does not answer', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${show}/find`);
    await page.waitForLoadState('networkidle').catch(() => undefined);
    await phone.setOffline(true);
    await page.getByLabel(/Back number/).fill('103');
    await page.getByRole('button', { name: 'Find' }).click();
    await see(page.getByText('What you typed is still there')).toBeVisible();
    await phone.setOffline(false);
    await page.getByRole('button', { name: 'Find' }).click();
    await see(page.getByRole('link', { name: /103/ })).toBeVisible();
    await phone.close();
  });
});

describe('this looks wrong', () => {
  it('nothing typed is lost by a failed sending or a reload; sent again it counts once; the answer comes by itself', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${show}/numbers/101`);
    const words = 'On the second maneuver we saw plus one half.';
    await typeQuery(page, words);
    await see(page.getByText('A protest is something else')).toBeVisible();
    // It arrives, and its answer is lost on the way back.
    await page.route('**/v1/classes/*/queries', async (route) => {
      await route.fetch();
      await route.abort();
    });
    await sendIt(page);
    await see(page.getByRole('alert')).toContainText('What you typed is still here');
    await see(page.getByLabel('What looks wrong?')).toHaveValue(words);
    await page.reload();
    await see(page.getByLabel('What looks wrong?')).toHaveValue(words);
    await see(page.getByLabel('A mark or a penalty')).toBeChecked();
    await page.unroute('**/v1/classes/*/queries');
    await sendIt(page);
    await see(page.getByText('has not answered yet')).toBeVisible();
    const open = await officeAnswers('The card says minus one. The judge stands by it.');
    expect(open).toMatchObject([{ words, about: 'marks', backNumber: 101, postingVersion: 3 }]);
    await see(page.getByText('The judge stands by it.')).toBeVisible();
    await see(page.getByText('The result stands.')).toBeVisible();
    await page.reload();
    await see(page.getByText('The judge stands by it.')).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Forget it on this device' }).click();
    await page.getByRole('button', { name: 'Yes, forget it here' }).click();
    await see(page.getByText('The judge stands by it.')).toBeHidden();
    expect(await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }))).not.toMatch(
      /code|minus|plus/,
    );
    await phone.close();
  });

  it('is followed on another device by a link whose code never reaches the service in an address', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${show}/numbers/102`);
    await typeQuery(page, 'Is this the right horse?');
    await sendIt(page);
    await page.getByText('Follow it elsewhere').click();
    const link = await page.getByRole('textbox', { name: 'Follow it elsewhere' }).inputValue();
    expect(link).toMatch(/\/numbers\/102#query=[\w-]{27}$/);
    const code = link.split('=').at(-1) ?? '';

    const desk = await openDesk(browser);
    const other = await desk.newPage();
    const asked: string[] = [];
    other.on('request', (one) => asked.push(one.url()));
    await other.goto(link);
    await see(other.getByText('Is this the right horse?')).toBeVisible();
    await see(other).toHaveURL(`${show}/numbers/102`);
    expect(asked.filter((url) => url.replace(/#.*/, '').includes(code))).toEqual([]);

    await other.getByRole('button', { name: 'Take it back' }).click();
    await other.getByRole('button', { name: 'Yes, take it back' }).click();
    await see(other.getByText('You took it back.')).toBeVisible();
    await page.reload();
    await see(page.getByText('You took it back.')).toBeVisible();
    await see(page.getByText('Is this the right horse?')).toBeHidden();
    await desk.close();
    await phone.close();
  });

  it('says what is missing before anything is sent', async () => {
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${show}/numbers/103`);
    await page.getByRole('button', { name: 'Ask the show office' }).click();
    await sendIt(page);
    await see(page.getByRole('alert')).toContainText('Say what it is about.');
    await page.getByLabel('Something else').check();
    await sendIt(page);
    await see(page.getByRole('alert')).toContainText('Say what looks wrong.');
    const manager = await passFor(service, { role: 'manager', showId: judged.showId });
    const { body } = await request(service.app.server).get(`/v1/shows/${judged.showId}/queries`).use(manager);
    expect(body.items.filter(({ backNumber }: { backNumber: number }) => backNumber === 103)).toEqual([]);
    await phone.close();
  });

  it('in German all of it is in German', async () => {
    const phone = await openPhone(browser, { locale: 'de-DE' });
    const page = await phone.newPage();
    await page.goto(`${show}/numbers/101`);
    await see(page.getByRole('table', { name: 'Noten, Richter für Richter' })).toBeVisible();
    await page.getByRole('button', { name: 'Die Meldestelle fragen' }).click();
    await see(page.getByLabel('Um eine Note oder einen Abzug')).toBeVisible();
    expect(await page.locator('main').textContent()).not.toMatch(/exhibitor-|board-|shared-/);
    await phone.close();
  });
});
