/** The page opens with no network at all, and a newer version waits until no class is being marked. */
import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPhone, see } from '../support/browser.ts';
import { type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import {
  buildDeskPage,
  DeskPhone,
  eventually,
  type ServiceWithDesk,
  serviceWithDesk,
} from '../support/desk-phone.ts';
import { buildTestApp } from '../support/test-app.ts';

let service: ServiceWithDesk;
let browser: Browser;
let setting: CardSetting;
let phone: DeskPhone;

beforeAll(async () => {
  [service, browser] = await Promise.all([serviceWithDesk(), openBrowser()]);
  setting = await setUpClass(service, { entries: 1 });
  const context = await openPhone(browser);
  phone = new DeskPhone(context, await context.newPage(), { service, setting });
  await phone.open();
  await phone.pair();
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

const word = () => phone.page.evaluate(() => window.wordOfBuild);
const update = () => phone.page.evaluate(() => window.desk.update.value);
const isKept = () =>
  phone.page.evaluate(
    async () => (await navigator.serviceWorker.getRegistration('/judge'))?.active?.state ?? '',
  );

describe('the page of a phone', () => {
  it('opens with no network at all, below any address, with its day', async () => {
    await eventually(isKept).toBe('activated');
    await phone.offline();
    await phone.page.goto(`${service.address}/judge/classes/1`);
    await see(phone.page).toHaveTitle('Desk is open');
    expect(await phone.day()).toBe('here');
    expect(await phone.write(setting.entryIds[0] ?? '', goOf(['1', '0', '0']))).toEqual({ ok: true });
    await phone.online();
    await phone.tryNow();
    await phone.until('at-the-service');
  });

  it('has its policy also when it comes from the phone', async () => {
    const policy = await phone.page.evaluate(async () => {
      const kept = await caches.match('/judge');
      return kept?.headers.get('content-security-policy') ?? '';
    });
    expect(policy).toContain("script-src 'self'");
    expect(policy).toContain("require-trusted-types-for 'script'");
  });

  it('keeps nothing of what the service answers', async () => {
    const kept = await phone.page.evaluate(async () => {
      const names = await caches.keys();
      const all = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return all.flat().map(({ url }) => new URL(url).pathname);
    });
    expect(kept.length).toBeGreaterThan(3);
    expect(kept.filter((path) => !/^\/(judge|assets\/.+)$/.test(path))).toEqual([]);
  });
});

describe('a newer version', () => {
  it('waits while a class is marked, is let in when asked, and the open page never breaks', async () => {
    await buildDeskPage(service.folder, 'second');
    const port = new URL(service.address).port;
    await service.app.close();
    const again = await buildTestApp({ beside: service, port: Number(port) });
    try {
      await phone.marking();
      await phone.page.evaluate(async () => {
        await (await navigator.serviceWorker.getRegistration('/judge'))?.update();
      });
      await eventually(update).toBe('waits');
      expect(await word()).toBe('first');
      await phone.write(setting.entryIds[0] ?? '', goOf(['1', '1', '0']));
      await phone.reload();
      expect(await word()).toBe('first');
      await eventually(update).toBe('ready');
      await phone.page.evaluate(() => void window.desk.takeUpdate());
      await eventually(() => word().catch(() => '')).toBe('second');
      await see(phone.page).toHaveTitle('Desk is open');
      await phone.tryNow();
      await phone.until('at-the-service');
      expect((await phone.go(setting.entryIds[0] ?? '')).go).toEqual(goOf(['1', '1', '0']));
    } finally {
      await again.close();
    }
  });
});
