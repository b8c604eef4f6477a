-- What is said once about a show, a class or a person and never taken back, whoever writes to the database.

CREATE FUNCTION refuse_taking_back() RETURNS trigger LANGUAGE plpgsql AS
$$
BEGIN
  RAISE EXCEPTION 'Change of % refused: %', TG_TABLE_NAME, TG_ARGV[0] USING ERRCODE = 'restrict_violation';
END
$$;

-- Otherwise a rehearsal could be turned into results.
CREATE TRIGGER "show_kind_stays" BEFORE UPDATE ON "show" FOR EACH ROW
  WHEN (OLD.kind IS DISTINCT FROM NEW.kind OR OLD.rehearsal_of_id IS DISTINCT FROM NEW.rehearsal_of_id)
  EXECUTE FUNCTION refuse_taking_back('a show is official or practice from the first day on');

-- The record of somebody whose name was erased is not filled again.
CREATE TRIGGER "exhibitor_stays_erased" BEFORE UPDATE ON "exhibitor" FOR EACH ROW
  WHEN (OLD.erased_at IS NOT NULL
        AND (NEW.erased_at IS DISTINCT FROM OLD.erased_at OR NEW.name IS DISTINCT FROM OLD.name))
  EXECUTE FUNCTION refuse_taking_back('an erased name stays erased');

-- A class was empty when its first card was opened; that is said in the ledger once.
CREATE TRIGGER "show_class_stays_opened" BEFORE UPDATE ON "show_class" FOR EACH ROW
  WHEN (OLD.opened_at IS NOT NULL AND NEW.opened_at IS DISTINCT FROM OLD.opened_at)
  EXECUTE FUNCTION refuse_taking_back('a class is opened once');
