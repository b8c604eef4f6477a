# Was an einem Ritt oder einem Bogen nicht stimmt, und was stattdessen hingehört.

fault-at-maneuver = { $maneuver }: { $fault }
fault-of-entry = { $entry }, { $fault }

allowed-range = { $low } bis { $high } in Schritten von { $step }
allowed-span = { $low } bis { $high }
allowed-none = nichts

go-fault-nothing-marked = keine Note zählt: bitte wenigstens ein Manöver benoten oder einen Entscheid geben
go-fault-mark_missing = noch keine Note; möglich: { $allowed }
go-fault-mark_missing-maneuver = noch keine Note; möglich: { $allowed }, oder „nicht gesehen“
go-fault-mark_not_a_number = „{ $written }“ ist keine Note; möglich ist eine Dezimalzahl, { $allowed }
go-fault-mark_out_of_range = „{ $written }“ liegt außerhalb; möglich: { $allowed }
go-fault-mark_off_step = „{ $written }“ liegt zwischen zwei Schritten; möglich: { $allowed }
go-fault-maneuver_unknown = das Pattern hat kein Manöver „{ $written }“; es hat { $allowed }
go-fault-maneuver_twice = zweimal benotet; bitte nur eine Note behalten
go-fault-extra_missing = { $part }: noch keine Note; möglich: { $allowed }
go-fault-extra_unknown = der Vordruck kennt keine Note „{ $written }“; er kennt { $allowed }
go-fault-penalty_unknown = der Vordruck kennt keinen Abzug „{ $written }“; er kennt { $allowed }
go-fault-ruling_unknown = der Entscheid „{ $written }“ darf auf diesem Vordruck nicht gegeben werden; er kennt { $allowed }
go-fault-ruling_missing = nicht gesehen und gilt als nicht gezeigt, also muss der Richter über das Pattern entscheiden; möglich: { $allowed }
go-fault-measure_missing = noch keine Zeit; bitte Sekunden, { $allowed }
go-fault-errors_not_a_count = „{ $written }“ ist keine Anzahl von Verreiten; möglich ist eine ganze Zahl ab 0
go-fault-total_out_of_range = die Gesamtwertung { $written } liegt außerhalb des Vordrucks, { $allowed }; bitte die Noten prüfen
go-fault-not_on_this_sheet = das hat der Vordruck dieser Prüfung nicht: { $part }; bitte herausnehmen

part-maneuvers = Noten für Manöver
part-extras = Noten neben den Manövern
part-penalties = Abzüge
part-errorsOfCourse = Verreiten
part-mark = eine einzelne Note
part-measure = eine Zeit
part-ranking = eine Reihung (die Wertungen sind die Reihung)

card-fault-entry_missing = { $entry } fehlt auf dem Bogen; bitte den Ritt benoten oder einen Entscheid geben
card-fault-entry_not_going = { $entry } startet in dieser Prüfung nicht; bitte vom Bogen nehmen
card-fault-entry_unknown = { $entry } ist in dieser Prüfung nicht genannt; bitte vom Bogen nehmen
card-fault-ranked_twice = { $entry } ist zweimal gereiht; bitte nur einen Platz behalten
card-fault-ranked_but_ruled_out = { $entry } ist gereiht und auf demselben Bogen herausgenommen; bitte eines von beiden streichen
card-fault-ranking_too_short = { $written } gereiht; bitte die ersten { $first } reihen
card-fault-ranking_too_long = { $written } gereiht; bitte nur die ersten { $first } reihen, jeden Platz einmal
card-fault-own_order_not_a_tie = { $written }: bitte den ganzen Gleichstand ordnen und sonst nichts: { $tie }
card-fault-own_order_no_tie = { $written }: auf diesem Bogen nicht gleichauf; eine eigene Reihenfolge gibt es nur bei Gleichstand
card-fault-open_tie = { $entries } liegen gleichauf: bitte ordnen, das Beste zuerst
