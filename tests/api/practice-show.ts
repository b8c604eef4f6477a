/** An official show with all that a show has, and the practice show that rehearses it. */
import request from 'supertest';
import { goOf } from '../support/card-setting.ts';
import type { TestApp } from '../support/test-app.ts';
import { type OfficePass, passFor } from '../support/test-passes.ts';
import { signedBody, statementOf } from '../support/test-phone.ts';
import { type Made, type Office, openOffice, totalRule } from './office-client.ts';

export interface RehearsedShow {
  readonly office: Office;
  /** The practice show, as it was answered. */
  readonly rehearsal: Made;
  /** A manager of the whole service. */
  readonly manager: OfficePass;
  /** Of the official show, by what they stand for. */
  readonly ids: Readonly<Record<string, string>>;
}

/** What must not come along. */
export const privateWords = /Ottilie|Brambleford|Marchbank|Copper Lantern|2012-04-03|colic|flat tire|a fever/;

/** Two classes with a panel of two, the second one judged and posted; a class that was cancelled. */
export async function rehearsedShow(service: TestApp): Promise<RehearsedShow> {
  const office = await openOffice(service);
  const { done, showId } = office;
  const manager = await passFor(service, { role: 'manager' });
  const ring = await done('post', '/rings', { name: 'Main ring' });
  const people = [];
  for (const name of ['Judge Tamsin', 'Judge Odell', 'Judge Perrin'])
    people.push(await done('post', '/people', { name }));
  const [first, second, third] = people.map(({ id }) => id as string);
  const entries = await enterAll(office);
  const classes = [];
  for (const number of [1, 2]) {
    const made = await office.addClass(number, { ringId: ring.id, youth: number === 1 });
    const panel = await seat(office, made.id, [first, second]);
    for (const entry of entries) await office.enter(made.id, entry.id);
    await done('post', `/classes/${made.id}/order-of-go/draws`, {});
    classes.push({ ...made, panel });
  }
  const [open, posted] = classes;
  const cancelled = await office.addClass(3);
  await done('post', `/classes/${cancelled.id}/cancellation`, { reason: 'flat tire' });
  await withTieJudge(office, open);
  await scratchLast(office, open.id);
  await office.call('post', `/classes/${open.id}/panel/${open.panel.seats[0].id}/withdrawal`, {
    body: { reason: 'a fever', replacementId: third },
  });
  const judged = await judgeAndPost(service, { showId, classId: posted.id, office: office.pass });
  const answer = await office.call('post', '/rehearsals');
  if (answer.status !== 201) throw new Error(JSON.stringify(answer.body));
  const { items } = await done('get', `/classes/${open.id}/entries`);
  const [entry] = entries;
  const exhibitorId = entry.exhibitor.id;
  const ids = {
    ...{ showId, classId: open.id, postedClassId: posted.id, exhibitorId, entryId: entry.id },
    ...{ horseId: entry.horse.id, ownerId: entry.owner.id, ringId: ring.id, patternId: open.patternId },
    ...{ personId: first ?? '', seatId: open.panel.seats[1].id, classEntryId: items[0].id, ...judged },
  };
  return { office, rehearsal: answer.body, manager, ids };
}

async function enterAll({ done, addEntry }: Office): Promise<Made[]> {
  const { id: riderId } = await done('post', '/exhibitors', {
    name: 'Ottilie Brambleford',
    bornOn: '2012-04-03',
  });
  const horse = await done('post', '/horses', { name: 'Copper Lantern' });
  const owner = await done('post', '/owners', { name: 'Marchbank Stables' });
  const own = { exhibitorId: riderId, horseId: horse.id, ownerId: owner.id };
  const entries = [await done('post', '/entries', { backNumber: 214, ...own })];
  entries.push(await addEntry(148, { exhibitorId: riderId }));
  for (const backNumber of [157, 176]) entries.push(await addEntry(backNumber, { name: 'Ida Marchbank' }));
  return entries;
}

async function seat(
  { done }: Office,
  classId: string,
  people: readonly (string | undefined)[],
): Promise<Made> {
  const { version } = await done('get', `/classes/${classId}`);
  const seats = people.map((personId) => ({ personId }));
  return done('put', `/classes/${classId}/panel`, { seats }, { 'if-match': `"${version}"` });
}

