/**
 * Somebody with full access to the database changes something, by SQL that no trigger stops, and clears up after
 * himself as well as he can. The service then takes the archive out in good faith, and signs it.
 */
import { type JWK, SignJWT } from 'jose';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { verifyArchive } from '../../../src/archive/offline.ts';
import { canonicalText, type EvidenceType, evidenceTypes } from '../../../src/evidence/index.ts';
import { hashOfText } from '../../../src/platform/canonical-json.ts';
import { firstSigningKeys, type ServiceKeys, serviceKeys } from '../../../src/platform/service-keys.ts';
import { buildTestApp, type TestApp } from '../../support/test-app.ts';
import { makeTestPhone } from '../../support/test-phone.ts';
import { type DatabaseInHand, takeDatabase } from './database-in-hand.ts';
import { type JudgedShow, judgedShow } from './judged-show.ts';

let service: TestApp;
let show: JudgedShow;
let database: DatabaseInHand;
/** As they were published before anything happened. */
let published: JWK[];
/** Keys of the intruder's own. */
let forged: ServiceKeys;

beforeAll(async () => {
  service = await buildTestApp();
  show = await judgedShow(service);
  database = await takeDatabase(service.ownerUrl);
  published = service.parts.keys.publicKeys.map(({ jwk }) => jwk);
  forged = await serviceKeys(await firstSigningKeys());
});
afterEach(() => database.restore());
afterAll(async () => {
  await database.close();
  await service.close();
});

const { run } = { run: (...call: Parameters<DatabaseInHand['run']>) => database.run(...call) };
const codesNow = async (asked: Parameters<typeof verifyArchive>[1] = {}) => {
  const { faults } = await verifyArchive(await show.archive(), { trustedKeys: published, ...asked });
  return [...new Set(faults.map(({ code }) => code))];
};
const one = async (text: string, values: readonly unknown[] = []) => {
  const [row] = await run(text, values);
  if (row === undefined) throw new Error(`nothing was found: ${text}`);
  return row;
};

const ofClass = (number: number) =>
  `(SELECT id FROM show_class WHERE number = ${number} AND show_id = '${show.showId}')`;
const cardOfClass = (number: number) =>
  one(`SELECT revision.* FROM card_revision revision JOIN card ON card.id = revision.card_id
       WHERE card.class_id = ${ofClass(number)} ORDER BY revision.received_at LIMIT 1`);
const lines = () =>
  run(
    `SELECT ledger_id AS "ledgerId", sequence, type, body, actor, at, previous_hash AS "previousHash"
       FROM ledger_line WHERE ledger_id = $1 ORDER BY sequence`,
    [show.showId],
  );

/** Computes the chain anew from its first line; `keys`: seals it, too. */
async function chainAnew(keys?: Pick<ServiceKeys, 'sign'>): Promise<void> {
  let previousHash: string | null = null;
  for (const [index, found] of (await lines()).entries()) {
    const line = { ...found, sequence: index + 1, at: found.at.toISOString(), previousHash };
    const text = canonicalText(line);
    const hash = hashOfText(text);
    const [header = '', , signature = ''] =
      keys === undefined ? [] : (await keys.sign(evidenceTypes.line, text)).split('.');
    const seal = keys === undefined ? null : `${header}..${signature}`;
    await run(
      `UPDATE ledger_line SET sequence = $3, previous_hash = $4, hash = $5, seal = coalesce($6, seal)
       WHERE ledger_id = $1 AND sequence = $2`,
      [show.showId, found.sequence, line.sequence, previousHash, hash, seal],
    );
    previousHash = hash;
    await run('UPDATE ledger_head SET sequence = $2, hash = $3 WHERE ledger_id = $1', [
      show.showId,
      line.sequence,
      hash,
    ]);
  }
}

const payloadOf = (jws: string) =>
  JSON.parse(Buffer.from(jws.split('.')[1] ?? '', 'base64url').toString('utf8'));
/** Signed by somebody else than the header says. */
const signedAs = async (kid: string, { typ, statement }: { typ: EvidenceType; statement: object }) => {
  const jws = await forged.sign(typ, canonicalText(statement));
  const header = Buffer.from(JSON.stringify({ alg: 'ES256', typ, kid })).toString('base64url');
  return [header, ...jws.split('.').slice(1)].join('.');
};

