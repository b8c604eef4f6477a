# Das Turnierbüro: wie knapp eine Prüfung war, und wie einig sich die Richter sind.
office-closeness-title = Wie knapp war es, und sind sich die Richter einig
office-closeness-class = Prüfung { $number }, { $name }
office-closeness-to-class = Zur Prüfung
office-closeness-not-posted = Von dieser Prüfung hängt noch nichts aus. Wie knapp es war, zeigt sich erst danach, damit es vorher niemanden lenkt.
office-closeness-caution = Diese Zahlen sagen, wie sich die Bögen unterscheiden, nicht, wer recht hatte. An keiner Platzierung ändern sie etwas.
office-closeness-as-table = Dasselbe als Tabelle

office-closeness-how-close = Wie knapp es war
office-closeness-margins = Was zwei Nachbarn vertauscht hätte
office-closeness-margins-of = Was zwei Nachbarn vertauscht hätte, auf dem Bogen von { $judge }
office-closeness-no-margin = Es gibt keine zwei Nachbarn, die eine Änderung auf einem Bogen vertauscht hätte.
office-closeness-by-points = { $one ->
    [yes] { $size } Punkt
   *[no] { $size } Punkte
  }
office-closeness-by-places = { $one ->
    [yes] { $size } Platz
   *[no] { $size } Plätze
  }
office-closeness-status = durch das Pattern
office-closeness-no-single-change = kein Bogen allein
office-closeness-place = Platz
office-closeness-ahead = Davor
office-closeness-behind = Dahinter
office-closeness-change = Kleinste Änderung
office-closeness-in-words = In Worten

office-closeness-agree = Sind sich die Richter einig
office-closeness-places = Wo jeder Richter jeden Starter hatte
office-closeness-one-judge = Ein Richter allein ist sich mit sich einig.
office-closeness-number = Nr.
office-closeness-apart = Plätze auseinander
office-closeness-left-off = nicht gereiht
office-closeness-pairs = Je zwei Richter
office-closeness-two = Zwei Richter
office-closeness-same-order = Gleiche Reihung (+1) bis umgekehrte (−1)
office-closeness-entries = Starter auf beiden Bögen
office-closeness-scales = Der eigene Maßstab jedes Richters
office-closeness-judge-name = Richter
office-closeness-mean = Mittlere Wertung
office-closeness-spread = Streuung darum

office-closeness-drift = Jeder Richter über die Startfolge
office-closeness-drift-caution = Ein Anstieg oder Abfall ist für sich kein Fehler: Die besseren Reiter können spät dran gewesen sein. Zwei Richter, die dieselben Ritte sahen und auseinanderlaufen, sind einen Blick wert.
office-closeness-little-drift = Bei keinem Richter stiegen oder fielen die Wertungen vom ersten bis zum letzten Ritt deutlich.
office-closeness-no-order = Es gibt keine Wertungen in einer Startfolge zu zeichnen: eine Gruppenprüfung, oder nur Plätze.
office-closeness-no-drift = Zu wenige Ritte für eine Linie.
office-closeness-drift-by = { $by } Punkte über zehn Ritte.
office-closeness-judge = { $seat } { $name }
office-closeness-scores-of = Wertungen von { $name } in der Startfolge
office-closeness-go = Ritt
office-closeness-score = Wertung
