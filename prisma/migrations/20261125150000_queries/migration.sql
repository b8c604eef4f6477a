-- What families ask about a result, and what the office answers. Words of a family are personal: they are no evidence,
-- have no trigger that keeps them as they are, and may be erased.

-- CreateTable
CREATE TABLE "query" (
    "id" UUID NOT NULL,
    "show_id" UUID NOT NULL,
    "class_id" UUID NOT NULL,
    "entry_id" UUID,
    "posting_version" INTEGER,
    "about" TEXT NOT NULL,
    "words" TEXT,
    "reached_by" TEXT,
    "follow_hash" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "asked_at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawn_at" TIMESTAMPTZ(3),
    "erased_at" TIMESTAMPTZ(3),

    CONSTRAINT "query_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "query_answer" (
    "id" UUID NOT NULL,
    "query_id" UUID NOT NULL,
    "words" TEXT,
    "outcome" TEXT NOT NULL,
    "answered_by" UUID NOT NULL,
    "answered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "query_answer_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "query_follow_hash_key" ON "query"("follow_hash");

-- CreateIndex
CREATE INDEX "query_show_id_idx" ON "query"("show_id");

-- CreateIndex
CREATE INDEX "query_class_id_idx" ON "query"("class_id");

-- CreateIndex
CREATE INDEX "query_entry_id_idx" ON "query"("entry_id");

-- CreateIndex
CREATE INDEX "query_answer_query_id_idx" ON "query_answer"("query_id");

-- AddForeignKey
ALTER TABLE "query" ADD CONSTRAINT "query_show_id_fkey" FOREIGN KEY ("show_id") REFERENCES "show"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "query" ADD CONSTRAINT "query_class_id_show_id_fkey" FOREIGN KEY ("class_id", "show_id") REFERENCES "show_class"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "query" ADD CONSTRAINT "query_entry_id_show_id_fkey" FOREIGN KEY ("entry_id", "show_id") REFERENCES "entry"("id", "show_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "query_answer" ADD CONSTRAINT "query_answer_query_id_fkey" FOREIGN KEY ("query_id") REFERENCES "query"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "query"
  ADD CONSTRAINT "query_posting_version_positive" CHECK (posting_version > 0),
  ADD CONSTRAINT "query_about_known" CHECK (about IN ('place', 'marks', 'who-rode', 'something-else')),
  ADD CONSTRAINT "query_words_form" CHECK (is_wording(words) AND char_length(words) <= 1000),
  ADD CONSTRAINT "query_reached_by_form" CHECK (is_name(reached_by)),
  ADD CONSTRAINT "query_follow_hash_form" CHECK (is_sha256(follow_hash)),
  ADD CONSTRAINT "query_state_known" CHECK (state IN ('open', 'answered', 'withdrawn')),
  ADD CONSTRAINT "query_withdrawn_says_when" CHECK (withdrawn_at IS NULL OR state = 'withdrawn'),
  ADD CONSTRAINT "query_open_has_words" CHECK (state <> 'open' OR words IS NOT NULL),
  ADD CONSTRAINT "query_erased_is_empty" CHECK (
    (erased_at IS NULL) = (words IS NOT NULL) AND (erased_at IS NULL OR reached_by IS NULL));

ALTER TABLE "query_answer"
  ADD CONSTRAINT "query_answer_words_form" CHECK (is_wording(words)),
  ADD CONSTRAINT "query_answer_outcome_known" CHECK (outcome IN ('stands', 'corrected', 'explained'));

-- What was erased is not filled again.
CREATE TRIGGER "query_stays_erased" BEFORE UPDATE ON "query" FOR EACH ROW
  WHEN (OLD.erased_at IS NOT NULL AND (NEW.erased_at IS DISTINCT FROM OLD.erased_at OR NEW.words IS NOT NULL))
  EXECUTE FUNCTION refuse_taking_back('an erased query stays erased');

SELECT grant_service_rights();
