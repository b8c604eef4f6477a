/** The photo of a paper card over the API: who may send and see it, and what comes out again. */
import { createHash } from 'node:crypto';
import exifr from 'exifr';
import sharp from 'sharp';
import request from 'supertest';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { setUpClass } from '../support/card-setting.ts';
import { openPaper, type PaperSetting, setUpPaper } from '../support/paper-setting.ts';
import { manyPictures, picture, withPlace } from '../support/pictures.ts';
import { goesOf } from '../support/posted-class.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { type Pass, passFor } from '../support/test-passes.ts';

let service: TestApp;
let paper: PaperSetting;
let taken: Buffer;
beforeAll(async () => {
  service = await buildTestApp();
  taken = await withPlace(picture()).toBuffer();
});
afterAll(() => service.close());
beforeEach(async () => {
  paper = await setUpPaper(service, { judges: 2, entries: 2 });
  await paper.takeUp(paper.first).expect(201);
});

const http = () => request(service.app.server);
const address = () => `/v1/paper-cards/${paper.current().id}/photo`;
const put = (pass: Pass, bytes: Buffer | string, type = 'image/jpeg') =>
  http().put(address()).use(pass).set('content-type', type).send(bytes);
const get = (pass: Pass) => http().get(address()).use(pass);

const stored = () =>
  service.parts.db.prisma.ledgerLine.findMany({
    where: { ledgerId: paper.showId, type: 'card.photo-stored' },
    orderBy: { sequence: 'asc' },
  });

describe('a photo of the paper', () => {
  test('is stored by the office without a trace of where and when it was taken, and the ledger has its hash', async () => {
    const { first, second } = paper;
    const sent = await put(first, taken).expect(200);
    const seen = await get(second).expect(200);
    const bytes: Buffer = seen.body;
    const hash = createHash('sha256').update(bytes).digest('hex');
    expect(sent.body).toMatchObject({
      ...{ paperCardId: paper.current().id, hash, mediaType: 'image/jpeg', width: 300, height: 200 },
      storedBy: first.accountId,
    });
    expect((await paper.read(second)).body.photo).toEqual(sent.body);
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 300, height: 200 });
    expect(await exifr.gps(taken)).toBeDefined();
    expect(await exifr.gps(bytes)).toBeUndefined();
    const { id: paperCardId, cardId } = paper.current();
    expect((await stored()).map(({ body }) => body)).toEqual([
      { classId: paper.classId, seatId: paper.seatIds[0], cardId, paperCardId, hash },
    ]);
  });

  test('comes out as a picture and nothing else, whatever a browser would make of it', async () => {
    await put(paper.first, await picture().png().toBuffer(), 'image/png').expect(200);
    const { headers } = await get(paper.first).expect(200);
    expect(headers).toMatchObject({
      ...{ 'content-type': 'image/jpeg', 'x-content-type-options': 'nosniff', 'cache-control': 'no-store' },
      'content-disposition': 'inline; filename="paper-card.jpg"',
      'content-security-policy': expect.stringMatching(/^default-src 'none';.*; sandbox$/),
    });
  });

  test('is seen by the office of the show and by the judge whose card it is, and by nobody else', async () => {
    await put(paper.first, taken).expect(200);
    await get(await paper.another()).expect(200);
    await get(await paper.judge(0)).expect(200);
    const elsewhere = await setUpClass(service);
    const refused = [
      [await paper.judge(1), 403],
      [await paper.scribe(0), 403],
      [await passFor(service, { role: 'points-secretary', showId: paper.showId }), 403],
      [await passFor(service, { role: 'office', showId: elsewhere.showId }), 403],
      [await elsewhere.judge(), 403],
      [await paper.pass('gate'), 403],
      [await paper.pass('public'), 401],
    ] as const;
    for (const [pass, status] of refused) expect((await get(pass)).status).toBe(status);
  });

  test('is sent by nobody but the office of the show, and a stranger is refused before his bytes are read', async () => {
    const elsewhere = await setUpClass(service);
    const senders = [
      [await paper.judge(0), 403],
      [await paper.scribe(0), 403],
      [await passFor(service, { role: 'office', showId: elsewhere.showId }), 403],
      [await paper.pass('public'), 401],
    ] as const;
    for (const [pass, status] of senders) expect((await put(pass, taken)).status).toBe(status);
    expect(await stored()).toEqual([]);
    await get(paper.first).expect(404);
  });

  test('sent again is stored once; a better one takes its place while the card is open', async () => {
    const first = await put(paper.first, taken).expect(200);
    expect((await put(paper.second, taken).expect(200)).body).toEqual(first.body);
    const better = await put(paper.second, await picture({ width: 600 }).jpeg().toBuffer()).expect(200);
    expect(better.body).toMatchObject({ width: 600, storedBy: paper.second.accountId });
    expect(await stored()).toHaveLength(2);
  });

  test('may come after the card was accepted, and then stays', async () => {
    paper = await setUpPaper(service, { entries: 2 });
    await openPaper(paper, goesOf(['1', '0', '0'], ['0', '0', '0']));
    const kept = await put(paper.first, taken).expect(200);
    const other = await put(paper.first, await picture({ width: 600 }).jpeg().toBuffer()).expect(409);
    expect(other.body.code).toBe('paper_card_closed');
    expect((await put(paper.first, taken).expect(200)).body).toEqual(kept.body);
  });

  test('is not taken for a paper card that was withdrawn, or for none', async () => {
    await paper.withdraw(paper.first, 'taken up by mistake').expect(200);
    expect((await put(paper.first, taken).expect(409)).body.code).toBe('paper_card_closed');
    const none = await http()
      .put(`/v1/paper-cards/${service.parts.ids.next()}/photo`)
      .use(paper.first)
      .set('content-type', 'image/jpeg')
      .send(taken);
    expect([none.status, none.body.code]).toEqual([404, 'not_found']);
  });
});

