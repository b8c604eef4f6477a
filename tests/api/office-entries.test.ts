import { createHash } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { lockCard } from '../../src/cards/card-statements.ts';
import { inTransaction } from '../../src/platform/database.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { noPass, passFor } from '../support/test-passes.ts';
import {
  bundle,
  type Made,
  newShow,
  type Office,
  openOffice,
  send,
  signCard,
  signedRow,
} from './office-client.ts';

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

const refusal = (answer: { status: number; body: Made }) => ({
  status: answer.status,
  code: answer.body.code,
});

/** A class of so many entries, back numbers from 201; `riders` names who rides, by number. */
async function classOf(riders: readonly number[], number = 1) {
  const made = await office.addClass(number);
  const exhibitors = new Map<number, string>();
  const rows: Made[] = [];
  for (const [index, rider] of riders.entries()) {
    const known = exhibitors.get(rider);
    const entry = await office.addEntry(
      200 + number * 100 + index,
      known === undefined ? {} : { exhibitorId: known },
    );
    exhibitors.set(rider, entry.exhibitor.id);
    rows.push(await office.enter(made.id, entry.id));
  }
  return { id: made.id as string, drawSeed: made.drawSeed as string, rows };
}

async function seatJudge(classId: string): Promise<string> {
  const person = await office.done('post', '/people', { name: 'Judge Fenwick' });
  const { version } = await office.done('get', `/classes/${classId}`);
  const panel = await office.done(
    'put',
    `/classes/${classId}/panel`,
    { seats: [{ personId: person.id, tieOrder: 1, callOrder: 1 }] },
    { 'if-match': `"${version}"` },
  );
  return panel.seats[0].id;
}

const draw = (classId: string, body: object = {}) =>
  office.call('post', `/classes/${classId}/order-of-go/draws`, { body });
const goes = async (classId: string): Promise<Made[]> =>
  (await office.call('get', `/classes/${classId}/order-of-go`, { pass: noPass })).body.goes;
const setStatus = (classId: string, row: Made, body: object) =>
  office.call('put', `/classes/${classId}/entries/${row.id}/status`, { body });

describe('back numbers', () => {
  it('are held by one entry of the show; the refusal names the field and the holder', async () => {
    const first = await office.addEntry(214, { name: 'Ada Kessler' });
    const body = { backNumber: 214, exhibitorId: first.exhibitor.id, horseId: first.horse.id };
    const answer = await office.call('post', '/entries', { body });
    expect(refusal(answer)).toEqual({ status: 409, code: 'back_number_taken' });
    expect(answer.body.errors).toEqual([
      { field: '/backNumber', message: '214 is Ada Kessler with Horse 214' },
    ]);
    expect(answer.body.holderId).toBe(first.id);
  });

  it('may be the same at another show', async () => {
    await office.addEntry(214);
    const other = await openOffice(service);
    expect((await other.addEntry(214)).backNumber).toBe(214);
  });

  it('are given once when two desks give one at the same moment', async () => {
    const first = await office.addEntry(1);
    const body = { backNumber: 77, exhibitorId: first.exhibitor.id, horseId: first.horse.id };
    const answers = await Promise.all([1, 2, 3, 4].map(() => office.call('post', '/entries', { body })));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409, 409]);
  });

  it.each([0, -1, 1.5, 100_000, '12', null, Number.MAX_SAFE_INTEGER])('may not be %s', async (backNumber) => {
    const { exhibitor, horse } = await office.addEntry(1);
    const body = { backNumber, exhibitorId: exhibitor.id, horseId: horse.id };
    const answer = await office.call('post', '/entries', { body });
    expect([answer.status, answer.body.errors[0].field]).toEqual([400, '/backNumber']);
  });

  it('are not given to an exhibitor or a horse of another show', async () => {
    const other = await openOffice(service);
    const foreign = await other.addEntry(5);
    const body = { backNumber: 6, exhibitorId: foreign.exhibitor.id, horseId: foreign.horse.id };
    const answer = await office.call('post', '/entries', { body });
    expect(answer.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      '/exhibitorId',
      '/horseId',
    ]);
  });
});

