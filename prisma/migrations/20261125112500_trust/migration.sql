-- Accounts of the office, paired phones, signed cards, paper cards, consents, and a ledger whose lines are chained
-- and sealed.

-- What was signed before had no signatures, and none can be made up for it.
DO $$
BEGIN
  IF EXISTS (SELECT FROM ledger_line) THEN
    RAISE EXCEPTION 'This database holds a show from before cards were signed on the phone. '
      'Keep it as it is, and start with an empty database; for the demo: npm run demo -- --fresh';
  END IF;
END
$$;

-- DropForeignKey
ALTER TABLE "access_token" DROP CONSTRAINT "access_token_show_id_fkey";

-- DropForeignKey
ALTER TABLE "access_token" DROP CONSTRAINT "access_token_seat_id_fkey";

-- DropForeignKey
ALTER TABLE "ledger_head" DROP CONSTRAINT "ledger_head_show_id_fkey";

-- DropForeignKey
ALTER TABLE "ledger_line" DROP CONSTRAINT "ledger_line_show_id_fkey";

-- AlterTable
ALTER TABLE "show" ADD COLUMN     "kind" TEXT NOT NULL DEFAULT 'official',
ADD COLUMN     "rehearsal_of_id" UUID,
ALTER COLUMN "minor_public_name" SET DEFAULT 'back-number';

-- AlterTable
ALTER TABLE "show_class" ADD COLUMN     "opened_at" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "exhibitor" ADD COLUMN     "erased_at" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "card_revision" ADD COLUMN     "jws" TEXT,
ADD COLUMN     "paper_card_id" UUID,
ADD COLUMN     "phone_id" UUID;

-- AlterTable
ALTER TABLE "ruling" ADD COLUMN     "recorded_by" UUID;

-- AlterTable
ALTER TABLE "posting" ADD COLUMN     "jws" TEXT NOT NULL,
ADD COLUMN     "ledger_hash" TEXT NOT NULL,
ADD COLUMN     "ledger_sequence" INTEGER NOT NULL;

-- AlterTable
ALTER TABLE "ledger_head" DROP CONSTRAINT "ledger_head_pkey",
DROP COLUMN "show_id",
ADD COLUMN     "hash" TEXT,
ADD COLUMN     "ledger_id" UUID NOT NULL,
ADD CONSTRAINT "ledger_head_pkey" PRIMARY KEY ("ledger_id");

-- AlterTable
ALTER TABLE "ledger_line" DROP CONSTRAINT "ledger_line_pkey",
DROP COLUMN "show_id",
ADD COLUMN     "actor" JSONB NOT NULL,
ADD COLUMN     "hash" TEXT NOT NULL,
ADD COLUMN     "ledger_id" UUID NOT NULL,
ADD COLUMN     "previous_hash" TEXT,
ADD COLUMN     "seal" TEXT NOT NULL,
ADD CONSTRAINT "ledger_line_pkey" PRIMARY KEY ("ledger_id", "sequence");

-- DropTable
DROP TABLE "access_token";

-- CreateTable
CREATE TABLE "exhibitor_consent" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "exhibitor_id" UUID NOT NULL,
    "public_name" TEXT NOT NULL,
    "given_by" TEXT NOT NULL,
    "given_on" DATE NOT NULL,
    "how" TEXT NOT NULL,
    "recorded_by" UUID NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "exhibitor_consent_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "paper_card" (
    "id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "seat_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "previous_hash" TEXT,
    "reason" TEXT,
    "status" TEXT NOT NULL DEFAULT 'open',
    "withdrawn_why" TEXT,
    "salt" TEXT NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "paper_card_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "paper_entry" (
    "paper_card_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "content" JSONB NOT NULL,
    "content_hash" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "paper_entry_pkey" PRIMARY KEY ("paper_card_id","account_id")
);

-- CreateTable
CREATE TABLE "paper_photo" (
    "paper_card_id" UUID NOT NULL,
    "bytes" BYTEA NOT NULL,
    "media_type" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "stored_by" UUID NOT NULL,
    "stored_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "paper_photo_pkey" PRIMARY KEY ("paper_card_id")
);

