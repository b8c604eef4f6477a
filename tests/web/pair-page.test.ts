/** A phone is paired in the reader's language, says whose it is, and is let go again. */
import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeInvitation } from '../../src/access/phones/invitations.ts';
import { expectAccessible, expectNoSidewaysScroll, openBrowser, openPhone, see } from '../support/browser.ts';
import { type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

const within = see.configure({ timeout: 60_000 });

let service: TestApp;
let browser: Browser;
let judged: JudgedClass;

beforeAll(async () => {
  service = await buildTestApp();
  judged = await setUpJudgedClass(service);
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  await service.close();
});

async function codeOfOffice(): Promise<string> {
  const { parts } = service;
  const id = judged.seatIds[0] ?? '';
  const { personId } = await parts.db.prisma.panelSeat.findUniqueOrThrow({ where: { id } });
  const { code } = await makeInvitation(parts, {
    ...{ showId: judged.showId, createdBy: parts.ids.next(), origin: service.address },
    asked: { role: 'judge', personId, minutes: 30 },
  });
  return code;
}

async function openPair(locale: string, hash = ''): Promise<Page> {
  const phone = await openPhone(browser, { locale, serviceWorkers: 'block' });
  const page = await phone.newPage();
  await page.goto(`${service.address}/pair${hash}`);
  await within(page.getByRole('textbox')).toBeVisible();
  return page;
}

describe('the page on which a phone is paired', { timeout: 180_000 }, () => {
  it('refuses in German what is no code, for who reads German', async () => {
    const page = await openPair('de-DE');
    await see(page.locator('html')).toHaveAttribute('lang', 'de');
    const pair = page.getByRole('button', { name: 'Dieses Telefon koppeln' });
    await page.getByLabel('Code').fill('XK7P');
    await pair.click();
    await see(page.getByRole('alert')).toContainText('Der Code ist nicht vollständig.');
    await page.getByLabel('Code').fill('xk7p4m2q');
    await pair.click();
    await within(page.getByRole('alert')).toContainText('Diesen Code gibt es nicht.');
    await expectAccessible(page);
    await page.context().close();
  });

  it('takes the code out of the link, says whose phone it is, and changes its language on the spot', async () => {
    const code = await codeOfOffice();
    const page = await openPair('de-DE', `#${code}`);
    expect(page.url()).not.toContain(code);
    await see(page.getByLabel('Code')).toHaveValue(code);
    await page.getByRole('button', { name: 'Dieses Telefon koppeln' }).click();
    const heading = page.getByRole('heading', { level: 1 });
    await within(heading).toContainText('Dieses Telefon gehört zu Richter');
    await see(page.getByText('Dieses Telefon ist schon gekoppelt.')).toBeHidden();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await page.getByLabel('Sprache').selectOption('en');
    await within(heading).toContainText('This phone is Judge');
    await page.context().close();
  });

  it('uses no code of another link while it is paired, and any once it was let go', async () => {
    const page = await openPair('en-US', `#${await codeOfOffice()}`);
    const heading = page.getByRole('heading', { level: 1 });
    await page.getByRole('button', { name: 'Pair this phone' }).click();
    await within(heading).toContainText('This phone is Judge');
    await page.goto('about:blank');
    await page.goto(`${service.address}/pair#${await codeOfOffice()}`);
    await within(page.getByText('The code in the link was not used.')).toBeVisible();
    await page.getByRole('button', { name: 'Let this phone go' }).click();
    await page.getByRole('button', { name: 'Let it go' }).click();
    await within(heading).toHaveText('Pair this phone');
    await page.context().close();
  });
});