describe('the draw', () => {
  it("goes by SHA-256 of the class's seed and the back number, as anyone can work out (SHA-256 by node:crypto)", async () => {
    const { id, drawSeed, rows } = await classOf([1, 2, 3, 4, 5]);
    const lot = ({ backNumber }: Made) =>
      createHash('sha256').update(`${drawSeed}:${backNumber}`).digest('hex');
    const expected = [...rows].sort((a, b) => (lot(a) < lot(b) ? -1 : 1)).map(({ backNumber }) => backNumber);
    expect((await draw(id)).body).toMatchObject({ number: 1, kind: 'drawn', seed: drawSeed, leastGap: null });
    expect((await goes(id)).map(({ backNumber }) => backNumber)).toEqual(expected);
    expect((await goes(id)).map(({ goPosition }) => goPosition)).toEqual([1, 2, 3, 4, 5]);
  });

  it('spaces the horses of one rider as far apart as the field allows', async () => {
    const { id } = await classOf([1, 1, 2, 3, 1, 4, 5]);
    expect((await draw(id)).body.leastGap).toBe(3);
  });

  it('is made again only with a reason, and the first one stays to be read', async () => {
    const { id, drawSeed } = await classOf([1, 2, 3]);
    await draw(id);
    expect(refusal(await draw(id))).toEqual({ status: 409, code: 'order_already_drawn' });
    expect((await draw(id, { reason: 'An entry was left out' })).body).toMatchObject({
      kind: 'redrawn',
      seed: `${drawSeed}:2`,
    });
    const { items } = await office.done('get', `/classes/${id}/order-of-go/draws`);
    expect(items.map(({ kind }: Made) => kind)).toEqual(['drawn', 'redrawn']);
  });

  it('leaves out who is scratched, and is refused for a class of nobody', async () => {
    const { id, rows } = await classOf([1, 2]);
    await setStatus(id, rows[0], { status: 'scratched', reason: 'Lame' });
    expect((await draw(id)).body.order).toEqual([rows[1].id]);
    const empty = await office.addClass(9);
    expect(refusal(await draw(empty.id))).toEqual({ status: 409, code: 'no_entries' });
  });

  it('is refused once a card is signed', async () => {
    const { id } = await classOf([1, 2]);
    await signCard(service, id, await seatJudge(id));
    expect(refusal(await draw(id))).toEqual({ status: 409, code: 'class_under_way' });
  });

  it('may be set by hand with every entry once, a reason, and no stranger', async () => {
    const { id, rows } = await classOf([1, 2, 3]);
    const ids = rows.map((row) => row.id);
    const put = (order: readonly string[], reason?: string) =>
      office.call('put', `/classes/${id}/order-of-go`, { body: { order, ...(reason && { reason }) } });
    expect(refusal(await put(ids, 'A wish'))).toEqual({ status: 409, code: 'order_not_drawn' });
    await draw(id);
    expect((await put(ids)).status).toBe(400);
    for (const order of [ids.slice(1), [...ids, ids[0] ?? ''], [...ids.slice(1), office.showId]]) {
      expect(refusal(await put(order, 'A wish'))).toEqual({ status: 422, code: 'order_incomplete' });
    }
    const turned = [...ids].reverse();
    expect((await put(turned, 'Tack broke')).body).toMatchObject({
      kind: 'by-hand',
      order: turned,
      seed: null,
    });
    expect((await goes(id)).map(({ classEntryId }) => classEntryId)).toEqual(turned);
  });
});

describe('late adds', () => {
  it('need a reason once the order is drawn, and go last', async () => {
    const { id } = await classOf([1, 2]);
    await draw(id);
    const late = await office.addEntry(900);
    const post = (body: object) => office.call('post', `/classes/${id}/entries`, { body });
    expect(refusal(await post({ entryId: late.id }))).toEqual({ status: 422, code: 'reason_needed' });
    const added = await post({ entryId: late.id, reason: 'Trailer was late' });
    expect(added.body).toMatchObject({ addedLate: true, goPosition: 3, backNumber: 900 });
    expect(refusal(await post({ entryId: late.id, reason: 'Again' }))).toEqual({
      status: 409,
      code: 'already_entered',
    });
  });

  it('are refused once a card is signed', async () => {
    const { id } = await classOf([1, 2]);
    await signCard(service, id, await seatJudge(id));
    const late = await office.addEntry(901);
    const answer = await office.call('post', `/classes/${id}/entries`, {
      body: { entryId: late.id, reason: 'Late' },
    });
    expect(refusal(answer)).toEqual({ status: 409, code: 'class_under_way' });
  });
});

