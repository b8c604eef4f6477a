/** A card that came on paper, typed by two people of the office: what is understood, and the two of them at work. */
import { type Browser, expect as expectOfPage, type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PatternSheet, SheetManeuver } from '../../src/engine/sheets/types.ts';
import { typedTotal } from '../../src/web/office/paper/running-total.ts';
import { cardOfTyped, typedOfCard } from '../../src/web/office/paper/typed-card.ts';
import { goOfTyped, typedOfGo } from '../../src/web/office/paper/typed-go.ts';
import { readField, readTypedMark } from '../../src/web/office/paper/typed-mark.ts';
import { expectAccessible, expectNoSidewaysScroll, openBrowser, phoneSize } from '../support/browser.ts';
import { addPlaces } from '../support/card-setting.ts';
import { openOffice } from '../support/office-desk.ts';
import { type PaperSetting, setUpPaper } from '../support/paper-setting.ts';
import { picture } from '../support/pictures.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { OfficePass } from '../support/test-passes.ts';

/** Two cores may be shared by many tests. */
const see = expectOfPage.configure({ timeout: 60_000 });
const patient = { timeout: 240_000 };

const halves = { low: '-3', high: '3', step: '0.5' };
const penalty = (code: string, points: string) => ({ code, points, label: code, weight: 'minor' as const });
const sheet: PatternSheet = {
  ...{ kind: 'pattern', code: 'test', version: 1, title: 'Test', source: 'for this test', base: '70' },
  ...{ maneuver: halves, rulings: { 'off-pattern': { kind: 'placed-below' } } },
  extras: [{ code: 'form', label: 'form', range: { low: '0', high: '5', step: '0.5' }, coefficient: '1' }],
  penalties: [penalty('late', '3'), penalty('lead', '5')],
  ...{ notSeen: 'left-out', lowest: '0', totalRange: null },
};
const maneuver = (position: number): SheetManeuver => ({ position, name: `m${position}`, coefficient: '1' });
const marked = { sheet, maneuvers: [maneuver(1), maneuver(2)] };