describe('what is no photo is refused, and nothing is stored', () => {
  afterEach(async () => expect(await stored()).toEqual([]));

  test('another kind of file, under its own name or under the name of a picture', async () => {
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>';
    for (const [bytes, type] of [
      [svg, 'image/svg+xml'],
      [svg, 'image/png'],
      ['<html><script>alert(1)</script></html>', 'image/jpeg'],
      [await picture().gif().toBuffer(), 'image/gif'],
      [await picture().gif().toBuffer(), 'image/webp'],
      [await picture().png().toBuffer(), 'image/jpeg'],
      ['{"goes":{}}', 'application/json'],
      ['a=b', 'application/x-www-form-urlencoded'],
      ['plain', 'text/plain'],
    ] as const) {
      const refused = await put(paper.first, Buffer.from(bytes), type);
      expect([type, refused.status, refused.body.code]).toEqual([type, 415, 'photo_of_another_kind']);
    }
  });

  test('a picture that moves, is cut off, or has too many pixels', async () => {
    const moving = await put(paper.first, await manyPictures(), 'image/webp').expect(422);
    expect(moving.body.code).toBe('photo_moves');
    const cut = await put(paper.first, taken.subarray(0, taken.length - 40)).expect(422);
    expect(cut.body.code).toBe('photo_unreadable');
    const huge = await picture({ width: 8_000, height: 5_001 }).png({ compressionLevel: 1 }).toBuffer();
    const bomb = await put(paper.first, huge, 'image/png').expect(422);
    expect(bomb.body.code).toBe('photo_too_many_pixels');
  });

  test('nothing at all, and more than 8 MiB', async () => {
    const empty = await put(paper.first, Buffer.alloc(0)).expect(415);
    expect(empty.body.code).toBe('photo_of_another_kind');
    expect((await http().put(address()).use(paper.first).expect(400)).body.code).toBe('empty_body');
    const large = await put(paper.first, Buffer.concat([taken, Buffer.alloc(8 * 1_024 * 1_024)]));
    expect([large.status, large.body.code]).toEqual([413, 'body_too_large']);
  });
});

test('a photo of more than 1 MiB is read, though no other body may be as large', async () => {
  const noise = Buffer.alloc(1_200 * 1_200 * 3);
  for (let at = 0; at < noise.length; at += 1) noise[at] = (at * 7_919) ^ (at >> 7);
  const large = await sharp(noise, { raw: { width: 1_200, height: 1_200, channels: 3 } })
    .jpeg({ quality: 100 })
    .toBuffer();
  expect(large.length).toBeGreaterThan(1_048_576);
  expect((await put(paper.first, large).expect(200)).body).toMatchObject({ width: 1_200, height: 1_200 });
});

test('no other route reads pictures', async () => {
  const elsewhere = await http()
    .put(`/v1/paper-cards/${paper.current().id}/entries/mine`)
    .use(paper.first)
    .set('content-type', 'image/jpeg')
    .send(taken);
  expect([elsewhere.status, elsewhere.body.code]).toEqual([415, 'unsupported_media_type']);
});
