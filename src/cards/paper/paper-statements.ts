/** Statements of paper cards. */
import type { Statement } from '../../platform/sql.ts';

export const addPaperCard: Statement = {
  name: 'paper.add',
  text: `
    INSERT INTO paper_card (id, class_id, seat_id, revision, previous_hash, reason, status, salt, created_by, created_at)
    VALUES ($1::uuid, $2::uuid, $3::uuid, $4, $5, $6, 'open', $7, $8::uuid, $9)`,
};

const columns = `
    SELECT paper.id, paper.class_id AS "classId", paper.seat_id AS "seatId", card.id AS "cardId",
           show_class.show_id AS "showId", paper.revision, paper.previous_hash AS "previousHash", paper.reason,
           paper.status, paper.withdrawn_why AS "withdrawnWhy", paper.salt, paper.created_by AS "createdBy",
           paper.created_at AS "createdAt",
           paper.status = 'open' AND paper.revision <> 1 + coalesce(
             (SELECT max(revision) FROM card_revision WHERE card_id = card.id), 0) AS overtaken
    FROM paper_card paper
    JOIN show_class ON show_class.id = paper.class_id
    JOIN card ON card.seat_id = paper.seat_id`;

export const readPaperCard: Statement = {
  name: 'paper.read',
  text: `${columns} WHERE paper.id = $1::uuid`,
};

export const readPaperCards: Statement = {
  name: 'paper.of-class',
  text: `${columns} WHERE paper.class_id = $1::uuid ORDER BY paper.created_at, paper.id`,
};

export const readOpenPaperCard: Statement = {
  name: 'paper.open-of-seat',
  text: `${columns} WHERE paper.seat_id = $1::uuid AND paper.status = 'open'`,
};

export const lockPaperCard: Statement = {
  name: 'paper.lock',
  text: 'SELECT id FROM paper_card WHERE id = $1::uuid FOR NO KEY UPDATE',
};

export const acceptPaperCard: Statement = {
  name: 'paper.accept',
  text: `UPDATE paper_card SET status = 'accepted' WHERE id = $1::uuid`,
};

export const withdrawPaperCard: Statement = {
  name: 'paper.withdraw',
  text: `UPDATE paper_card SET status = 'withdrawn', withdrawn_why = $2 WHERE id = $1::uuid`,
};

/** Who saved last comes last: where both agree, she is the one who checked. */
export const readPaperEntries: Statement = {
  name: 'paper.entries',
  text: `
    SELECT account_id AS "accountId", content, content_hash AS "contentHash", version, entered_at AS "enteredAt"
    FROM paper_entry WHERE paper_card_id = $1::uuid ORDER BY entered_at, account_id`,
};

export const savePaperEntry: Statement = {
  name: 'paper.save-entry',
  text: `
    INSERT INTO paper_entry (paper_card_id, account_id, content, content_hash, version, entered_at)
    VALUES ($1::uuid, $2::uuid, $3::jsonb, $4, 1, $5)
    ON CONFLICT (paper_card_id, account_id)
    DO UPDATE SET content = excluded.content, content_hash = excluded.content_hash, entered_at = excluded.entered_at,
                  version = paper_entry.version + 1
    RETURNING version`,
};

export const savePhoto: Statement = {
  name: 'paper.save-photo',
  text: `
    INSERT INTO paper_photo (paper_card_id, bytes, media_type, hash, width, height, stored_by, stored_at)
    VALUES ($1::uuid, $2::bytea, $3, $4, $5, $6, $7::uuid, $8)
    ON CONFLICT (paper_card_id)
    DO UPDATE SET bytes = excluded.bytes, hash = excluded.hash, width = excluded.width, height = excluded.height,
                  stored_by = excluded.stored_by, stored_at = excluded.stored_at`,
};

export const readPhotoHead: Statement = {
  name: 'paper.photo-head',
  text: `
    SELECT hash, media_type AS "mediaType", width, height, stored_by AS "storedBy", stored_at AS "storedAt"
    FROM paper_photo WHERE paper_card_id = $1::uuid`,
};

export const readPhotoBytes: Statement = {
  name: 'paper.photo-bytes',
  text: 'SELECT bytes, hash FROM paper_photo WHERE paper_card_id = $1::uuid',
};
