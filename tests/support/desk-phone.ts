/** Phones of judges and scribes in a real browser, with the judge's desk in them and no screens. */
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from '@playwright/test';
import { makeInvitation } from '../../src/access/phones/invitations.ts';
import type { CardContent } from '../../src/engine/sheets/card-types.ts';
import type { Go } from '../../src/engine/sheets/types.ts';
import type { Choice, Desk, LetGoOutcome } from '../../src/web/judge/desk/desk-types.ts';
import { openPhone, see } from './browser.ts';
import type { CardSetting } from './card-setting.ts';
import { buildTestApp, type TestApp } from './test-app.ts';

declare global {
  interface Window {
    readonly desk: Desk;
    readonly pair: (code: string) => Promise<number>;
    readonly forgetKey: () => Promise<void>;
    readonly letGoOfPhone: (options?: { evenUnsent?: boolean }) => Promise<LetGoOutcome>;
    readonly wordOfBuild: string;
  }
}

const checkout = fileURLToPath(new URL('../..', import.meta.url));
const run = promisify(execFile);

/** Builds the page into a folder of its own. In a process of its own: here the service lets no drawing be read. */
export async function buildDeskPage(folder: string, word = 'first'): Promise<void> {
  const vite = join(checkout, 'node_modules/vite/bin/vite.js');
  const config = join(checkout, 'tests/web/desk-page/vite.config.ts');
  await run(process.execPath, [vite, 'build', '--config', config, '--outDir', folder], {
    env: { ...process.env, WORD_OF_BUILD: word },
  });
}

export interface ServiceWithDesk extends TestApp {
  readonly folder: string;
}

/** The service with the page at /judge. */
export async function serviceWithDesk(): Promise<ServiceWithDesk> {
  const folder = mkdtempSync(join(tmpdir(), 'desk-page-'));
  await buildDeskPage(folder);
  process.env.BUILT_PAGES = folder;
  const service = await buildTestApp();
  const close = async () => {
    await service.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { ...service, folder, close };
}

/** What comes by itself, soon; later where the machine has other work. */
export const eventually = <Value>(read: () => Value | Promise<Value>) => see.poll(read, { timeout: 30_000 });

interface WantedPhone {
  readonly service: TestApp;
  readonly browser: Browser;
  readonly setting: CardSetting;
  readonly role?: 'judge' | 'scribe';
  readonly seat?: number;
  readonly options?: BrowserContextOptions;
}

/** A phone that is paired, with its day on it. */
export async function deskPhone(wanted: WantedPhone): Promise<DeskPhone> {
  const { service, browser, setting } = wanted;
  const context = await openPhone(browser, { serviceWorkers: 'block', ...wanted.options });
  const phone = new DeskPhone(context, await context.newPage(), { service, setting });
  await phone.open();
  await phone.pair(wanted.role, wanted.seat);
  return phone;
}

interface Where {
  readonly service: TestApp;
  readonly setting: CardSetting;
}

export class DeskPhone {
  readonly context: BrowserContext;
  readonly classId: string;
  page: Page;
  readonly #where: Where;

  constructor(context: BrowserContext, page: Page, where: Where) {
    this.context = context;
    this.page = page;
    this.#where = where;
    this.classId = where.setting.classId;
  }

  async open(): Promise<void> {
    await this.page.goto(`${this.#where.service.address}/judge`);
    await see(this.page).toHaveTitle('Desk is open');
  }

  /** With a code of the office, and a key of its own; then its day is on it. */
  async pair(role: 'judge' | 'scribe' = 'judge', seat = 0): Promise<void> {
    const { service, setting } = this.#where;
    const { parts } = service;
    const { personId } = await parts.db.prisma.panelSeat.findUniqueOrThrow({
      where: { id: setting.seatIds[seat] ?? '' },
    });
    const { code } = await makeInvitation(parts, {
      showId: setting.showId,
      createdBy: parts.ids.next(),
      origin: service.address,
      asked: { role, personId, minutes: 30 },
    });
    see(await this.page.evaluate((one) => window.pair(one), code)).toBe(201);
    await this.reload();
    await this.untilDay('here');
  }

  async reload(): Promise<void> {
    await this.page.reload();
    await see(this.page).toHaveTitle('Desk is open');
  }

  /** Nothing is said to the page: as when the battery is flat. */
  async die(): Promise<void> {
    await this.page.goto('chrome://crash', { timeout: 3_000 }).catch(() => undefined);
    await this.page.close();
  }

  /** In another page of the same phone. */
  async reopen(): Promise<void> {
    this.page = await this.context.newPage();
    await this.open();
  }

  day = () => this.page.evaluate(() => window.desk.day.value.is);
  untilDay = (is: string) => eventually(this.day).toBe(is);

  state = () => this.page.evaluate((id) => window.desk.stateOf(id).value, this.classId);
  until = (is: string) => eventually(async () => (await this.state()).is).toBe(is);

  go = (entry: string) =>
    this.page.evaluate(([id, one]) => window.desk.goOf(id, one).value, [this.classId, entry] as const);
  untilGo = (entry: string, go: Go) => eventually(async () => (await this.go(entry)).go).toEqual(go);

  write = (entry: string, go: Go) =>
    this.page.evaluate(([id, one, what]) => window.desk.writeGo(id, one, what), [
      this.classId,
      entry,
      go,
    ] as const);
  undo = (entry: string) =>
    this.page.evaluate(([id, one]) => window.desk.undo(id, one), [this.classId, entry] as const);
  sign = () => this.page.evaluate((id) => window.desk.sign(id), this.classId);
  amend = (content: CardContent, reason: string) =>
    this.page.evaluate(([id, one, why]) => window.desk.amend(id, one, why), [
      this.classId,
      content,
      reason,
    ] as const);

  conflicts = () => this.page.evaluate(() => window.desk.conflicts.value);
  untilConflicts = (count: number) => eventually(async () => (await this.conflicts()).length).toBe(count);
  /** The first of them. */
  settle = (choice: Choice) =>
    this.page.evaluate((one) => {
      const [first] = window.desk.conflicts.value;
      if (first === undefined) throw new Error('there is no conflict');
      return window.desk.settle(first, one);
    }, choice);

  signal = () => this.page.evaluate(() => window.desk.signal.value);
  offline = () => this.context.setOffline(true);
  online = () => this.context.setOffline(false);
  tryNow = () => this.page.evaluate(() => window.desk.tryNow());
  marking = () => this.page.evaluate((id) => window.desk.marking(id), this.classId);
  close = () => this.context.close();
}

/** What the service has of a card. */
export async function draftsOf({ parts }: TestApp, { seatIds }: CardSetting, seat = 0) {
  const rows = await parts.db.prisma.cardDraftGo.findMany({
    where: { card: { seatId: seatIds[seat] ?? '' } },
  });
  return Object.fromEntries(
    rows.map(({ classEntryId, content, version }) => [classEntryId, { content, version }]),
  );
}

export const revisionsOf = ({ parts }: TestApp, { seatIds }: CardSetting, seat = 0) =>
  parts.db.prisma.cardRevision.findMany({
    where: { card: { seatId: seatIds[seat] ?? '' } },
    orderBy: { revision: 'asc' },
  });