describe('a late add while a card is being signed', () => {
  it('waits for the signature, and is then refused', async () => {
    const { id } = await classOf([1, 2]);
    const seatId = await seatJudge(id);
    await signCard(service, id, seatId, false);
    const late = await office.addEntry(902);
    const { id: cardId } = await service.parts.db.prisma.card.findUniqueOrThrow({ where: { seatId } });
    const signed = await signedRow(service, { cardId, seatId });
    let answered = false;
    let answer: Promise<Made> | undefined;
    await inTransaction(service.parts.db, async (tx) => {
      await tx.sql.row(lockCard, [cardId]);
      answer = office.call('post', `/classes/${id}/entries`, { body: { entryId: late.id } }).finally(() => {
        answered = true;
      });
      await tx.prisma.cardRevision.create({ data: signed });
      await new Promise((done) => setTimeout(done, 400));
      expect(answered).toBe(false);
    });
    expect(refusal(await answer)).toEqual({ status: 409, code: 'class_under_way' });
  });
});

describe('the status of an entry in a class', () => {
  it('goes the ways that the trade knows, each but checking in with a reason', async () => {
    const { id, rows } = await classOf([1]);
    const to = async (status: string, reason?: string) => {
      const answer = await setStatus(id, rows[0], { status, ...(reason && { reason }) });
      return answer.status === 200 ? answer.body.status : answer.body.code;
    };
    expect(await to('checked-in')).toBe('checked-in');
    expect(await to('scratched')).toBe('reason_needed');
    expect(await to('scratched', 'Lame')).toBe('scratched');
    expect(await to('excused', 'By the judge')).toBe('status_change_refused');
    expect(await to('scratched', 'Lame')).toBe('scratched');
    expect(await to('entered', 'The wrong number was scratched')).toBe('entered');
    expect(await to('no-show', 'Called three times')).toBe('no-show');
    expect((await setStatus(id, rows[0], { status: 'moved', reason: 'x' })).status).toBe(400);
  });

  it('keeps the place of a scratched entry in the order, and gives it back', async () => {
    const { id } = await classOf([1, 2, 3]);
    await draw(id);
    const second = (await goes(id))[1];
    await setStatus(id, { id: second.classEntryId }, { status: 'scratched', reason: 'Colic' });
    await setStatus(id, { id: second.classEntryId }, { status: 'entered', reason: 'Wrong number' });
    expect((await goes(id))[1].classEntryId).toBe(second.classEntryId);
  });

  it('is the gate to set as well, for its own show only', async () => {
    const { id, rows } = await classOf([1]);
    const path = `/classes/${id}/entries/${rows[0].id}/status`;
    const gate = await passFor(service, { role: 'gate', showId: office.showId });
    expect((await office.call('put', path, { pass: gate, body: { status: 'checked-in' } })).status).toBe(200);
    const other = await passFor(service, { role: 'gate', showId: (await openOffice(service)).showId });
    expect(
      refusal(await office.call('put', path, { pass: other, body: { status: 'entered' } })),
    ).toMatchObject({ status: 403 });
  });

  it('is not found through another class', async () => {
    const { rows } = await classOf([1]);
    const other = await office.addClass(2);
    expect((await setStatus(other.id, rows[0], { status: 'checked-in' })).status).toBe(404);
  });
});

