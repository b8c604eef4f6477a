-- Every request of a judge's phone asks for her seats.
CREATE INDEX "panel_seat_person_id_idx" ON "panel_seat"("person_id");
