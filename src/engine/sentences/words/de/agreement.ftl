# Wie knapp es war, und wie weit sich die Richter einig waren.

margin-change = { CAPITAL($size) } auf { $cards } hätte { $behind } vor { $ahead } gebracht.
margin-status = { $behind } wurde hinter alle gesetzt, die das Pattern eingehalten haben; keine Note hätte { $behind } vor { $ahead } gebracht.
margin-none = Keine einzelne Änderung auf dem Bogen eines Richters hätte { $behind } vor { $ahead } gebracht.
margin-half-point = ein Unterschied von einem halben Punkt
margin-one-point = ein Unterschied von einem Punkt
margin-points = ein Unterschied von { $points } Punkten
margin-places = ein Unterschied von { $places ->
    [one] einem Platz
   *[other] { COUNT($places) } Plätzen
}
margin-card = dem Bogen von { $judge }
margin-cards = dem Bogen von { $judges }

agreement-none = Die Richter haben zu wenig gemeinsam, um zu sagen, wie weit sie sich einig waren.
agreement-fully = Die { COUNT($judges) } Richter waren sich über die { COUNT($entries) } Starter, die alle platziert haben, fast völlig einig ({ agreement-figures }).
agreement-well = Die { COUNT($judges) } Richter waren sich über die { COUNT($entries) } Starter, die alle platziert haben, gut einig ({ agreement-figures }).
agreement-in-part = Die { COUNT($judges) } Richter waren sich über die { COUNT($entries) } Starter, die alle platziert haben, zum Teil einig ({ agreement-figures }).
agreement-little = Die { COUNT($judges) } Richter waren sich über die { COUNT($entries) } Starter, die alle platziert haben, wenig einig ({ agreement-figures }).
agreement-figures = Kendalls W { $w }; 1 heißt dieselbe Reihenfolge auf jedem Bogen, 0 keine gemeinsame
agreement-least = { CAPITAL($judges) } waren sich am wenigsten einig (Kendalls tau-b { $tau }).
drift-rose = Die Wertungen von { $judge } stiegen um etwa { $by } Punkte auf je zehn Ritte; vielleicht kamen die besseren Ritte einfach spät.
drift-fell = Die Wertungen von { $judge } fielen um etwa { $by } Punkte auf je zehn Ritte; vielleicht kamen die besseren Ritte einfach früh.
