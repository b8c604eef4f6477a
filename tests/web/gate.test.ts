/** The gate at a show: a phone that is paired, the gate sheet, no signal, and the announcer. */
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { send } from '../api/office-client.ts';
import {
  deskSize,
  expectAccessible,
  expectNoSidewaysScroll,
  openBrowser,
  openPhone,
  see,
} from '../support/browser.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;
let phone: BrowserContext;
let page: Page;

beforeAll(async () => {
  service = await buildTestApp();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

beforeEach(async () => {
  judged = await setUpJudgedClass(service, { judges: 1, rule: { ties: [{ code: 'share' }] } });
  await asOffice('post', '/order-of-go/draws', {});
  phone = await openPhone(browser);
  page = await phone.newPage();
  await pair();
});
afterEach(() => phone.close());

type Method = 'get' | 'post' | 'put';

/** Below the class. */
async function asOffice(method: Method, path: string, body?: object) {
  const address = `/v1/shows/${judged.showId}/classes/${judged.classId}${path}`;
  const answer = await send(service, method, address, { pass: judged.office, ...(body && { body }) });
  if (answer.status >= 400) throw new Error(JSON.stringify(answer.body));
  return answer.body;
}

async function pair(): Promise<void> {
  const address = `/v1/shows/${judged.showId}/invitations`;
  const invited = await send(service, 'post', address, { pass: judged.office, body: { role: 'gate' } });
  await page.goto(`${service.address}/pair#${invited.body.code}`);
  await page.locator('#pair').click();
  await see(page.getByRole('heading', { level: 1 })).toContainText('at the gate');
  await page.goto(`${service.address}/gate`);
  await page.getByRole('link', { name: /Class 1/ }).click();
  await see(page.getByRole('heading', { name: 'Gate sheet' })).toBeVisible();
}

const statuses = async (): Promise<Record<string, string>> => {
  const { items } = await asOffice('get', '/entries');
  return Object.fromEntries(
    items.map(({ backNumber, status }: { backNumber: number; status: string }) => [backNumber, status]),
  );
};
const order = async (): Promise<number[]> =>
  (await asOffice('get', '/order-of-go')).goes.map(({ backNumber }: { backNumber: number }) => backNumber);

/** What the show's ledger says happened to an entry, in order. */
async function happened(backNumber: number): Promise<string[]> {
  const address = `/v1/shows/${judged.showId}/ledger?limit=200`;
  const { body } = await send(service, 'get', address, { pass: judged.office });
  return body.items
    .filter((line: { body: { backNumber?: number; status?: string } }) => line.body.backNumber === backNumber)
    .flatMap((line: { body: { status?: string } }) => line.body.status ?? []);
}

const here = (backNumber: number) => page.getByRole('button', { name: `${backNumber} is here` });
const said = (words: string | RegExp) => page.locator('.said').getByText(words);

async function scratch(backNumber: number, reason = 'The horse is not fit to go'): Promise<void> {
  await page.getByRole('button', { name: `More for ${backNumber}` }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Scratch' }).click();
  await dialog.getByRole('button', { name: reason }).click();
  await see(said(`${backNumber}: scratched`)).toBeVisible();
}

describe('the gate', () => {
  it('calls the class, checks entries in, scratches with a reason and undoes it', async () => {
    await page.getByRole('button', { name: 'Call the class' }).click();
    await see(page.getByText(/called to the ring/)).toBeVisible();
    await here(101).click();
    await see(here(101)).toHaveAttribute('aria-pressed', 'true');
    await see.poll(statuses).toMatchObject({ 101: 'checked-in', 102: 'entered' });
    await scratch(102);
    await see.poll(statuses).toMatchObject({ 102: 'scratched' });
    const { items } = await asOffice('get', '/entries');
    expect(items.map(({ statusReason }: { statusReason: string | null }) => statusReason)).toContain(
      'The horse is not fit to go',
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    await see.poll(statuses).toMatchObject({ 101: 'checked-in', 102: 'entered' });
    expect(await happened(102)).toEqual(['scratched', 'entered']);
  });

  it('takes a reason in its own words, and keeps them while the dialog is open', async () => {
    await page.getByRole('button', { name: 'More for 103' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Did not come' }).click();
    await see(dialog.getByRole('button', { name: 'Keep this reason' })).toBeDisabled();
    await dialog.getByLabel('Or in your own words').fill('Stuck at the bridge');
    await dialog.getByRole('button', { name: 'Keep this reason' }).click();
    await see.poll(statuses).toMatchObject({ 103: 'no-show' });
    await see(page.getByText('Stuck at the bridge')).toBeVisible();
  });

  it('says who is in the ring, on deck and in the hole, by the judges and by hand', async () => {
    await page.getByRole('button', { name: 'Call the class' }).click();
    const numbers = await order();
    const spots = page.getByRole('region', { name: 'At the gate' });
    await see(spots).toContainText(`In the ring${numbers[0]}`);
    await see(spots).toContainText(`In the hole${numbers[2]}`);
    await spots.getByRole('button', { name: 'Next one in' }).click();
    await see(spots).toContainText(`In the ring${numbers[1]}`);
    await spots.getByRole('button', { name: 'One back' }).click();
    await see(spots).toContainText(`In the ring${numbers[0]}`);
  });

  it('changes the order by hand, with the reason that everybody can read', async () => {
    const before = await order();
    const [first = 0] = before;
    await page.getByRole('link', { name: 'Change the order of go' }).click();
    await page.getByRole('button', { name: `${first} to the end` }).click();
    await page.getByRole('button', { name: 'Keep this order' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Not ready yet' }).click();
    await see.poll(order).toEqual([...before.slice(1), first]);
    const draws = await asOffice('get', '/order-of-go/draws');
    expect(draws.items.at(-1)).toMatchObject({ kind: 'by-hand', reason: 'Not ready yet' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await see.poll(order).toEqual(before);
  });

  it('sees what others do as they do it: a late add, a scratch of the office', async () => {
    const { body: exhibitor } = await send(service, 'post', `/v1/shows/${judged.showId}/exhibitors`, {
      ...{ pass: judged.office, body: { name: 'Ada Kessler', bornOn: '1990-01-01' } },
    });
    const { body: horse } = await send(service, 'post', `/v1/shows/${judged.showId}/horses`, {
      ...{ pass: judged.office, body: { name: 'Moss Agate' } },
    });
    const { body: entry } = await send(service, 'post', `/v1/shows/${judged.showId}/entries`, {
      pass: judged.office,
      body: { backNumber: 177, exhibitorId: exhibitor.id, horseId: horse.id },
    });
    await asOffice('post', '/entries', { entryId: entry.id, reason: 'entered at the gate' });
    const added = page.getByRole('listitem').filter({ hasText: '177' });
    await see(added).toContainText('late add');
    await see(added).toContainText('Ada Kessler');
  });

  it('loses nothing without signal: it says what is not sent, keeps it, and sends it once, in order', async () => {
    await phone.setOffline(true);
    await here(101).click();
    await scratch(101);
    await see(page.getByText('2 changes are not sent yet.')).toBeVisible();
    await see(page.getByRole('listitem').filter({ hasText: 'The horse is not fit' })).toContainText(
      'not sent yet',
    );
    await page.getByRole('button', { name: 'Try again' }).click();
    await see(page.getByText('2 changes are not sent yet.')).toBeVisible();
    expect(await statuses()).toMatchObject({ 101: 'entered' });
    // The battery is flat; the page is opened again when there is signal.
    await page.close();
    await phone.setOffline(false);
    page = await phone.newPage();
    await page.goto(`${service.address}/gate`);
    await see.poll(statuses).toMatchObject({ 101: 'scratched' });
    expect(await happened(101)).toEqual(['checked-in', 'scratched']);
    await see(page.getByText(/not sent yet/)).toHaveCount(0);
  });

  it('takes back what was never sent as if it had never been', async () => {
    await phone.setOffline(true);
    await scratch(103);
    await page.getByRole('button', { name: 'Undo' }).click();
    await see(said('103 is as before.')).toBeVisible();
    await phone.setOffline(false);
    await here(101).click();
    await see.poll(statuses).toMatchObject({ 101: 'checked-in', 103: 'entered' });
    expect(await happened(103)).toEqual([]);
  });

  it('says what the service refused, and keeps it until it is put away', async () => {
    await phone.setOffline(true);
    await page.getByRole('button', { name: 'More for 102' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Excused' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Excused by the judge' }).click();
    const [, second] = judged.entryIds;
    await asOffice('put', `/entries/${second}/status`, { status: 'scratched', reason: 'sold' });
    await phone.setOffline(false);
    const refused = page.getByRole('alert').filter({ hasText: 'Not taken by the service' });
    await see(refused).toContainText('102 excused');
    await refused.getByRole('button', { name: 'Put this away' }).click();
    await see(refused).toHaveCount(0);
    expect(await statuses()).toMatchObject({ 102: 'scratched' });
  });

  it('is accessible and fits a phone, light and dark, in both languages', async () => {
    await page.getByRole('button', { name: 'Call the class' }).click();
    await see(page.getByRole('region', { name: 'At the gate' })).toBeVisible();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
    }
    await page.getByRole('link', { name: 'All classes' }).click();
    await page.getByLabel('Language').selectOption('de');
    await see(page.getByRole('heading', { name: 'Ohne Bahn' })).toBeVisible();
    await expectAccessible(page);
    expect(await page.locator('body').textContent()).not.toMatch(/gate-|shared-/);
  });

  it('leaves nothing on the phone that it let go', async () => {
    await page.getByRole('link', { name: 'All classes' }).click();
    await page.getByText('This phone', { exact: true }).click();
    await page.getByRole('button', { name: 'Let this phone go' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Let this phone go' }).click();
    await see(page).toHaveURL(/\/pair$/);
    const left = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
    expect(left).not.toContain('ringledger-gate');
    await page.goto(`${service.address}/gate`);
    await see(page.getByRole('heading', { level: 1 })).toHaveText("This device is not the gate's yet");
  });

  it('shows nobody any more once the office took the phone off the show', async () => {
    const { body } = await send(service, 'get', `/v1/shows/${judged.showId}/phones`, { pass: judged.office });
    const gate = body.items.find(({ role }: { role: string }) => role === 'gate');
    await page.context().setOffline(true);
    await here(101).click();
    await send(service, 'delete', `/v1/shows/${judged.showId}/phones/${gate.id}?why=lost`, {
      pass: judged.office,
    });
    await page.context().setOffline(false);
    await see(page.getByRole('heading', { level: 1 })).toHaveText("This device is no longer the gate's");
    await see(page.getByText('class 1, 101 checked in')).toBeVisible();
    await page.reload();
    await see(page.getByRole('heading', { level: 1 })).toHaveText("This device is no longer the gate's");
  });
});

describe('the announcer', () => {
  beforeEach(async () => {
    await judged.sign(0, goesOf(['0', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
    await judged.publish('provisional');
    await page.getByRole('link', { name: 'Read the placings' }).click();
    await see(page.locator('.reading-page')).toContainText('Judge: Judge 1');
  });

  it('reads from the last place to the first, one at a time, by keys and by touch', async () => {
    const sheet = page.locator('.reading-page');
    await see(sheet).toContainText('Judge: Judge 1');
    await see(sheet).toContainText('Say that the result is provisional.');
    await page.keyboard.press('ArrowRight');
    await see(sheet).toContainText('Place 2');
    await see(sheet).toContainText('shares the place');
    await page.keyboard.press('ArrowRight');
    await page.getByRole('button', { name: 'Next' }).click();
    await see(sheet).toContainText('Place 1');
    await see(sheet).toContainText('103');
    await see(page.getByRole('button', { name: 'Next' })).toBeDisabled();
    await page.keyboard.press('ArrowLeft');
    await see(sheet).toContainText('Place 2');
    await page.keyboard.press('Home');
    await see(sheet).toContainText('Judge: Judge 1');
  });

  it('never goes on in an old result: a correction is read from its beginning', async () => {
    await page.keyboard.press('ArrowRight');
    await see(page.locator('.reading-page')).toContainText('Place 2');
    await judged.publish('official');
    await judged.amend(0, goesOf(['3', '0', '0'], ['0', '0', '0'], ['2', '0', '0']), 'Numbers transposed');
    await judged.publish('corrected', 'Numbers transposed');
    await see(page.locator('.posting-state')).toContainText('Official, corrected.');
    await see(page.locator('.reading-page')).toContainText('Judge: Judge 1');
    for (let turn = 0; turn < 3; turn += 1) await page.keyboard.press('ArrowRight');
    await see(page.locator('.reading-page')).toContainText('101');
  });

  it('says without signal when it was read last', async () => {
    await see(page.locator('.reading-page')).toBeVisible();
    await phone.setOffline(true);
    await page.getByRole('link', { name: 'Gate sheet' }).click();
    await page.getByRole('link', { name: 'Read the placings' }).click();
    await see(page.getByText(/No signal: this was read at/)).toBeVisible();
    await phone.setOffline(false);
  });

  it('is accessible and fits a phone and a desk', async () => {
    await page.keyboard.press('ArrowRight');
    await see(page.locator('.reading-page')).toContainText('Place 2');
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await page.setViewportSize(deskSize);
    await expectNoSidewaysScroll(page);
  });
});
