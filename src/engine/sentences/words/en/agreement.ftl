# How close it was, and how far the judges agreed.

margin-change = { CAPITAL($size) } on { $cards } would have put { $behind } ahead of { $ahead }.
margin-status = { $behind } was placed below all who kept the pattern, so no mark could have put { $behind } ahead of { $ahead }.
margin-none = No single change on one judge's card would have put { $behind } ahead of { $ahead }.
margin-half-point = half a point
margin-one-point = one point
margin-points = { $points } points
margin-places = { COUNT($places) } { $places ->
    [one] place
   *[other] places
}
margin-card = { $judge }'s card
margin-cards = the card of { $judges }

agreement-none = There is too little that the judges have in common to say how far they agreed.
# Kendall's W: 1 is the same order on every card, 0 no common order.
agreement-fully = The { COUNT($judges) } judges agreed almost fully on the { COUNT($entries) } entries that all of them placed ({ agreement-figures }).
agreement-well = The { COUNT($judges) } judges agreed well on the { COUNT($entries) } entries that all of them placed ({ agreement-figures }).
agreement-in-part = The { COUNT($judges) } judges agreed in part on the { COUNT($entries) } entries that all of them placed ({ agreement-figures }).
agreement-little = The { COUNT($judges) } judges agreed little on the { COUNT($entries) } entries that all of them placed ({ agreement-figures }).
agreement-figures = Kendall's W { $w }; 1 is the same order on every card, 0 no common order
agreement-least = { CAPITAL($judges) } agreed least (Kendall's tau-b { $tau }).
drift-rose = { CAPITAL($judge) }'s scores rose by about { $by } points over every ten goes; the better goes may simply have come late.
drift-fell = { CAPITAL($judge) }'s scores fell by about { $by } points over every ten goes; the better goes may simply have come early.
