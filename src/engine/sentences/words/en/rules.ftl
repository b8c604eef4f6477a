# The placing rule of a class, as a family reads it before the first go.

rule-separate = Each judge's card is a result of its own.
rule-total = The judges' scores are added{ rule-discard }; the best total is first. { $noScore }
rule-mean = The mean of the judges' scores counts{ rule-discard }. { $noScore }
rule-mean-rounded = The mean of the judges' scores counts{ rule-discard }, rounded to { COUNT($digits) } { $digits ->
    [one] decimal
   *[other] decimals
}. { $noScore }
rule-rank-sum = The places on all cards are added{ rule-discard }; the least total is first. { $unlisted }
rule-place-points = Each place earns points ({ $points }), added over the judges{ rule-discard }; the most points are first.
rule-majority = An entry takes the best place that more than half of the judges give it or better; { $equalMajorities }.
rule-two-judges-and-referee = Where the two judges agree on the next entry it is placed; where they differ, the referee's card decides between the two.
rule-pairwise = Every entry is compared with every other, judge by judge; the one with the most pairs won or level is first, then the one with the most judges in favor.

# $discard: "none" or "high-and-low".
rule-discard = { $discard ->
    [high-and-low] , one highest and one lowest left out where there are four judges or more
   *[none] {""}
}

no-score-zero = A missing score counts as zero.
no-score-not-placed = Without a score from every judge an entry is not placed.
no-score-mean = A missing score counts as the mean of those given.

unlisted-next = Left off a card counts as one place behind the last on that card.
unlisted-mean = Left off a card counts as the mean of the places left.
unlisted-place = Left off a card counts as place { $place }.

equal-majorities-totals = then the larger majority, the lower total of its places, and the lower total of all places decide
equal-majorities-next-places = then the larger majority, the lower total of its places, and the next lower places in turn decide
equal-majorities-average = then the larger majority and the lower total of all places decide

rule-no-ties = Ties that are left wait for a ruling.
rule-ties = Ties are broken by { $ties }.
rule-ties-then = { $first }, then { $next }
rule-tie-maneuvers = the marks on { $maneuvers }, in that order
rule-tie-count-back = counting back from the highest maneuver marks
rule-tie-form = form and effectiveness
rule-tie-penalties-points = the fewest points in penalties
rule-tie-penalties-number = the fewest penalties
rule-tie-judge = the card of { $judges }, in that order
rule-tie-judge-turning = the card of { $judges }, in that order, turning by one with each class
rule-tie-judges-of-panel = the tie judges
rule-tie-head-to-head = the majority of the judges between the tied
rule-tie-best-single-place = the best place with any judge
rule-tie-most-firsts = the most firsts, then seconds, and so on
rule-tie-discarded = the total with the discarded ones brought back
rule-tie-run-off = a run-off
rule-tie-draw = a draw by lot from the announced seed
rule-tie-share = nothing more: the place is shared

rule-places = { $given ->
    [one] { CAPITAL(COUNT($given)) } place is given.
   *[other] { CAPITAL(COUNT($given)) } places are given.
}

# What is wrong with a placing rule, for the office.
rule-fault-needs_scores = This method adds scores, and the sheet of the class gives none: choose a method that merges places.
rule-fault-needs_maneuvers = This tie-break compares marks of maneuvers: name them in order, on a sheet that marks maneuvers.
rule-fault-needs_form = This tie-break compares form or collective marks, and the sheet of the class has none.
rule-fault-needs_penalties = This tie-break compares penalties, and the sheet of the class has none.
rule-fault-needs_discard = This tie-break brings discarded scores back, and the method discards none.
rule-fault-needs_seed = A draw needs the seed that was announced.
rule-fault-needs_judges = This tie-break asks the tie judges: name their order on the panel.
rule-fault-needs_referee = Two judges and a referee need exactly two judges and one referee on the panel.
rule-fault-judge_not_on_panel = A tie judge is named who does not sit on this panel.
rule-fault-missing_time_is_no_zero = A missing time may not count as zero, the best time there is: say that the entry may not be placed.
rule-fault-not_a_decimal = A decimal is needed here, such as "10" or "0.5".
rule-fault-after_share = Nothing can follow "share": the place is shared and that is final.
rule-fault-maneuver_unknown = The pattern has no such maneuver; they count from 1.
