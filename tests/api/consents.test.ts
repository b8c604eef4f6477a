import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass } from '../support/test-passes.ts';
import { bundle, type Made, newShow, type Office, openOffice, send } from './office-client.ts';

let service: TestApp;
let office: Office;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
});
beforeEach(async () => {
  office = await openOffice(service);
});
afterAll(() => service.close());

const given = { publicName: 'full', givenBy: 'parent', givenOn: '2026-09-01', how: 'signed-form' };
const child = { name: 'Ada Mae Kessler', bornOn: '2013-05-02' };
const add = (exhibitor: object = child): Promise<Made> => office.done('post', '/exhibitors', exhibitor);
const consent = (id: string, body: object = {}) =>
  office.call('post', `/exhibitors/${id}/consents`, { body: { ...given, ...body } });
const read = (id: string): Promise<Made> => office.done('get', `/exhibitors/${id}`);
const refusal = ({ status, body }: { status: number; body: Made }) => ({
  status,
  code: body.code,
  field: body.errors?.[0]?.field,
});
const linesOf = async (type: string) => {
  const where = { ledgerId: office.showId, type };
  return service.parts.db.prisma.ledgerLine.findMany({ where, orderBy: { sequence: 'asc' } });
};
/** What everyone reads of an exhibitor who is entered in one class. */
async function shown(exhibitorId: string, youth: boolean, number = 1): Promise<string> {
  const made = await office.addClass(number, { youth });
  const entry = await office.addEntry(213 + number, { exhibitorId });
  await office.enter(made.id, entry.id);
  const answer = await office.call('get', `/classes/${made.id}/order-of-go`, { pass: noPass });
  return answer.body.goes[0].exhibitor;
}

describe('the public form of a name', () => {
  test('follows the last consent, and nothing else sets it', async () => {
    const { id } = await add();
    expect(await read(id)).toMatchObject({ publicName: null, version: 1 });
    expect((await consent(id)).body).toMatchObject({ ...given, exhibitorId: id });
    expect(await read(id)).toMatchObject({ publicName: 'full', version: 2 });
    await consent(id, { publicName: 'back-number', how: 'in-person' });
    expect(await read(id)).toMatchObject({ publicName: 'back-number', version: 3 });
    const created = await office.call('post', '/exhibitors', { body: { ...child, publicName: 'full' } });
    expect(created.status).toBe(400);
    const headers = { 'if-match': '"3"' };
    const changed = await office.call('patch', `/exhibitors/${id}`, {
      body: { publicName: 'full' },
      headers,
    });
    expect(changed.status).toBe(400);
    expect((await read(id)).publicName).toBe('back-number');
  });

  test('is the back number for a child of whom nobody said anything; a show may say otherwise, but not full', async () => {
    expect((await office.done('get', '')).minorPublicName).toBe('back-number');
    const { id } = await add();
    expect(await shown(id, false)).toBe('No. 214');
    const change = (minorPublicName: string, version: number) =>
      office.call('patch', '', { body: { minorPublicName }, headers: { 'if-match': `"${version}"` } });
    const refused = await change('full', 1);
    expect(refusal(refused)).toMatchObject({ status: 400, field: '/minorPublicName' });
    expect(refused.body.errors[0].message).toContain('never full');
    expect((await change('first-name-and-initial', 1)).status).toBe(200);
    expect(await shown(id, false, 2)).toBe('Ada K.');
    const made = await send(service, 'post', '/v1/shows', {
      pass: office.pass,
      body: { ...newShow, minorPublicName: 'full' },
    });
    expect(made.status).toBe(400);
    const stored = service.parts.db.prisma.show.update({
      where: { id: office.showId },
      data: { minorPublicName: 'full' },
    });
    await expect(stored).rejects.toThrow(/show_minors_carefully/);
  });

  test('of someone of unknown age who is entered in a youth class is that of a child in every class', async () => {
    const { id } = await add({ name: 'Bo Lind' });
    expect(await shown(id, false)).toBe('Bo Lind');
    expect(await shown(id, true, 2)).toBe('No. 215');
    expect(await shown(id, false, 3)).toBe('No. 216');
  });

  test("does not rest on a word that turns out to be a child's own", async () => {
    const { id } = await add({ name: 'Bo Lind', bornOn: '1999-05-02' });
    expect((await consent(id, { givenBy: 'exhibitor' })).status).toBe(201);
    expect(await shown(id, true)).toBe('Bo Lind');
    await office.done('patch', `/exhibitors/${id}`, { bornOn: '2014-05-02' }, { 'if-match': '"2"' });
    expect(await shown(id, true, 2)).toBe('No. 215');
  });
});

