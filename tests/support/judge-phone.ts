/** A judge's phone in a real browser: paired on the page with a code of the office, then on the judge's page. */
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  expect as expectOfPage,
  type Page,
} from '@playwright/test';
import { makeInvitation } from '../../src/access/phones/invitations.ts';
import { openPhone } from './browser.ts';
import type { CardSetting } from './card-setting.ts';
import type { TestApp } from './test-app.ts';

/** Waits for what a page is about to show, also where the machine has other work. */
export const see = expectOfPage.configure({ timeout: 30_000 });

interface WantedPhone {
  readonly service: TestApp;
  readonly browser: Browser;
  readonly setting: CardSetting;
  readonly role?: 'judge' | 'scribe';
  readonly options?: BrowserContextOptions;
}

export interface JudgePhone {
  readonly context: BrowserContext;
  readonly page: Page;
  /** A screen of the class; '' is its gate sheet. */
  readonly open: (screen: string) => Promise<void>;
  readonly openGo: (index: number) => Promise<void>;
  /** A key of the marks, by what it says. */
  readonly mark: (said: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

export async function judgePhone({ service, browser, setting, ...wanted }: WantedPhone): Promise<JudgePhone> {
  const context = await openPhone(browser, { serviceWorkers: 'block', ...wanted.options });
  const page = await context.newPage();
  await pair(page, { service, setting, role: wanted.role ?? 'judge' });
  const open = async (screen: string) => {
    await page.goto(`${service.address}/judge/classes/${setting.classId}${screen}`);
    await see(page.getByRole('heading', { level: 1 })).toBeVisible();
  };
  return {
    ...{ context, page, open },
    openGo: (index) => open(`/goes/${setting.entryIds[index] ?? ''}`),
    mark: (said) => page.locator('.marks').getByRole('button', { name: said, exact: true }).click(),
    close: () => context.close(),
  };
}

async function pair(
  page: Page,
  { service, setting, role }: Pick<WantedPhone, 'service' | 'setting'> & { role: 'judge' | 'scribe' },
): Promise<void> {
  const { parts } = service;
  const seat = await parts.db.prisma.panelSeat.findUniqueOrThrow({ where: { id: setting.seatIds[0] ?? '' } });
  const { code } = await makeInvitation(parts, {
    ...{ showId: setting.showId, createdBy: parts.ids.next(), origin: service.address },
    asked: { role, personId: seat.personId, minutes: 30 },
  });
  await page.goto(`${service.address}/pair#${code}`);
  await page.locator('form button, button[form]').click();
  await page.locator('a[href="/judge"]').click();
  await see(page.locator('.classes')).toBeVisible();
}

/** What the service has of a seat's card, by class entry. */
export async function draftsAtService({ parts }: TestApp, { seatIds }: CardSetting) {
  const goes = await parts.db.prisma.cardDraftGo.findMany({ where: { card: { seatId: seatIds[0] ?? '' } } });
  return Object.fromEntries(goes.map(({ classEntryId, content }) => [classEntryId, content]));
}
