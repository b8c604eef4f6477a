-- CreateTable
CREATE TABLE "show" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "place" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "first_day" DATE NOT NULL,
    "last_day" DATE NOT NULL,
    "minor_public_name" TEXT NOT NULL DEFAULT 'first-name-and-initial',
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "show_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ring" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "ring_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "score_sheet" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "definition" JSONB NOT NULL,
    "hash" TEXT NOT NULL,
    "origin" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "score_sheet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "pattern" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "pattern_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "pattern_maneuver" (
    "pattern_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "description" TEXT,
    "start_cone" TEXT,
    "end_cone" TEXT,
    "gait" TEXT,
    "lead_or_diagonal" TEXT,
    "coefficient" DECIMAL(9,3) NOT NULL DEFAULT 1,

    CONSTRAINT "pattern_maneuver_pkey" PRIMARY KEY ("pattern_id","position")
);

-- CreateTable
CREATE TABLE "show_class" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "discipline" TEXT NOT NULL,
    "division" TEXT,
    "youth" BOOLEAN NOT NULL DEFAULT false,
    "sheet_id" UUID NOT NULL,
    "pattern_id" UUID,
    "placing_rule" JSONB NOT NULL,
    "places_given" INTEGER,
    "ring_id" UUID,
    "day" DATE,
    "scheduled_at" TIMESTAMPTZ(3),
    "publish_cards" TEXT NOT NULL DEFAULT 'with-posting',
    "draw_seed" TEXT NOT NULL,
    "status" TEXT NOT NULL DEFAULT 'open',
    "called_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "show_class_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "class_relation" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "from_class_id" UUID NOT NULL,
    "to_class_id" UUID NOT NULL,
    "class_entry_ids" UUID[],
    "reason" TEXT NOT NULL,
    "related_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "class_relation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "panel_seat" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "seat_order" INTEGER NOT NULL,
    "role" TEXT NOT NULL DEFAULT 'judge',
    "call_order" INTEGER,
    "tie_order" INTEGER,
    "withdrawn_at" TIMESTAMPTZ(3),
    "withdrawn_why" TEXT,
    "replaces_seat_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "panel_seat_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "exhibitor" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "born_on" DATE,
    "public_name" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "exhibitor_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "horse" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "registration_number" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "horse_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "owner" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "owner_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "entry" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "back_number" INTEGER NOT NULL,
    "exhibitor_id" UUID NOT NULL,
    "horse_id" UUID NOT NULL,
    "owner_id" UUID,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "class_entry" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "go_position" INTEGER,
    "status" TEXT NOT NULL DEFAULT 'entered',
    "status_reason" TEXT,
    "added_late" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "changed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "class_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "order_draw" (
    "id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "seed" TEXT,
    "enough_gap" INTEGER,
    "least_gap" INTEGER,
    "class_entry_ids" UUID[],
    "reason" TEXT,
    "drawn_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "order_draw_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "card" (
    "id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "seat_id" UUID NOT NULL,
    "sheet_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "card_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "card_draft_go" (
    "card_id" UUID NOT NULL,
    "class_entry_id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "content" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "saved_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "card_draft_go_pkey" PRIMARY KEY ("card_id","class_entry_id")
);

-- CreateTable
CREATE TABLE "card_draft_order" (
    "card_id" UUID NOT NULL,
    "content" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "saved_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "card_draft_order_pkey" PRIMARY KEY ("card_id")
);

-- CreateTable
CREATE TABLE "card_revision" (
    "id" UUID NOT NULL,
    "card_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "content" JSONB NOT NULL,
    "content_hash" TEXT NOT NULL,
    "previous_hash" TEXT,
    "signed_by_seat_id" UUID NOT NULL,
    "signed_at" TIMESTAMPTZ(3) NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL,
    "amendment_reason" TEXT,

    CONSTRAINT "card_revision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ruling" (
    "id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "class_entry_ids" UUID[],
    "decision" JSONB NOT NULL,
    "decided_by" TEXT NOT NULL,
    "why" TEXT NOT NULL,
    "ruled_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "ruling_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "posting" (
    "id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "snapshot" JSONB NOT NULL,
    "rule_hash" TEXT NOT NULL,
    "body_hash" TEXT NOT NULL,
    "card_revision_ids" UUID[],
    "reason" TEXT,
    "posted_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "posting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "access_token" (
    "jti" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "show_id" UUID,
    "seat_id" UUID,
    "label" TEXT,
    "issued_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "access_token_pkey" PRIMARY KEY ("jti")
);

-- CreateTable
CREATE TABLE "ledger_head" (
    "show_id" UUID NOT NULL,
    "sequence" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "ledger_head_pkey" PRIMARY KEY ("show_id")
);

-- CreateTable
CREATE TABLE "ledger_line" (
    "show_id" UUID NOT NULL,
    "sequence" INTEGER NOT NULL,
    "type" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "ledger_line_pkey" PRIMARY KEY ("show_id","sequence")
);

-- CreateTable
CREATE TABLE "idempotency_key" (
    "key" TEXT NOT NULL,
    "scope" TEXT NOT NULL,
    "request_hash" TEXT NOT NULL,
    "status" INTEGER,
    "response" JSONB,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "idempotency_key_pkey" PRIMARY KEY ("key","scope")
);

-- CreateIndex
CREATE UNIQUE INDEX "ring_show_id_name_key" ON "ring"("show_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "ring_id_show_id_key" ON "ring"("id", "show_id");

-- CreateIndex
CREATE UNIQUE INDEX "person_id_show_id_key" ON "person"("id", "show_id");

-- CreateIndex
CREATE UNIQUE INDEX "score_sheet_code_version_key" ON "score_sheet"("code", "version");

-- CreateIndex
CREATE UNIQUE INDEX "pattern_show_id_name_key" ON "pattern"("show_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "pattern_id_show_id_key" ON "pattern"("id", "show_id");

-- CreateIndex
CREATE UNIQUE INDEX "show_class_show_id_number_key" ON "show_class"("show_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "show_class_id_show_id_key" ON "show_class"("id", "show_id");

-- CreateIndex
CREATE INDEX "class_relation_from_class_id_idx" ON "class_relation"("from_class_id");

-- CreateIndex
CREATE INDEX "class_relation_to_class_id_idx" ON "class_relation"("to_class_id");

-- CreateIndex
CREATE UNIQUE INDEX "panel_seat_replaces_seat_id_key" ON "panel_seat"("replaces_seat_id");

-- Checked when the transaction ends, so that an order may be turned around in one go.
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_class_id_seat_order_key" UNIQUE ("class_id", "seat_order") DEFERRABLE INITIALLY DEFERRED;

-- Checked when the transaction ends, so that an order may be turned around in one go.
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_class_id_call_order_key" UNIQUE ("class_id", "call_order") DEFERRABLE INITIALLY DEFERRED;

-- Checked when the transaction ends, so that an order may be turned around in one go.
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_class_id_tie_order_key" UNIQUE ("class_id", "tie_order") DEFERRABLE INITIALLY DEFERRED;

-- CreateIndex
CREATE UNIQUE INDEX "panel_seat_id_class_id_key" ON "panel_seat"("id", "class_id");

-- CreateIndex
CREATE UNIQUE INDEX "exhibitor_id_show_id_key" ON "exhibitor"("id", "show_id");

-- CreateIndex
CREATE UNIQUE INDEX "horse_id_show_id_key" ON "horse"("id", "show_id");

-- CreateIndex
CREATE UNIQUE INDEX "owner_id_show_id_key" ON "owner"("id", "show_id");

-- CreateIndex
CREATE UNIQUE INDEX "entry_show_id_back_number_key" ON "entry"("show_id", "back_number");

-- CreateIndex
CREATE UNIQUE INDEX "entry_id_show_id_key" ON "entry"("id", "show_id");

-- CreateIndex
CREATE INDEX "class_entry_entry_id_idx" ON "class_entry"("entry_id");

-- CreateIndex
CREATE UNIQUE INDEX "class_entry_class_id_entry_id_key" ON "class_entry"("class_id", "entry_id");

-- Checked when the transaction ends, so that an order may be turned around in one go.
ALTER TABLE "class_entry" ADD CONSTRAINT "class_entry_class_id_go_position_key" UNIQUE ("class_id", "go_position") DEFERRABLE INITIALLY DEFERRED;

-- CreateIndex
CREATE UNIQUE INDEX "class_entry_id_class_id_key" ON "class_entry"("id", "class_id");

-- CreateIndex
CREATE UNIQUE INDEX "order_draw_class_id_number_key" ON "order_draw"("class_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "card_seat_id_key" ON "card"("seat_id");

-- CreateIndex
CREATE UNIQUE INDEX "card_class_id_seat_id_key" ON "card"("class_id", "seat_id");

-- CreateIndex
CREATE UNIQUE INDEX "card_seat_id_class_id_key" ON "card"("seat_id", "class_id");

-- CreateIndex
CREATE UNIQUE INDEX "card_id_class_id_key" ON "card"("id", "class_id");

-- CreateIndex
CREATE UNIQUE INDEX "card_revision_card_id_revision_key" ON "card_revision"("card_id", "revision");

-- CreateIndex
CREATE INDEX "ruling_class_id_idx" ON "ruling"("class_id");

-- CreateIndex
CREATE UNIQUE INDEX "posting_class_id_version_key" ON "posting"("class_id", "version");

-- CreateIndex
CREATE INDEX "access_token_show_id_idx" ON "access_token"("show_id");

-- CreateIndex
CREATE INDEX "access_token_seat_id_idx" ON "access_token"("seat_id");

-- CreateIndex
CREATE INDEX "idempotency_key_created_at_idx" ON "idempotency_key"("created_at");

-- AddForeignKey
ALTER TABLE "ring" ADD CONSTRAINT "ring_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "person" ADD CONSTRAINT "person_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "pattern" ADD CONSTRAINT "pattern_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "pattern_maneuver" ADD CONSTRAINT "pattern_maneuver_pattern_id_fkey" FOREIGN KEY ("pattern_id") REFERENCES "pattern"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "show_class" ADD CONSTRAINT "show_class_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "show_class" ADD CONSTRAINT "show_class_sheet_id_fkey" FOREIGN KEY ("sheet_id") REFERENCES "score_sheet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "show_class" ADD CONSTRAINT "show_class_pattern_id_show_id_fkey" FOREIGN KEY ("pattern_id", "show_id") REFERENCES "pattern"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "show_class" ADD CONSTRAINT "show_class_ring_id_show_id_fkey" FOREIGN KEY ("ring_id", "show_id") REFERENCES "ring"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_relation" ADD CONSTRAINT "class_relation_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_relation" ADD CONSTRAINT "class_relation_from_class_id_show_id_fkey" FOREIGN KEY ("from_class_id", "show_id") REFERENCES "show_class"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_relation" ADD CONSTRAINT "class_relation_to_class_id_show_id_fkey" FOREIGN KEY ("to_class_id", "show_id") REFERENCES "show_class"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_class_id_show_id_fkey" FOREIGN KEY ("class_id", "show_id") REFERENCES "show_class"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_person_id_show_id_fkey" FOREIGN KEY ("person_id", "show_id") REFERENCES "person"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "panel_seat" ADD CONSTRAINT "panel_seat_replaces_seat_id_fkey" FOREIGN KEY ("replaces_seat_id") REFERENCES "panel_seat"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exhibitor" ADD CONSTRAINT "exhibitor_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "horse" ADD CONSTRAINT "horse_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "owner" ADD CONSTRAINT "owner_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entry" ADD CONSTRAINT "entry_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entry" ADD CONSTRAINT "entry_exhibitor_id_show_id_fkey" FOREIGN KEY ("exhibitor_id", "show_id") REFERENCES "exhibitor"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entry" ADD CONSTRAINT "entry_horse_id_show_id_fkey" FOREIGN KEY ("horse_id", "show_id") REFERENCES "horse"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "entry" ADD CONSTRAINT "entry_owner_id_show_id_fkey" FOREIGN KEY ("owner_id", "show_id") REFERENCES "owner"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_entry" ADD CONSTRAINT "class_entry_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_entry" ADD CONSTRAINT "class_entry_class_id_show_id_fkey" FOREIGN KEY ("class_id", "show_id") REFERENCES "show_class"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "class_entry" ADD CONSTRAINT "class_entry_entry_id_show_id_fkey" FOREIGN KEY ("entry_id", "show_id") REFERENCES "entry"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_draw" ADD CONSTRAINT "order_draw_class_id_fkey" FOREIGN KEY ("class_id") REFERENCES "show_class"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card" ADD CONSTRAINT "card_class_id_fkey" FOREIGN KEY ("class_id") REFERENCES "show_class"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card" ADD CONSTRAINT "card_seat_id_class_id_fkey" FOREIGN KEY ("seat_id", "class_id") REFERENCES "panel_seat"("id", "class_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card" ADD CONSTRAINT "card_sheet_id_fkey" FOREIGN KEY ("sheet_id") REFERENCES "score_sheet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_draft_go" ADD CONSTRAINT "card_draft_go_card_id_class_id_fkey" FOREIGN KEY ("card_id", "class_id") REFERENCES "card"("id", "class_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_draft_go" ADD CONSTRAINT "card_draft_go_class_entry_id_class_id_fkey" FOREIGN KEY ("class_entry_id", "class_id") REFERENCES "class_entry"("id", "class_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_draft_order" ADD CONSTRAINT "card_draft_order_card_id_fkey" FOREIGN KEY ("card_id") REFERENCES "card"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_revision" ADD CONSTRAINT "card_revision_card_id_fkey" FOREIGN KEY ("card_id") REFERENCES "card"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_revision" ADD CONSTRAINT "card_revision_signed_by_seat_id_fkey" FOREIGN KEY ("signed_by_seat_id") REFERENCES "panel_seat"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ruling" ADD CONSTRAINT "ruling_class_id_fkey" FOREIGN KEY ("class_id") REFERENCES "show_class"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "posting" ADD CONSTRAINT "posting_class_id_fkey" FOREIGN KEY ("class_id") REFERENCES "show_class"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "access_token" ADD CONSTRAINT "access_token_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "access_token" ADD CONSTRAINT "access_token_seat_id_fkey" FOREIGN KEY ("seat_id") REFERENCES "panel_seat"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ledger_head" ADD CONSTRAINT "ledger_head_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ledger_line" ADD CONSTRAINT "ledger_line_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


