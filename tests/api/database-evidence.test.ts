/** What the database itself refuses, even to the owner of its tables: no code of the service stands between. */
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { bundle, type Office, openOffice, signCard } from './office-client.ts';

let service: TestApp;
let owner: pg.Pool;
let office: Office;
let classId: string;
let seatId: string;
let entryId: string;

const hash = 'a'.repeat(64);
const id = () => service.parts.ids.next();
const run = (text: string, values: readonly unknown[] = []) => owner.query(text, [...values]);

/** PostgreSQL's code and the constraint or message of a refusal. */
async function refused(text: string, values: readonly unknown[] = []) {
  try {
    await run(text, values);
  } catch (error) {
    const { code, constraint, message } = error as { code: string; constraint?: string; message: string };
    return { code, what: constraint ?? message };
  }
  return { code: 'taken', what: '' };
}

beforeAll(async () => {
  service = await buildTestApp();
  owner = new pg.Pool({ connectionString: service.ownerUrl, max: 2 });
  await bundle(service, 'horsemanship');
  office = await openOffice(service);
  classId = (await office.addClass(1)).id;
  const person = await office.done('post', '/people', { name: 'A' });
  const seats = [{ personId: person.id }];
  seatId = (await office.done('put', `/classes/${classId}/panel`, { seats }, { 'if-match': '"1"' })).seats[0]
    .id;
  entryId = (await office.addEntry(214)).id;
  await office.enter(classId, entryId);
  await office.done('post', `/classes/${classId}/order-of-go/draws`, {});
  await signCard(service, classId, seatId);
  const at = new Date();
  await run(
    `INSERT INTO ruling (id, class_id, kind, class_entry_ids, decision, decided_by, why, ruled_at)
     VALUES ($1, $2, 'coin', '{}', '{}', 'Steward', 'Tie for first', $3)`,
    [id(), classId, at],
  );
  await run(
    `INSERT INTO posting (id, class_id, version, state, snapshot, rule_hash, body_hash, posted_at)
     VALUES ($1, $2, 1, 'provisional', '{}', $3, $3, $4)`,
    [id(), classId, hash, at],
  );
});
afterAll(async () => {
  await owner.end();
  await service.close();
});

describe('evidence', () => {
  const tables = [
    'card_revision',
    'ruling',
    'posting',
    'ledger_line',
    'order_draw',
    'score_sheet',
    'class_relation',
    'signing_key',
  ];

  it.each(tables)('of %s is never changed, removed or emptied', async (table) => {
    const before = (await run(`SELECT count(*) FROM ${table}`)).rows[0].count;
    const column = (
      await run('SELECT column_name FROM information_schema.columns WHERE table_name = $1 LIMIT 1', [table])
    ).rows[0].column_name;
    for (const statement of [
      `UPDATE ${table} SET ${column} = ${column}`,
      `DELETE FROM ${table}`,
      `DELETE FROM ${table} WHERE false`,
      `TRUNCATE ${table} CASCADE`,
    ]) {
      const answer = await refused(statement);
      expect(answer.code).toBe('23001');
      expect(answer.what).toContain('evidence is never changed or removed');
    }
    expect((await run(`SELECT count(*) FROM ${table}`)).rows[0].count).toBe(before);
  });

  it('is not swept away with what it belongs to', async () => {
    for (const table of ['card', 'panel_seat', 'show_class', 'show']) {
      expect((await refused(`DELETE FROM ${table}`)).code).toMatch(/^23(503|001)$/);
    }
    expect((await refused('TRUNCATE show CASCADE')).code).toBe('23001');
  });
});

