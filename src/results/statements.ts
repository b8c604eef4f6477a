/** Prepared statements of the results: a posted result goes out all day long. */
import type { Statement } from '../platform/sql.ts';

export const readRulings: Statement = {
  name: 'results.read-rulings',
  text: `
    SELECT id, kind, decision, decided_by AS "decidedBy", why, ruled_at AS "ruledAt"
    FROM ruling WHERE class_id = $1::uuid ORDER BY ruled_at, id`,
};

export const addRuling: Statement = {
  name: 'results.add-ruling',
  text: `
    INSERT INTO ruling (id, class_id, kind, class_entry_ids, decision, decided_by, why, ruled_at, recorded_by)
    VALUES ($1::uuid, $2::uuid, $3, $4::uuid[], $5::jsonb, $6, $7, $8, $9::uuid)`,
};

const summary = `id, class_id AS "classId", version, state, reason, posted_at AS "postedAt",
                 body_hash AS "bodyHash", rule_hash AS "ruleHash", jws,
                 jsonb_build_object('sequence', ledger_sequence, 'hash', ledger_hash) AS ledger`;

export const readLastPosting: Statement = {
  name: 'results.read-last-posting',
  text: `SELECT ${summary}, snapshot AS body FROM posting WHERE class_id = $1::uuid ORDER BY version DESC LIMIT 1`,
};

export const readPostings: Statement = {
  name: 'results.read-postings',
  text: `SELECT ${summary} FROM posting WHERE class_id = $1::uuid ORDER BY version`,
};

export const readWholePostings: Statement = {
  name: 'results.read-whole-postings',
  text: `SELECT ${summary}, snapshot AS body FROM posting WHERE class_id = $1::uuid ORDER BY version`,
};

export const readPosting: Statement = {
  name: 'results.read-posting',
  text: `SELECT ${summary}, snapshot AS body FROM posting WHERE id = $1::uuid`,
};

export const addPosting: Statement = {
  name: 'results.add-posting',
  text: `
    INSERT INTO posting (id, class_id, version, state, snapshot, rule_hash, body_hash, card_revision_ids, reason, posted_at,
                         ledger_sequence, ledger_hash, jws)
    VALUES ($1::uuid, $2::uuid, $3, $4, $5::jsonb, $6, $7, $8::uuid[], $9, $10, $11, $12, $13)`,
};

/** The cards of a posting as they were signed then. */
export const readRevisions: Statement = {
  name: 'results.read-revisions',
  text: `
    SELECT revision.id AS "revisionId", revision.revision, revision.content_hash AS "contentHash",
           revision.content, card.seat_id AS "seatId"
    FROM card_revision revision JOIN card ON card.id = revision.card_id
    WHERE revision.id = ANY ($1::uuid[])`,
};

/** What a posted result depends on: anything that changes at the show moves its ledger on. */
export const readMark: Statement = {
  name: 'results.read-mark',
  text: `
    SELECT show_class.show_id AS "showId", head.sequence
    FROM show_class LEFT JOIN ledger_head head ON head.ledger_id = show_class.show_id
    WHERE show_class.id = $1::uuid`,
};

export const readKind: Statement = {
  name: 'results.read-kind',
  text: `SELECT show.kind FROM show_class JOIN show ON show.id = show_class.show_id WHERE show_class.id = $1::uuid`,
};

/** What the state of a class follows from. Cards of judges who withdrew do not count. */
const boardLine = `
    SELECT show_class.id, show_class.number, show_class.name, ring.name AS ring, show_class.status,
           show_class.scheduled_at AS "scheduledAt", show_class.called_at AS "calledAt",
           EXISTS (SELECT FROM order_draw WHERE class_id = show_class.id) AS drawn,
           panel.seats, panel.signed, panel."draftGoes",
           last.version AS "postingVersion", last.state AS "postingState", last.posted_at AS "postedAt"
    FROM show_class
    LEFT JOIN ring ON ring.id = show_class.ring_id
    CROSS JOIN LATERAL (
      SELECT count(*)::int AS seats,
             count(*) FILTER (WHERE is_signed)::int AS signed,
             coalesce(sum(drafts) FILTER (WHERE NOT is_signed), 0)::int AS "draftGoes"
      FROM (SELECT EXISTS (SELECT FROM card_revision WHERE card_id = card.id) AS is_signed,
                   (SELECT count(*) FROM card_draft_go WHERE card_id = card.id) AS drafts
            FROM panel_seat seat LEFT JOIN card ON card.seat_id = seat.id
            WHERE seat.class_id = show_class.id AND seat.withdrawn_at IS NULL) judge) panel
    LEFT JOIN LATERAL (SELECT version, state, posted_at FROM posting WHERE class_id = show_class.id
                       ORDER BY version DESC LIMIT 1) last ON true`;

export const readShowBoard: Statement = {
  name: 'results.read-show-board',
  text: `${boardLine}
    WHERE show_class.show_id = $1::uuid
    ORDER BY show_class.scheduled_at NULLS LAST, show_class.number`,
};

export const readClassOnBoard: Statement = {
  name: 'results.read-class-on-board',
  text: `${boardLine}
    WHERE show_class.id = $1::uuid`,
};

export const readClassesOnBoard: Statement = {
  name: 'results.read-classes-on-board',
  text: `${boardLine}
    WHERE show_class.id = ANY($1::uuid[])
    ORDER BY show_class.scheduled_at NULLS LAST, show_class.number`,
};

export const readShow: Statement = {
  name: 'results.read-show',
  text: `SELECT id, name, place, time_zone AS "timeZone", kind FROM show WHERE id = $1::uuid`,
};
