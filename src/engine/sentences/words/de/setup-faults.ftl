# Was an einem Vordruck, an den Manövern eines Pattern oder an seiner Zeichnung nicht stimmt.

sheet-fault-not_a_decimal = „{ $written }“ ist keine einfache Dezimalzahl; richtig ist etwa „0.5“, „70“ oder „-3“
sheet-fault-not_a_whole_number = „{ $written }“ ist keine ganze Zahl
sheet-fault-not_positive = „{ $written }“ muss größer als null sein
sheet-fault-below_zero = „{ $written }“ darf nicht unter null liegen
sheet-fault-range_upside_down = das untere Ende des Bereichs liegt über dem oberen
sheet-fault-high_off_step = „{ $written }“ wird vom unteren Ende aus mit ganzen Schritten nie erreicht
sheet-fault-code_twice = das Kürzel „{ $written }“ gibt es zweimal; jedes braucht sein eigenes
sheet-fault-name_empty = darf nicht leer sein
sheet-fault-lowest_above_base = die untere Grenze „{ $written }“ liegt über dem Grundwert
sheet-fault-lowest_outside_total_range = die untere Grenze „{ $written }“ liegt außerhalb des Bereichs der Gesamtwertung
sheet-fault-base_outside_total_range = der Grundwert „{ $written }“ liegt über dem Bereich der Gesamtwertung
sheet-fault-effect_not_on_this_sheet = ein Entscheid kann auf einem Vordruck dieser Art nicht „{ $written }“ bewirken
sheet-fault-absent_needs_rulings = ein nicht gesehenes Manöver gilt als nicht gezeigt, also muss der Richter entscheiden; der Vordruck braucht wenigstens einen Entscheid
sheet-fault-errors_go_down = „{ $written }“ ist weniger als beim Verreiten davor; bitte angeben, was sie insgesamt abziehen, oder sie zusammenzählen lassen
sheet-fault-ruling_unknown = den Entscheid „{ $written }“ gibt es nicht
sheet-fault-position_twice = die Stelle „{ $written }“ gibt es zweimal
sheet-fault-position_gap = die Stelle „{ $written }“ lässt eine Lücke; die Stellen zählen von 1 an
sheet-fault-no_maneuvers = dieser Vordruck benotet Manöver, und das Pattern hat keine

drawing-fault-letter_twice = den Buchstaben { $written } gibt es zweimal; jeder Kegel hat seinen eigenen
drawing-fault-cone_not_drawn = ein Manöver nennt den Kegel { $written }, und er ist nicht gezeichnet
drawing-fault-outside_arena = bei { $written } verlässt es die Bahn
drawing-fault-position_unknown = das Pattern hat kein Manöver { $written }
drawing-fault-position_twice = Manöver { $written } ist zweimal gezeichnet; bitte alle seine Wege unter eines setzen
drawing-fault-maneuver_not_drawn = Manöver { $written } ist nicht gezeichnet
drawing-fault-maneuver_empty = Manöver { $written } hat weder einen Weg noch ein Zeichen
drawing-fault-goes_nowhere = es ist schon bei { $written }; bitte den Schritt weglassen oder sein Ziel woandershin setzen
drawing-fault-radius_too_small = mit einem Radius von { $written } reicht der Bogen nicht von einem Ende zum anderen