describe('what the public sees of the order of go', () => {
  const careful = { ...newShow, minorPublicName: 'back-number' };
  const open = { ...newShow, minorPublicName: 'first-name-and-initial' };
  const shown = async (exhibitor: object, youth: boolean, show: object = open) => {
    office = await openOffice(service, show);
    const made = await office.addClass(1, { youth });
    const rider = await office.done('post', '/exhibitors', exhibitor);
    const entry = await office.addEntry(214, { exhibitorId: rider.id });
    await office.enter(made.id, entry.id);
    const answer = await office.call('get', `/classes/${made.id}/order-of-go`, { pass: noPass });
    expect(JSON.stringify(answer.body)).not.toContain('bornOn');
    return answer.body.goes[0].exhibitor;
  };

  it("is the show's form for minors, and the full name of an adult, where nobody said anything", async () => {
    const name = 'Ada Mae Kessler';
    expect(await shown({ name }, false)).toBe('Ada Mae Kessler');
    expect(await shown({ name, bornOn: '2012-05-01' }, false)).toBe('Ada K.');
    expect(await shown({ name }, true)).toBe('Ada K.');
    expect(await shown({ name, bornOn: '2012-05-01' }, false, careful)).toBe('No. 214');
    expect(await shown({ name, bornOn: '2012-05-01' }, false, newShow)).toBe('No. 214');
  });

  it('takes who turns 18 on the first day of the show for an adult, and a day later for a minor', async () => {
    expect(await shown({ name: 'Bo Lind', bornOn: '2008-10-31' }, true)).toBe('Bo Lind');
    expect(await shown({ name: 'Bo Lind', bornOn: '2008-11-01' }, true)).toBe('Bo L.');
  });

  it('is the back number where a minor has one name only, and a whole letter as the initial', async () => {
    expect(await shown({ name: 'Ada', bornOn: '2012-05-01' }, false)).toBe('No. 214');
    expect(await shown({ name: 'क्षमा क्षेत्री', bornOn: '2012-05-01' }, false)).toMatch(/^क्षमा क्षे?\.$/u);
  });

  it('is what the gate is told too; full names are for the office', async () => {
    const { id } = await classOf([1]);
    const path = `/classes/${id}/entries`;
    const [row] = (await office.done('get', path)).items;
    expect(row).toMatchObject({ exhibitor: 'Rider 300', horse: 'Horse 300' });
    const { exhibitor } = await office.done('get', `/entries/${row.entryId}`);
    const headers = { 'if-match': '"1"' };
    await office.done('patch', `/exhibitors/${exhibitor.id}`, { bornOn: '2015-05-01' }, headers);
    const gate = await passFor(service, { role: 'gate', showId: office.showId });
    const heard = (await office.call('get', path, { pass: gate })).body.items[0];
    expect(heard).toMatchObject({ backNumber: 300, exhibitor: 'No. 300', horse: null });
    expect((await office.done('get', path)).items[0].exhibitor).toBe('Rider 300');
  });

  it('is not the list of the office, which needs a pass of the office or the gate', async () => {
    const { id } = await classOf([1]);
    const path = `/classes/${id}/entries`;
    expect(refusal(await office.call('get', path, { pass: noPass }))).toEqual({
      status: 401,
      code: 'token_missing',
    });
    const judge = await passFor(service, {
      role: 'judge',
      showId: office.showId,
      seatId: await seatJudge(id),
    });
    expect(refusal(await office.call('get', path, { pass: judge }))).toEqual({
      status: 403,
      code: 'not_allowed',
    });
  });
});