describe('what a typist types', () => {
  it.each([
    ['05', '0.5'],
    ['15', '1.5'],
    ['-15', '-1.5'],
    ['+1½', '1.5'],
    ['½', '0.5'],
    ['-1/2', '-0.5'],
    ['1 1/2', '1.5'],
    ['−1', '-1'],
    ['0,5', '0.5'],
    ['-0', '0'],
    ['3', '3'],
  ])('%s is the mark %s', (text, mark) => {
    expect(readTypedMark(text, halves)).toEqual({ is: 'mark', mark });
  });

  it('65 is 6.5 on a sheet of tens, and 10 is 10', () => {
    const tens = { low: '0', high: '10', step: '0.5' };
    expect(readTypedMark('65', tens)).toEqual({ is: 'mark', mark: '6.5' });
    expect(readTypedMark('10', tens)).toEqual({ is: 'mark', mark: '10' });
  });

  it.each(['/', 'n', 'ns', 'n/s', 'ng'])('%s is "not seen"', (text) => {
    expect(readTypedMark(text, halves)).toEqual({ is: 'not-seen' });
  });

  it('what is no mark stays as it was typed, so that the check names it', () => {
    expect(readTypedMark('1o', halves)).toEqual({ is: 'mark', mark: '1o' });
    expect(readTypedMark('7', halves)).toEqual({ is: 'mark', mark: '7' });
    expect(readTypedMark('0.25', halves)).toEqual({ is: 'mark', mark: '0.25' });
  });

  it('a star brings a penalty of the list, each time once; a number that is not on it is not understood', () => {
    const read = readField('05*2*2*1*44', halves, sheet.penalties);
    expect(read.penalties).toEqual(['lead', 'lead', 'late']);
    expect(read.unread).toEqual(['*44']);
  });

  it('a go is added up by the engine as it is typed, and a slip shows beside the total on the paper', () => {
    const { go } = goOfTyped(marked, { 'maneuver-1': '1*2', 'maneuver-2': '/', 'extra-form': '35' });
    expect(typedTotal(marked, go, '69.5')).toMatchObject({ total: '69.5', whole: true, paper: 'same' });
    expect(typedTotal(marked, go, '70.5').paper).toBe('differs');
    expect(
      typedTotal(marked, goOfTyped(marked, { 'maneuver-1': '7' }).go).faults.get('maneuver-1')?.code,
    ).toBe('mark_out_of_range');
  });

  it('what was sent and is mended is typed as it would have been typed', () => {
    const { go } = goOfTyped(marked, {
      ...{ 'maneuver-1': '05*2', 'maneuver-2': 'ns', 'extra-form': '3', penalties: '1 1' },
      ...{ ruling: 'off-pattern', words: 'Lost the pattern.', 'maneuver-words-1': 'late' },
    });
    expect(goOfTyped(marked, typedOfGo(marked, go)).go).toEqual(go);
  });

  it('the places within a tie become the own order of the judge once each of them has one', () => {
    const card = { ...marked, entries: ['a', 'b'].map((id, index) => ({ id, backNumber: 101 + index })) };
    const go = { 'maneuver-1': '1', 'maneuver-2': '1', 'extra-form': '3' };
    const open = cardOfTyped(card, { goes: { a: go, b: { ...go, 'tie-place': '1' } }, ranking: [] });
    expect(open.ties).toEqual([['a', 'b']]);
    expect(open.content.ownOrder).toBeUndefined();
    const goes = { a: { ...go, 'tie-place': '2' }, b: { ...go, 'tie-place': '1' } };
    const { content } = cardOfTyped(card, { goes, ranking: [] });
    expect(content.ownOrder).toEqual([['b', 'a']]);
    expect(cardOfTyped(card, typedOfCard(card, content)).content).toEqual(content);
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

const typing = async (paper: PaperSetting, pass: OfficePass, options = {}) => {
  const path = `/shows/${paper.showId}/paper/${paper.current().id}`;
  const { page } = await openOffice(browser, { service, pass, path, options });
  await see(page.getByRole('group', { name: /101/ })).toBeVisible();
  return page;
};

/** From the first field on: each text, then Enter. */
async function type(page: Page, texts: readonly string[]): Promise<void> {
  await page.locator('[data-typed]').first().focus();
  for (const text of texts) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
}

/** Three marks, form, penalties, ruling, total on the paper. */
const line = (...marks: readonly string[]) => [...marks, '', '', ''];

describe('two people type one card', patient, () => {
  it('by keyboard alone: neither sees the other until both are in, the difference is mended, the card is in', async () => {
    const paper = await setUpPaper(service, { entries: 2 });
    await paper.takeUp(paper.first, { reason: 'The phone fell into the trough.' }).expect(201);
    const one = await typing(paper, paper.first);
    await type(one, [...line('05', '-1', '/', '3'), ...line('1', '15*1', '0', '35')]);
    await see(one.getByRole('group', { name: /101/ }).getByRole('status').first()).toHaveText('72.5');
    const send = one.getByRole('button', { name: 'Send what I read' });
    await see(one.getByText('The card is whole.')).toBeVisible();
    await expectAccessible(one);
    await send.focus();
    await one.keyboard.press('Enter');
    await see(one.getByText('Yours is in. Now a second person signs in')).toBeVisible();

    const other = await typing(paper, paper.second);
    await see(other.getByText('One person has typed it. You are the second')).toBeVisible();
    await see(other.getByLabel('1 Walk to B, back number 101')).toHaveValue('');
    await type(other, [...line('05', '-1', '/', '3'), ...line('1', '05*1', '0', '35')]);
    await other.getByRole('button', { name: 'Send what I read' }).press('Enter');
    const differences = other.getByRole('region', { name: 'One field differs' });
    await see(differences.getByRole('row').nth(1)).toContainText('102');
    await see(differences.getByRole('row').nth(1)).toContainText('+½');
    await see(differences.getByRole('row').nth(1)).toContainText('+1½');
    await expectAccessible(other);
    await differences.getByRole('button').press('Enter');
    await see(other.getByLabel('2 Jog a circle left, back number 102')).toBeFocused();
    await other.keyboard.type('15*1');
    await other.getByRole('button', { name: 'Send mine, mended' }).press('Enter');
    await see(other.getByText('Both read the same. It is in as revision 1')).toBeVisible();
    await see(one.getByText('Both read the same. It is in as revision 1')).toBeVisible();
    const { body } = await paper.read(paper.first).expect(200);
    expect(body.status).toBe('accepted');
  });

  it('what was typed survives a failed request and a reload, and is not there for the next account', async () => {
    const paper = await setUpPaper(service, { entries: 1 });
    await paper.takeUp(paper.first).expect(201);
    const page = await typing(paper, paper.first);
    await type(page, line('05', '-1', '0', '3'));
    await page.route('**/entries/mine', (route) => route.abort());
    await page.getByRole('button', { name: 'Send what I read' }).click();
    await see(page.getByRole('alert').filter({ hasText: /\S/ }).first()).toBeVisible();
    await see(page.getByLabel('1 Walk to B, back number 101')).toHaveValue('05');
    await page.waitForTimeout(600);
    await page.reload();
    await see(page.getByLabel('1 Walk to B, back number 101')).toHaveValue('05');
    await page.addInitScript(
      (token) => sessionStorage.setItem('ringledger-session', token),
      paper.second.token,
    );
    await page.reload();
    await see(page.getByLabel('1 Walk to B, back number 101')).toHaveValue('');
    const left = await page.evaluate(() =>
      Object.keys(sessionStorage).filter((key) => key.includes('typing')),
    );
    expect(left).toEqual([]);
  });

  it('a rail class is typed place by place; a number twice and one of another class are named', async () => {
    const paper = await setUpPaper(service, { sheet: 'rail-pleasure-first-6', merge: addPlaces, entries: 3 });
    await paper.takeUp(paper.first).expect(201);
    const page = await typing(paper, paper.first);
    await page.getByLabel('Place 1').fill('103');
    await page.getByLabel('Place 2').fill('103');
    await see(page.getByText('stands twice').first()).toBeVisible();
    await page.getByLabel('Place 2').fill('999');
    await see(page.getByText('not in this class: 999')).toBeVisible();
    await page.getByLabel('Place 2').fill('101');
    await page.getByLabel('Place 3').fill('102');
    await page.getByRole('button', { name: 'Send what I read' }).click();
    await see(page.getByText('Yours is in. Now a second person signs in')).toBeVisible();
    const { body } = await paper.read(paper.first).expect(200);
    const [a, b, c] = paper.entryIds;
    expect(body.mine.content.ranking).toEqual([[c], [a], [b]]);
  });

  it('the photo lies beside the form; on a phone nothing scrolls sideways; German is complete', async () => {
    const paper = await setUpPaper(service, { entries: 2 });
    await paper.takeUp(paper.first).expect(201);
    const page = await typing(paper, paper.first, { viewport: phoneSize, locale: 'de-DE' });
    await page.getByLabel('Ein Foto des Papiers dazulegen').setInputFiles({
      ...{ name: 'card.png', mimeType: 'image/png', buffer: await picture().png().toBuffer() },
    });
    await see(page.getByRole('img')).toBeVisible();
    expect(
      await page.getByRole('img').evaluate((image) => (image as HTMLImageElement).naturalWidth),
    ).toBeGreaterThan(0);
    await see(page.getByText('office-paper-')).toHaveCount(0);
    await expectNoSidewaysScroll(page);
    await expectAccessible(page);
  });

  it('it is taken up from the class and withdrawn with a reason', async () => {
    const paper = await setUpPaper(service, { entries: 1 });
    const path = `/shows/${paper.showId}/classes/${paper.classId}/paper`;
    const { page } = await openOffice(browser, { service, pass: paper.first, path });
    await page.getByRole('button', { name: /Take up the paper/ }).click();
    await page.getByRole('button', { name: 'Begin typing' }).click();
    await see(page.getByRole('group', { name: /101/ })).toBeVisible();
    await page.getByRole('button', { name: 'Withdraw this paper card' }).click();
    await page.getByLabel('Why', { exact: true }).fill('It was the wrong class.');
    await page.getByRole('button', { name: 'Withdraw it' }).click();
    await see(page.getByText('Withdrawn: It was the wrong class.')).toBeVisible();
  });
});
