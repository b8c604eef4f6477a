/** A show is taken out of one service as an archive and brought into another. */

import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyArchive } from '../../src/archive/offline.ts';
import { firstSigningKeys, serviceKeys } from '../../src/platform/service-keys.ts';
import { type JudgedShow, judgedShow } from '../faults/tampering/judged-show.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Pass, passFor } from '../support/test-passes.ts';
import { type Made, openOffice } from './office-client.ts';

let here: TestApp;
let there: TestApp;
let show: JudgedShow;
/** A manager of the whole service, there. */
let manager: Pass;

beforeAll(async () => {
  here = await buildTestApp();
  there = await buildTestApp({ keys: await serviceKeys(await firstSigningKeys()) });
  show = await judgedShow(here);
  manager = await passFor(there, { role: 'manager' });
});
afterAll(async () => {
  await there.close();
  await here.close();
});

const bring = (archive: object, pass: Pass = manager) =>
  request(there.app.server).post('/v1/archives').use(pass).send(archive);
const takeOut = async (): Promise<Made> =>
  (await request(there.app.server).get(`/v1/shows/${show.showId}/archive`).use(manager).expect(200)).body;
const showsThere = () => there.parts.db.prisma.show.count();

describe('an archive', () => {
  test('is of the form that api-docs/archive.schema.json describes (JSON Schema 2020-12, checked by ajv)', async () => {
    const schema = JSON.parse(readFileSync('api-docs/archive.schema.json', 'utf8'));
    const valid = new Ajv2020({ strict: false, validateFormats: false }).compile(schema);
    expect(valid(await show.archive())).toBe(true);
    expect(valid(await show.archive('none'))).toBe(true);
    const { jws: _jws, ...unsigned } = await show.archive();
    expect(valid(unsigned)).toBe(false);
  });

  test('without names holds no name, and can still be checked', async () => {
    const archive = await show.archive('none');
    expect(JSON.stringify(archive)).not.toMatch(/Rider|Horse \d/);
    expect((await verifyArchive(archive)).faults).toEqual([]);
  });

  test('is for the office of the show alone', async () => {
    const stranger = (await openOffice(here)).pass;
    const asked = request(here.app.server).get(`/v1/shows/${show.showId}/archive`);
    expect((await asked.use(stranger)).body.code).toBe('other_show');
  });
});

describe('bringing it in', () => {
  test('is refused without names, altered with the first fault named, and nothing is stored', async () => {
    const before = await showsThere();
    const nameless = await bring(await show.archive('none'));
    expect([nameless.status, nameless.body.code]).toEqual([422, 'archive_without_names']);
    const archive = await show.archive();
    archive.entries[0].backNumber += 1;
    const altered = await bring(archive);
    expect([altered.status, altered.body.code, altered.body.fault]).toEqual([
      422,
      'archive_altered',
      'archive_altered',
    ]);
    expect(altered.body.errors).toHaveLength(1);
    expect((await bring({ form: 'ringledger show archive 2' })).body.code).toBe('archive_form_unknown');
    expect(await showsThere()).toBe(before);
  });

  test('is for a manager of the whole service', async () => {
    const secretary = await passFor(there, { role: 'secretary' });
    expect((await bring(await show.archive(), secretary)).body.code).toBe('not_allowed');
    const ofOneShow = await passFor(there, { role: 'manager', showId: (await openOffice(there)).showId });
    expect((await bring(await show.archive(), ofOneShow)).body.code).toBe('not_allowed');
  });

  test('two at once and once more is once; the results are the same, and the ledger goes on', async () => {
    const archive = await show.archive();
    const answers = await Promise.all([bring(archive), bring(archive)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 201]);
    expect((await bring(archive)).status).toBe(200);
    const { classId } = archive.postings[0];
    const read = (service: TestApp) => request(service.app.server).get(`/v1/classes/${classId}/result`);
    expect((await read(there).expect(200)).body).toEqual((await read(here).expect(200)).body);
    const again = await takeOut();
    expect(again.lines.slice(0, archive.lines.length)).toEqual(archive.lines);
    expect(again.lines[archive.lines.length]).toMatchObject({
      type: 'show.imported',
      sequence: archive.lines.length + 1,
      previousHash: archive.head.hash,
    });
    expect((await verifyArchive(again)).faults).toEqual([]);
    const both = [...here.parts.keys.publicKeys, ...there.parts.keys.publicKeys].map(({ jwk }) => jwk);
    expect((await verifyArchive(again, { trustedKeys: both })).faults).toEqual([]);
  });

  test('a show that went on in two places is refused, and what is here stays', async () => {
    await show.office.done('post', '/rings', { name: 'Far ring' });
    await request(there.app.server)
      .post(`/v1/shows/${show.showId}/rings`)
      .use(manager)
      .send({ name: 'Near ring' })
      .expect(201);
    const refused = await bring(await show.archive());
    expect([refused.status, refused.body.code]).toEqual([409, 'archive_of_other_history']);
    const { rings } = await takeOut();
    expect(rings.map(({ name }: Made) => name)).toEqual(['Near ring']);
  });

  test('a phone that came along opens nothing here', async () => {
    const { phones } = await takeOut();
    expect(phones.length).toBeGreaterThan(0);
    const stored = await there.parts.db.prisma.phone.findMany({ where: { showId: show.showId } });
    expect(stored.every(({ invitationId }) => invitationId === null)).toBe(true);
  });
});
