# Die Regel einer Prüfung, wie Familien sie vor dem ersten Ritt lesen.

rule-separate = Der Bogen jedes Richters ist ein Ergebnis für sich.
rule-total = Die Wertungen der Richter werden zusammengezählt{ rule-discard }; die beste Summe steht vorn. { $noScore }
rule-mean = Es zählt das Mittel der Richterwertungen{ rule-discard }. { $noScore }
rule-mean-rounded = Es zählt das Mittel der Richterwertungen{ rule-discard }, gerundet auf { $digits ->
    [one] eine Nachkommastelle
   *[other] { COUNT($digits) } Nachkommastellen
}. { $noScore }
rule-rank-sum = Die Plätze auf allen Bögen werden zusammengezählt{ rule-discard }; die kleinste Summe steht vorn. { $unlisted }
rule-place-points = Jeder Platz bringt Punkte ({ $points }), über die Richter zusammengezählt{ rule-discard }; die meisten Punkte stehen vorn.
rule-majority = Ein Starter bekommt den besten Platz, den ihm mehr als die Hälfte der Richter gibt, diesen oder einen besseren; { $equalMajorities }.
rule-two-judges-and-referee = Sind sich die zwei Richter über den nächsten Starter einig, wird er platziert; sind sie uneins, entscheidet der Bogen des Schiedsrichters zwischen den beiden.
rule-pairwise = Jeder Starter wird mit jedem anderen verglichen, Richter für Richter; vorn steht, wer die meisten Vergleiche gewinnt oder darin gleichauf liegt, danach, wer die meisten Richterstimmen hat.

rule-discard = { $discard ->
    [high-and-low] , ab vier Richtern ohne einen höchsten und einen niedrigsten Wert
   *[none] {""}
}

no-score-zero = Eine fehlende Wertung zählt null.
no-score-not-placed = Ohne die Wertung jedes Richters wird ein Starter nicht platziert.
no-score-mean = Eine fehlende Wertung zählt als Mittel der vorhandenen.

unlisted-next = Wer auf einem Bogen fehlt, zählt dort einen Platz hinter dem letzten.
unlisted-mean = Wer auf einem Bogen fehlt, zählt dort mit dem Mittel der übrigen Plätze.
unlisted-place = Wer auf einem Bogen fehlt, zählt dort mit Platz { $place }.

equal-majorities-totals = danach entscheiden die größere Mehrheit, die kleinere Summe ihrer Plätze und die kleinere Summe aller Plätze
equal-majorities-next-places = danach entscheiden die größere Mehrheit, die kleinere Summe ihrer Plätze und der Reihe nach die nächsten Plätze
equal-majorities-average = danach entscheiden die größere Mehrheit und die kleinere Summe aller Plätze

rule-no-ties = Bleibt ein Gleichstand, wartet er auf einen Entscheid.
rule-ties = Bei Gleichstand entscheiden: { $ties }.
rule-ties-then = { $first }, dann { $next }
rule-tie-maneuvers = die Noten für { $maneuvers }, in dieser Reihenfolge
rule-tie-count-back = die höchste Manövernote, dann die nächsthöchste und so fort
rule-tie-form = Haltung und Einwirkung
rule-tie-penalties-points = die wenigsten Strafpunkte
rule-tie-penalties-number = die wenigsten Fehler
rule-tie-judge = der Bogen von { $judges }, in dieser Reihenfolge
rule-tie-judge-turning = der Bogen von { $judges }, in dieser Reihenfolge, mit jeder Prüfung um einen weiter
rule-tie-judges-of-panel = den dafür benannten Richtern
rule-tie-head-to-head = die Mehrheit der Richter zwischen den Gleichplatzierten
rule-tie-best-single-place = der beste Platz bei einem Richter
rule-tie-most-firsts = die meisten ersten, dann zweiten Plätze und so fort
rule-tie-discarded = die Summe samt den gestrichenen Werten
rule-tie-run-off = ein Stechen
rule-tie-draw = das Los aus dem bekannt gegebenen Startwert
rule-tie-share = nichts weiter: Der Platz wird geteilt

rule-places = { $given ->
    [one] Es wird ein Platz vergeben.
   *[other] Es werden { COUNT($given) } Plätze vergeben.
}

# Was an einer Platzierungsregel nicht stimmt, für das Meldestelle.
rule-fault-needs_scores = Dieses Verfahren zählt Wertungen zusammen, und der Vordruck der Prüfung gibt keine: bitte ein Verfahren wählen, das Plätze zusammenführt.
rule-fault-needs_maneuvers = Diese Stichregel vergleicht Manövernoten: bitte die Manöver der Reihe nach nennen, auf einem Vordruck, der Manöver benotet.
rule-fault-needs_form = Diese Stichregel vergleicht Haltung oder Gesamtnoten, und der Vordruck der Prüfung hat keine.
rule-fault-needs_penalties = Diese Stichregel vergleicht Abzüge, und der Vordruck der Prüfung hat keine.
rule-fault-needs_discard = Diese Stichregel holt gestrichene Wertungen zurück, und das Verfahren streicht keine.
rule-fault-needs_seed = Das Los braucht den Startwert, der bekannt gegeben wurde.
rule-fault-needs_judges = Diese Stichregel fragt die Richter, die bei Gleichstand entscheiden: bitte ihre Reihenfolge in der Richtergruppe festlegen.
rule-fault-needs_referee = Zwei Richter und ein Schiedsrichter: In der Richtergruppe müssen genau zwei Richter und ein Schiedsrichter sitzen.
rule-fault-judge_not_on_panel = Genannt ist ein Richter, der nicht in dieser Richtergruppe sitzt.
rule-fault-missing_time_is_no_zero = Eine fehlende Zeit darf nicht null zählen, das wäre die beste Zeit: bitte festlegen, dass der Starter nicht platziert wird.
rule-fault-not_a_decimal = Hier wird eine Dezimalzahl gebraucht, etwa „10“ oder „0.5“.
rule-fault-after_share = Nach dem geteilten Platz kann nichts mehr folgen: Er ist endgültig.
rule-fault-maneuver_unknown = So ein Manöver hat das Pattern nicht; sie zählen von 1 an.