describe('splitting and combining classes', () => {
  const split = (classId: string, into: object[]) =>
    office.call('post', `/classes/${classId}/splits`, { body: { into, reason: 'Too many for the ring' } });

  it('moves the entries named to the new class, with sheet, rule and panel, and keeps the rest in order', async () => {
    const { id, rows } = await classOf([1, 2, 3, 4]);
    await seatJudge(id);
    await draw(id);
    const before = (await goes(id)).map(({ classEntryId }) => classEntryId);
    const moving = [rows[0].id, rows[2].id];
    const answer = await split(id, [{ number: 50, name: 'Class 1, second half', classEntryIds: moving }]);
    const relation = answer.body.items[0];
    expect(relation).toMatchObject({
      kind: 'split',
      fromClassId: id,
      classEntryIds: expect.arrayContaining(moving),
    });
    expect((await goes(id)).map(({ classEntryId }) => classEntryId)).toEqual(
      before.filter((one) => !moving.includes(one)),
    );
    expect((await goes(id)).map(({ goPosition }) => goPosition)).toEqual([1, 2]);
    const half = await office.done('get', `/classes/${relation.toClassId}`);
    const whole = await office.done('get', `/classes/${id}`);
    expect(half).toMatchObject({ number: 50, sheet: whole.sheet, placingRule: whole.placingRule });
    expect(half.drawSeed).not.toBe(whole.drawSeed);
    expect((await office.done('get', `/classes/${half.id}/panel`)).seats).toHaveLength(1);
    expect((await goes(half.id)).map(({ backNumber, goPosition }) => [backNumber, goPosition])).toEqual([
      [rows[0].backNumber, null],
      [rows[2].backNumber, null],
    ]);
  });

  it('is refused for an entry that is not there or is named twice, and once a card is signed', async () => {
    const { id, rows } = await classOf([1, 2, 3]);
    const part = (number: number, ...classEntryIds: string[]) => ({
      number,
      name: `Part ${number}`,
      classEntryIds,
    });
    expect(refusal(await split(id, [part(50, office.showId)]))).toMatchObject({ code: 'unknown_reference' });
    expect(refusal(await split(id, [part(50, rows[0].id), part(51, rows[0].id)]))).toMatchObject({
      code: 'already_entered',
    });
    expect(refusal(await split(id, [part(1, rows[0].id)]))).toMatchObject({ code: 'class_number_taken' });
    expect((await goes(id)).length).toBe(3);
    await signCard(service, id, await seatJudge(id));
    expect(refusal(await split(id, [part(50, rows[0].id)]))).toMatchObject({ code: 'class_under_way' });
  });

  it('brings all entries into one class, each once, and the other takes nothing more', async () => {
    const first = await classOf([1, 2], 1);
    const second = await classOf([3, 4], 2);
    await office.enter(second.id, first.rows[0].entryId);
    await draw(first.id);
    const combine = (classIds: string[]) =>
      office.call('post', `/classes/${first.id}/combinations`, { body: { classIds, reason: 'Too few' } });
    expect(refusal(await combine([first.id]))).toMatchObject({ code: 'unknown_reference' });
    expect((await combine([second.id])).body.items[0]).toMatchObject({
      kind: 'combined',
      toClassId: first.id,
    });
    expect((await goes(first.id)).map(({ goPosition }) => goPosition)).toEqual([1, 2, 3, 4]);
    expect(await goes(second.id)).toEqual([]);
    expect((await office.done('get', `/classes/${second.id}`)).status).toBe('combined');
    const late = await office.addEntry(999);
    const answer = await office.call('post', `/classes/${second.id}/entries`, { body: { entryId: late.id } });
    expect(refusal(answer)).toEqual({ status: 409, code: 'class_not_open' });
    const { items } = await office.done('get', `/classes/${second.id}/relations`);
    expect(items).toHaveLength(1);
  });
});

