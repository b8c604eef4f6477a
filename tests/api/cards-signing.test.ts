import { createHash } from 'node:crypto';
import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { signedCards } from '../../src/cards/index.ts';
import { inSqlTransaction } from '../../src/platform/database.ts';
import { addEntry, addPlaces, type CardSetting, goOf, setUpClass } from '../support/card-setting.ts';
import { type Asked, signatureOf, signedBy } from '../support/signing.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import type { PhonePass } from '../support/test-passes.ts';

const signedAt = '2026-05-02T15:04:05.678Z';

describe('a judge signs her card', () => {
  let service: TestApp;
  let setting: CardSetting;
  let judge: PhonePass;
  let cardId: string;
  beforeAll(async () => {
    service = await buildTestApp();
  });
  afterAll(() => service.close());
  beforeEach(async () => {
    await begin(await setUpClass(service));
  });

  async function begin(made: CardSetting) {
    setting = made;
    judge = await made.judge();
    cardId = await made.openCard();
  }
  const http = () => request(service.app.server);
  const entry = (at: number) => setting.entryIds[at] ?? '';
  const save = (at: number, go: object) =>
    http()
      .put(`/v1/cards/${cardId}/goes/${entry(at)}`)
      .use(judge)
      .send(go)
      .expect(200);
  const sign = (asked: Asked = { signedAt }) =>
    http()
      .post(`/v1/cards/${cardId}/signatures`)
      .use(judge)
      .use(signedBy(service, { pass: judge, cardId, asked }));
  const view = async () => (await http().get(`/v1/cards/${cardId}`).use(judge).expect(200)).body;
  const revisions = () => service.parts.db.prisma.cardRevision.findMany({ where: { cardId } });
  /** Of the class and its cards; the phones are another matter. */
  const lines = async () => {
    const found = await service.parts.db.prisma.ledgerLine.findMany({
      where: { ledgerId: setting.showId, NOT: { type: { in: ['invitation.made', 'phone.paired'] } } },
      orderBy: { sequence: 'asc' },
    });
    return found.map(({ type }) => type);
  };
  const whole = () => ({
    goes: {
      [entry(0)]: goOf(['1', '0.5', '0']),
      [entry(1)]: goOf(['0', '0', '0']),
      [entry(2)]: goOf(['-1', '2', '3']),
    },
  });
  async function saveAll() {
    for (const [at, go] of Object.values(whole().goes).entries()) await save(at, go);
  }

  test('out of her drafts: revision 1 is kept, with its fingerprint, and the ledger says so', async () => {
    await saveAll();
    const before = await view();
    expect(before).toMatchObject({ state: 'draft', mayBeSigned: true, missing: [], faults: [] });
    const signed = await sign().expect(201);
    expect(signed.headers.location).toBe(`/v1/cards/${cardId}/revisions/1`);
    expect(signed.body).toMatchObject({
      ...{ cardId, classId: setting.classId, seatId: setting.seatIds[0], revision: 1 },
      ...{ previousHash: null, reason: null, signedAt, openTies: [], contentHash: before.contentHash },
    });
    expect(await lines()).toEqual(['class.opened', 'card.opened', 'card.signed']);
    expect(await view()).toMatchObject({
      state: 'signed',
      mayBeSigned: false,
      contentHash: before.contentHash,
    });
  });

  // RFC 8785, 3.2: members sorted by their UTF-16 code units, no blanks. Put together by hand here.
  test('the fingerprint is SHA-256 over the canonical JSON of the content', async () => {
    await begin(await setUpClass(service, { entries: 1 }));
    await save(0, { remark: 'née "B" €', ...goOf(['1', '0.5', '0']) });
    const canonical =
      `{"goes":{"${entry(0)}":{"extras":{"form-and-effectiveness":"3"},"maneuvers":[` +
      '{"mark":"1","position":1},{"mark":"0.5","position":2},{"mark":"0","position":3}],' +
      '"remark":"née \\"B\\" €"}}}';
    const signed = await sign().expect(201);
    expect(signed.body.contentHash).toBe(createHash('sha256').update(canonical).digest('hex'));
    const kept = await http().get(`/v1/cards/${cardId}/revisions/1`).use(judge).expect(200);
    expect(kept.body.content).toEqual(JSON.parse(canonical));
  });

  test('whole, with goes that were never saved as drafts', async () => {
    await save(0, whole().goes[entry(0)] ?? {});
    const signed = await sign({ signedAt, content: whole() }).expect(201);
    expect(signed.body.revision).toBe(1);
    const seen = await view();
    expect(seen.goes.map(({ score }: { score: { score: string } }) => score.score)).toEqual([
      '74.5',
      '73',
      '77',
    ]);
  });

  test('is refused while something is missing, with everything that is missing', async () => {
    await save(0, { maneuvers: [{ position: 1, mark: '1' }] });
    await save(1, goOf(['1', '1', '1']));
    const refused = await sign().expect(422);
    expect(refused.body.code).toBe('card_incomplete');
    expect(refused.body.errors).toEqual([
      {
        field: `/content/goes/${entry(0)}/maneuvers`,
        message:
          '101, maneuver 2 (Jog a circle left): no mark yet; write −3 to 3 by 0.5, or say that it was not seen',
      },
      {
        field: `/content/goes/${entry(0)}/maneuvers`,
        message:
          '101, maneuver 3 (Lope to C): no mark yet; write −3 to 3 by 0.5, or say that it was not seen',
      },
      {
        field: `/content/goes/${entry(0)}/extras/form-and-effectiveness`,
        message: '101, form-and-effectiveness has no mark yet; write 0 to 5 by 0.5',
      },
      {
        field: `/content/goes/${entry(2)}`,
        message: '103 is not on the card; mark the go, or give a ruling',
      },
    ]);
    expect(await revisions()).toEqual([]);
    expect((await view()).goes[1].content).toEqual(goOf(['1', '1', '1']));
  });

  test('is refused where the sheet does not allow something on a card that was sent whole', async () => {
    const content = { goes: { ...whole().goes, [entry(1)]: goOf(['0.25', '0', '3.5']) } };
    const refused = await sign({ signedAt, content }).expect(422);
    expect(refused.body.code).toBe('card_illegal');
    expect(refused.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      `/content/goes/${entry(1)}/maneuvers/0/mark`,
      `/content/goes/${entry(1)}/maneuvers/2/mark`,
    ]);
  });

  test('a card for a scratched entry is refused; written before the scratch, it stays in the draft', async () => {
    await saveAll();
    await service.parts.db.prisma.classEntry.update({
      where: { id: entry(1) },
      data: { status: 'scratched', statusReason: 'lame' },
    });
    const refused = await sign({ signedAt, content: whole() }).expect(409);
    expect(refused.body.code).toBe('entry_not_going');
    expect(refused.body.errors[0].message).toBe('102 does not go in this class; take it off the card');
    await sign().expect(201);
    const kept = await http().get(`/v1/cards/${cardId}/revisions/1`).use(judge).expect(200);
    expect(Object.keys(kept.body.content.goes).sort()).toEqual([entry(0), entry(2)].sort());
  });

  test('what she sends whole and what her scribe has saved differ: nothing is signed, both are shown', async () => {
    await saveAll();
    const sent = { goes: { ...whole().goes, [entry(2)]: goOf(['3', '3', '3']) } };
    const refused = await sign({ signedAt, content: sent }).expect(409);
    expect(refused.body.code).toBe('card_differs_from_draft');
    expect(refused.body.differences).toEqual([
      { classEntryId: entry(2), draft: goOf(['-1', '2', '3']), sent: goOf(['3', '3', '3']) },
    ]);
    expect(await revisions()).toEqual([]);
  });

  test('what she saw is not what the drafts say now: nothing is signed', async () => {
    await saveAll();
    await http()
      .put(`/v1/cards/${cardId}/goes/${entry(0)}`)
      .use(await setting.scribe())
      .set('if-match', '"1"')
      .send(goOf(['3', '3', '3']))
      .expect(200);
    const refused = await sign({ signedAt, content: whole() }).expect(409);
    expect(refused.body).toMatchObject({
      code: 'card_differs_from_draft',
      differences: [{ classEntryId: entry(0), draft: goOf(['3', '3', '3']) }],
    });
    expect(await revisions()).toEqual([]);
  });

  test('twice the same is once; with other content it is refused', async () => {
    const first = await sign({ signedAt, content: whole() }).expect(201);
    const second = await sign({ signedAt: '2026-05-02T16:00:00.000Z', content: whole() }).expect(201);
    expect(second.body).toEqual(first.body);
    const other = { goes: { ...whole().goes, [entry(0)]: goOf(['3', '3', '3']) } };
    const refused = await sign({ signedAt, content: other }).expect(409);
    expect(refused.body).toMatchObject({ code: 'card_already_signed', contentHash: first.body.contentHash });
    expect(await revisions()).toHaveLength(1);
  });

  test('eight times at once there is exactly one revision and one line', async () => {
    await saveAll();
    const answers = await Promise.all(Array.from({ length: 8 }, () => sign()));
    expect(answers.map(({ status }) => status)).toEqual(Array(8).fill(201));
    expect(new Set(answers.map(({ body }) => body.id)).size).toBe(1);
    expect(await revisions()).toHaveLength(1);
    expect(await lines()).toEqual(['class.opened', 'card.opened', 'card.signed']);
  });

  test('two phones with different cards at once: one is signed, the other hears of it', async () => {
    const other = { goes: { ...whole().goes, [entry(0)]: goOf(['3', '3', '3']) } };
    const answers = await Promise.all([
      sign({ signedAt, content: whole() }),
      sign({ signedAt, content: other }),
    ]);
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409]);
    expect(await revisions()).toHaveLength(1);
  });

  test('the same Idempotency-Key gives the same answer; with other content it is a visible conflict', async () => {
    const key = 'b7c1d5d2-phone-1';
    const signOnce = (asked: Asked) => signatureOf(service, { pass: judge, cardId, asked });
    const keyed = (body: object) =>
      http().post(`/v1/cards/${cardId}/signatures`).use(judge).set('idempotency-key', key).send(body);
    // A phone keeps what it signed and sends that again; each new signature would be another text.
    const kept = await signOnce({ signedAt, content: whole() });
    const [first, second] = await Promise.all([keyed(kept), keyed(kept)]);
    expect([first.status, second.status]).toEqual([201, 201]);
    expect(second.body).toEqual(first.body);
    const replayed = [first, second].filter(({ headers }) => headers['idempotency-replayed'] === 'true');
    expect(replayed).toHaveLength(1);
    const later = await signOnce({ signedAt: '2026-05-02T18:00:00.000Z', content: whole() });
    const refused = await keyed(later).expect(409);
    expect(refused.body.code).toBe('idempotency_key_reused');
    expect(await revisions()).toHaveLength(1);
  });

  test('a refusal does not use up the key', async () => {
    const keyed = () => sign().set('idempotency-key', 'same-key');
    await keyed().expect(422);
    await saveAll();
    await keyed().expect(201);
  });

  test('nothing is written on a signed card any more', async () => {
    await sign({ signedAt, content: whole() }).expect(201);
    const write = (method: 'put' | 'delete', path: string) =>
      http()[method](`/v1/cards/${cardId}/${path}`).use(judge).set('if-match', '"1"');
    for (const refused of [
      await write('put', `goes/${entry(0)}`).send(goOf(['0', '0', '0'])),
      await write('delete', `goes/${entry(0)}`),
      await write('put', 'order').send({ ownOrder: [] }),
    ]) {
      expect([refused.status, refused.body.code]).toEqual([409, 'card_already_signed']);
    }
  });

  test('the database refuses to change or remove what was signed', async () => {
    await sign({ signedAt, content: whole() }).expect(201);
    const { prisma } = service.parts.db;
    const evidence = /permission denied|denied access/i;
    await expect(prisma.cardRevision.updateMany({ data: { revision: 2 } })).rejects.toThrow(evidence);
    await expect(prisma.cardRevision.deleteMany({})).rejects.toThrow(evidence);
    await expect(prisma.$executeRaw`TRUNCATE card_revision`).rejects.toThrow(evidence);
  });

  test('an off-pattern go is signed with its status; a barred one needs no marks', async () => {
    const content = {
      goes: {
        [entry(0)]: {
          ...goOf(['3', '3', '3']),
          ruling: { code: 'off-pattern', remark: 'turned right at B' },
        },
        [entry(1)]: { ruling: { code: 'disqualified' } },
        [entry(2)]: goOf(['0', '0', '0']),
      },
    };
    await sign({ signedAt, content }).expect(201);
    const { goes } = await view();
    expect(
      goes.map(({ score: { tier, score } }: { score: { tier: string; score: string } }) => [tier, score]),
    ).toEqual([
      ['placed-below', '82'],
      ['not-placed', null],
      ['kept-pattern', '73'],
    ]);
  });

  describe('with ties on it', () => {
    const tied = () => ({
      goes: {
        [entry(0)]: goOf(['1', '1', '1']),
        [entry(1)]: goOf(['0', '1', '2']),
        [entry(2)]: goOf(['0', '0', '0']),
      },
    });

    test('where scores are added it is signed, and the open ties are flagged', async () => {
      const signed = await sign({ signedAt, content: tied() }).expect(201);
      expect(signed.body.openTies).toEqual([[entry(0), entry(1)]]);
      expect(await view()).toMatchObject({ tiesMustBeBroken: false, openTies: [[entry(0), entry(1)]] });
    });

    test('where places are merged it is refused until she has ordered them', async () => {
      await begin(await setUpClass(service, { merge: addPlaces }));
      const refused = await sign({ signedAt, content: tied() }).expect(422);
      expect(refused.body).toMatchObject({ code: 'card_has_open_ties', openTies: [[entry(0), entry(1)]] });
      expect(refused.body.errors[0].message).toBe('101, 102 are tied: order them, best first');
      const ordered = { ...tied(), ownOrder: [[entry(1), entry(0)]] };
      const signed = await sign({ signedAt, content: ordered }).expect(201);
      expect(signed.body.openTies).toEqual([]);
    });

    test('a ranking with a tie in it is refused', async () => {
      const entries = 7;
      await begin(await setUpClass(service, { sheet: 'rail-pleasure-first-6', merge: addPlaces, entries }));
      const [a = '', b = '', ...rest] = setting.entryIds.slice(0, 6);
      const content = { goes: {}, ranking: [[a, b], ...rest.map((id) => [id])] };
      expect((await sign({ signedAt, content }).expect(422)).body.code).toBe('card_has_open_ties');
      const short = { goes: {}, ranking: [[a], [b]] };
      expect((await sign({ signedAt, content: short }).expect(422)).body.code).toBe('card_incomplete');
      await sign({
        signedAt,
        content: { goes: {}, ranking: setting.entryIds.slice(0, 6).map((id) => [id]) },
      }).expect(201);
    });
  });

  test('an entry added late, after she signed, is named in the progress until she amends', async () => {
    const signed = await sign({ signedAt, content: whole() }).expect(201);
    const late = await addEntry(service, { ...setting, go: 4 });
    const progress = async () => {
      const office = await setting.pass('office');
      const found = await http().get(`/v1/classes/${setting.classId}/cards`).use(office).expect(200);
      return found.body.items[0];
    };
    expect(await progress()).toMatchObject({
      ...{ goesWritten: 3, goesExpected: 4 },
      signed: { revision: 1, signedAt, entriesToAdd: [late] },
    });
    await http()
      .post(`/v1/cards/${cardId}/amendments`)
      .use(judge)
      .use(
        signedBy(service, {
          ...{ pass: judge, cardId },
          asked: {
            ...{ signedAt, reason: 'late add 104', previousHash: signed.body.contentHash, revision: 2 },
            content: { goes: { ...whole().goes, [late]: goOf(['0', '0', '1']) } },
          },
        }),
      )
      .expect(201);
    expect(await progress()).toMatchObject({ goesWritten: 4, signed: { revision: 2, entriesToAdd: [] } });
  });

  test.each([
    [{ signedAt: 'yesterday' }, '/signedAt'],
    [{ signedAt: '2026-13-02T00:00:00.000Z' }, '/signedAt'],
    [{ signedAt: '2026-05-02T15:04:05Z' }, '/signedAt'],
    [{ form: 'another form' }, '/form'],
    [{ revision: 0 }, '/revision'],
    [{ previousHash: 'ABC' }, '/previousHash'],
    [{ signedAt, content: { goes: [] } }, '/content/goes'],
    [{ signedAt, content: { goes: { 'the bay mare': {} } } }, '/content/goes/the bay mare'],
    [{ signedAt, content: { goes: {}, placings: [] } }, '/content/placings'],
    [{ signedAt, judge: 'me' }, '/judge'],
  ])('%j is not of the form of a signed card', async (asked: Asked, field) => {
    const refused = await sign(asked).expect(400);
    expect(refused.body.code).toBe('invalid_request');
    expect(refused.body.errors.map((one: { field: string }) => one.field)).toEqual([field]);
  });

  test('a judge who left the panel, and a class that is not open, take no card', async () => {
    const { prisma } = service.parts.db;
    await prisma.showClass.update({ where: { id: setting.classId }, data: { status: 'cancelled' } });
    expect((await sign({ signedAt, content: whole() }).expect(409)).body.code).toBe('class_not_open');
    await prisma.showClass.update({ where: { id: setting.classId }, data: { status: 'open' } });
    await prisma.panelSeat.update({
      where: { id: setting.seatIds[0] ?? '' },
      data: { withdrawnAt: new Date(), withdrawnWhy: 'taken ill' },
    });
    expect((await sign({ signedAt, content: whole() }).expect(409)).body.code).toBe('seat_withdrawn');
  });

  test('results get the last revision of each seat, and the seats that are still missing', async () => {
    await begin(await setUpClass(service, { judges: 2 }));
    const signed = await sign({ signedAt, content: whole() }).expect(201);
    const found = await inSqlTransaction(service.parts.db, (tx) => signedCards(tx, setting.classId));
    expect(found.missingSeatIds).toEqual([setting.seatIds[1]]);
    expect(found.signed).toMatchObject([
      { seatId: setting.seatIds[0], cardId, revisionId: signed.body.id, revision: 1, content: whole() },
    ]);
  });
});
