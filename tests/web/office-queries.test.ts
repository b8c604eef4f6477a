/** The families' questions at the office: heard at once, seen beside what was posted, answered by keyboard. */
import { type Browser, expect as expectOfPage } from '@playwright/test';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inboxOf, isOvertaken, type Query } from '../../src/web/office/queries/inbox.ts';
import { expectAccessible, expectNoSidewaysScroll, openBrowser, phoneSize } from '../support/browser.ts';
import { openOffice, tabTo } from '../support/office-desk.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

/** Two cores may be shared by many tests. */
const see = expectOfPage.configure({ timeout: 60_000 });
const patient = { timeout: 240_000 };

const query = (more: Partial<Query>): Query => ({
  ...{ id: 'one', class: { id: 'class', number: 1, name: 'Class 1' }, backNumber: 101, postingVersion: 1 },
  ...{ about: 'marks', words: 'Why?', state: 'open', askedAt: '2026-05-02T10:00:00.000Z', withdrawnAt: null },
  ...{ erasedAt: null, reachedBy: null, lastPostingVersion: 1, answers: [] },
  ...more,
});

describe('the inbox', () => {
  it('has who waits longest first, and of what is done what happened last', () => {
    const { open, closed } = inboxOf([
      query({ id: 'late', askedAt: '2026-05-02T12:00:00.000Z' }),
      query({ id: 'early' }),
      query({ id: 'gone', state: 'withdrawn', withdrawnAt: '2026-05-02T13:00:00.000Z' }),
      query({ id: 'erased', erasedAt: '2026-05-02T14:00:00.000Z' }),
    ]);
    expect(open.map(({ id }) => id)).toEqual(['early', 'late']);
    expect(closed.map(({ id }) => id)).toEqual(['erased', 'gone']);
  });

  it('knows a question about a posting that another one has followed', () => {
    expect(isOvertaken(query({ postingVersion: 1, lastPostingVersion: 2 }))).toBe(true);
    expect(isOvertaken(query({}))).toBe(false);
    expect(isOvertaken(query({ postingVersion: null, lastPostingVersion: 2 }))).toBe(false);
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

async function postedClass(): Promise<JudgedClass> {
  const judged = await setUpJudgedClass(service, { judges: 1 });
  await judged.sign(0, goesOf(['1', '1', '0'], ['0', '0.5', '1'], ['-1', '0', '0']));
  expect((await judged.publish('provisional')).status).toBe(201);
  return judged;
}

const asked = (judged: JudgedClass, more: object = {}) =>
  request(service.app.server)
    .post(`/v1/classes/${judged.classId}/queries`)
    .send({ about: 'marks', words: 'The second mark looks wrong to us.', backNumber: 102, ...more })
    .expect(201);

describe('a question at the office', patient, () => {
  it('comes by itself, stands beside the posted sentence, and is answered with what came of it by keyboard', async () => {
    const judged = await postedClass();
    const path = `/shows/${judged.showId}/queries`;
    const { page, desk } = await openOffice(browser, { service, pass: judged.office, path });
    await see(page.getByText('Nobody waits for an answer.')).toBeVisible();
    const { followCode } = (await asked(judged)).body;
    const one = page.getByRole('article');
    await see(one).toContainText('The second mark looks wrong to us.');
    await see(one.getByRole('listitem').first()).toContainText('Second:');
    await expectAccessible(page);

    const form = page.getByRole('form', { name: 'Answer the question about class 1' });
    await tabTo(page, form.getByRole('radio').first());
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    await page.keyboard.type('We looked at the card again: it is what the judge wrote.');
    await page.route('**/answers', (route) => route.abort(), { times: 1 });
    await tabTo(page, form.getByRole('button', { name: 'Send the answer' }));
    await page.keyboard.press('Enter');
    await see(form.getByRole('alert')).toContainText(/\S/);
    await see(form.getByRole('textbox')).toHaveValue(/We looked at the card again/);
    await page.keyboard.press('Enter');
    await see(page.getByRole('heading', { name: 'Waiting (0)' })).toBeVisible();
    await see(one).toContainText('The result stands.');
    await see(one).toContainText('it is what the judge wrote');

    const followed = await request(service.app.server)
      .get('/v1/queries/followed')
      .set('query-follow-code', followCode)
      .expect(200);
    expect(followed.body.answers).toHaveLength(1);
    const { items } = (
      await request(service.app.server)
        .get(`/v1/shows/${judged.showId}/queries`)
        .use(judged.office)
        .expect(200)
    ).body;
    expect(items[0].answers.map(({ outcome }: { outcome: string }) => outcome)).toEqual(['stands']);
    await desk.close();
  });

  it('on a phone and in German; its words are erased after a confirmation that says what goes', async () => {
    const judged = await postedClass();
    await asked(judged, { reachedBy: 'Stall 14' });
    const { page, desk } = await openOffice(browser, {
      ...{ service, pass: judged.office, path: `/shows/${judged.showId}/queries` },
      options: { viewport: phoneSize, locale: 'de-DE' },
    });
    const one = page.getByRole('article');
    await see(one).toContainText('Zu erreichen: Stall 14');
    await see(page.getByText('office-queries-')).toHaveCount(0);
    await expectNoSidewaysScroll(page);
    await one.getByRole('button', { name: 'Worte löschen' }).click();
    await see(page.getByRole('dialog')).toContainText('nichts holt sie zurück');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Endgültig löschen' }).click();
    await see(one).toContainText('Worte gelöscht');
    await see(page.getByText('The second mark looks wrong to us.')).toHaveCount(0);
    await desk.close();
  });
});