describe('the panel', () => {
  const person = async (name: string) => (await office.done('post', '/people', { name })).id as string;
  const put = (classId: string, version: number, seats: object[]) =>
    office.call('put', `/classes/${classId}/panel`, {
      body: { seats },
      headers: { 'if-match': `"${version}"` },
    });
  const three = async () => [await person('A'), await person('B'), await person('C')] as const;
  const asked = (ids: readonly string[]) =>
    ids.map((personId, index) => ({ personId, callOrder: index + 1, tieOrder: ids.length - index }));

  it('is put anew until a card is opened; who stays keeps her seat, and orders may be turned around', async () => {
    const made = await office.addClass(1);
    const [a, b, c] = await three();
    const first = await put(made.id, 1, asked([a, b, c]));
    const second = await put(made.id, 2, asked([c, a]));
    const seatOf = (answer: Made, personId: string) =>
      answer.body.seats.find((seat: Made) => seat.personId === personId);
    expect(seatOf(second, a).id).toBe(seatOf(first, a).id);
    expect(
      second.body.seats.map(({ personId, seatOrder, callOrder }: Made) => [personId, seatOrder, callOrder]),
    ).toEqual([
      [c, 1, 1],
      [a, 2, 2],
    ]);
    await signCard(service, made.id, seatOf(second, a).id, false);
    expect(refusal(await put(made.id, 3, asked([a])))).toEqual({ status: 409, code: 'panel_locked' });
  });

  it('has nobody twice, no two in one place of an order, and nobody of another show', async () => {
    const made = await office.addClass(1);
    const [a, b] = await three();
    const other = await openOffice(service);
    const stranger = (await other.done('post', '/people', { name: 'X' })).id;
    const twice = await put(made.id, 1, [{ personId: a }, { personId: a }]);
    expect(twice.body).toMatchObject({ code: 'seat_taken', errors: [{ field: '/seats/1/personId' }] });
    const order = await put(made.id, 1, [
      { personId: a, tieOrder: 1 },
      { personId: b, tieOrder: 1 },
    ]);
    expect(order.body).toMatchObject({ code: 'seat_taken', errors: [{ field: '/seats/1/tieOrder' }] });
    expect((await put(made.id, 1, [{ personId: stranger }])).body.errors[0].field).toBe('/seats/0/personId');
  });

  it('must fit the rule of the class: tie judges that it asks for must be named', async () => {
    const ties = [{ code: 'tie-judge', judges: [], alternate: false }];
    const made = await office.addClass(1);
    const { version } = await office.done(
      'patch',
      `/classes/${made.id}`,
      { placingRule: { ...made.placingRule, ties } },
      { 'if-match': '"1"' },
    );
    const [a, b] = await three();
    const unnamed = await put(made.id, version, [{ personId: a }, { personId: b }]);
    expect(unnamed.body).toMatchObject({ code: 'rule_invalid', errors: [{ field: '/placingRule/ties/0' }] });
    expect((await put(made.id, version, asked([a, b]))).status).toBe(200);
  });

  it('lets a judge leave at any time; who replaces her takes her place in every order, and she writes no more', async () => {
    const made = await office.addClass(1);
    const [a, b, c] = await three();
    const { body } = await put(made.id, 1, asked([a, b]));
    const seat = body.seats[0];
    const pass = await passFor(service, { role: 'judge', showId: office.showId, seatId: seat.id });
    await signCard(service, made.id, seat.id);
    const path = `/classes/${made.id}/panel/${seat.id}/withdrawal`;
    expect((await office.call('post', path, { body: { replacementId: c } })).status).toBe(400);
    const after = await office.done('post', path, { reason: 'Taken ill', replacementId: c });
    expect(
      after.seats.map(({ personId, callOrder, replacesSeatId, withdrawnAt }: Made) => [
        personId,
        callOrder,
        replacesSeatId,
        withdrawnAt !== null,
      ]),
    ).toEqual([
      [b, 2, null, false],
      [c, 1, seat.id, false],
      [a, null, null, true],
    ]);
    const opened = await send(service, 'post', `/v1/classes/${made.id}/cards`, {
      ...{ pass, body: { seatId: seat.id } },
    });
    expect(refusal(opened)).toEqual({ status: 409, code: 'seat_withdrawn' });
    expect(refusal(await office.call('post', path, { body: { reason: 'Again' } }))).toMatchObject({
      code: 'seat_withdrawn',
    });
  });
});

describe('the ledger', () => {
  it('has one line for each change, without a gap, and never a name', async () => {
    const { id, rows } = await classOf([1, 2]);
    await seatJudge(id);
    await draw(id);
    await setStatus(id, rows[0], { status: 'scratched', reason: 'Lame' });
    await office.done('post', `/classes/${id}/calls`);
    await office.call('post', '/entries', { body: { backNumber: 300 } });
    const lines = await service.parts.db.prisma.ledgerLine.findMany({
      where: { ledgerId: office.showId },
      orderBy: { sequence: 'asc' },
    });
    expect(lines.map(({ sequence }) => sequence)).toEqual(lines.map((_, index) => index + 1));
    expect(lines.slice(-3).map(({ type }) => type)).toEqual([
      'order.drawn',
      'entry.scratched',
      'class.called',
    ]);
    expect(JSON.stringify(lines.map(({ body }) => body))).not.toMatch(/Rider|Horse|Fenwick|Lame/);
  });
});
