/** Prepared statements of the cards: a card comes in from the ringside, and nobody may wait for it. */
import type { Statement } from '../platform/sql.ts';

/**
 * Locks the card until the transaction ends, so that a save, a signature and an amendment of one card follow
 * each other, and holds off the office's changes of its class (who goes, who judges). What depends on them is
 * read after the lock, in a statement of its own.
 */
export const lockCard: Statement = {
  name: 'cards.lock',
  text: `
    SELECT card.id FROM card JOIN show_class ON show_class.id = card.class_id
    WHERE card.id = $1::uuid FOR NO KEY UPDATE OF card FOR SHARE OF show_class`,
};

export const readCard: Statement = {
  name: 'cards.read',
  text: `
    SELECT card.id, card.class_id AS "classId", card.seat_id AS "seatId", card.created_at AS "createdAt",
           seat.seat_order AS "seatOrder", seat.role, seat.withdrawn_at AS "withdrawnAt",
           show_class.show_id AS "showId", show_class.status AS "classStatus",
           show_class.placing_rule AS "placingRule",
           sheet.code AS "sheetCode", sheet.version AS "sheetVersion", sheet.hash AS "sheetHash",
           sheet.definition AS sheet,
           (SELECT coalesce(json_agg(json_build_object('position', position, 'name', name,
                     'coefficient', trim_scale(coefficient)::text) ORDER BY position), '[]')
            FROM pattern_maneuver WHERE pattern_id = show_class.pattern_id) AS maneuvers,
           last.revision, last.content_hash AS "contentHash"
    FROM card
    JOIN panel_seat seat ON seat.id = card.seat_id
    JOIN show_class ON show_class.id = card.class_id
    JOIN score_sheet sheet ON sheet.id = card.sheet_id
    LEFT JOIN LATERAL (SELECT revision, content_hash FROM card_revision
                       WHERE card_id = card.id ORDER BY revision DESC LIMIT 1) last ON true
    WHERE card.id = $1::uuid`,
};

/** Everyone of the class, in the order of go; who has no position yet stands behind by back number. */
export const readEntries: Statement = {
  name: 'cards.read-entries',
  text: `
    SELECT class_entry.id, entry.back_number AS "backNumber", class_entry.go_position AS "goPosition",
           class_entry.status, class_entry.changed_at AS "changedAt"
    FROM class_entry JOIN entry ON entry.id = class_entry.entry_id
    WHERE class_entry.class_id = $1::uuid
    ORDER BY class_entry.go_position NULLS LAST, entry.back_number`,
};

export const readEntry: Statement = {
  name: 'cards.read-entry',
  text: `
    SELECT class_entry.id, entry.back_number AS "backNumber", class_entry.go_position AS "goPosition",
           class_entry.status, class_entry.changed_at AS "changedAt"
    FROM class_entry JOIN entry ON entry.id = class_entry.entry_id
    WHERE class_entry.class_id = $1::uuid AND class_entry.id = $2::uuid`,
};

export const readDraftGoes: Statement = {
  name: 'cards.read-draft-goes',
  text: `
    SELECT class_entry_id AS "classEntryId", content, version, saved_at AS "savedAt"
    FROM card_draft_go WHERE card_id = $1::uuid`,
};

export const readDraftGo: Statement = {
  name: 'cards.read-draft-go',
  text: `
    SELECT class_entry_id AS "classEntryId", content, version, saved_at AS "savedAt"
    FROM card_draft_go WHERE card_id = $1::uuid AND class_entry_id = $2::uuid`,
};

export const readDraftOrder: Statement = {
  name: 'cards.read-draft-order',
  text: `SELECT content, version, saved_at AS "savedAt" FROM card_draft_order WHERE card_id = $1::uuid`,
};

export const saveDraftGo: Statement = {
  name: 'cards.save-draft-go',
  text: `
    INSERT INTO card_draft_go (card_id, class_entry_id, class_id, content, version, saved_at)
    VALUES ($1::uuid, $2::uuid, $3::uuid, $4::jsonb, 1, $5)
    ON CONFLICT (card_id, class_entry_id)
    DO UPDATE SET content = excluded.content, version = card_draft_go.version + 1, saved_at = excluded.saved_at
    RETURNING version`,
};

export const saveDraftOrder: Statement = {
  name: 'cards.save-draft-order',
  text: `
    INSERT INTO card_draft_order (card_id, content, version, saved_at) VALUES ($1::uuid, $2::jsonb, 1, $3)
    ON CONFLICT (card_id)
    DO UPDATE SET content = excluded.content, version = card_draft_order.version + 1, saved_at = excluded.saved_at
    RETURNING version`,
};

export const addRevision: Statement = {
  name: 'cards.add-revision',
  text: `
    INSERT INTO card_revision (id, card_id, revision, content, content_hash, previous_hash, signed_by_seat_id,
                               signed_at, received_at, amendment_reason, jws, phone_id, paper_card_id)
    VALUES ($1::uuid, $2::uuid, $3, $4::jsonb, $5, $6, $7::uuid, $8, $9, $10, $11, $12::uuid, $13::uuid)`,
};

