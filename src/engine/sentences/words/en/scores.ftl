# One judge's score part by part, so that whoever reads it can add it up again.

score-base = Base { $points }.
score-mark = Mark { $points }.
score-time = Time { $seconds } seconds.
# A maneuver, an extra mark or a penalty with its label, and what it gives or takes.
score-part = { CAPITAL($label) }: { $points }.
score-part-counts = { CAPITAL($label) }: { $points }, counts { $counts }.
score-not-seen-left-out = { CAPITAL($label) }: not seen; left out, neither a zero nor a fault.
score-not-seen-absent = { CAPITAL($label) }: not seen; counts as not shown.
score-penalty-at = { CAPITAL($label) }, { $maneuver }: { $points }.
score-seconds-more = { $points } seconds
score-errors-points = Errors of course: { $points }.
score-errors-percent = Errors of course: { $points } percent.
score-ruled = Ruled { $ruling }: { $effect }.
effect-placed-below = placed below all who kept the pattern
effect-not-placed = may not be placed
effect-score-stands = the score stands
score-lower-limit = The parts add up to { $sum }, which counts as the lowest score of the sheet.
score-ranked = Ranked, not scored.
score-none = No score.
score-total = Total { $score }.
score-total-seconds = Total { $score } seconds.
score-total-percent = Total { $score } percent of { $maximum } points.
