# Why an entry stands where it does: the cards first, then each tie, then what a card notes.

lead = { CAPITAL(ORDINAL($place)) }: { $clause }.
lead-only-placed = { CAPITAL(ORDINAL($place)) }: the only entry placed.
lead-only-left = { CAPITAL(ORDINAL($place)) }: the only entry left.

# What the merge of the cards came to.
merge-aside = { $clause } ({ $notes })
merge-card-place = { $judge } had it { $place }
merge-card-place-scored = { $judge } had it { $place } with { $score }
merge-card-off = { $judge } left it off the card
merge-times = { $weight } × { $value }
merge-plus = { $first } + { $next }
merge-equals = { $sum } = { $total }
merge-points = { $sum } points
merge-mean = mean of { $values } = { $value }
merge-places = places { $values } add up to { $total }
merge-one-place = place { $total }
merge-nothing = none
merge-pairwise = compared one by one, the judges had { $entry } { $wins ->
    [0] behind every other entry
    [1] ahead of or level with one other entry
   *[other] ahead of or level with { COUNT($wins) } other entries
}
merge-majority-part = { COUNT($had) } of { COUNT($judges) } judges had { $entry } { majority-column }
merge-majority-all = { $judges ->
    [1] the judge
    [2] both judges
   *[other] all { COUNT($judges) } judges
} had { $entry } { majority-column }
majority-column = { $column ->
    [1] first
   *[other] { ORDINAL($column) } or better
}
merge-majority-behind = { $clause }; { $entry } had { $had ->
    [0] none
   *[other] only { COUNT($had) }
}
merge-majority-short = { COUNT($had) } of { COUNT($judges) } judges placed { $entry }, and a majority needs { COUNT($needed) }
merge-referee-only = { $entry } stood next on the one judge's card that still had entries
merge-referee-agreed = both judges had { $entry } next
merge-referee-none = the judges differed between { $entry } and { $others }, and the referee had none of them higher
merge-referee-higher = the judges differed between { $entry } and { $others }, and the referee had { $higher } higher

aside-discarded-high = { $judge }'s { $value }, the highest, discarded
aside-discarded-low = { $judge }'s { $value }, the lowest, discarded
aside-left-off = left off by { $judge }: counts { $value }
aside-no-score = no score from { $judge }: counts { $value }

# Status comes before score.
status-kept = { $entry } kept the pattern, and stands above all who did not
status-below = placed below all who kept the pattern, as ruled by { $judges }
status-sentence = { CAPITAL($clause) }.

# A tie that was split. $sides: the numbers on both sides.
tie-ahead = Tied with { $others }; ahead by { $criterion } ({ $sides }).
tie-behind = Tied with { $others }; behind by { $criterion } ({ $sides }).
tie-between = Tied with { $others }; ahead of some by { $criterion } ({ $sides }).
tie-by-lot = Tied with { $others }; placed { ORDINAL($rank) } of the { COUNT($of) } by lot from the announced seed "{ $seed }".
tie-decided = Tied with { $others }; placed { ORDINAL($rank) } of the { COUNT($of) } { $how }, { $decision }.
tie-more = { $n } more
tie-side = { $entry }: { $value }
tie-side-none = { $entry }: none

decided-run-off = by a run-off
decided-re-work = by a re-work
decided-judge = by a judge's ruling
decided-coin = by the toss of a coin
decided-share = by agreement
decided-declined = after a run-off was declined

criterion-majority-size = the judges who had it { ORDINAL($column) } or better
criterion-majority-total = the total of the places { ORDINAL($column) } or better, the least first
criterion-total-of-all = the total of the places of all judges, the least first
criterion-judges-in-favor = the judges in favor over all pairs
criterion-maneuver = the marks on { $maneuver }
criterion-count-back = { $rank ->
    [1] the highest maneuver mark
   *[other] the { ORDINAL($rank) } highest maneuver mark
}
criterion-form = form and effectiveness
criterion-penalty-points = points in penalties, the fewest first
criterion-penalty-count = the number of penalties, the fewest first
criterion-tie-judge = the card of { $judge }, tie judge
criterion-head-to-head = the number of tied entries that more judges had it ahead of
criterion-best-single-place = the best place with any judge
criterion-most-places = the number of { ORDINAL($at) } places
criterion-discarded = all judges added, the discarded ones too
criterion-referee = the place on the referee's card
criterion-added-up = added up

# A tie that stands.
shared-run-off = Tied with { $others }: a run-off will decide, unless it is declined.
shared-for-good = Tied with { $others }, and they share the place.
shared-unsplit = Tied with { $others }: nothing in the rule of this class splits them, so they share the place.
open-tie-run-off = { $entries } are tied for place { $place }. The rule of the class asks for a run-off: record how it ended, or that it was declined.
open-tie-chain-ended = { $entries } are tied for place { $place }, and no tie-break of the class splits them: record who decided and why, or that the place is shared.

# What a judge's card says beside the numbers.
note-left-out = { CAPITAL($judge) } could not see { $maneuver }; it is left out of that score, neither a zero nor a fault.
note-absent = { CAPITAL($judge) } could not see { $maneuver }; it is judged as not shown, and the judge ruled on the pattern.
note-score-stands = { CAPITAL($judge) } noted { $ruling }; at the judge's discretion the score stands.
note-lower-limit = { CAPITAL($judge) }'s marks add up to { $sum }, which counts as the lowest score of the sheet.

# Why an entry has no place.
unplaced-ruled = { $entry } may not be placed: ruled { $rulings } by { $judges }.
unplaced-ruled-out = { $entry } may not be placed: ruled out by { $judges }.
unplaced-on-no-card = { $entry } is on no judge's card.
unplaced-no-score = { $entry } has no score from { $judges }, and every judge's score is needed.
unplaced-beyond-places = Only { $given ->
    [1] one place is
   *[other] { COUNT($given) } places are
} given in this class.
unplaced-did-not-go = It did not go.

caution = Ringledger records and adds up; it does not rule. The governing body and the decisions of the judges, the steward and the ground jury stand over it.