describe('a consent', () => {
  test("of a minor's own is refused, with the reason", async () => {
    const { id } = await add();
    const answer = await consent(id, { givenBy: 'exhibitor' });
    expect(refusal(answer)).toEqual({ status: 422, code: 'consent_needs_parent', field: '/givenBy' });
    expect(answer.body.errors[0].message).toBe(
      'the exhibitor was under 18 on 2026-09-01: a parent or guardian must give it',
    );
    expect(await read(id)).toMatchObject({ publicName: null, version: 1 });
    expect((await consent(id, { givenBy: 'guardian' })).status).toBe(201);
  });

  test('of someone of unknown age is her own until she is entered in a youth class', async () => {
    const { id } = await add({ name: 'Bo Lind' });
    expect((await consent(id, { givenBy: 'exhibitor' })).status).toBe(201);
    await shown(id, true);
    const answer = await consent(id, { givenBy: 'exhibitor' });
    expect(refusal(answer)).toMatchObject({ status: 422, code: 'consent_needs_parent' });
    expect(answer.body.errors[0].message).toContain('age is not known');
  });

  test('is her own from the 18th birthday on', async () => {
    const { id } = await add({ ...child, bornOn: '2008-09-02' });
    expect((await consent(id, { givenBy: 'exhibitor', givenOn: '2026-09-01' })).status).toBe(422);
    expect((await consent(id, { givenBy: 'exhibitor', givenOn: '2026-09-02' })).status).toBe(201);
  });

  test('cannot be of a day to come, and one of an earlier day may hide more but not show more', async () => {
    const { id } = await add();
    expect(refusal(await consent(id, { givenOn: '2199-01-01' }))).toMatchObject({
      status: 400,
      field: '/givenOn',
    });
    await consent(id, { publicName: 'first-name-and-initial', givenOn: '2026-09-05' });
    const late = await consent(id, { publicName: 'full', givenOn: '2026-09-04' });
    expect(refusal(late)).toEqual({ status: 409, code: 'consent_overtaken', field: '/givenOn' });
    expect((await consent(id, { publicName: 'back-number', givenOn: '2026-09-04' })).status).toBe(201);
    expect((await read(id)).publicName).toBe('back-number');
  });

  test('sent twice with one key is recorded once', async () => {
    const { id } = await add();
    const twice = () =>
      office.call('post', `/exhibitors/${id}/consents`, {
        body: given,
        headers: { 'idempotency-key': 'form-of-1-September' },
      });
    const [first, second] = [await twice(), await twice()];
    expect(second.body).toEqual(first.body);
    expect(await service.parts.db.prisma.exhibitorConsent.count({ where: { exhibitorId: id } })).toBe(1);
  });

  test('is a line in the ledger, and so is each time the office opens it; neither holds a name', async () => {
    const { id } = await add();
    const { body } = await consent(id);
    const open = () => office.done('get', `/exhibitors/${id}/consents`);
    expect((await open()).items).toEqual([body]);
    await open();
    expect((await linesOf('consent.recorded')).map((line) => line.body)).toEqual([
      { exhibitorId: id, consentId: body.id, publicName: 'full' },
    ]);
    const opened = await linesOf('consent.opened');
    expect(opened.map((line) => line.body)).toEqual([{ exhibitorId: id }, { exhibitorId: id }]);
    expect(opened.map(({ actor }) => actor)).toEqual(
      Array(2).fill(expect.objectContaining({ as: 'office', account: body.recordedBy })),
    );
    const all = await service.parts.db.prisma.ledgerLine.findMany({ where: { ledgerId: office.showId } });
    expect(JSON.stringify(all)).not.toMatch(/Ada|Kessler|2013-05-02/);
  });

  test('is not found at another show, and its reading leaves no line there', async () => {
    const { id } = await add();
    const other = await openOffice(service);
    const path = `/exhibitors/${id}/consents`;
    expect((await other.call('get', path)).status).toBe(404);
    expect((await other.call('post', path, { body: given })).status).toBe(404);
    const where = { ledgerId: other.showId, type: { startsWith: 'consent.' } };
    expect(await service.parts.db.prisma.ledgerLine.count({ where })).toBe(0);
  });
});
