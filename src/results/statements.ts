/** Prepared statements of the results: a posted result goes out all day long. */
import type { Statement } from '../platform/sql.ts';

/** The class with all that tabulating it needs beside its cards. */
export const readClass: Statement = {
  name: 'results.read-class',
  text: `
    SELECT show_class.id, show_class.show_id AS "showId", show_class.number, show_class.name,
           show_class.discipline, show_class.division, show_class.youth, show_class.status,
           show_class.placing_rule AS "placingRule", show_class.places_given AS "placesGiven",
           show_class.draw_seed AS "drawSeed", show_class.publish_cards AS "publishCards",
           show_class.called_at AS "calledAt",
           sheet.code AS "sheetCode", sheet.version AS "sheetVersion", sheet.hash AS "sheetHash",
           sheet.definition AS sheet,
           show.minor_public_name AS "minorPublicName", show.first_day::text AS "firstDay",
           EXISTS (SELECT FROM order_draw WHERE class_id = show_class.id) AS drawn,
           (SELECT coalesce(json_agg(json_build_object('position', position, 'name', name,
                     'coefficient', trim_scale(coefficient)::text) ORDER BY position), '[]')
            FROM pattern_maneuver WHERE pattern_id = show_class.pattern_id) AS maneuvers
    FROM show_class
    JOIN show ON show.id = show_class.show_id
    JOIN score_sheet sheet ON sheet.id = show_class.sheet_id
    WHERE show_class.id = $1::uuid`,
};

/** All seats, each with its last signed card and how many goes are drafted. */
export const readSeats: Statement = {
  name: 'results.read-seats',
  text: `
    SELECT seat.id, seat.seat_order AS "seatOrder", seat.role, seat.call_order AS "callOrder",
           seat.tie_order AS "tieOrder", person.name AS judge, seat.withdrawn_at IS NOT NULL AS withdrawn,
           (SELECT count(*)::int FROM card_draft_go WHERE card_id = card.id) AS "draftGoes",
           signed.id AS "revisionId", signed.revision, signed.content, signed.content_hash AS "contentHash"
    FROM panel_seat seat
    JOIN person ON person.id = seat.person_id
    LEFT JOIN card ON card.seat_id = seat.id
    LEFT JOIN LATERAL (SELECT id, revision, content, content_hash FROM card_revision
                       WHERE card_id = card.id ORDER BY revision DESC LIMIT 1) signed ON true
    WHERE seat.class_id = $1::uuid
    ORDER BY seat.seat_order`,
};

/** Everyone of the class in the order of go, with what decides how the name may be shown. */
export const readEntries: Statement = {
  name: 'results.read-entries',
  text: `
    SELECT class_entry.id, class_entry.status, class_entry.go_position AS "goPosition",
           entry.back_number AS "backNumber", exhibitor.name, exhibitor.born_on::text AS "bornOn",
           exhibitor.public_name AS "publicName"
    FROM class_entry
    JOIN entry ON entry.id = class_entry.entry_id
    JOIN exhibitor ON exhibitor.id = entry.exhibitor_id
    WHERE class_entry.class_id = $1::uuid AND class_entry.status <> 'moved'
    ORDER BY class_entry.go_position NULLS LAST, entry.back_number`,
};

export const readRulings: Statement = {
  name: 'results.read-rulings',
  text: `
    SELECT id, kind, decision, decided_by AS "decidedBy", why, ruled_at AS "ruledAt"
    FROM ruling WHERE class_id = $1::uuid ORDER BY ruled_at, id`,
};

export const addRuling: Statement = {
  name: 'results.add-ruling',
  text: `
    INSERT INTO ruling (id, class_id, kind, class_entry_ids, decision, decided_by, why, ruled_at)
    VALUES ($1::uuid, $2::uuid, $3, $4::uuid[], $5::jsonb, $6, $7, $8)`,
};

const summary = `id, class_id AS "classId", version, state, reason, posted_at AS "postedAt",
                 body_hash AS "bodyHash", rule_hash AS "ruleHash"`;

export const readLastPosting: Statement = {
  name: 'results.read-last-posting',
  text: `SELECT ${summary}, snapshot AS body FROM posting WHERE class_id = $1::uuid ORDER BY version DESC LIMIT 1`,
};

export const readPostings: Statement = {
  name: 'results.read-postings',
  text: `SELECT ${summary} FROM posting WHERE class_id = $1::uuid ORDER BY version`,
};

export const readPosting: Statement = {
  name: 'results.read-posting',
  text: `SELECT ${summary}, snapshot AS body FROM posting WHERE id = $1::uuid`,
};

export const addPosting: Statement = {
  name: 'results.add-posting',
  text: `
    INSERT INTO posting (id, class_id, version, state, snapshot, rule_hash, body_hash, card_revision_ids, reason, posted_at)
    VALUES ($1::uuid, $2::uuid, $3, $4, $5::jsonb, $6, $7, $8::uuid[], $9, $10)`,
};

/** The cards of a posting as they were signed then. */
export const readRevisions: Statement = {
  name: 'results.read-revisions',
  text: `
    SELECT revision.id, revision.revision, revision.content, card.seat_id AS "seatId"
    FROM card_revision revision JOIN card ON card.id = revision.card_id
    WHERE revision.id = ANY ($1::uuid[])`,
};

/** Rulings, postings and cards of one class follow each other. */
export const lockClass: Statement = {
  name: 'results.lock-class',
  text: `SELECT id FROM show_class WHERE id = $1::uuid FOR NO KEY UPDATE`,
};

/** What a posted result depends on: anything that changes at the show moves its ledger on. */
export const readMark: Statement = {
  name: 'results.read-mark',
  text: `
    SELECT show_class.show_id AS "showId", head.sequence
    FROM show_class LEFT JOIN ledger_head head ON head.show_id = show_class.show_id
    WHERE show_class.id = $1::uuid`,
};

export const readBoard: Statement = {
  name: 'results.read-board',
  text: `
    SELECT show_class.id, show_class.number, show_class.name, ring.name AS ring, show_class.status,
           show_class.scheduled_at AS "scheduledAt", show_class.called_at AS "calledAt",
           EXISTS (SELECT FROM order_draw WHERE class_id = show_class.id) AS drawn,
           (SELECT count(*)::int FROM panel_seat WHERE class_id = show_class.id AND withdrawn_at IS NULL) AS seats,
           (SELECT count(*)::int FROM panel_seat seat JOIN card ON card.seat_id = seat.id
             WHERE seat.class_id = show_class.id AND seat.withdrawn_at IS NULL
               AND EXISTS (SELECT FROM card_revision WHERE card_id = card.id)) AS signed,
           (SELECT count(*)::int FROM card_draft_go WHERE class_id = show_class.id) AS "draftGoes",
           last.version AS "postingVersion", last.state AS "postingState"
    FROM show_class
    LEFT JOIN ring ON ring.id = show_class.ring_id
    LEFT JOIN LATERAL (SELECT version, state FROM posting WHERE class_id = show_class.id
                       ORDER BY version DESC LIMIT 1) last ON true
    WHERE show_class.show_id = $1::uuid
    ORDER BY show_class.scheduled_at NULLS LAST, show_class.number`,
};

export const readShow: Statement = {
  name: 'results.read-show',
  text: `SELECT id, name, place, time_zone AS "timeZone" FROM show WHERE id = $1::uuid`,
};
