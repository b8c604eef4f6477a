# What is wrong with a go or a card, and what to write instead.

fault-at-maneuver = { $maneuver }: { $fault }
fault-of-entry = { $entry }, { $fault }

allowed-range = { $low } to { $high } by { $step }
allowed-span = { $low } to { $high }
allowed-none = none

go-fault-nothing-marked = no mark counts: mark at least one maneuver, or give a ruling
go-fault-mark_missing = no mark yet; write { $allowed }
go-fault-mark_missing-maneuver = no mark yet; write { $allowed }, or say that it was not seen
go-fault-mark_not_a_number = "{ $written }" is no mark; write a plain decimal, { $allowed }
go-fault-mark_out_of_range = "{ $written }" is outside the range; write { $allowed }
go-fault-mark_off_step = "{ $written }" is between two steps; write { $allowed }
go-fault-maneuver_unknown = the pattern has no maneuver "{ $written }"; its maneuvers are { $allowed }
go-fault-maneuver_twice = it is marked twice; keep one mark
go-fault-extra_missing = { $part } has no mark yet; write { $allowed }
go-fault-extra_unknown = the sheet has no mark called "{ $written }"; it has { $allowed }
go-fault-penalty_unknown = the sheet has no penalty "{ $written }"; it has { $allowed }
go-fault-ruling_unknown = the ruling "{ $written }" may not be given on this sheet; it has { $allowed }
go-fault-ruling_missing = it was not seen and counts as not shown, so the judge must rule on the pattern; write one of { $allowed }
go-fault-measure_missing = no time yet; write seconds, { $allowed }
go-fault-errors_not_a_count = "{ $written }" is no number of errors of course; write a whole number from 0
go-fault-total_out_of_range = the total of { $written } is outside the range of the sheet, { $allowed }; check the marks
go-fault-not_on_this_sheet = the sheet of this class has no { $part }; take it out

part-maneuvers = marks for maneuvers
part-extras = marks beside the maneuvers
part-penalties = penalties
part-errorsOfCourse = errors of course
part-mark = single mark
part-measure = time
part-ranking = ranking: the scores are the ranking

card-fault-entry_missing = { $entry } is not on the card; mark the go, or give a ruling
card-fault-entry_not_going = { $entry } does not go in this class; take it off the card
card-fault-entry_unknown = { $entry } is not entered in this class; take it off the card
card-fault-ranked_twice = { $entry } is ranked twice; keep one place
card-fault-ranked_but_ruled_out = { $entry } is ranked, and ruled out on the same card; take away one of the two
card-fault-ranking_too_short = { $written } ranked; rank the first { $first }
card-fault-ranking_too_long = { $written } ranked; rank the first { $first } only, each place once
card-fault-own_order_not_a_tie = { $written }: order the whole tie and nothing else: { $tie }
card-fault-own_order_no_tie = { $written }: not tied on this card; an own order is for ties only
card-fault-open_tie = { $entries } are tied: order them, best first
