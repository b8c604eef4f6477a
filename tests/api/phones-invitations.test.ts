import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass } from '../support/test-passes.ts';
import { type Made, type Office, openOffice } from './office-client.ts';
import { rawPhone } from './raw-phone.ts';

let service: TestApp;
let office: Office;
let judgeId: string;

beforeAll(async () => {
  service = await buildTestApp();
  office = await openOffice(service);
  judgeId = (await office.done('post', '/people', { name: 'Ines Halloway' })).id;
});
afterAll(() => service.close());

const invite = (body: object = {}): Promise<Made> =>
  office.done('post', '/invitations', { role: 'judge', personId: judgeId, ...body });
const refusal = ({ status, body }: Made) => ({ status, code: body.code });
const lines = async (type: string) => {
  const rows = await service.parts.db.prisma.ledgerLine.findMany({
    where: { ledgerId: office.showId, type },
    orderBy: { sequence: 'asc' },
  });
  return rows.map(({ body, actor }) => ({ body, actor }) as Made);
};

describe('an invitation', () => {
  it('is a code to read aloud, a link with the code behind the #, and the link as a QR code', async () => {
    const answer = await office.call('post', '/invitations', {
      body: { role: 'judge', personId: judgeId, label: 'Ring 1' },
    });
    expect(answer.status).toBe(201);
    expect(answer.headers['cache-control']).toBe('no-store');
    const { code, link, qrSvg, endsAt, ...rest } = answer.body;
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
    expect(new URL(link).pathname).toBe('/pair');
    expect(new URL(link).hash).toBe(`#${code}`);
    expect(qrSvg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(qrSvg).not.toMatch(/<script|onload|href/i);
    const minutes = (Date.parse(endsAt) - service.clock.now().getTime()) / 60_000;
    expect(minutes).toBeGreaterThan(29);
    expect(minutes).toBeLessThanOrEqual(30);
    expect(rest).toEqual({ id: expect.any(String), role: 'judge', personId: judgeId, label: 'Ring 1' });
  });

  it('leads to PUBLIC_ADDRESS where that is set', async () => {
    const environment = { PUBLIC_ADDRESS: 'https://show.example' };
    const beside = await buildTestApp({ beside: service, environment });
    const other = await openOffice(beside);
    const { link, code } = await other.done('post', '/invitations', { role: 'gate' });
    expect(link).toBe(`https://show.example/pair#${code}`);
    await beside.close();
  });

  it('is listed without its code, which is stored nowhere', async () => {
    const { id, code } = await invite({ role: 'scribe' });
    const answer = await office.call('get', '/invitations');
    expect(answer.body.items[0]).toMatchObject({
      ...{ id, role: 'scribe', personId: judgeId, personName: 'Ines Halloway', state: 'open', phoneId: null },
    });
    expect(answer.text).not.toContain(code);
    const dump = await service.parts.db.pool.query(
      `SELECT (SELECT json_agg(i) FROM invitation i)::text || (SELECT json_agg(l) FROM ledger_line l)::text
           || coalesce((SELECT json_agg(k) FROM idempotency_key k)::text, '') AS everything`,
    );
    expect(dump.rows[0].everything).toContain(id);
    expect(dump.rows[0].everything).not.toContain(code);
    expect(dump.rows[0].everything).not.toContain(code.replace('-', ''));
  });

  it('stands in the ledger by ids alone, with who made it', async () => {
    const { id } = await invite();
    const [last] = (await lines('invitation.made')).slice(-1);
    expect(last?.body).toEqual({ invitationId: id, role: 'judge', personId: judgeId });
    expect(last?.actor).toMatchObject({ as: 'office' });
  });

  it('for a judge or scribe needs a person of this show, and for the gate none', async () => {
    const post = (body: object) => office.call('post', '/invitations', { body });
    expect((await post({ role: 'judge' })).status).toBe(400);
    expect((await post({ role: 'scribe', personId: 'x' })).status).toBe(400);
    expect((await post({ role: 'gate', personId: judgeId })).status).toBe(400);
    expect((await post({ role: 'office' })).status).toBe(400);
    const other = await openOffice(service);
    const foreign = await other.call('post', '/invitations', { body: { role: 'judge', personId: judgeId } });
    expect(refusal(foreign)).toEqual({ status: 422, code: 'unknown_reference' });
    expect(foreign.body.errors[0].field).toBe('/personId');
    expect((await post({ role: 'gate' })).status).toBe(201);
  });

  it('lasts from a minute to a show day', async () => {
    for (const minutes of [0, -1, 1.5, 481, '30', null])
      expect((await office.call('post', '/invitations', { body: { role: 'gate', minutes } })).status).toBe(
        400,
      );
    for (const minutes of [1, 480])
      expect((await office.call('post', '/invitations', { body: { role: 'gate', minutes } })).status).toBe(
        201,
      );
  });

  it('is made anew where it is asked for twice: the answer with the code is not kept', async () => {
    const asked = { body: { role: 'gate' }, headers: { 'idempotency-key': 'one key' } };
    const [first, second] = [
      await office.call('post', '/invitations', asked),
      await office.call('post', '/invitations', asked),
    ];
    expect(second.body.code).not.toBe(first?.body.code);
  });

  it('is seen, made and taken back by the office of its show alone', async () => {
    const { id } = await invite();
    const other = await openOffice(service);
    expect(refusal(await other.call('delete', `/invitations/${id}`))).toEqual({
      status: 404,
      code: 'not_found',
    });
    const reached = await other.call('get', '/invitations', { pass: office.pass });
    expect(refusal(reached)).toEqual({ status: 403, code: 'other_show' });
    const stranger = await office.call('post', '/invitations', { pass: noPass, body: { role: 'gate' } });
    expect(refusal(stranger)).toEqual({ status: 401, code: 'token_missing' });
    const phone = await rawPhone(service);
    await phone.pair((await invite()).code);
    const byPhone = await phone.ask('post', `/v1/shows/${office.showId}/invitations`, { role: 'gate' });
    expect(refusal(byPhone)).toEqual({ status: 403, code: 'not_allowed' });
  });
});
