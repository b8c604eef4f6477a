/**
 * One class from the first code to the posted result, as its people do it: the office at a desk, three judges on their
 * phones, one of them without signal, a family with the board open. Five browsers at once over the real service.
 */
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { codeNow, firstManager, password, waitForNextCode } from '../api/accounts-client.ts';
import { openBrowser, openDesk, openPhone, see } from '../support/browser.ts';
import { type CardSetting, setUpClass } from '../support/card-setting.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let browser: Browser;
let setting: CardSetting;
let office: Page;
let family: Page;
let judges: Page[];

beforeAll(async () => {
  service = await buildTestApp();
  browser = await openBrowser();
  setting = await setUpClass(service, { judges: 3, entries: 2 });
  const pages = await Promise.all([
    openDesk(browser),
    openPhone(browser),
    ...[1, 2, 3].map(() => openPhone(browser)),
  ]);
  const [atDesk, atHome, ...atRing] = await Promise.all(pages.map((context) => context.newPage()));
  if (atDesk === undefined || atHome === undefined) throw new Error('there is no page');
  [office, family, judges] = [atDesk, atHome, atRing];
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

const part = (name: string) => office.getByRole('region', { name, exact: true });

async function signIn(): Promise<void> {
  const { signIn: name, secret } = await firstManager(service);
  waitForNextCode(service);
  await office.goto(`${service.address}/office/shows/${setting.showId}/classes/${setting.classId}`);
  await office.getByLabel('Name to sign in').fill(name);
  await office.getByLabel('Password').fill(password);
  await office.getByLabel('One-time code').fill(codeNow(service, secret));
  await office.getByRole('button', { name: 'Sign in' }).click();
  await see(office.getByRole('heading', { level: 1, name: /Class 1/ })).toBeVisible();
}

/** The office makes a code at the judge's row; she types nothing: her phone opens the link. */
async function pairPhone(number: number): Promise<void> {
  const row = part('Cards').getByRole('row', { name: new RegExp(`Judge ${number}`) });
  await row.getByRole('button', { name: /^Phones/ }).click();
  await office.getByRole('button', { name: new RegExp(`^Pair judge's phone Judge ${number}`) }).click();
  const dialog = office.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Make the code' }).click();
  const code = await dialog.locator('.code').textContent();
  const phone = phoneOf(number);
  await phone.goto(`${service.address}/pair#${code}`);
  await phone.locator('#pair').click();
  await phone.getByRole('link', { name: 'To the classes' }).click();
  await see(phone.getByRole('heading', { level: 1 })).toContainText('Larch Valley');
  await see(dialog).toContainText('it is paired');
  await dialog.getByRole('button', { name: 'Done' }).click();
  await row.getByRole('button', { name: /^Phones/ }).click();
}

function phoneOf(number: number): Page {
  const phone = judges[number - 1];
  if (phone === undefined) throw new Error(`there is no judge ${number}`);
  return phone;
}

/** Marks of the maneuvers and of form and effectiveness, as the keys say them. */
async function judge(number: number, goes: readonly (readonly string[])[]): Promise<void> {
  const phone = phoneOf(number);
  await phone
    .getByRole('link', { name: /Class 1/ })
    .first()
    .click();
  for (const marks of goes) {
    await phone.getByRole('button', { name: /^Next:/ }).click();
    for (const said of marks)
      await phone.locator('.marks').getByRole('button', { name: said, exact: true }).click();
    await phone
      .getByRole('link', { name: /Class 1/ })
      .first()
      .click();
  }
}

async function sign(number: number): Promise<void> {
  const phone = phoneOf(number);
  await phone.getByRole('button', { name: 'Sign', exact: true }).click();
  await phone.getByRole('button', { name: 'Sign this card' }).click();
}

interface Posted {
  readonly results: readonly {
    readonly placings: readonly { readonly backNumber: number; readonly total: string }[];
  }[];
}

const contextOf = (number: number): BrowserContext => phoneOf(number).context();

describe('a class of three judges', () => {
  it('is judged on three phones, chased, posted, and read by a family that has the board open', async () => {
    await signIn();
    await family.goto(`${service.address}/shows/${setting.showId}`);
    for (const number of [1, 2, 3]) await pairPhone(number);

    await Promise.all([
      judge(1, [
        ['plus 1', 'plus one half', '0', '3'],
        ['0', '0', 'minus one half', '2'],
      ]),
      judge(2, [
        ['plus one half', '0', '0', '2'],
        ['plus 1', 'plus 1', 'plus 1', '4'],
      ]),
    ]);
    await Promise.all([sign(1), sign(2)]);
    await see(part('Cards').getByRole('row', { name: /Judge 2/ })).toContainText('signed');
    await see(office.locator('.next')).toContainText('Still missing: Judge 3');

    // Behind the barn: the third marks and signs with no network at all, and sees that it waits on her phone.
    await contextOf(3).setOffline(true);
    await judge(3, [
      ['plus 2', 'plus 1', 'plus 1', '4'],
      ['0', 'plus one half', '0', '3'],
    ]);
    await sign(3);
    await see(phoneOf(3).getByText(/^Signed on this phone at/)).toBeVisible();
    await see(part('Cards').getByRole('row', { name: /Judge 3/ })).toContainText('waiting');
    await contextOf(3).setOffline(false);
    await see(phoneOf(3).getByText(/^Signed and received at/)).toBeVisible();

    // 101: 70 + 4.5, 2.5, 8 = 225; 102: 70 + 1.5, 7, 3.5 = 222.
    await see(office.locator('.next')).toContainText('read the preview and post it');
    const preview = part('Preview').getByRole('row');
    await see(preview.nth(1)).toContainText('225');
    await see(preview.nth(2)).toContainText('222');
    await office.getByRole('button', { name: 'Post this result' }).click();
    await see(part('Posted')).toContainText('Version 1, provisional');

    const posted = family.getByRole('link', { name: /Class 1/ }).first();
    await see(family.locator('main')).toContainText('posted, not yet official');
    await posted.click();
    await see(family.locator('main')).toContainText('225');
    const answer = await fetch(`${service.address}/v1/classes/${setting.classId}/result`);
    const { results } = (await answer.json()) as Posted;
    const totals = results[0]?.placings.map(({ backNumber, total }) => [backNumber, total]);
    expect(totals).toEqual([
      [101, '225'],
      [102, '222'],
    ]);
  }, 120_000);
});