describe('what nobody touched', () => {
  test('verifies: amended cards, a ruling, a paper card, a correction; with names and without', async () => {
    for (const names of ['full', 'none'] as const) {
      const archive = await show.archive(names);
      expect((await verifyArchive(archive, { trustedKeys: published })).faults).toEqual([]);
      expect(archive.postings).toHaveLength(5);
      expect(archive.revisions).toHaveLength(5);
      expect(archive.rulings).toHaveLength(1);
    }
  });
});

describe('a card', () => {
  const betterMark = `jsonb_set(content, ARRAY['goes', (SELECT jsonb_object_keys(content -> 'goes') LIMIT 1), 'maneuvers', '0', 'mark'], '"3"')`;

  test('one mark changed', async () => {
    const { id } = await cardOfClass(1);
    await run(`UPDATE card_revision SET content = ${betterMark} WHERE id = $1`, [id]);
    expect(await codesNow()).toEqual(expect.arrayContaining(['card_hash_wrong', 'card_differs']));
  });

  test('one mark changed, with its fingerprint', async () => {
    const { id } = await cardOfClass(1);
    const { content } = await one(
      `UPDATE card_revision SET content = ${betterMark} WHERE id = $1 RETURNING content`,
      [id],
    );
    await run('UPDATE card_revision SET content_hash = $2 WHERE id = $1', [
      id,
      hashOfText(canonicalText(content)),
    ]);
    expect(await codesNow()).toContain('card_differs');
  });

  test('one mark changed, in what was signed too', async () => {
    const { id, jws } = await cardOfClass(1);
    const { content } = await one(
      `UPDATE card_revision SET content = ${betterMark} WHERE id = $1 RETURNING content`,
      [id],
    );
    const statement = canonicalText({ ...payloadOf(jws), content });
    const changed = [jws.split('.')[0], Buffer.from(statement).toString('base64url'), jws.split('.')[2]].join(
      '.',
    );
    const hash = hashOfText(canonicalText(content));
    await run('UPDATE card_revision SET content_hash = $2, jws = $3 WHERE id = $1', [id, hash, changed]);
    expect(await codesNow()).toContain('card_signature_wrong');
  });

  test("signed anew by a key that takes the place of the phone's", async () => {
    const { id, jws, phone_id: phoneId } = await cardOfClass(1);
    const { content } = await one(
      `UPDATE card_revision SET content = ${betterMark} WHERE id = $1 RETURNING content`,
      [id],
    );
    const phone = makeTestPhone();
    const forgery = phone.sign(canonicalText({ ...payloadOf(jws), content }));
    await run('UPDATE phone SET public_key = $2, thumbprint = $3 WHERE id = $1', [
      phoneId,
      phone.publicKey,
      phone.thumbprint,
    ]);
    const hash = hashOfText(canonicalText(content));
    await run('UPDATE card_revision SET content_hash = $2, jws = $3 WHERE id = $1', [id, hash, forgery]);
    expect(await codesNow()).toContain('phone_line_differs');
  });

  test('signed by the phone of another judge', async () => {
    const { id, jws, phone_id: phoneId } = await cardOfClass(1);
    const { id: other } = await one(
      `SELECT phone_id AS id FROM card_revision WHERE phone_id <> $1 AND card_id IN
         (SELECT id FROM card WHERE class_id = ${ofClass(1)}) LIMIT 1`,
      [phoneId],
    );
    await run('UPDATE card_revision SET phone_id = $2 WHERE id = $1', [id, other]);
    expect(jws).toBeDefined();
    expect(await codesNow()).toEqual(
      expect.arrayContaining(['card_phone_of_another', 'card_signature_wrong']),
    );
  });

  test('the signed cards of two judges exchanged, with their phones', async () => {
    await run(`UPDATE card_revision revision SET content = other.content, content_hash = other.content_hash,
                 jws = other.jws, phone_id = other.phone_id
               FROM card_revision other
               WHERE revision.revision = 1 AND other.revision = 1 AND revision.id <> other.id
                 AND revision.card_id IN (SELECT id FROM card WHERE class_id = ${ofClass(1)})
                 AND other.card_id IN (SELECT id FROM card WHERE class_id = ${ofClass(1)})`);
    expect(await codesNow()).toEqual(expect.arrayContaining(['card_phone_of_another', 'card_differs']));
  });

  test('taken away, an amendment too', async () => {
    await run('DELETE FROM card_revision WHERE revision = 2');
    expect(await codesNow()).toEqual(expect.arrayContaining(['line_names_nothing', 'posting_cards_wrong']));
  });

  test('on paper: one mark changed, in the card and in both entries', async () => {
    const { id, paper_card_id: paperId } = await cardOfClass(3);
    const { content } = await one(
      `UPDATE card_revision SET content = ${betterMark} WHERE id = $1 RETURNING content`,
      [id],
    );
    const hash = hashOfText(canonicalText(content));
    await run('UPDATE card_revision SET content_hash = $2 WHERE id = $1', [id, hash]);
    await run('UPDATE paper_entry SET content = $2, content_hash = $3 WHERE paper_card_id = $1', [
      paperId,
      content,
      hash,
    ]);
    expect(await codesNow()).toContain('paper_line_differs');
  });

  test('on paper: said to be entered by one person alone', async () => {
    await run('DELETE FROM paper_entry WHERE account_id = (SELECT account_id FROM paper_entry LIMIT 1)');
    expect(await codesNow()).toContain('paper_one_account');
  });
});

