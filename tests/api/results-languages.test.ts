/** What a family and the office read over the API, in the language that they ask for. */
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { addPlaces } from '../support/card-setting.ts';
import { goesOf, type JudgedClass, setUpJudgedClass } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

let service: TestApp;
let judged: JudgedClass;

beforeAll(async () => {
  service = await buildTestApp();
  judged = await setUpJudgedClass(service, { judges: 2 });
  await judged.sign(0, goesOf(['1', '0', '0'], ['0', '0', '0'], ['2', '0', '0']));
  await judged.sign(1, goesOf(['0', '0', '0'], ['0.5', '0', '0'], ['2', '0', '0']));
});
afterAll(() => service.close());

const inGerman = (asked: request.Test) => asked.set('accept-language', 'de-AT, en;q=0.5');

describe('the preview', () => {
  test('is told in the language that is asked for, and is posted by whoever read it in any', async () => {
    const english = await judged.get('/tabulation', judged.office).expect(200);
    const german = await inGerman(judged.get('/tabulation', judged.office)).expect(200);
    expect(english.headers['content-language']).toBe('en');
    expect(german.headers['content-language']).toBe('de');
    expect(german.headers.vary).toContain('accept-language');
    expect(german.body.rule[0]).toBe(
      'Die Wertungen der Richter werden zusammengezählt; die beste Summe steht vorn. Ohne die Wertung jedes Richters wird ein Starter nicht platziert.',
    );
    expect(german.body.body).toEqual(english.body.body);
    expect(german.headers.etag).not.toBe(english.headers.etag);
    const posted = await judged.post(
      '/postings',
      { state: 'provisional' },
      { headers: { 'if-match': String(german.headers.etag) } },
    );
    expect([posted.status, posted.body.version]).toEqual([201, 1]);
  });
});

describe('the posted result', () => {
  test('has one body and one hash, whatever it is told in', async () => {
    const [english, german] = [await judged.get('/result'), await inGerman(judged.get('/result'))];
    expect(german.body.posting).toEqual(english.body.posting);
    expect(english.body.results[0].placings[0].because).toEqual(['First: 75 + 75 = 150.']);
    expect(german.body.results[0].placings[0].because).toEqual(['Platz 1: 75 + 75 = 150.']);
    expect(german.body.cards[0].goes[0].parts).toContain('Grundwert 70.');
    expect(german.body.caution).toContain('es entscheidet nichts');
  });

  test('is kept by caches for each language: its own ETag, and told that it varies', async () => {
    const [english, german] = [await judged.get('/result'), await inGerman(judged.get('/result'))];
    for (const { headers } of [english, german]) expect(headers.vary).toBe('accept-language');
    expect([english, german].map(({ headers }) => headers['content-language'])).toEqual(['en', 'de']);
    expect(german.headers.etag).not.toBe(english.headers.etag);
    const known = String(german.headers.etag);
    const again = await inGerman(judged.get('/result')).set('if-none-match', known).expect(304);
    expect(again.headers).toMatchObject({ vary: 'accept-language', 'content-language': 'de' });
    await judged.get('/result').set('if-none-match', known).expect(200);
  });

  test('is English for whoever asks for nothing, for what is not spoken here, or for nonsense', async () => {
    for (const asked of ['', '*', 'fi, se;q=0.9', 'de;q=0', ';;,q=x']) {
      const { headers } = await judged.get('/result').set('accept-language', asked).expect(200);
      expect([asked, headers['content-language']]).toEqual([asked, 'en']);
    }
  });

  test("is told in German to an entry's family, in how close it was, and in the table", async () => {
    const entry = (await inGerman(judged.get('/result/entries/101')).expect(200)).body;
    expect(entry.results[0].because[0]).toMatch(/^Platz \d: 7\d(,5)? \+ 7\d(,5)? = \d+(,5)?\.$/);
    const margins = (await inGerman(judged.get('/margins', judged.office)).expect(200)).body.margins;
    expect(margins[0].sentence).toMatch(/^Ein Unterschied von .* hätte \d+ vor \d+ gebracht\.$/);
    const { body, headers } = await inGerman(judged.get('/agreement', judged.office)).expect(200);
    expect(headers['content-language']).toBe('de');
    expect(body.sentences[0]).toMatch(/^Die zwei Richter waren sich/);
    const table = await inGerman(judged.get('/result.csv')).expect(200);
    expect(table.text).toContain('"Platz 1: 75 + 75 = 150."');
  });
});

describe('what is refused', () => {
  test('has its title in English, and its faults in the language of whoever reads them', async () => {
    const tied = await setUpJudgedClass(service, { judges: 1, merge: addPlaces, rule: { ties: [] } });
    const judge = await tied.judge(0);
    const cardId = await tied.openCard(0);
    const go = { maneuvers: [{ position: 1, mark: '0.25' }] };
    const refused = await inGerman(
      request(service.app.server).put(`/v1/cards/${cardId}/goes/${tied.entryIds[0]}`).use(judge).send(go),
    ).expect(422);
    expect(refused.body.title).toBe('The score sheet does not allow what was written');
    expect(refused.body.errors[0].message).toMatch(
      /^Manöver 1 \(.+\): „0\.25“ liegt zwischen zwei Schritten; möglich: −3 bis 3 in Schritten von 0,5$/,
    );
  });

  test('a rule that does not fit is told so in German', async () => {
    const fresh = await setUpJudgedClass(service, { judges: 1 });
    const path = `/v1/shows/${fresh.showId}/classes/${fresh.classId}`;
    const office = fresh.office;
    const { body: before, headers } = await request(service.app.server).get(path).use(office).expect(200);
    const ties = [{ code: 'share' }, { code: 'form' }];
    const refused = await inGerman(
      request(service.app.server)
        .patch(path)
        .use(office)
        .set('if-match', String(headers.etag))
        .send({ placingRule: { ...before.placingRule, ties } }),
    );
    const messages = (refused.body.errors ?? []).map(({ message }: { message: string }) => message);
    expect([refused.body.code, messages]).toEqual([
      'rule_invalid',
      expect.arrayContaining(['Nach dem geteilten Platz kann nichts mehr folgen: Er ist endgültig.']),
    ]);
  });
});

describe('a card', () => {
  test('says what is missing on it in the language of its judge', async () => {
    const fresh = await setUpJudgedClass(service, { judges: 1 });
    const judge = await fresh.judge(0);
    const cardId = await fresh.openCard(0);
    const read = await inGerman(request(service.app.server).get(`/v1/cards/${cardId}`).use(judge)).expect(
      200,
    );
    expect(read.headers['content-language']).toBe('de');
    expect(read.body.missing[0].message).toBe(
      '101 fehlt auf dem Bogen; bitte den Ritt benoten oder einen Entscheid geben',
    );
  });
});
