# Warum ein Starter steht, wo er steht: erst die Bögen, dann jeder Gleichstand, dann was auf einem Bogen vermerkt ist.

lead = Platz { $place }: { CAPITAL($clause) }.
lead-only-placed = Platz { $place }: Als Einziges platziert.
lead-only-left = Platz { $place }: Als Letztes übrig.

# Was die Bögen zusammen ergaben.
merge-aside = { $clause } ({ $notes })
merge-card-place = { $judge } hatte es auf { $place }
merge-card-place-scored = { $judge } hatte es auf { $place } mit { $score }
merge-card-off = { $judge } hatte es nicht auf dem Bogen
merge-times = { $weight } × { $value }
merge-plus = { $first } + { $next }
merge-equals = { $sum } = { $total }
merge-points = { $sum } Punkte
merge-mean = Mittel aus { $values } = { $value }
merge-places = Plätze { $values } ergeben zusammen { $total }
merge-one-place = auf dem Bogen Platz { $total }
merge-nothing = nichts
merge-pairwise = eins gegen eins verglichen lag { $entry } bei den Richtern { $wins ->
    [0] hinter allen anderen Startern
    [1] vor einem anderen Starter oder gleichauf mit ihm
   *[other] vor { COUNT($wins) } anderen Startern oder gleichauf mit ihnen
}
merge-majority-part = { $had ->
    [0] keiner von { COUNT($judges) } Richtern hatte
    [1] einer von { COUNT($judges) } Richtern hatte
   *[other] { COUNT($had) } von { COUNT($judges) } Richtern hatten
} { $entry } { majority-column }
merge-majority-all = { $judges ->
    [1] der Richter hatte
    [2] beide Richter hatten
   *[other] alle { COUNT($judges) } Richter hatten
} { $entry } { majority-column }
majority-column = { $column ->
    [1] auf Platz 1
   *[other] auf Platz { $column } oder besser
}
merge-majority-behind = { $clause }; { $entry } { $had ->
    [0] hatte keiner
    [1] hatte nur einer
   *[other] hatten nur { COUNT($had) }
}
merge-majority-short = { $had ->
    [0] keiner
    [1] einer
   *[other] { COUNT($had) }
} von { $judges ->
    [1] einem Richter
   *[other] { COUNT($judges) } Richtern
} { $had ->
    [0] platzierte
    [1] platzierte
   *[other] platzierten
} { $entry }, und eine Mehrheit braucht { $needed ->
    [1] einen
   *[other] { COUNT($needed) }
}
merge-referee-only = { $entry } stand als Nächstes auf dem einzigen Richterbogen, der noch Starter hatte
merge-referee-agreed = beide Richter hatten { $entry } als Nächstes
merge-referee-none = die Richter waren zwischen { $entry } und { $others } uneins, und der Schiedsrichter hatte keinen davon höher
merge-referee-higher = die Richter waren zwischen { $entry } und { $others } uneins, und der Schiedsrichter hatte { $higher } höher

aside-discarded-high = { $value } von { $judge } als höchster Wert gestrichen
aside-discarded-low = { $value } von { $judge } als niedrigster Wert gestrichen
aside-left-off = nicht auf dem Bogen von { $judge }: zählt { $value }
aside-no-score = keine Wertung von { $judge }: zählt { $value }

# Status kommt vor Wertung.
status-kept = { $entry } hat das Pattern eingehalten und steht vor allen, die es nicht taten
status-below = hinter alle gesetzt, die das Pattern eingehalten haben, nach Entscheid von { $judges }
status-sentence = { CAPITAL($clause) }.

# Ein Gleichstand, der gelöst wurde. $sides: die Zahlen auf beiden Seiten. Nach „nach“ steht der Dativ.
tie-ahead = Gleichstand mit { $others }; davor nach { $criterion } ({ $sides }).
tie-behind = Gleichstand mit { $others }; dahinter nach { $criterion } ({ $sides }).
tie-between = Gleichstand mit { $others }; vor einem Teil davon nach { $criterion } ({ $sides }).
tie-by-lot = Gleichstand mit { $others }; durch das Los aus dem bekannt gegebenen Startwert „{ $seed }“ als { ORDINAL($rank) } von { $of } gesetzt.
tie-decided = Gleichstand mit { $others }; { $how } als { ORDINAL($rank) } von { $of } gesetzt, { $decision }.
tie-more = { $n } weitere
tie-side = { $entry }: { $value }
tie-side-none = { $entry }: nichts

