/**
 * A real browser over the real service: Chromium as it is installed (`browser-for-the-run.ts` finds it), driven by
 * Playwright, whose `expect` waits for what a page is about to show.
 */
import { fileURLToPath } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
  expect as playwrightExpect,
} from '@playwright/test';
import { expect, inject } from 'vitest';

/** Waits for what a page is about to show, also on a machine that is busy with other tests. */
export const see = playwrightExpect.configure({ timeout: 20_000 });

/** A phone in one hand, and a desk. */
export const phoneSize = { width: 390, height: 844 } as const;
export const deskSize = { width: 1280, height: 800 } as const;

export function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: inject('browserPath'),
    // A test may run as root, and in a container with little shared memory; nothing is asked of the network.
    args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-background-networking', '--disable-gpu'],
  });
}

/** A phone of its own: its own storage, its own keys, touch. */
export const openPhone = (browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> =>
  browser.newContext({ viewport: phoneSize, hasTouch: true, isMobile: true, locale: 'en-US', ...options });

export const openDesk = (browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> =>
  browser.newContext({ viewport: deskSize, locale: 'en-US', ...options });

/** WCAG 2.2, levels A and AA, as far as a program can tell (axe-core); and a picture of it for whoever looks. */
export async function expectAccessible(page: Page): Promise<void> {
  await takePicture(page);
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  const found = violations.map(
    ({ id, help, nodes }) => `${id}: ${help}\n  ${nodes.map(({ html }) => html).join('\n  ')}`,
  );
  expect(found).toEqual([]);
}

const pictures = fileURLToPath(new URL('../../.ringledger/pictures/', import.meta.url));

/** Into `.ringledger/pictures/`, named by what is shown: `390-de-dark judge goes heading-of-the-screen.png`. */
async function takePicture(page: Page): Promise<void> {
  const [language, light, heading] = await page.evaluate(() => [
    document.documentElement.lang,
    document.documentElement.dataset.theme ?? 'device',
    document.querySelector('h1')?.textContent ?? '',
  ]);
  const where = new URL(page.url()).pathname
    .replace(/[0-9a-f-]{36}/g, '')
    .split('/')
    .filter(Boolean);
  const words = [`${page.viewportSize()?.width}-${language}-${light}`, ...where, heading];
  const name = words
    .join(' ')
    .replace(/[^\p{L}\p{N} -]+/gu, '')
    .slice(0, 120);
  await page.screenshot({ path: `${pictures}${name}.png`, fullPage: true });
}

/** Nothing is wider than the screen. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const [wide, seen] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(wide).toBeLessThanOrEqual(seen ?? 0);
}