describe('the ledger', () => {
  const line = (type: string) =>
    one('SELECT sequence FROM ledger_line WHERE ledger_id = $1 AND type = $2 LIMIT 1', [show.showId, type]);

  test('a line removed', async () => {
    const { sequence } = await line('card.opened');
    await run('DELETE FROM ledger_line WHERE ledger_id = $1 AND sequence = $2', [show.showId, sequence]);
    expect(await codesNow()).toEqual(expect.arrayContaining(['line_missing', 'record_without_line']));
  });

  test('a line added', async () => {
    const { sequence, hash } = await one('SELECT sequence, hash FROM ledger_head WHERE ledger_id = $1', [
      show.showId,
    ]);
    const values = [show.showId, sequence, 'a'.repeat(64), hash];
    await run(
      `INSERT INTO ledger_line (ledger_id, sequence, type, body, actor, at, hash, previous_hash, seal)
       SELECT ledger_id, $2::int + 1, 'show.changed', body, actor, at, $3, $4, seal
       FROM ledger_line WHERE ledger_id = $1 AND sequence = $2`,
      values,
    );
    await run('UPDATE ledger_head SET sequence = sequence + 1, hash = $2 WHERE ledger_id = $1', [
      show.showId,
      'a'.repeat(64),
    ]);
    expect(await codesNow()).toEqual(expect.arrayContaining(['line_hash_wrong']));
  });

  test('two lines exchanged', async () => {
    const [a, b] = [(await line('card.opened')).sequence, (await line('card.signed')).sequence];
    const move = 'UPDATE ledger_line SET sequence = $3 WHERE ledger_id = $1 AND sequence = $2';
    await run(move, [show.showId, a, 999_999]);
    await run(move, [show.showId, b, a]);
    await run(move, [show.showId, 999_999, b]);
    expect(await codesNow()).toEqual(expect.arrayContaining(['line_not_linked']));
  });

  test('what a line says, and who did it, changed', async () => {
    const { sequence } = await line('result.posted');
    const here = 'WHERE ledger_id = $1 AND sequence = $2';
    await run(`UPDATE ledger_line SET actor = '{"as": "service"}' ${here}`, [show.showId, sequence]);
    expect(await codesNow()).toEqual(['line_hash_wrong']);
  });

  test('the chain computed anew after a line was removed: it has no seals', async () => {
    const { sequence } = await line('card.amended');
    await run('DELETE FROM ledger_line WHERE ledger_id = $1 AND sequence = $2', [show.showId, sequence]);
    await chainAnew();
    expect(await codesNow()).toEqual(expect.arrayContaining(['line_seal_wrong']));
  });

  test("the chain computed anew and sealed by a key of the intruder's, which he adds to the service's", async () => {
    await run(
      `UPDATE ledger_line SET body = body || '{"jwsHash": "${'b'.repeat(64)}"}' WHERE type = 'card.amended'`,
    );
    await chainAnew(forged);
    const [key] = forged.publicKeys;
    await run(`INSERT INTO signing_key (kid, jwk, source, added_at) VALUES ($1, $2, 'own', now())`, [
      key?.kid,
      key?.jwk,
    ]);
    expect(await codesNow()).toEqual(expect.arrayContaining(['line_key_unknown', 'posting_head_wrong']));
    // Without the keys that were published: the heads in the signed postings, and the cards, still tell.
    expect(await codesNow({ trustedKeys: undefined })).toEqual(
      expect.arrayContaining(['line_sealed_by_import', 'posting_head_wrong', 'card_line_differs']),
    );
  });

  test('its end cut off, with all that it told of: only a head that was written down shows it', async () => {
    const { sequence, hash } = await one('SELECT sequence, hash FROM ledger_head WHERE ledger_id = $1', [
      show.showId,
    ]);
    const last = await one(
      `SELECT sequence, body FROM ledger_line WHERE ledger_id = $1 AND type = 'result.posted'
                            ORDER BY sequence DESC LIMIT 1`,
      [show.showId],
    );
    await run('DELETE FROM posting WHERE id = $1', [last.body.postingId]);
    await run('DELETE FROM ledger_line WHERE ledger_id = $1 AND sequence >= $2', [
      show.showId,
      last.sequence,
    ]);
    await run(
      `UPDATE ledger_head SET sequence = $2, hash = (SELECT hash FROM ledger_line WHERE ledger_id = $1 AND sequence = $2)
       WHERE ledger_id = $1`,
      [show.showId, last.sequence - 1],
    );
    expect(await codesNow()).toEqual([]);
    expect(await codesNow({ head: { sequence, hash } })).toEqual(['head_differs']);
  });
});

