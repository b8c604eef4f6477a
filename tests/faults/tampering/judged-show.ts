/** A show with all kinds of evidence: amended cards, a ruling, a paper card, postings and a correction. */
import request from 'supertest';
import type { Go } from '../../../src/engine/sheets/types.ts';
import { bundle, type Made, type Office, openOffice, totalRule } from '../../api/office-client.ts';
import { goOf } from '../../support/card-setting.ts';
import { signedBy } from '../../support/signing.ts';
import type { TestApp } from '../../support/test-app.ts';
import { type PhonePass, passFor } from '../../support/test-passes.ts';

export interface JudgedShow {
  readonly office: Office;
  readonly showId: string;
  /** The archive as the office takes it out. */
  readonly archive: (names?: 'full' | 'none') => Promise<Made>;
}

export async function judgedShow(service: TestApp): Promise<JudgedShow> {
  await bundle(service, 'horsemanship');
  const office = await openOffice(service);
  const people = await Promise.all(['A', 'B'].map((name) => office.done('post', '/people', { name })));
  const entries = [];
  for (const backNumber of [101, 102, 103]) entries.push(await office.addEntry(backNumber));
  const ids = { people: people.map(({ id }) => id), entries: entries.map(({ id }) => id) };
  const show = { service, office, ...ids };
  await amendedClass(show);
  await ruledClass(show);
  await paperClass(show);
  const archive: JudgedShow['archive'] = async (names = 'full') => {
    const answer = await office.call('get', `/archive?names=${names}`);
    if (answer.status !== 200) throw new Error(answer.text);
    return answer.body;
  };
  return { office, showId: office.showId, archive };
}

interface Setting {
  readonly service: TestApp;
  readonly office: Office;
  readonly people: readonly string[];
  readonly entries: readonly string[];
}

interface ReadyClass {
  readonly id: string;
  readonly seatIds: readonly string[];
  /** Class entries, in the order of back numbers. */
  readonly goes: readonly string[];
}

async function readyClass(
  { office, people, entries }: Setting,
  asked: { readonly number: number; readonly judges: number; readonly more?: object },
): Promise<ReadyClass> {
  const made = await office.addClass(asked.number, asked.more);
  const seats = people.slice(0, asked.judges).map((personId) => ({ personId }));
  const path = `/classes/${made.id}/panel`;
  const panel = await office.done('put', path, { seats }, { 'if-match': `"${made.version}"` });
  const goes = [];
  for (const entryId of entries) goes.push((await office.enter(made.id, entryId)).id);
  return { id: made.id, seatIds: panel.seats.map(({ id }: Made) => id), goes };
}

const contentOf = ({ goes }: ReadyClass, written: readonly Go[]) => ({
  goes: Object.fromEntries(goes.map((id, at) => [id, written[at] ?? {}])),
});

/** Two judges; posted, official, one card amended, corrected. */
async function amendedClass(setting: Setting): Promise<void> {
  const ready = await readyClass(setting, { number: 1, judges: 2 });
  const marks = [goOf(['1', '0.5', '0']), goOf(['0', '0', '0']), goOf(['-1', '2', '2'])];
  const first = await sign(setting, { ready, seat: 0, goes: marks });
  await sign(setting, { ready, seat: 1, goes: [...marks].reverse() });
  await post(setting, ready, { state: 'provisional' });
  await post(setting, ready, { state: 'official' });
  const asked = { revision: 2, previousHash: first.contentHash, reason: 'Numbers transposed' };
  const content = contentOf(ready, [marks[1] ?? {}, marks[0] ?? {}, marks[2] ?? {}]);
  await send(setting, { ...first, what: 'amendments', asked: { ...asked, content } });
  await post(setting, ready, { state: 'corrected', reason: 'Numbers transposed' });
}

/** One judge; a tie for first that a run-off decided. */
async function ruledClass(setting: Setting): Promise<void> {
  const more = { placingRule: { ...totalRule, ties: [{ code: 'run-off' }] } };
  const ready = await readyClass(setting, { number: 2, judges: 1, more });
  const goes = [goOf(['1', '0', '0']), goOf(['0', '1', '0']), goOf(['-1', '0', '0'])];
  await sign(setting, { ready, seat: 0, goes });
  const [a, b] = ready.goes;
  const ruling = { kind: 'run-off', order: [[b], [a]], decidedBy: 'Judge', why: 'Run-off' };
  await request(setting.service.app.server)
    .post(`/v1/classes/${ready.id}/rulings`)
    .use(setting.office.pass)
    .send(ruling)
    .expect(201);
  await post(setting, ready, { state: 'provisional' });
}

/** One judge, whose card came on paper. */
async function paperClass(setting: Setting): Promise<void> {
  const { service, office } = setting;
  const ready = await readyClass(setting, { number: 3, judges: 1 });
  const http = () => request(service.app.server);
  const { body: paper } = await http()
    .post(`/v1/classes/${ready.id}/paper-cards`)
    .use(office.pass)
    .send({ seatId: ready.seatIds[0] })
    .expect(201);
  const content = contentOf(ready, [goOf(['1', '1', '1']), goOf(['0', '0', '0']), goOf(['2', '2', '2'])]);
  for (const pass of [office.pass, await passFor(service, { role: 'secretary', showId: office.showId })])
    await http().put(`/v1/paper-cards/${paper.id}/entries/mine`).use(pass).send(content).expect(200);
  await post(setting, ready, { state: 'provisional' });
}

interface Signed {
  readonly pass: PhonePass;
  readonly cardId: string;
  readonly contentHash: string;
}

async function sign(
  setting: Setting,
  { ready, seat, goes }: { readonly ready: ReadyClass; readonly seat: number; readonly goes: readonly Go[] },
): Promise<Signed> {
  const seatId = ready.seatIds[seat] ?? '';
  const { showId } = setting.office;
  const pass = await passFor(setting.service, { role: 'judge', showId, seatId });
  const { body: card } = await request(setting.service.app.server)
    .post(`/v1/classes/${ready.id}/cards`)
    .use(pass)
    .send({ seatId })
    .expect(201);
  const sending = { pass, cardId: card.id, what: 'signatures', asked: { content: contentOf(ready, goes) } };
  const signed = await send(setting, sending);
  return { pass, cardId: card.id, contentHash: signed.contentHash };
}

async function send(
  { service }: Setting,
  {
    pass,
    cardId,
    what,
    asked,
  }: Omit<Signed, 'contentHash'> & { readonly what: string; readonly asked: object },
): Promise<Made> {
  const answer = await request(service.app.server)
    .post(`/v1/cards/${cardId}/${what}`)
    .use(pass)
    .use(signedBy(service, { pass, cardId, asked: { ...asked } }))
    .expect(201);
  return answer.body;
}

async function post({ service, office }: Setting, { id }: ReadyClass, asked: object): Promise<void> {
  const http = () => request(service.app.server);
  const preview = await http().get(`/v1/classes/${id}/tabulation`).use(office.pass).expect(200);
  await http()
    .post(`/v1/classes/${id}/postings`)
    .use(office.pass)
    .set('if-match', String(preview.headers.etag))
    .send(asked)
    .expect(201);
}
