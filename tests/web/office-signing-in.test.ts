/** The office comes in: an account is set up, signed in to, guessed at, and a session that ends loses nothing. */
import { type Browser, expect as expectOfPage, type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { makeFirstAccount } from '../../src/access/index.ts';
import {
  type Colleague,
  call,
  codeNow,
  firstManager,
  password,
  waitForNextCode,
} from '../api/accounts-client.ts';
import {
  expectAccessible,
  expectNoSidewaysScroll,
  openBrowser,
  openDesk,
  openPhone,
} from '../support/browser.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

/** Two cores may be shared by many tests. */
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });
const see = expectOfPage.configure({ timeout: 20_000 });

let service: TestApp;
let browser: Browser;
let ada: Colleague;
let showId: string;

beforeAll(async () => {
  service = await buildTestApp();
  browser = await openBrowser();
  ada = await firstManager(service);
  const made = await call(service, 'post', '/shows', {
    token: ada.token,
    body: {
      ...{ name: 'Alder Creek Show', place: 'Alder Creek', timeZone: 'America/Denver' },
      ...{ firstDay: '2027-06-05', lastDay: '2027-06-06' },
    },
  });
  showId = made.body.id;
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

async function openOffice(path = ''): Promise<Page> {
  const desk = await openDesk(browser);
  const page = await desk.newPage();
  await page.goto(`${service.address}/office${path}`);
  return page;
}

async function signIn(page: Page, who: Colleague, typed: { readonly password?: string } = {}) {
  waitForNextCode(service);
  await page.getByLabel('Name to sign in').fill(who.signIn);
  await page.getByLabel('Password').fill(typed.password ?? who.password);
  await page.getByLabel('One-time code').fill(codeNow(service, who.secret));
  await page.keyboard.press('Enter');
}

describe('signing in', () => {
  it('leads to the shows that one works at, by keyboard alone', async () => {
    const page = await openOffice();
    await see(page.getByRole('heading', { level: 1, name: 'Sign in' })).toBeVisible();
    await expectAccessible(page);
    await page.getByLabel('Name to sign in').focus();
    waitForNextCode(service);
    await page.keyboard.type(ada.signIn);
    await page.keyboard.press('Tab');
    await page.keyboard.type(password);
    await page.keyboard.press('Tab');
    await page.keyboard.type(codeNow(service, ada.secret));
    await page.keyboard.press('Enter');
    await see(page.getByRole('link', { name: 'Alder Creek Show' })).toBeVisible();
    await expectAccessible(page);
    await page.context().close();
  });

  it('can be filled by a password manager', async () => {
    const page = await openOffice();
    await see(page.getByLabel('Name to sign in')).toHaveAttribute('autocomplete', 'username');
    await see(page.getByLabel('Password')).toHaveAttribute('autocomplete', 'current-password');
    await see(page.getByLabel('One-time code')).toHaveAttribute('autocomplete', 'one-time-code');
    await page.context().close();
  });

  it('says what does not fit, keeps the name, and says how long to wait after many wrong tries', async () => {
    const page = await openOffice();
    const alert = page.getByRole('alert');
    await signIn(page, ada, { password: 'not her password' });
    await see(alert).toContainText('do not fit together');
    await see(page.getByLabel('Name to sign in')).toHaveValue(ada.signIn);
    await see(page.getByLabel('One-time code')).toHaveValue('');
    for (let tries = 0; tries < 12; tries += 1) {
      if (((await alert.textContent()) ?? '').includes('Wait')) break;
      await signIn(page, ada, { password: 'not her password' });
      await see(page.getByLabel('One-time code')).toHaveValue('');
    }
    await see(alert).toContainText(/Wait (one|\d+) second/);
    await page.context().close();
    // The wait is over for those who come after.
    waitForNextCode(service, 3_600);
  });
});

describe('setting up an account', () => {
  it('takes the code, shows the second factor as picture and text, and signs in', async () => {
    const beside = await buildTestApp();
    const { setupCode } = await makeFirstAccount(beside.parts, { name: 'Bo Lindqvist', signIn: 'bo' });
    const phone = await openPhone(browser);
    const page = await phone.newPage();
    await page.goto(`${beside.address}/office/set-up`);
    await expectAccessible(page);
    await page.getByLabel('Set-up code').fill(setupCode);
    await page.keyboard.press('Enter');
    await see(page.getByText('Welcome, Bo Lindqvist.')).toBeVisible();
    const drawn = page.getByRole('img', { name: /QR code/ });
    await see(drawn).toBeVisible();
    expect(
      await drawn.evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
    ).toBeGreaterThan(0);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    const secret = ((await page.locator('code').textContent()) ?? '').replaceAll(' ', '');
    await see(page.getByLabel('New password')).toHaveAttribute('autocomplete', 'new-password');
    await page.getByLabel('New password').fill(password);
    await page.getByLabel('One-time code').fill(codeNow(beside, secret));
    await page.keyboard.press('Enter');
    await see(page.getByRole('heading', { level: 1, name: 'Shows' })).toBeVisible();
    await see(page.getByText('There is no show yet that you work at.')).toBeVisible();
    await phone.close();
    await beside.close();
  });

  it('says that a code is not good, and leaves it to be put right', async () => {
    const page = await openOffice('/set-up');
    const code = page.getByLabel('Set-up code');
    await code.fill('too short');
    await page.keyboard.press('Enter');
    await see(page.locator('.field-fault')).toContainText('25 letters and digits');
    await code.fill('XXXXX-XXXXX-XXXXX-XXXXX-XXXXX');
    await page.keyboard.press('Enter');
    await see(page.getByRole('alert')).toContainText('not good');
    await see(code).toHaveValue('XXXXX-XXXXX-XXXXX-XXXXX-XXXXX');
    await expectAccessible(page);
    await page.context().close();
  });
});

describe('a session', () => {
  it('that ended says so, and what was typed goes out after signing in again', async () => {
    const page = await openOffice();
    await signIn(page, ada);
    await page.getByRole('link', { name: 'Alder Creek Show' }).click();
    await page.getByRole('link', { name: 'Accounts' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Cleo Marsh');
    await page.getByLabel('Name to sign in').fill('cleo');
    const token = await page.evaluate(() => sessionStorage.getItem('ringledger-session'));
    await call(service, 'delete', '/sessions/current', { token: token ?? '' });
    await page.getByRole('button', { name: 'Make an account' }).click();
    const dialog = page.getByRole('dialog', { name: 'Your session has ended' });
    await see(dialog).toBeVisible();
    await expectAccessible(page);
    waitForNextCode(service);
    await see(dialog.getByLabel('Name to sign in')).toHaveValue(ada.signIn);
    await dialog.getByLabel('Password').fill(password);
    await dialog.getByLabel('One-time code').fill(codeNow(service, ada.secret));
    await page.keyboard.press('Enter');
    await see(page.getByRole('dialog', { name: 'Set-up code' })).toContainText('Cleo Marsh');
    await page.context().close();
  });

  it('is seen where one is signed in, and ends for this window by signing out', async () => {
    const page = await openOffice(`/shows/${showId}`);
    await signIn(page, ada);
    await see(page.getByRole('heading', { level: 1, name: 'The day' })).toBeVisible();
    await page.getByRole('link', { name: 'Ada Brandt' }).click();
    await see(page.getByText('This window')).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign out' }).click();
    await see(page.getByRole('heading', { level: 1, name: 'Sign in' })).toBeVisible();
    expect(await page.evaluate(() => sessionStorage.getItem('ringledger-session'))).toBeNull();
    await page.context().close();
  });

  it('that is over when the page is opened says so', async () => {
    const desk = await openDesk(browser);
    await desk.addInitScript(() => sessionStorage.setItem('ringledger-session', `rls_${'a'.repeat(43)}`));
    const page = await desk.newPage();
    await page.goto(`${service.address}/office`);
    await see(page.getByText('Your session has ended')).toBeVisible();
    await see(page.getByLabel('Password')).toBeVisible();
    await desk.close();
  });
});