-- CreateTable
CREATE TABLE "account" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "sign_in" TEXT NOT NULL,
    "duty" TEXT NOT NULL,
    "whole_service" BOOLEAN NOT NULL DEFAULT false,
    "password_hash" TEXT,
    "totp_secret" TEXT,
    "totp_last_step" BIGINT,
    "failed_sign_ins" INTEGER NOT NULL DEFAULT 0,
    "slowed_until" TIMESTAMPTZ(3),
    "setup_hash" TEXT,
    "setup_ends_at" TIMESTAMPTZ(3),
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "closed_at" TIMESTAMPTZ(3),

    CONSTRAINT "account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "account_show" (
    "account_id" UUID NOT NULL,
    "show_id" UUID NOT NULL,

    CONSTRAINT "account_show_pkey" PRIMARY KEY ("account_id","show_id")
);

-- CreateTable
CREATE TABLE "session" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "seen_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "invitation" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "person_id" UUID,
    "label" TEXT,
    "code_hash" TEXT NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "phone" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "person_id" UUID,
    "label" TEXT,
    "public_key" JSONB NOT NULL,
    "thumbprint" TEXT NOT NULL,
    "invitation_id" UUID,
    "paired_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),
    "revoked_why" TEXT,

    CONSTRAINT "phone_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "spent_proof" (
    "hash" TEXT NOT NULL,
    "spent_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "spent_proof_pkey" PRIMARY KEY ("hash")
);

-- CreateTable
CREATE TABLE "signing_key" (
    "kid" TEXT NOT NULL,
    "jwk" JSONB NOT NULL,
    "source" TEXT NOT NULL,
    "added_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "signing_key_pkey" PRIMARY KEY ("kid")
);

-- CreateIndex
CREATE INDEX "exhibitor_consent_exhibitor_id_idx" ON "exhibitor_consent"("exhibitor_id");

-- CreateIndex
CREATE INDEX "paper_card_seat_id_idx" ON "paper_card"("seat_id");

-- CreateIndex
CREATE UNIQUE INDEX "account_sign_in_key" ON "account"("sign_in");

-- CreateIndex
CREATE UNIQUE INDEX "account_setup_hash_key" ON "account"("setup_hash");

-- CreateIndex
CREATE INDEX "account_show_show_id_idx" ON "account_show"("show_id");

-- CreateIndex
CREATE UNIQUE INDEX "session_token_hash_key" ON "session"("token_hash");

-- CreateIndex
CREATE INDEX "session_account_id_idx" ON "session"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "invitation_code_hash_key" ON "invitation"("code_hash");

-- CreateIndex
CREATE INDEX "invitation_show_id_idx" ON "invitation"("show_id");

-- CreateIndex
CREATE UNIQUE INDEX "phone_thumbprint_key" ON "phone"("thumbprint");

-- CreateIndex
CREATE UNIQUE INDEX "phone_invitation_id_key" ON "phone"("invitation_id");

-- CreateIndex
CREATE INDEX "phone_show_id_idx" ON "phone"("show_id");

-- CreateIndex
CREATE INDEX "phone_person_id_idx" ON "phone"("person_id");

-- CreateIndex
CREATE INDEX "spent_proof_spent_at_idx" ON "spent_proof"("spent_at");

-- CreateIndex
CREATE UNIQUE INDEX "card_revision_paper_card_id_key" ON "card_revision"("paper_card_id");

