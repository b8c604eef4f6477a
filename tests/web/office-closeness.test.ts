/** How close a class was, and how far its judges agree: what is drawn, and that it is told to who sees no drawing. */
import { type Browser, expect as expectOfPage } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Agreement, JudgeGoes, Margins } from '../../src/web/office/closeness/closeness-answers.ts';
import { driftPlots } from '../../src/web/office/closeness/drift-plots.ts';
import { closest, marginBars } from '../../src/web/office/closeness/margin-bars.ts';
import { placeRows } from '../../src/web/office/closeness/place-rows.ts';
import { expectAccessible, expectNoSidewaysScroll, openBrowser, phoneSize } from '../support/browser.ts';
import { openOffice, tabTo } from '../support/office-desk.ts';
import { goesOf, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

/** Two cores may be shared by many tests. */
const see = expectOfPage.configure({ timeout: 60_000 });
const patient = { timeout: 240_000 };

const margin = (place: number, change: unknown): Margins['margins'][number] => ({
  ...{ judge: null, place, ahead: 100 + place, behind: 101 + place, change, sentence: `place ${place}` },
});

const judge = (seatOrder: number, goes: readonly (readonly [string, string | null])[]): JudgeGoes => ({
  ...{ seatId: `seat ${seatOrder}`, seatOrder, name: `Judge ${seatOrder}`, better: 'higher' },
  goes: goes.map(([place, score], index) => ({
    ...{ backNumber: 101 + index, goPosition: index + 1, place, score },
  })),
});

describe('what is drawn', () => {
  it('a bar is as long as the smallest change, the closest pair is the one with the least, and no change is no bar', () => {
    const bars = marginBars({
      margins: [
        margin(1, { by: 'points', size: '2', on: [] }),
        margin(2, { by: 'none', why: 'no-single-change' }),
        margin(3, { by: 'points', size: '0.5', on: [] }),
      ],
    });
    expect(bars.map(({ change }) => (change.by === 'none' ? change.why : change.share))).toEqual([
      1,
      'no-single-change',
      0.25,
    ]);
    expect(closest(bars)?.place).toBe(3);
    expect(closest(marginBars({ margins: [] }))).toBeUndefined();
  });

  it('a row says who had an entry where, and who left it off', () => {
    const one = judge(1, [
      ['1', null],
      ['2', null],
    ]);
    const other = judge(2, [['2', null]]);
    const [first, second] = placeRows([one, other], undefined);
    expect(first).toMatchObject({
      ...{ backNumber: 101, spread: 1, leftOffBy: [] },
      at: [
        { place: 1, seats: [1] },
        { place: 2, seats: [2] },
      ],
    });
    expect(second).toMatchObject({ backNumber: 102, leftOffBy: [2] });
  });

  it('the line of a drift goes through the mean with its slope: 70, 71, 72 rise by one with each go', () => {
    const goes = judge(1, [
      ['3', '70'],
      ['2', '71'],
      ['1', '72'],
    ]);
    const record = { together: {}, pairs: [], judges: [{ judge: 'seat 1', drift: '1', scores: null }] };
    const scale = driftPlots({ judges: [goes], sentences: [], agreement: record } as Agreement);
    expect(scale).toMatchObject({ low: 70, high: 72, goes: 3 });
    expect(scale?.plots[0]?.line).toEqual({ from: 0, to: 1 });
    expect(scale?.plots[0]?.points.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [0.5, 0.5],
      [1, 1],
    ]);
  });
});

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

describe('how close it was', patient, () => {
  it('is not shown before the posting; then each drawing has its sentence and its table, by keyboard too', async () => {
    const judged = await setUpJudgedClass(service, { judges: 2 });
    await judged.sign(0, goesOf(['1', '1', '0'], ['0', '0.5', '1'], ['-1', '0', '0']));
    await judged.sign(1, goesOf(['0.5', '1', '0'], ['1', '0.5', '1'], ['-1', '0', '-1']));
    const path = `/shows/${judged.showId}/classes/${judged.classId}/closeness`;
    const { page, desk } = await openOffice(browser, { service, pass: judged.office, path });
    await see(page.getByText('Nothing of this class is posted yet.')).toBeVisible();
    expect((await judged.publish('provisional')).status).toBe(201);
    const close = page.getByRole('region', { name: 'How close it was', exact: true });
    await see(close.getByRole('img')).toBeVisible();
    await see(close.getByRole('figure')).toContainText('would have put');
    const agree = page.getByRole('region', { name: 'Do the judges agree', exact: true });
    await see(agree.getByRole('figure')).toContainText("Kendall's W");
    await see(page.getByText('A drift is no fault by itself')).toBeVisible();
    await see(page.getByText('not who was right')).toBeVisible();
    await tabTo(page, close.locator('summary'));
    await page.keyboard.press('Enter');
    await see(close.getByRole('row').nth(1)).toContainText('101');
    await expectAccessible(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    await expectAccessible(page);
    await desk.close();
  });

  it('on a phone nothing scrolls sideways, and German is complete', async () => {
    const judged = await setUpJudgedClass(service, { judges: 2 });
    await judged.sign(0, goesOf(['1', '1', '0'], ['0', '0.5', '1'], ['-1', '0', '0']));
    await judged.sign(1, goesOf(['0.5', '1', '0'], ['1', '0.5', '1'], ['-1', '0', '-1']));
    expect((await judged.publish('provisional')).status).toBe(201);
    const { page, desk } = await openOffice(browser, {
      ...{
        service,
        pass: judged.office,
        path: `/shows/${judged.showId}/classes/${judged.classId}/closeness`,
      },
      options: { viewport: phoneSize, locale: 'de-DE' },
    });
    await see(page.getByRole('img').first()).toBeVisible();
    await see(page.getByText('office-closeness-')).toHaveCount(0);
    await expectNoSidewaysScroll(page);
    await desk.close();
  });
});
