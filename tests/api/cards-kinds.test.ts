import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { setUpClass } from '../support/card-setting.ts';
import { signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';

/** Sums are done by hand beside each go; what the sheets say of their sources stands in seed/sheets. */
describe('cards on other sheets than a pattern', () => {
  let service: TestApp;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());

  async function open(sheet: string) {
    const setting = await setUpClass(service, { sheet, entries: 1 });
    const judge = await setting.judge();
    const cardId = await setting.openCard();
    const http = () => request(service.app.server);
    const save = (go: object, seen?: string) =>
      http()
        .put(`/v1/cards/${cardId}/goes/${setting.entryIds[0]}`)
        .use(judge)
        .set(seen === undefined ? {} : { 'if-match': seen })
        .send(go);
    const sign = () =>
      http()
        .post(`/v1/cards/${cardId}/signatures`)
        .use(judge)
        .use(signedBy(service, { pass: judge, cardId }));
    return { save, sign };
  }

  test('dressage: coefficients, an error of course, the percentage; the third error eliminates', async () => {
    const { save, sign } = await open('dressage-training');
    // 6.5 + 7 + 6 = 19.5; 7 + 2 x 6.5 + 2 x 6 + 7 + 6.5 = 45.5; 65 - 2 of 30 + 70
    const go = {
      maneuvers: ['6.5', '7', '6'].map((mark, index) => ({ position: index + 1, mark })),
      extras: { gaits: '7', impulsion: '6.5', submission: '6', 'position-and-seat': '7', aids: '6.5' },
      errorsOfCourse: 1,
    };
    const saved = await save(go).expect(200);
    expect(saved.body.score).toMatchObject({ score: '63', maximum: '100', errorsOfCourse: '2' });
    const third = await save({ ...go, errorsOfCourse: 3 }, '"1"').expect(200);
    expect(third.body.score).toMatchObject({
      score: null,
      tier: 'not-placed',
      ruling: { code: 'eliminated' },
    });
    const outside = await save({ ...go, extras: { ...go.extras, gaits: '10.5' } }, '"2"').expect(422);
    expect(outside.body.errors[0].field).toBe('/extras/gaits');
    await sign().expect(201);
  });

  test('against the clock: penalties add seconds, and less is better', async () => {
    const { save, sign } = await open('timed-barrels');
    // 17.342 + 5
    const saved = await save({ measure: '17.342', penalties: [{ code: 'barrel-down' }] }).expect(200);
    expect(saved.body.score).toMatchObject({ score: '22.342', better: 'lower' });
    const finer = await save({ measure: '17.3421' }, '"1"').expect(422);
    expect(finer.body.errors).toEqual([
      { field: '/measure', message: '"17.3421" is between two steps; write 0.001 to 999.999 by 0.001' },
    ]);
    await sign().expect(201);
  });

  test('one mark: no mark is missing, a mark of another sheet is refused', async () => {
    const { save, sign } = await open('equitation-one-mark');
    await save({ remark: 'good hands' }).expect(200);
    const incomplete = await sign().expect(422);
    expect(incomplete.body.errors[0].message).toBe('101, no mark yet; write 0 to 100 by 0.5');
    const other = await save({ maneuvers: [{ position: 1, mark: '1' }] }, '"1"').expect(422);
    expect(other.body.errors[0]).toEqual({
      field: '/maneuvers',
      message: 'the sheet of this class has no marks for maneuvers; take it out',
    });
    await save({ mark: '87.5', remark: 'good hands' }, '"1"').expect(200);
    await sign().expect(201);
  });
});
