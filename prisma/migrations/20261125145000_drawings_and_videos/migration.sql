-- The drawing of a pattern, the video of a go, and how a name is spoken.

ALTER TABLE "pattern" ADD COLUMN "drawing" JSONB;
ALTER TABLE "pattern" ADD CONSTRAINT "pattern_drawing_form" CHECK (jsonb_typeof(drawing) = 'object');

ALTER TABLE "class_entry" ADD COLUMN "video_url" TEXT;
ALTER TABLE "class_entry" ADD CONSTRAINT "class_entry_video_url_form" CHECK (
  video_url ~ '^https://[^[:space:][:cntrl:]]+$' AND char_length(video_url) <= 500);

ALTER TABLE "exhibitor" ADD COLUMN "spoken_as" TEXT;
ALTER TABLE "exhibitor" ADD CONSTRAINT "exhibitor_spoken_as_form" CHECK (is_name(spoken_as));
ALTER TABLE "horse" ADD COLUMN "spoken_as" TEXT;
ALTER TABLE "horse" ADD CONSTRAINT "horse_spoken_as_form" CHECK (is_name(spoken_as));

-- How an erased name was spoken is not told either.
DROP TRIGGER "exhibitor_stays_erased" ON "exhibitor";
CREATE TRIGGER "exhibitor_stays_erased" BEFORE UPDATE ON "exhibitor" FOR EACH ROW
  WHEN (OLD.erased_at IS NOT NULL
        AND (NEW.erased_at IS DISTINCT FROM OLD.erased_at OR NEW.name IS DISTINCT FROM OLD.name
             OR NEW.spoken_as IS NOT NULL))
  EXECUTE FUNCTION refuse_taking_back('an erased name stays erased');

SELECT grant_service_rights();