describe('a posting', () => {
  const posting = () => one(`SELECT * FROM posting WHERE class_id = ${ofClass(1)} ORDER BY version LIMIT 1`);
  const exchanged = `jsonb_set(jsonb_set(snapshot, '{results,0,placed,0,entry}', snapshot #> '{results,0,placed,1,entry}'),
    '{results,0,placed,1,entry}', snapshot #> '{results,0,placed,0,entry}')`;

  test('two places exchanged', async () => {
    const { id } = await posting();
    await run(`UPDATE posting SET snapshot = ${exchanged} WHERE id = $1`, [id]);
    expect(await codesNow()).toEqual(
      expect.arrayContaining(['posting_hash_wrong', 'posting_recomputed_differs']),
    );
  });

  test('two places exchanged, with its fingerprint', async () => {
    const { id } = await posting();
    const { snapshot } = await one(
      `UPDATE posting SET snapshot = ${exchanged} WHERE id = $1 RETURNING snapshot`,
      [id],
    );
    await run('UPDATE posting SET body_hash = $2 WHERE id = $1', [id, hashOfText(canonicalText(snapshot))]);
    expect(await codesNow()).toEqual(
      expect.arrayContaining(['posting_differs', 'posting_recomputed_differs']),
    );
  });

  test("signed anew by a key of the intruder's, under its own name or under the service's", async () => {
    const { id, jws } = await posting();
    const typ = evidenceTypes.posting;
    const statement = { ...payloadOf(jws), reason: 'because' };
    await run('UPDATE posting SET jws = $2, reason = $3 WHERE id = $1', [
      id,
      await forged.sign(typ, canonicalText(statement)),
      'because',
    ]);
    expect(await codesNow()).toEqual(expect.arrayContaining(['posting_key_unknown', 'posting_line_differs']));
    const under = await signedAs(service.parts.keys.kid, { typ, statement });
    await run('UPDATE posting SET jws = $2 WHERE id = $1', [id, under]);
    expect(await codesNow()).toEqual(
      expect.arrayContaining(['posting_signature_wrong', 'posting_line_differs']),
    );
  });

  test('a JWT of the service is not taken for one', async () => {
    const { id } = await posting();
    const jwt = await new SignJWT({ id }).setProtectedHeader({ alg: 'HS256' }).sign(service.parts.tokenKey);
    await run('UPDATE posting SET jws = $2 WHERE id = $1', [id, jwt]);
    expect(await codesNow()).toContain('posting_key_unknown');
  });

  test('taken away, from the middle', async () => {
    await run(`DELETE FROM posting WHERE class_id = ${ofClass(1)} AND version = 2`);
    expect(await codesNow()).toEqual(expect.arrayContaining(['posting_chain_broken', 'line_names_nothing']));
  });

  test('its number, its rule, or the head that it names changed', async () => {
    for (const [change, code] of [
      ["rule_hash = repeat('c', 64)", 'posting_rule_hash_wrong'],
      ["ledger_hash = repeat('d', 64)", 'posting_head_wrong'],
      ["state = 'official'", 'posting_differs'],
      ["posted_at = posted_at - interval '1 day'", 'posting_differs'],
    ] as const) {
      const { id } = await posting();
      await run(`UPDATE posting SET ${change} WHERE id = $1`, [id]);
      expect(await codesNow()).toContain(code);
      await database.restore();
    }
  });
});