/** The rule names a seat, which has another id in the rehearsal. */
async function withTieJudge({ done }: Office, { id, panel }: Made): Promise<void> {
  const { version } = await done('get', `/classes/${id}`);
  const ties = [{ code: 'tie-judge', judges: [panel.seats[1].id], alternate: false }, ...totalRule.ties];
  await done(
    'patch',
    `/classes/${id}`,
    { placingRule: { ...totalRule, ties } },
    { 'if-match': `"${version}"` },
  );
}

async function scratchLast({ done }: Office, classId: string): Promise<void> {
  const { items } = await done('get', `/classes/${classId}/entries`);
  const body = { status: 'scratched', reason: 'colic' };
  await done('put', `/classes/${classId}/entries/${items.at(-1).id}/status`, body);
}

interface ClassToJudge {
  readonly showId: string;
  readonly classId: string;
  readonly office: OfficePass;
}

/** Every judge signs on her own phone, and the office posts. Returns the posting and one of the cards. */
export async function judgeAndPost(service: TestApp, { showId, classId, office }: ClassToJudge) {
  const http = request(service.app.server);
  const { body: panel } = await http
    .get(`/v1/shows/${showId}/classes/${classId}/panel`)
    .use(office)
    .expect(200);
  const sitting = panel.seats.filter(({ withdrawnAt }: Made) => withdrawnAt === null);
  let cardId = '';
  for (const { id: seatId } of sitting) {
    const judge = await passFor(service, { role: 'judge', showId, seatId });
    const { body: card } = await http
      .post(`/v1/classes/${classId}/cards`)
      .use(judge)
      .send({ seatId })
      .expect(201);
    const goes = card.goes
      .filter(({ status }: Made) => status === 'entered')
      .map(({ classEntryId }: Made, at: number) => [
        classEntryId,
        goOf([`${at % 3}`, '0', '0'], `${at % 5}`),
      ]);
    const statement = statementOf({ ...card, showId }, { goes: Object.fromEntries(goes) });
    await http
      .post(`/v1/cards/${card.id}/signatures`)
      .use(judge)
      .send(signedBody(judge.phone, statement))
      .expect(201);
    cardId = card.id;
  }
  const preview = await http.get(`/v1/classes/${classId}/tabulation`).use(office).expect(200);
  const posting = await http
    .post(`/v1/classes/${classId}/postings`)
    .use(office)
    .set('if-match', String(preview.headers.etag))
    .send({ state: 'provisional' })
    .expect(201);
  return { cardId, postingId: posting.body.id as string };
}

/** Every row that belongs to a show, as text, by table: to see that nothing of it changed, or what came along. */
export async function rowsOfShow({ parts }: TestApp, showId: string): Promise<Record<string, string[]>> {
  const classes = 'SELECT id FROM show_class WHERE show_id = $1::uuid';
  const cards = `SELECT id FROM card WHERE class_id IN (${classes})`;
  const where: Record<string, string> = {
    show: 'id = $1::uuid',
    pattern_maneuver: 'pattern_id IN (SELECT id FROM pattern WHERE show_id = $1::uuid)',
    card_draft_order: `card_id IN (${cards})`,
    card_revision: `card_id IN (${cards})`,
  };
  for (const table of ofShow) where[table] = 'show_id = $1::uuid';
  for (const table of ofClass) where[table] = `class_id IN (${classes})`;
  const found: Record<string, string[]> = {};
  for (const [table, condition] of Object.entries(where)) {
    const text = `SELECT kept::text AS row FROM "${table}" AS kept WHERE ${condition} ORDER BY 1`;
    const { rows } = await parts.db.pool.query<{ row: string }>(text, [showId]);
    found[table] = rows.map(({ row }) => row);
  }
  return found;
}

const ofShow = [
  ...[
    'ring',
    'person',
    'pattern',
    'show_class',
    'class_relation',
    'panel_seat',
    'exhibitor',
    'horse',
    'owner',
  ],
  ...['entry', 'class_entry', 'exhibitor_consent', 'invitation', 'phone', 'account_show'],
];
const ofClass = ['order_draw', 'card', 'card_draft_go', 'ruling', 'posting', 'paper_card'];
