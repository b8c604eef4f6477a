/** What the database itself refuses, even to the owner of its tables: no code of the service stands between. */
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { passFor } from '../support/test-passes.ts';
import { bundle, type Office, openOffice, signCard } from './office-client.ts';

let service: TestApp;
let owner: pg.Pool;
let office: Office;
let classId: string;
let seatId: string;
let entryId: string;
let phoneId: string;

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
  return taken;
}
const taken = { code: 'taken', what: '' };

/** A signed revision of the one card there is, with something changed. */
async function revision(change: object) {
  const [{ id: cardId }] = (await run('SELECT id FROM card LIMIT 1')).rows;
  const row = {
    ...{ id: id(), card_id: cardId, revision: 2, content: {}, content_hash: hash, previous_hash: hash },
    ...{ signed_by_seat_id: seatId, signed_at: new Date(), received_at: new Date(), amendment_reason: 'Sum' },
    ...{ jws: 'a.b.c', phone_id: phoneId, ...change },
  };
  const columns = Object.keys(row);
  const marks = columns.map((_, index) => `$${index + 1}`);
  return refused(`INSERT INTO card_revision (${columns}) VALUES (${marks})`, Object.values(row));
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
  await signCard(service, classId, seatId, false);
  phoneId = (await passFor(service, { role: 'judge', showId: office.showId, seatId })).phoneId;
  expect(await revision({ revision: 1, previous_hash: null, amendment_reason: null })).toEqual(taken);
  const at = new Date();
  await run(
    `INSERT INTO ruling (id, class_id, kind, class_entry_ids, decision, decided_by, why, ruled_at)
     VALUES ($1, $2, 'coin', '{}', '{}', 'Steward', 'Tie for first', $3)`,
    [id(), classId, at],
  );
  await run(
    `INSERT INTO posting (id, class_id, version, state, snapshot, rule_hash, body_hash, posted_at,
                          ledger_sequence, ledger_hash, jws)
     VALUES ($1, $2, 1, 'provisional', '{}', $3, $3, $4, 1, $3, 'a.b.c')`,
    [id(), classId, hash, at],
  );
  await run(`INSERT INTO signing_key (kid, jwk, source, added_at) VALUES ($1, '{}', 'own', $2)`, [
    'A'.repeat(43),
    at,
  ]);
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
  it.each([
    ['an amendment without a reason', { amendment_reason: null }, 'card_revision_amendment_says_why'],
    ['an amendment with a blank reason', { amendment_reason: '   ' }, 'card_revision_amendment_says_why'],
    [
      'an amendment that does not name the one before',
      { previous_hash: null },
      'card_revision_names_the_one_before',
    ],
    ['a card without a signature', { jws: null, phone_id: null }, 'card_revision_signed_or_on_paper'],
    ['a signature of no phone', { phone_id: null }, 'card_revision_signed_or_on_paper'],
    ['a signature that is none', { jws: 'a.b' }, 'card_revision_jws_form'],
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
    const insert = `INSERT INTO posting (id, class_id, version, state, snapshot, rule_hash, body_hash, posted_at,
                                         ledger_sequence, ledger_hash, jws)
                    VALUES ($1, $2, $3, $4, '{}', $5, $5, now(), 1, $5, 'a.b.c')`;
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

  it('tie an invitation and a phone of a judge to a person, and those of the gate to none', async () => {
    const [{ person_id: personId }] = (await run('SELECT person_id FROM panel_seat LIMIT 1')).rows;
    const invite = `INSERT INTO invitation (id, show_id, role, person_id, code_hash, created_by, created_at, ends_at)
                    VALUES ($1, $2, $3, $4, $5, $1, now(), now() + interval '1 hour')`;
    const asked = (role: string, person: string | null) =>
      refused(invite, [id(), office.showId, role, person, hash]);
    expect((await asked('judge', null)).what).toBe('invitation_of_a_judge');
    expect((await asked('gate', personId)).what).toBe('invitation_of_a_judge');
    expect((await asked('owner', personId)).what).toBe('invitation_role_known');
    const pair = `INSERT INTO phone (id, show_id, role, person_id, public_key, thumbprint, paired_at)
                  VALUES ($1, $2, $3, $4, $5, $6, now())`;
    const paired = (role: string, person: string | null, key: object) =>
      refused(pair, [id(), office.showId, role, person, key, 'B'.repeat(43)]);
    expect((await paired('scribe', null, {})).what).toBe('phone_of_a_judge');
    expect((await paired('judge', personId, { d: 'private' })).what).toBe('phone_key_is_public');
  });

  it('take no ledger line that follows none, or has no seal', async () => {
    const insert = `INSERT INTO ledger_line (ledger_id, sequence, type, body, actor, at, hash, previous_hash, seal)
                    VALUES ($1, $2, 'show.changed', '{}', '{}', now(), $3, $4, $5)`;
    const line = (sequence: number, previous: string | null, seal = 'a..b') =>
      refused(insert, [office.showId, sequence, hash, previous, seal]);
    expect((await line(500, null)).what).toBe('ledger_line_follows_another');
    expect((await line(500, hash, 'a.b.c')).what).toBe('ledger_line_seal_form');
    expect((await line(1, null)).code).toBe('23505');
  });

  it('keep an account from a password without a second factor, or in another form than argon2id', async () => {
    const insert = `INSERT INTO account (id, name, sign_in, duty, password_hash, totp_secret, created_at)
                    VALUES ($1, 'Show office', 'somebody', 'manager', $2, $3, now())`;
    expect((await refused(insert, [id(), '$argon2id$x', null])).what).toBe('account_needs_both_factors');
    expect((await refused(insert, [id(), 'plain', 'x'])).what).toBe('account_password_is_argon2id');
  });
});
