# Die Wertung eines Richters, Teil für Teil, zum Nachrechnen.

score-base = Grundwert { $points }.
score-mark = Note { $points }.
score-time = Zeit { $seconds } Sekunden.
score-part = { CAPITAL($label) }: { $points }.
score-part-counts = { CAPITAL($label) }: { $points }, zählt { $counts }.
score-not-seen-left-out = { CAPITAL($label) }: nicht gesehen; zählt nicht mit, weder als Null noch als Fehler.
score-not-seen-absent = { CAPITAL($label) }: nicht gesehen; gilt als nicht gezeigt.
score-penalty-at = { CAPITAL($label) }, { $maneuver }: { $points }.
score-seconds-more = { $points } Sekunden
score-errors-points = Verreiten: { $points }.
score-errors-percent = Verreiten: { $points } Prozent.
score-ruled = Entscheid: { $ruling }; { $effect }.
effect-placed-below = hinter allen, die das Pattern eingehalten haben
effect-not-placed = darf nicht platziert werden
effect-score-stands = die Wertung bleibt bestehen
score-lower-limit = Die Teile ergeben zusammen { $sum }; das zählt als niedrigste Wertung des Vordrucks.
score-ranked = Gereiht, nicht bewertet.
score-none = Keine Wertung.
score-total = Gesamt { $score }.
score-total-seconds = Gesamt { $score } Sekunden.
score-total-percent = Gesamt { $score } Prozent von { $maximum } Punkten.
