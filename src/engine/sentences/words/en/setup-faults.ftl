# What is wrong with a score sheet, the maneuvers of a pattern or its drawing, for who writes them.

sheet-fault-not_a_decimal = "{ $written }" is no plain decimal; write it like "0.5", "70" or "-3"
sheet-fault-not_a_whole_number = "{ $written }" is no whole number
sheet-fault-not_positive = "{ $written }" must be more than zero
sheet-fault-below_zero = "{ $written }" must not be below zero
sheet-fault-range_upside_down = the low end of the range is above the high end
sheet-fault-high_off_step = "{ $written }" is never reached by whole steps from the low end
sheet-fault-code_twice = the code "{ $written }" is there twice; each has its own
sheet-fault-name_empty = it must not be empty
sheet-fault-lowest_above_base = the lower limit "{ $written }" is above the base
sheet-fault-lowest_outside_total_range = the lower limit "{ $written }" is outside the range of the total
sheet-fault-base_outside_total_range = the base "{ $written }" is above the range of the total
sheet-fault-effect_not_on_this_sheet = a ruling cannot have the effect "{ $written }" on this kind of sheet
sheet-fault-absent_needs_rulings = a maneuver not seen counts as not shown, so the judge must rule; the sheet needs at least one ruling
sheet-fault-errors_go_down = "{ $written }" is less than the error before takes; list what the errors take in all, or make them cumulative
sheet-fault-ruling_unknown = there is no ruling "{ $written }"
sheet-fault-position_twice = position "{ $written }" is there twice
sheet-fault-position_gap = position "{ $written }" leaves a gap; positions count from 1
sheet-fault-no_maneuvers = this sheet marks maneuvers, and the pattern has none

drawing-fault-letter_twice = the letter { $written } is there twice; each cone has its own
drawing-fault-cone_not_drawn = a maneuver names cone { $written }, and it is not drawn
drawing-fault-outside_arena = it leaves the arena at { $written }
drawing-fault-position_unknown = the pattern has no maneuver { $written }
drawing-fault-position_twice = maneuver { $written } is drawn twice; put all of its ways under one
drawing-fault-maneuver_not_drawn = maneuver { $written } is not drawn
drawing-fault-maneuver_empty = maneuver { $written } has neither a way nor a mark
drawing-fault-goes_nowhere = it is at { $written } already; leave the step out, or put its aim elsewhere
drawing-fault-radius_too_small = with a radius of { $written } the arc does not reach from one end to the other