/** Who entered a paper card, then who checked it. */
const paper = `paper_card_id AS "paperCardId",
           (SELECT array_agg(account_id ORDER BY entered_at, account_id) FROM paper_entry
            WHERE paper_entry.paper_card_id = card_revision.paper_card_id) AS "paperAccountIds"`;

export const readRevisions: Statement = {
  name: 'cards.read-revisions',
  text: `
    SELECT id, revision, content_hash AS "contentHash", previous_hash AS "previousHash",
           signed_at AS "signedAt", received_at AS "receivedAt", amendment_reason AS reason, ${paper}
    FROM card_revision WHERE card_id = $1::uuid ORDER BY revision`,
};

export const readRevision: Statement = {
  name: 'cards.read-revision',
  text: `
    SELECT id, revision, content, jws, phone_id AS "phoneId", content_hash AS "contentHash", previous_hash AS "previousHash",
           signed_at AS "signedAt", received_at AS "receivedAt", amendment_reason AS reason, ${paper}
    FROM card_revision WHERE card_id = $1::uuid AND revision = $2`,
};

/** By which a signature of the phone is checked. */
export const findPhoneKey: Statement = {
  name: 'cards.find-phone-key',
  text: 'SELECT public_key AS jwk, thumbprint FROM phone WHERE id = $1::uuid',
};

export const findSeat: Statement = {
  name: 'cards.find-seat',
  text: `
    SELECT seat.id, seat.show_id AS "showId", seat.class_id AS "classId", seat.withdrawn_at AS "withdrawnAt",
           show_class.status AS "classStatus"
    FROM panel_seat seat JOIN show_class ON show_class.id = seat.class_id
    WHERE seat.id = $1::uuid AND seat.class_id = $2::uuid
    FOR SHARE OF show_class`,
};

/** A seat has one card: whoever comes second finds it there. The card keeps the sheet of the class as it is now. */
export const openCard: Statement = {
  name: 'cards.open',
  text: `
    INSERT INTO card (id, class_id, seat_id, sheet_id, created_at)
    SELECT $1::uuid, id, $3::uuid, sheet_id, $4 FROM show_class WHERE id = $2::uuid
    ON CONFLICT (seat_id) DO NOTHING RETURNING id`,
};

export const findCardOfSeat: Statement = {
  name: 'cards.of-seat',
  text: 'SELECT id FROM card WHERE seat_id = $1::uuid',
};

export const findClass: Statement = {
  name: 'cards.find-class',
  text: 'SELECT id, show_id AS "showId" FROM show_class WHERE id = $1::uuid',
};

/** How far each seat's card is: counts only, never a mark. */
export const readProgress: Statement = {
  name: 'cards.progress',
  text: `
    SELECT seat.id AS "seatId", seat.seat_order AS "seatOrder", seat.role, card.id AS "cardId",
           seat.withdrawn_at IS NOT NULL AS withdrawn,
           sheet.definition ->> 'kind' AS "sheetKind", (sheet.definition ->> 'first')::int AS "ranksFirst",
           (SELECT count(*) FROM card_draft_go go JOIN class_entry going ON going.id = go.class_entry_id
            WHERE go.card_id = card.id AND go.content <> '{}'
              AND going.status IN ('entered', 'checked-in'))::int AS "goesWritten",
           (SELECT content -> 'ranking' FROM card_draft_order WHERE card_id = card.id) AS ranking,
           last.id AS "revisionId", last.revision, last.signed_at AS "signedAt", last.received_at AS "receivedAt",
           last.paper_card_id IS NOT NULL AS "onPaper",
           (SELECT array_agg(entry) FROM jsonb_object_keys(last.content -> 'goes') entry) AS "signedGoes",
           last.content -> 'ranking' AS "signedRanking"
    FROM panel_seat seat
    JOIN show_class ON show_class.id = seat.class_id
    LEFT JOIN card ON card.seat_id = seat.id
    JOIN score_sheet sheet ON sheet.id = coalesce(card.sheet_id, show_class.sheet_id)
    LEFT JOIN LATERAL (SELECT * FROM card_revision WHERE card_id = card.id
                       ORDER BY revision DESC LIMIT 1) last ON true
    WHERE seat.class_id = $1::uuid
    ORDER BY seat.seat_order`,
};

export const readSignedCards: Statement = {
  name: 'cards.signed',
  text: `
    SELECT seat.id AS "seatId", card.id AS "cardId", last.id AS "revisionId", last.revision,
           last.content_hash AS "contentHash", last.content, last.signed_at AS "signedAt",
           last.received_at AS "receivedAt"
    FROM panel_seat seat
    LEFT JOIN card ON card.seat_id = seat.id
    LEFT JOIN LATERAL (SELECT * FROM card_revision WHERE card_id = card.id
                       ORDER BY revision DESC LIMIT 1) last ON true
    WHERE seat.class_id = $1::uuid AND seat.withdrawn_at IS NULL
    ORDER BY seat.seat_order`,
};
