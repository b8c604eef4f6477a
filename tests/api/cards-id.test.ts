import { createHash } from 'node:crypto';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cardIdOf } from '../../src/evidence/index.ts';
import { goOf, setUpClass } from '../support/card-setting.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { signedBody, statementOf } from '../support/test-phone.ts';

let service: TestApp;
beforeAll(async () => {
  service = await buildTestApp();
});
afterAll(() => service.close());

/** RFC 9562, section 5.5, step by step with Node.js's own SHA-1. */
function versionFive(namespace: string, name: string): string {
  const hash = createHash('sha1')
    .update(Buffer.from(namespace.replaceAll('-', ''), 'hex'))
    .update(name)
    .digest();
  hash[6] = ((hash[6] ?? 0) & 0x0f) | 0x50;
  hash[8] = ((hash[8] ?? 0) & 0x3f) | 0x80;
  const text = hash.subarray(0, 16).toString('hex');
  return text.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

describe('the id of a card', () => {
  it('follows from its seat by RFC 9562, version 5', () => {
    const seatId = '01890a5d-ac96-774b-bcce-b302099a8057';
    const expected = versionFive('5f0c1a52-8d5e-4b0e-9a37-2f6b7c1d9e84', seatId);
    expect(cardIdOf(seatId)).toBe(expected);
    expect(cardIdOf(seatId.toUpperCase())).toBe(expected);
    expect(cardIdOf('01890a5d-ac96-774b-bcce-b302099a8058')).not.toBe(expected);
  });

  it('is the one that the service opens it under, whichever phone of the seat comes first', async () => {
    const setting = await setUpClass(service);
    const [seatId = ''] = setting.seatIds;
    const opened = await request(service.app.server)
      .post(`/v1/classes/${setting.classId}/cards`)
      .use(await setting.scribe())
      .send({ seatId });
    expect(opened.body.id).toBe(cardIdOf(seatId));
    expect(await setting.openCard()).toBe(cardIdOf(seatId));
  });

  it('lets a phone sign a card before the service has opened it', async () => {
    const setting = await setUpClass(service, { entries: 2 });
    const [seatId = ''] = setting.seatIds;
    const judge = await setting.judge();
    const sheet = await service.parts.db.prisma.scoreSheet.findFirstOrThrow({
      where: { code: 'horsemanship' },
    });
    const { showId, classId } = setting;
    const card = { id: cardIdOf(seatId), showId, classId, seatId, sheet };
    const goes = {
      [setting.entryIds[0] ?? '']: goOf(['1', '0', '1']),
      [setting.entryIds[1] ?? '']: goOf(['0', '0', '0']),
    };
    const signed = signedBody(judge.phone, statementOf(card, { goes }));
    await setting.openCard();
    const answer = await request(service.app.server)
      .post(`/v1/cards/${card.id}/signatures`)
      .use(judge)
      .send(signed);
    expect(answer.status).toBe(201);
    expect(answer.body).toMatchObject({ revision: 1, cardId: card.id });
  });
});