decided-run-off = durch Stechen
decided-re-work = nach erneutem Vorstellen
decided-judge = durch Richterentscheid
decided-coin = durch Münzwurf
decided-share = nach Einigung
decided-declined = nach abgelehntem Stechen

criterion-majority-size = der Zahl der Richter mit Platz { $column } oder besser
criterion-majority-total = der Summe der Plätze { $column } oder besser, die kleinste zuerst
criterion-total-of-all = der Summe der Plätze aller Richter, die kleinste zuerst
criterion-judges-in-favor = der Zahl der Richterstimmen in allen Vergleichen
criterion-maneuver = den Noten für { $maneuver }
criterion-count-back = { $rank ->
    [1] der höchsten Manövernote
   *[other] der { $rank }.-höchsten Manövernote
}
criterion-form = Haltung und Einwirkung
criterion-penalty-points = Strafpunkten, die wenigsten zuerst
criterion-penalty-count = der Zahl der Fehler, die wenigsten zuerst
criterion-tie-judge = dem Bogen von { $judge }, der bei Gleichstand entscheidet
criterion-head-to-head = der Zahl der Gleichplatzierten, die bei mehr Richtern dahinter lagen
criterion-best-single-place = dem besten Platz bei einem Richter
criterion-most-places = der Zahl der { $at }. Plätze
criterion-discarded = der Summe aller Richter samt den gestrichenen
criterion-referee = dem Platz auf dem Bogen des Schiedsrichters
criterion-added-up = der Summe

# Ein Gleichstand, der bleibt.
shared-run-off = Gleichstand mit { $others }: Ein Stechen entscheidet, sofern es nicht abgelehnt wird.
shared-for-good = Gleichstand mit { $others }; der Platz ist geteilt.
shared-unsplit = Gleichstand mit { $others }: Nichts in der Regel dieser Prüfung trennt sie, also ist der Platz geteilt.
open-tie-run-off = { $entries } liegen gleichauf auf Platz { $place }. Die Regel der Prüfung verlangt ein Stechen: bitte festhalten, wie es ausging oder dass es abgelehnt wurde.
open-tie-chain-ended = { $entries } liegen gleichauf auf Platz { $place }, und nichts in der Regel der Prüfung trennt sie: bitte festhalten, wer entschieden hat und warum, oder dass der Platz geteilt ist.

# Was auf einem Bogen neben den Zahlen steht.
note-left-out = { CAPITAL($judge) } konnte { $maneuver } nicht sehen; es zählt in dieser Wertung nicht mit, weder als Null noch als Fehler.
note-absent = { CAPITAL($judge) } konnte { $maneuver } nicht sehen; es gilt als nicht gezeigt, und der Richter hat über das Pattern entschieden.
note-score-stands = { CAPITAL($judge) } vermerkte: { $ruling }; nach Ermessen des Richters bleibt die Wertung bestehen.
note-lower-limit = Die Noten von { $judge } ergeben zusammen { $sum }; das zählt als niedrigste Wertung des Vordrucks.

# Warum ein Starter keinen Platz hat.
unplaced-ruled = { $entry } darf nicht platziert werden: { $rulings }, entschieden von { $judges }.
unplaced-ruled-out = { $entry } darf nicht platziert werden: herausgenommen, entschieden von { $judges }.
unplaced-on-no-card = { $entry } steht auf keinem Richterbogen.
unplaced-no-score = { $entry } hat keine Wertung von { $judges }, und es braucht die Wertung jedes Richters.
unplaced-beyond-places = In dieser Prüfung { $given ->
    [1] wird nur ein Platz
   *[other] werden nur { COUNT($given) } Plätze
} vergeben.
unplaced-did-not-go = Nicht gestartet.

caution = Ringledger schreibt auf und rechnet zusammen; es entscheidet nichts. Der Verband und die Entscheidungen von Richtern, Steward und Jury stehen darüber.