describe('constraints', () => {
  const card = async () => (await run('SELECT id FROM card LIMIT 1')).rows[0].id as string;
  const revision = async (change: object) => {
    const row = {
      ...{
        id: id(),
        card_id: await card(),
        revision: 2,
        content: {},
        content_hash: hash,
        previous_hash: hash,
      },
      ...{
        signed_by_seat_id: seatId,
        signed_at: new Date(),
        received_at: new Date(),
        amendment_reason: 'Sum',
      },
      ...change,
    };
    const columns = Object.keys(row);
    const marks = columns.map((_, index) => `$${index + 1}`);
    return refused(`INSERT INTO card_revision (${columns}) VALUES (${marks})`, Object.values(row));
  };

  it.each([
    ['an amendment without a reason', { amendment_reason: null }, 'card_revision_amendment_says_why'],
    ['an amendment with a blank reason', { amendment_reason: '   ' }, 'card_revision_amendment_says_why'],
    [
      'an amendment that does not name the one before',
      { previous_hash: null },
      'card_revision_names_the_one_before',
    ],
    ['a fingerprint that is none', { content_hash: 'A'.repeat(64) }, 'card_revision_content_hash_form'],
    [
      'a second revision of one number',
      { revision: 1, previous_hash: null, amendment_reason: null },
      'card_revision_card_id_revision_key',
    ],
  ])('refuse %s', async (_, change, constraint) => {
    expect((await revision(change)).what).toBe(constraint);
  });

  it('give a seat one card, in the class that the seat is of', async () => {
    const sheetId = (await run('SELECT id FROM score_sheet LIMIT 1')).rows[0].id;
    const insert =
      'INSERT INTO card (id, class_id, seat_id, sheet_id, created_at) VALUES ($1, $2, $3, $4, now())';
    expect((await refused(insert, [id(), classId, seatId, sheetId])).code).toBe('23505');
    const other = await office.addClass(77);
    const { id: newSeat } = (
      await run(
        `INSERT INTO panel_seat (id, show_id, class_id, person_id, seat_order, created_at)
         SELECT $1, show_id, class_id, person_id, 9, now() FROM panel_seat LIMIT 1 RETURNING id`,
        [id()],
      )
    ).rows[0];
    expect((await refused(insert, [id(), other.id, newSeat, sheetId])).what).toBe(
      'card_seat_id_class_id_fkey',
    );
  });

  it('keep an entry of one show out of a class of another', async () => {
    const other = await openOffice(service);
    const foreign = await other.addEntry(5);
    const insert = `INSERT INTO class_entry (id, show_id, class_id, entry_id, created_at, changed_at)
                    VALUES ($1, $2, $3, $4, now(), now())`;
    expect((await refused(insert, [id(), office.showId, classId, foreign.id])).what).toBe(
      'class_entry_entry_id_show_id_fkey',
    );
    expect((await refused(insert, [id(), other.showId, classId, foreign.id])).what).toBe(
      'class_entry_class_id_show_id_fkey',
    );
  });

  it('refuse a blank name, one of 201 characters and one with a control character, but no script', async () => {
    const insert = 'INSERT INTO horse (id, show_id, name, created_at) VALUES ($1, $2, $3, now())';
    for (const name of ['', ' ', ' x', 'x'.repeat(201), 'a\u0007b', 'a\u0085b']) {
      expect((await refused(insert, [id(), office.showId, name])).what).toBe('horse_name_form');
    }
    for (const name of ['𐍈'.repeat(200), 'ليلى', "O'Rourke", '<b>']) {
      expect((await refused(insert, [id(), office.showId, name])).code).toBe('taken');
    }
  });

  it('refuse a correction without a reason, and two postings of one version', async () => {
    const insert = `INSERT INTO posting (id, class_id, version, state, snapshot, rule_hash, body_hash, posted_at)
                    VALUES ($1, $2, $3, $4, '{}', $5, $5, now())`;
    expect((await refused(insert, [id(), classId, 2, 'corrected', hash])).what).toBe(
      'posting_correction_says_why',
    );
    expect((await refused(insert, [id(), classId, 1, 'official', hash])).what).toBe(
      'posting_class_id_version_key',
    );
    expect((await refused(insert, [id(), classId, 2, 'final', hash])).what).toBe('posting_state_known');
  });

  it('hold two entries apart in the order of go, but let them change places within one transaction', async () => {
    const second = await office.addEntry(215);
    const { id: rowId } = await service.parts.db.prisma.classEntry.create({
      data: {
        ...{ id: id(), showId: office.showId, classId, entryId: second.id, goPosition: 2 },
        ...{ createdAt: new Date(), changedAt: new Date() },
      },
    });
    const clash = await refused('UPDATE class_entry SET go_position = 1 WHERE id = $1', [rowId]);
    expect(clash.what).toBe('class_entry_class_id_go_position_key');
    expect(
      (await refused('UPDATE class_entry SET go_position = 3 - go_position WHERE class_id = $1', [classId]))
        .code,
    ).toBe('taken');
  });

  it('tie a pass of a judge to a seat, and every pass but an office to a show', async () => {
    const insert = `INSERT INTO access_token (jti, role, show_id, seat_id, issued_at, expires_at)
                    VALUES ($1, $2, $3, $4, now(), now() + interval '1 hour')`;
    expect((await refused(insert, [id(), 'judge', office.showId, null])).what).toBe(
      'access_token_seat_of_a_judge',
    );
    expect((await refused(insert, [id(), 'gate', null, null])).what).toBe('access_token_of_a_show');
    expect((await refused(insert, [id(), 'owner', office.showId, null])).what).toBe(
      'access_token_role_known',
    );
  });
});
