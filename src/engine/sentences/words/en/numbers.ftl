# Numbers, ordinals, lists and names inside a sentence.

# $whole, $after: the digits before and after the decimal mark.
number-decimal = { $whole }.{ $after }
number-minus = −{ $figure }
number-plus = +{ $figure }

count = { $n ->
    [0] none
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
   *[other] { $n }
}
ordinal = { $n ->
    [1] first
    [2] second
    [3] third
    [4] fourth
    [5] fifth
    [6] sixth
    [7] seventh
    [8] eighth
    [9] ninth
    [10] tenth
   *[other] { place }
}
# A place on a card; place-between: the mean of places that are shared, such as 2.5.
place = { $n ->
    [one] { $n }st
    [two] { $n }nd
    [few] { $n }rd
   *[other] { $n }th
}
place-between = { $n }

list-comma = { $first }, { $next }
list-and = { $first } and { $next }
list-or = { $first } or { $next }
list-clause = { $first }; { $next }

name-judge = judge { $number }
name-judge-gone = a judge who left the panel
name-entry-gone = an entry that left the class
name-maneuver = maneuver { $position }
name-maneuver-called = maneuver { $position } ({ $name })
name-class = class { $number }
name-class-other = another class
name-decision = as recorded
name-decision-by = ruled by { $decidedBy }: { $why }

ruling-off-pattern = off pattern
ruling-disqualified = disqualified
ruling-excused = excused
ruling-eliminated = eliminated
ruling-no-score = no score
ruling-no-show = no show
ruling-scratched = scratched
ruling-retired = retired