-- AddForeignKey
ALTER TABLE "show" ADD CONSTRAINT "show_rehearsal_of_id_fkey" FOREIGN KEY ("rehearsal_of_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exhibitor_consent" ADD CONSTRAINT "exhibitor_consent_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exhibitor_consent" ADD CONSTRAINT "exhibitor_consent_exhibitor_id_show_id_fkey" FOREIGN KEY ("exhibitor_id", "show_id") REFERENCES "exhibitor"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_revision" ADD CONSTRAINT "card_revision_phone_id_fkey" FOREIGN KEY ("phone_id") REFERENCES "phone"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "card_revision" ADD CONSTRAINT "card_revision_paper_card_id_fkey" FOREIGN KEY ("paper_card_id") REFERENCES "paper_card"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "paper_card" ADD CONSTRAINT "paper_card_class_id_fkey" FOREIGN KEY ("class_id") REFERENCES "show_class"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "paper_card" ADD CONSTRAINT "paper_card_seat_id_fkey" FOREIGN KEY ("seat_id") REFERENCES "panel_seat"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "paper_entry" ADD CONSTRAINT "paper_entry_paper_card_id_fkey" FOREIGN KEY ("paper_card_id") REFERENCES "paper_card"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "paper_photo" ADD CONSTRAINT "paper_photo_paper_card_id_fkey" FOREIGN KEY ("paper_card_id") REFERENCES "paper_card"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "account_show" ADD CONSTRAINT "account_show_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "account_show" ADD CONSTRAINT "account_show_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_person_id_show_id_fkey" FOREIGN KEY ("person_id", "show_id") REFERENCES "person"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "phone" ADD CONSTRAINT "phone_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "phone" ADD CONSTRAINT "phone_person_id_show_id_fkey" FOREIGN KEY ("person_id", "show_id") REFERENCES "person"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "phone" ADD CONSTRAINT "phone_invitation_id_fkey" FOREIGN KEY ("invitation_id") REFERENCES "invitation"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



-- What the database itself refuses, whoever writes to it.

-- JSON Web Signature, compact serialization (RFC 7515, section 7.1).
CREATE FUNCTION is_jws(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT value ~ '^[A-Za-z0-9_-]+\.[A-Za-z0-9_-]+\.[A-Za-z0-9_-]+$' $$;

-- The same with its payload left out (RFC 7515, appendix F).
CREATE FUNCTION is_detached_jws(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT value ~ '^[A-Za-z0-9_-]+\.\.[A-Za-z0-9_-]+$' $$;

-- SHA-256 in base64url, as RFC 7638 writes a thumbprint.
CREATE FUNCTION is_thumbprint(value text) RETURNS boolean LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT value ~ '^[A-Za-z0-9_-]{43}$' $$;

ALTER TABLE "show"
  ADD CONSTRAINT "show_kind_known" CHECK (kind IN ('official', 'practice')),
  ADD CONSTRAINT "show_rehearsal_is_practice" CHECK (rehearsal_of_id IS NULL OR kind = 'practice'),
  ADD CONSTRAINT "show_minors_carefully" CHECK (minor_public_name <> 'full');

ALTER TABLE "exhibitor" ADD CONSTRAINT "exhibitor_erased_is_nameless" CHECK (
  erased_at IS NULL OR (born_on IS NULL AND public_name = 'back-number'));

ALTER TABLE "exhibitor_consent"
  ADD CONSTRAINT "exhibitor_consent_public_name_known" CHECK (is_public_name(public_name)),
  ADD CONSTRAINT "exhibitor_consent_given_by_known" CHECK (given_by IN ('exhibitor', 'parent', 'guardian')),
  ADD CONSTRAINT "exhibitor_consent_how_known" CHECK (how IN ('signed-form', 'e-mail', 'in-person'));

-- A signature of a phone, or a paper card that two people entered: one of them, never both.
ALTER TABLE "card_revision"
  ADD CONSTRAINT "card_revision_jws_form" CHECK (is_jws(jws)),
  ADD CONSTRAINT "card_revision_signed_or_on_paper" CHECK (
    (jws IS NULL) = (phone_id IS NULL) AND (jws IS NULL) <> (paper_card_id IS NULL));

ALTER TABLE "paper_card"
  ADD CONSTRAINT "paper_card_revision_positive" CHECK (revision > 0),
  ADD CONSTRAINT "paper_card_names_the_one_before" CHECK (
    (revision = 1) = (previous_hash IS NULL) AND is_sha256(previous_hash)),
  ADD CONSTRAINT "paper_card_amendment_says_why" CHECK (
    is_wording(reason) AND (revision = 1 OR reason IS NOT NULL)),
  ADD CONSTRAINT "paper_card_status_known" CHECK (status IN ('open', 'accepted', 'withdrawn')),
  ADD CONSTRAINT "paper_card_withdrawn_says_why" CHECK (
    (status = 'withdrawn') = (withdrawn_why IS NOT NULL) AND is_wording(withdrawn_why)),
  ADD CONSTRAINT "paper_card_salt_form" CHECK (salt ~ '^[0-9a-f]{32}$');

-- One at a time for a seat.
CREATE UNIQUE INDEX "paper_card_one_open" ON "paper_card" (seat_id) WHERE status = 'open';

ALTER TABLE "paper_entry"
  ADD CONSTRAINT "paper_entry_content_hash_form" CHECK (is_sha256(content_hash)),
  ADD CONSTRAINT "paper_entry_version_positive" CHECK (version > 0);

ALTER TABLE "paper_photo"
  ADD CONSTRAINT "paper_photo_is_jpeg" CHECK (media_type = 'image/jpeg'),
  ADD CONSTRAINT "paper_photo_size" CHECK (octet_length(bytes) BETWEEN 1 AND 8388608 AND width > 0 AND height > 0),
  ADD CONSTRAINT "paper_photo_hash_form" CHECK (is_sha256(hash));

ALTER TABLE "posting"
  ADD CONSTRAINT "posting_jws_form" CHECK (is_jws(jws)),
  ADD CONSTRAINT "posting_ledger_head_form" CHECK (ledger_sequence > 0 AND is_sha256(ledger_hash));

ALTER TABLE "account"
  ADD CONSTRAINT "account_name_form" CHECK (is_name(name)),
  ADD CONSTRAINT "account_sign_in_form" CHECK (sign_in ~ '^[a-z0-9]([a-z0-9._@+-]{0,98}[a-z0-9])?$'),
  ADD CONSTRAINT "account_duty_known" CHECK (duty IN ('manager', 'secretary', 'points-secretary')),
  ADD CONSTRAINT "account_password_is_argon2id" CHECK (password_hash LIKE '$argon2id$%'),
  ADD CONSTRAINT "account_needs_both_factors" CHECK (password_hash IS NULL OR totp_secret IS NOT NULL),
  ADD CONSTRAINT "account_failed_sign_ins_count" CHECK (failed_sign_ins >= 0),
  ADD CONSTRAINT "account_setup_hash_form" CHECK (
    is_sha256(setup_hash) AND (setup_hash IS NULL) = (setup_ends_at IS NULL)),
  ADD CONSTRAINT "account_version_positive" CHECK (version > 0);

ALTER TABLE "session"
  ADD CONSTRAINT "session_token_hash_form" CHECK (is_sha256(token_hash)),
  ADD CONSTRAINT "session_ends_later" CHECK (ends_at > created_at);

ALTER TABLE "invitation"
  ADD CONSTRAINT "invitation_role_known" CHECK (role IN ('judge', 'scribe', 'gate')),
  ADD CONSTRAINT "invitation_of_a_judge" CHECK ((role = 'gate') = (person_id IS NULL)),
  ADD CONSTRAINT "invitation_label_form" CHECK (is_name(label)),
  ADD CONSTRAINT "invitation_code_hash_form" CHECK (is_sha256(code_hash)),
  ADD CONSTRAINT "invitation_ends_later" CHECK (ends_at > created_at);

ALTER TABLE "phone"
  ADD CONSTRAINT "phone_role_known" CHECK (role IN ('judge', 'scribe', 'gate')),
  ADD CONSTRAINT "phone_of_a_judge" CHECK ((role = 'gate') = (person_id IS NULL)),
  ADD CONSTRAINT "phone_label_form" CHECK (is_name(label)),
  ADD CONSTRAINT "phone_thumbprint_form" CHECK (is_thumbprint(thumbprint)),
  ADD CONSTRAINT "phone_key_is_public" CHECK (NOT public_key ? 'd'),
  ADD CONSTRAINT "phone_revoked_says_why" CHECK (
    (revoked_at IS NULL) = (revoked_why IS NULL) AND is_wording(revoked_why));

-- Lost in a crash at worst together with the few minutes for which a proof is good.
ALTER TABLE "spent_proof" SET UNLOGGED;

ALTER TABLE "signing_key"
  ADD CONSTRAINT "signing_key_kid_form" CHECK (is_thumbprint(kid)),
  ADD CONSTRAINT "signing_key_source_known" CHECK (source IN ('own', 'imported')),
  ADD CONSTRAINT "signing_key_is_public" CHECK (NOT jwk ? 'd');

ALTER TABLE "ledger_head" ADD CONSTRAINT "ledger_head_hash_form" CHECK (
  is_sha256(hash) AND (sequence = 0) = (hash IS NULL));
ALTER TABLE "ledger_line"
  ADD CONSTRAINT "ledger_line_hash_form" CHECK (is_sha256(hash)),
  ADD CONSTRAINT "ledger_line_follows_another" CHECK (
    (sequence = 1) = (previous_hash IS NULL) AND is_sha256(previous_hash)),
  ADD CONSTRAINT "ledger_line_seal_form" CHECK (is_detached_jws(seal));

CREATE TRIGGER "signing_key_stays" BEFORE UPDATE OR DELETE OR TRUNCATE ON "signing_key"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_evidence();
