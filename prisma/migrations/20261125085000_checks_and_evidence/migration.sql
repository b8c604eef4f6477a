-- What the database itself refuses, whoever writes to it.

-- A name in any script: not blank, at most 200 characters, no control characters.
CREATE FUNCTION is_name(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT char_length(value) BETWEEN 1 AND 200 AND value = btrim(value) AND value !~ '[\u0001-\u001f\u007f-\u009f]' $$;

-- A text that says why, how or what for: not blank, at most 2,000 characters.
CREATE FUNCTION is_wording(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT char_length(value) BETWEEN 1 AND 2000 AND btrim(value) <> '' $$;

CREATE FUNCTION is_sha256(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT value ~ '^[0-9a-f]{64}$' $$;

CREATE FUNCTION is_public_name(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT value IN ('full', 'first-name-and-initial', 'back-number') $$;

ALTER TABLE "show"
  ADD CONSTRAINT "show_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "show_place_form" CHECK (is_name(place)),
  ADD CONSTRAINT "show_time_zone_form" CHECK (char_length(time_zone) BETWEEN 1 AND 64),
  ADD CONSTRAINT "show_days_in_order" CHECK (last_day >= first_day),
  ADD CONSTRAINT "show_minor_public_name_known" CHECK (is_public_name(minor_public_name)),
  ADD CONSTRAINT "show_version_positive" CHECK (version > 0);

ALTER TABLE "ring" ADD CONSTRAINT "ring_name_form" CHECK (is_name(name));
ALTER TABLE "person" ADD CONSTRAINT "person_name_form" CHECK (is_name(name));
ALTER TABLE "owner" ADD CONSTRAINT "owner_name_form" CHECK (is_name(name));
ALTER TABLE "horse"
  ADD CONSTRAINT "horse_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "horse_registration_number_form" CHECK (is_name(registration_number));
ALTER TABLE "exhibitor"
  ADD CONSTRAINT "exhibitor_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "exhibitor_public_name_known" CHECK (is_public_name(public_name)),
  ADD CONSTRAINT "exhibitor_version_positive" CHECK (version > 0);

ALTER TABLE "score_sheet"
  ADD CONSTRAINT "score_sheet_code_form" CHECK (code ~ '^[a-z0-9]+(-[a-z0-9]+)*$' AND char_length(code) <= 60),
  ADD CONSTRAINT "score_sheet_version_positive" CHECK (version > 0),
  ADD CONSTRAINT "score_sheet_hash_form" CHECK (is_sha256(hash)),
  ADD CONSTRAINT "score_sheet_origin_known" CHECK (origin IN ('bundled', 'added')),
  ADD CONSTRAINT "score_sheet_names_itself" CHECK (
    definition ->> 'code' = code AND (definition ->> 'version')::integer = version);

ALTER TABLE "pattern"
  ADD CONSTRAINT "pattern_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "pattern_version_positive" CHECK (version > 0);

ALTER TABLE "pattern_maneuver"
  ADD CONSTRAINT "pattern_maneuver_position_positive" CHECK (position > 0),
  ADD CONSTRAINT "pattern_maneuver_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "pattern_maneuver_description_form" CHECK (is_wording(description)),
  ADD CONSTRAINT "pattern_maneuver_cones_are_letters" CHECK (
    (start_cone IS NULL OR start_cone ~ '^[A-Z]$') AND (end_cone IS NULL OR end_cone ~ '^[A-Z]$')),
  ADD CONSTRAINT "pattern_maneuver_gait_form" CHECK (is_name(gait)),
  ADD CONSTRAINT "pattern_maneuver_lead_or_diagonal_known" CHECK (lead_or_diagonal IN ('left', 'right')),
  ADD CONSTRAINT "pattern_maneuver_coefficient_positive" CHECK (coefficient > 0);

ALTER TABLE "show_class"
  ADD CONSTRAINT "show_class_number_positive" CHECK (number > 0),
  ADD CONSTRAINT "show_class_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "show_class_discipline_form" CHECK (is_name(discipline)),
  ADD CONSTRAINT "show_class_division_form" CHECK (is_name(division)),
  ADD CONSTRAINT "show_class_places_given_positive" CHECK (places_given > 0),
  ADD CONSTRAINT "show_class_publish_cards_known" CHECK (
    publish_cards IN ('never', 'with-posting', 'when-official')),
  ADD CONSTRAINT "show_class_draw_seed_form" CHECK (is_name(draw_seed)),
  ADD CONSTRAINT "show_class_status_known" CHECK (status IN ('open', 'cancelled', 'combined')),
  ADD CONSTRAINT "show_class_version_positive" CHECK (version > 0);

ALTER TABLE "class_relation"
  ADD CONSTRAINT "class_relation_kind_known" CHECK (kind IN ('split', 'combined')),
  ADD CONSTRAINT "class_relation_two_classes" CHECK (from_class_id <> to_class_id),
  ADD CONSTRAINT "class_relation_reason_given" CHECK (is_wording(reason));

ALTER TABLE "panel_seat"
  ADD CONSTRAINT "panel_seat_order_positive" CHECK (seat_order > 0),
  ADD CONSTRAINT "panel_seat_role_known" CHECK (role IN ('judge', 'referee')),
  ADD CONSTRAINT "panel_seat_call_order_positive" CHECK (call_order > 0),
  ADD CONSTRAINT "panel_seat_tie_order_positive" CHECK (tie_order > 0),
  ADD CONSTRAINT "panel_seat_withdrawn_says_why" CHECK (
    (withdrawn_at IS NULL) = (withdrawn_why IS NULL) AND is_wording(withdrawn_why)),
  ADD CONSTRAINT "panel_seat_replaces_another" CHECK (replaces_seat_id <> id);

ALTER TABLE "entry"
  ADD CONSTRAINT "entry_back_number_range" CHECK (back_number BETWEEN 1 AND 99999),
  ADD CONSTRAINT "entry_version_positive" CHECK (version > 0);

ALTER TABLE "class_entry"
  ADD CONSTRAINT "class_entry_go_position_positive" CHECK (go_position > 0),
  ADD CONSTRAINT "class_entry_status_known" CHECK (
    status IN ('entered', 'checked-in', 'scratched', 'no-show', 'excused', 'moved')),
  ADD CONSTRAINT "class_entry_status_says_why" CHECK (
    is_wording(status_reason) AND (status IN ('entered', 'checked-in') OR status_reason IS NOT NULL));

ALTER TABLE "order_draw"
  ADD CONSTRAINT "order_draw_number_positive" CHECK (number > 0),
  ADD CONSTRAINT "order_draw_kind_known" CHECK (kind IN ('drawn', 'redrawn', 'by-hand', 'late-add')),
  ADD CONSTRAINT "order_draw_seed_form" CHECK (is_name(seed)),
  ADD CONSTRAINT "order_draw_gaps_positive" CHECK (enough_gap > 0 AND least_gap > 0),
  ADD CONSTRAINT "order_draw_lot_has_seed" CHECK ((kind IN ('drawn', 'redrawn')) = (seed IS NOT NULL)),
  ADD CONSTRAINT "order_draw_says_why" CHECK (is_wording(reason) AND (kind = 'drawn' OR reason IS NOT NULL));

ALTER TABLE "card_draft_go" ADD CONSTRAINT "card_draft_go_version_positive" CHECK (version > 0);
ALTER TABLE "card_draft_order" ADD CONSTRAINT "card_draft_order_version_positive" CHECK (version > 0);

ALTER TABLE "card_revision"
  ADD CONSTRAINT "card_revision_positive" CHECK (revision > 0),
  ADD CONSTRAINT "card_revision_content_hash_form" CHECK (is_sha256(content_hash)),
  ADD CONSTRAINT "card_revision_names_the_one_before" CHECK (
    (revision = 1) = (previous_hash IS NULL) AND is_sha256(previous_hash)),
  ADD CONSTRAINT "card_revision_amendment_says_why" CHECK (
    (revision = 1) = (amendment_reason IS NULL) AND is_wording(amendment_reason));

ALTER TABLE "ruling"
  ADD CONSTRAINT "ruling_kind_form" CHECK (kind ~ '^[a-z]+(-[a-z]+)*$'),
  ADD CONSTRAINT "ruling_decided_by_form" CHECK (is_name(decided_by)),
  ADD CONSTRAINT "ruling_says_why" CHECK (is_wording(why));

ALTER TABLE "posting"
  ADD CONSTRAINT "posting_version_positive" CHECK (version > 0),
  ADD CONSTRAINT "posting_state_known" CHECK (state IN ('provisional', 'official', 'corrected')),
  ADD CONSTRAINT "posting_rule_hash_form" CHECK (is_sha256(rule_hash)),
  ADD CONSTRAINT "posting_body_hash_form" CHECK (is_sha256(body_hash)),
  ADD CONSTRAINT "posting_correction_says_why" CHECK (
    is_wording(reason) AND (state <> 'corrected' OR reason IS NOT NULL));

ALTER TABLE "access_token"
  ADD CONSTRAINT "access_token_role_known" CHECK (role IN ('office', 'judge', 'scribe', 'gate', 'public')),
  ADD CONSTRAINT "access_token_of_a_show" CHECK (role = 'office' OR show_id IS NOT NULL),
  ADD CONSTRAINT "access_token_seat_of_a_judge" CHECK ((role IN ('judge', 'scribe')) = (seat_id IS NOT NULL)),
  ADD CONSTRAINT "access_token_label_form" CHECK (is_name(label)),
  ADD CONSTRAINT "access_token_ends_later" CHECK (expires_at > issued_at);

ALTER TABLE "ledger_head" ADD CONSTRAINT "ledger_head_sequence_counts" CHECK (sequence >= 0);
ALTER TABLE "ledger_line"
  ADD CONSTRAINT "ledger_line_sequence_positive" CHECK (sequence > 0),
  ADD CONSTRAINT "ledger_line_type_form" CHECK (type ~ '^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$');

ALTER TABLE "idempotency_key"
  ADD CONSTRAINT "idempotency_key_length" CHECK (char_length(key) BETWEEN 1 AND 255),
  ADD CONSTRAINT "idempotency_key_request_hash_form" CHECK (is_sha256(request_hash)),
  ADD CONSTRAINT "idempotency_key_status_is_http" CHECK (status BETWEEN 100 AND 599);

-- Evidence is never changed and never removed. What is wrong in it is put right by a new line.
CREATE FUNCTION refuse_change_of_evidence() RETURNS trigger LANGUAGE plpgsql AS
$$
BEGIN
  RAISE EXCEPTION '% of % refused: evidence is never changed or removed; add a new line that says what is right',
    TG_OP, TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END
$$;

-- For each statement, so that even one that meets no row is refused.
CREATE TRIGGER "card_revision_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "card_revision"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
CREATE TRIGGER "ruling_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "ruling"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
CREATE TRIGGER "posting_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "posting"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
CREATE TRIGGER "ledger_line_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "ledger_line"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
CREATE TRIGGER "order_draw_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "order_draw"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
CREATE TRIGGER "score_sheet_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "score_sheet"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
CREATE TRIGGER "class_relation_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "class_relation"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
