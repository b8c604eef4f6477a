# Zahlen, Ordnungszahlen, Aufzählungen und Namen im Satz.
#
# Die Wörter: card = Bogen (was ein Richter abgibt), sheet = Vordruck (was darauf bewertet werden darf), class = Prüfung,
# entry = Starter, back number = Startnummer, go = Ritt, maneuver = Manöver, mark = Note, score = Wertung, tie = Gleichstand,
# run-off = Stechen, ruling = Entscheid, panel = Richtergruppe, referee = Schiedsrichter, post = aushängen.

number-decimal = { $whole },{ $after }
number-minus = −{ $figure }
number-plus = +{ $figure }

count = { $n ->
    [0] null
    [1] ein
    [2] zwei
    [3] drei
    [4] vier
    [5] fünf
    [6] sechs
    [7] sieben
    [8] acht
    [9] neun
   *[other] { $n }
}
ordinal = { $n ->
    [1] erster
    [2] zweiter
    [3] dritter
    [4] vierter
    [5] fünfter
    [6] sechster
    [7] siebter
    [8] achter
    [9] neunter
    [10] zehnter
   *[other] { $n }.
}
place = Platz { $n }
place-between = Platz { $n }

list-comma = { $first }, { $next }
list-and = { $first } und { $next }
list-or = { $first } oder { $next }
list-clause = { $first }; { $next }

name-judge = Richter { $number }
name-judge-gone = ein Richter, der die Richtergruppe verlassen hat
name-entry-gone = ein Starter, der die Prüfung verlassen hat
name-maneuver = Manöver { $position }
name-maneuver-called = Manöver { $position } ({ $name })
name-class = Prüfung { $number }
name-class-other = eine andere Prüfung
name-decision = wie festgehalten
name-decision-by = entschieden von { $decidedBy }: { $why }

ruling-off-pattern = Pattern verlassen
ruling-disqualified = disqualifiziert
ruling-excused = entlassen
ruling-eliminated = ausgeschlossen
ruling-no-score = ohne Wertung
ruling-no-show = nicht erschienen
ruling-scratched = gestrichen
ruling-retired = aufgegeben
