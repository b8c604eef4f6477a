/** Prepared statements of a phone's day: every one reads all of its classes at once, because phones ask again and again. */
import type { CardOrder } from '../cards/index.ts';
import type { PlacingRule } from '../engine/placing/types.ts';
import type { CardContent } from '../engine/sheets/card-types.ts';
import type { Go, ScoreSheet } from '../engine/sheets/types.ts';
import type { Statement } from '../platform/sql.ts';

/** Other phones that write on the seats of the same judge. */
export const countOtherPhones: Statement = {
  name: 'results.count-other-phones',
  text: `
    SELECT count(*)::int AS others FROM phone
    WHERE show_id = $1::uuid AND person_id = $2::uuid AND id <> $3::uuid
      AND revoked_at IS NULL AND invitation_id IS NOT NULL`,
};

export interface DayClassRow {
  readonly seatId: string;
  readonly seatOrder: number;
  readonly seatRole: 'judge' | 'referee';
  readonly withdrawn: boolean;
  readonly classId: string;
  readonly discipline: string;
  readonly division: string | null;
  readonly rule: PlacingRule;
  readonly placesGiven: number | null;
  readonly drawSeed: string;
  readonly panel: readonly {
    readonly id: string;
    readonly seatOrder: number;
    readonly tieOrder: number | null;
    readonly callOrder: number | null;
  }[];
  readonly sheet: ScoreSheet;
  readonly sheetName: { readonly code: string; readonly version: number; readonly hash: string };
  readonly pattern: DayPatternRow | null;
  /** `null`: it was not opened. */
  readonly cardId: string | null;
  readonly order: CardOrder | null;
  readonly orderVersion: number | null;
  readonly orderSavedAt: Date | null;
  readonly revision: number | null;
  readonly content: CardContent | null;
  readonly contentHash: string | null;
  readonly signedAt: Date | null;
  readonly receivedAt: Date | null;
  readonly amendmentReason: string | null;
}

export interface DayPatternRow {
  readonly name: string;
  readonly maneuvers: readonly {
    readonly position: number;
    readonly name: string;
    readonly description: string | null;
    readonly startCone: string | null;
    readonly endCone: string | null;
    readonly gait: string | null;
    readonly leadOrDiagonal: 'left' | 'right' | null;
    readonly coefficient: string;
  }[];
  readonly drawing: unknown;
}

/** A card keeps the sheet that it was opened on. */
export const readDayClasses: Statement = {
  name: 'results.read-day-classes',
  text: `
    SELECT seat.id AS "seatId", seat.seat_order AS "seatOrder", seat.role AS "seatRole",
           seat.withdrawn_at IS NOT NULL AS withdrawn,
           show_class.id AS "classId", show_class.discipline, show_class.division,
           show_class.placing_rule AS rule, show_class.places_given AS "placesGiven",
           show_class.draw_seed AS "drawSeed",
           (SELECT json_agg(json_build_object('id', id, 'seatOrder', seat_order, 'tieOrder', tie_order,
                     'callOrder', call_order) ORDER BY seat_order)
            FROM panel_seat WHERE class_id = show_class.id) AS panel,
           sheet.definition AS sheet,
           json_build_object('code', sheet.code, 'version', sheet.version, 'hash', sheet.hash) AS "sheetName",
           (SELECT json_build_object('name', pattern.name, 'drawing', pattern.drawing, 'maneuvers',
                     (SELECT coalesce(json_agg(json_build_object('position', position, 'name', name,
                               'description', description, 'startCone', start_cone, 'endCone', end_cone,
                               'gait', gait, 'leadOrDiagonal', lead_or_diagonal,
                               'coefficient', trim_scale(coefficient)::text) ORDER BY position), '[]')
                      FROM pattern_maneuver WHERE pattern_id = pattern.id))
            FROM pattern WHERE pattern.id = show_class.pattern_id) AS pattern,
           card.id AS "cardId",
           draft.content AS "order", draft.version AS "orderVersion", draft.saved_at AS "orderSavedAt",
           last.revision, last.content, last.content_hash AS "contentHash", last.signed_at AS "signedAt",
           last.received_at AS "receivedAt", last.amendment_reason AS "amendmentReason"
    FROM panel_seat seat
    JOIN show_class ON show_class.id = seat.class_id
    LEFT JOIN card ON card.seat_id = seat.id
    JOIN score_sheet sheet ON sheet.id = coalesce(card.sheet_id, show_class.sheet_id)
    LEFT JOIN card_draft_order draft ON draft.card_id = card.id
    LEFT JOIN LATERAL (SELECT * FROM card_revision WHERE card_id = card.id
                       ORDER BY revision DESC LIMIT 1) last ON true
    WHERE seat.id = ANY($1::uuid[]) AND ($2::uuid IS NULL OR show_class.id = $2::uuid)`,
};

export interface DayGoRow {
  readonly cardId: string;
  readonly classEntryId: string;
  readonly version: number;
  readonly savedAt: Date;
  readonly content: Go;
}

/** Goes of cards that are not signed; of one that is, the signed content is what counts. */
export const readDayGoes: Statement = {
  name: 'results.read-day-goes',
  text: `
    SELECT card_id AS "cardId", class_entry_id AS "classEntryId", version, saved_at AS "savedAt", content
    FROM card_draft_go WHERE card_id = ANY($1::uuid[]) ORDER BY class_entry_id`,
};

export interface DayEntryRow {
  readonly classId: string;
  readonly classEntryId: string;
  readonly backNumber: number;
  readonly goPosition: number | null;
  readonly status: string;
  readonly videoUrl: string | null;
}

/** Numbers only: a judge judges numbers. Who has no position yet stands behind, by back number. */
export const readDayEntries: Statement = {
  name: 'results.read-day-entries',
  text: `
    SELECT class_entry.class_id AS "classId", class_entry.id AS "classEntryId",
           entry.back_number AS "backNumber", class_entry.go_position AS "goPosition", class_entry.status,
           class_entry.video_url AS "videoUrl"
    FROM class_entry JOIN entry ON entry.id = class_entry.entry_id
    WHERE class_entry.class_id = ANY($1::uuid[])
    ORDER BY class_entry.go_position NULLS LAST, entry.back_number`,
};