describe('what stands around a posting', () => {
  test('the riders of two entries exchanged, so that a place names another one', async () => {
    await run(`UPDATE entry SET exhibitor_id = other.exhibitor_id FROM entry other
               WHERE entry.back_number = 101 AND other.back_number = 102`);
    expect(await codesNow()).toEqual(['entry_line_differs']);
  });

  test('two back numbers exchanged', async () => {
    await run(`UPDATE entry SET back_number = back_number + 5000 WHERE back_number IN (101, 102)`);
    await run(`UPDATE entry SET back_number = 5203 - (back_number - 5000) - 5000 WHERE back_number > 5000`);
    expect(await codesNow()).toEqual(['entry_line_differs']);
  });

  test('two entries of a class exchanged', async () => {
    const entryOf = (backNumber: number) => `(SELECT id FROM entry WHERE back_number = ${backNumber})`;
    const put = (from: string, to: string) =>
      run(`UPDATE class_entry SET entry_id = ${to} WHERE class_id = ${ofClass(1)} AND entry_id = ${from}`);
    const aside = `'${service.parts.ids.next()}'`;
    await put(entryOf(101), aside);
    await put(entryOf(103), entryOf(101));
    await put(aside, entryOf(103));
    expect(await codesNow()).toEqual(['entry_line_differs']);
  });

  test('a judge said to have left the panel', async () => {
    await run(`UPDATE panel_seat SET withdrawn_at = now(), withdrawn_why = 'ill' WHERE seat_order = 1`);
    expect(await codesNow()).toEqual(['seat_line_differs']);
  });
});

describe('what a posting was made from', () => {
  test('a ruling turned round', async () => {
    await run(
      `UPDATE ruling SET decision = jsonb_build_object('order', jsonb_build_array(decision #> '{order,1}', decision #> '{order,0}'))`,
    );
    expect(await codesNow()).toEqual(
      expect.arrayContaining(['ruling_line_differs', 'posting_decisions_wrong']),
    );
  });

  test('a ruling taken away', async () => {
    await run('DELETE FROM ruling');
    expect(await codesNow()).toEqual(
      expect.arrayContaining(['line_names_nothing', 'posting_decisions_wrong']),
    );
  });

  test('a score sheet that says another source', async () => {
    await run(
      `UPDATE score_sheet SET definition = jsonb_set(definition, '{source}', '"elsewhere"') WHERE code = 'horsemanship'`,
    );
    expect(await codesNow()).toContain('sheet_altered');
  });

  test('a phone taken back before it signed, and one paired later than it did', async () => {
    await run(`UPDATE phone SET revoked_at = paired_at, revoked_why = 'lost'`);
    expect(await codesNow()).toEqual(expect.arrayContaining(['phone_line_differs', 'card_phone_not_paired']));
    await database.restore();
    await run(`UPDATE phone SET paired_at = paired_at + interval '1 day'`);
    expect(await codesNow()).toEqual(expect.arrayContaining(['phone_line_differs', 'card_phone_not_paired']));
  });
});

describe('the archive itself, after it was taken out', () => {
  test.each([
    [
      'another name of the show',
      (archive: { show: { name: string } }) => {
        archive.show.name = 'Another show';
      },
    ],
    [
      'a line less at its end',
      (archive: { lines: object[] }) => {
        archive.lines.pop();
      },
    ],
    [
      'a mark',
      (archive: {
        revisions: { content: { goes: Record<string, { maneuvers: { mark: string }[] }> } }[];
      }) => {
        const go = Object.values(archive.revisions[0]?.content.goes ?? {})[0];
        if (go?.maneuvers[0] !== undefined) go.maneuvers[0].mark = '3';
      },
    ],
  ])('%s', async (_what, change) => {
    const archive = await show.archive();
    change(archive);
    const { faults } = await verifyArchive(archive, { trustedKeys: published });
    expect(faults.map(({ code }) => code)).toContain('archive_altered');
  });

  test('another form is named as such', async () => {
    const { faults } = await verifyArchive({ ...(await show.archive()), form: 'ringledger show archive 2' });
    expect(faults.map(({ code }) => code)).toEqual(['form_unknown']);
  });
});
