/** Every screen of the judge's page, in both languages and every light: read by a program for what shuts people out. */
import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, describe, it, vi } from 'vitest';
import { expectAccessible, expectNoSidewaysScroll, openBrowser } from '../support/browser.ts';
import { addPlaces, type CardSetting, setUpClass } from '../support/card-setting.ts';
import { type JudgePhone, judgePhone, see } from '../support/judge-phone.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

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

const lights = [
  { language: 'en', theme: 'light' },
  { language: 'de', theme: 'dark' },
  { language: 'de', theme: 'glare' },
] as const;

async function phoneIn(
  setting: CardSetting,
  { language, theme }: (typeof lights)[number],
): Promise<JudgePhone> {
  const phone = await judgePhone({ service, browser, setting });
  await phone.context.addCookies(
    Object.entries({ 'ringledger-language': language, 'ringledger-theme': theme }).map(([name, value]) => ({
      ...{ name, value, url: service.address },
    })),
  );
  return phone;
}

async function look({ page }: JudgePhone): Promise<void> {
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
}

describe.each(lights)('in $language, $theme', (light) => {
  it('the day, the gate sheet, a go with penalties and its sheets, all goes, the signature', async () => {
    const phone = await phoneIn(await setUpClass(service, { entries: 3 }), light);
    const { page } = phone;
    await page.goto(`${service.address}/judge`);
    await see(page.locator('html')).toHaveAttribute('data-theme', light.theme);
    await see(page.locator('.classes')).toBeVisible();
    await page.locator('.this-phone summary').click();
    await look(phone);
    await phone.open('');
    await see(page.locator('.gate')).toBeVisible();
    await look(phone);
    await phone.openGo(0);
    await page.locator('.mark').nth(1).click();
    await page.locator('.penalty').first().click();
    await page.locator('.mark').nth(8).click();
    await look(phone);
    for (const tool of [2, 3]) {
      await page.locator('.tools button').nth(tool).click();
      await see(page.locator('dialog[open]')).toBeVisible();
      await look(phone);
      await page.keyboard.press('Escape');
      await see(page.locator('dialog[open]')).toHaveCount(0);
    }
    await page.locator('.tools button').nth(4).click();
    await page.locator('#shorthand').fill('p5');
    await page.locator('#shorthand').press('Enter');
    await see(page.locator('.choices-of-line')).toBeVisible();
    await look(phone);
    await phone.open('/compare');
    await see(page.locator('main.page')).toBeVisible();
    await look(phone);
    await phone.open('/sign');
    await see(page.locator('.missing')).toBeVisible();
    await look(phone);
    await page.goto(`${service.address}/judge/differences`);
    await see(page.locator('.empty')).toBeVisible();
    await look(phone);
    await phone.close();
  });

  it('the places of a rail class', async () => {
    const rail = { sheet: 'rail-pleasure-first-6', merge: addPlaces, entries: 3 };
    const phone = await phoneIn(await setUpClass(service, rail), light);
    const { page } = phone;
    await phone.open('/places');
    await page.locator('.rail-numbers button').first().click();
    await page.locator('.placed-line').first().click();
    await see(page.locator('.line-tools')).toBeVisible();
    await look(phone);
    await phone.close();
  });
});

it('a phone that is not paired says what to do', async () => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(`${service.address}/judge`);
  await see(page.getByRole('link', { name: 'Type the code' })).toHaveAttribute('href', '/pair');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await context.close();
});
