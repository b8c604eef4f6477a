/** A window of the office in a real browser, signed in. */
import type { Browser, BrowserContext, Locator, Page } from '@playwright/test';
import { openDesk } from './browser.ts';
import type { TestApp } from './test-app.ts';
import type { OfficePass } from './test-passes.ts';

export interface OfficeWindow {
  readonly page: Page;
  readonly desk: BrowserContext;
}

interface Wanted {
  readonly service: TestApp;
  readonly pass: OfficePass;
  /** Below /office. */
  readonly path: string;
  readonly options?: Parameters<typeof openDesk>[1];
}

export async function openOffice(
  browser: Browser,
  { service, pass, path, options }: Wanted,
): Promise<OfficeWindow> {
  const desk = await openDesk(browser, options);
  await desk.addInitScript((token) => sessionStorage.setItem('ringledger-session', token), pass.token);
  const page = await desk.newPage();
  await page.goto(`${service.address}/office${path}`);
  return { page, desk };
}

/** Tab by tab, as somebody without a mouse, until `wanted` has the focus. */
export async function tabTo(page: Page, wanted: Locator): Promise<void> {
  for (let presses = 0; presses < 120; presses += 1) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('120 presses of Tab did not get there');
}
