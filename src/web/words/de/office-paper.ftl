# Das Turnierbüro: ein Bogen auf Papier, von zwei Leuten abgetippt.
office-paper-title = Bögen auf Papier, Prüfung { $number }
office-paper-what = Einen Bogen, den ein Richter auf Papier schrieb, tippen zwei Konten ab. Keines sieht, was das andere gelesen hat, bis beide fertig sind.
office-paper-seats = Die Richter der Prüfung und ihre Bögen
office-paper-no-panel = In der Richtergruppe dieser Prüfung sitzt noch niemand. Bitte zuerst die Richter einsetzen.
office-paper-judge = Richter
office-paper-card = Bogen
office-paper-paper = Auf Papier
office-paper-seat = { $seat } { $name }
office-paper-not-signed = nicht unterschrieben
office-paper-signed-phone = am Telefon unterschrieben, Fassung { $revision }
office-paper-signed-paper = vom Papier übernommen, Fassung { $revision }
office-paper-take-up-of = Papierbogen von { $name } aufnehmen
office-paper-amend = Papier von { $name } ändert den Bogen
office-paper-amend-what = Der Bogen ist unterschrieben. Das Papier wird eine neue Fassung; die alte bleibt lesbar.
office-paper-why = Warum er auf Papier kommt
office-paper-why-first = Zum Beispiel: Das Telefon fiel ins Wasser. Darf leer bleiben. Bitte keine Namen.
office-paper-why-amend = Warum sich der unterschriebene Bogen ändert, in Worten, die andere lesen werden. Bitte keine Namen.
office-paper-begin = Mit dem Tippen beginnen
office-paper-brief-nobody = Aufgenommen, noch von niemandem getippt
office-paper-brief-mine-only = Von dir getippt; es fehlt eine zweite Person
office-paper-brief-other-only = Einmal getippt; du kannst die zweite sein
office-paper-brief-two-others = Von zwei anderen getippt
office-paper-brief-differ = Beide sind da und unterscheiden sich
office-paper-brief-overtaken = Von einer Unterschrift überholt
office-paper-brief-accepted = Angenommen als Fassung { $revision }
office-paper-brief-withdrawn = Zurückgezogen

office-paper-card-title = Ein Bogen auf Papier, Prüfung { $number }
office-paper-of-class = Prüfung { $number }, { $name }
office-paper-to-class = Zur Prüfung
office-paper-state = Wo der Bogen steht
office-paper-reason = Warum: { $reason }
office-paper-entered-mine = Du, { $at }
office-paper-entered-other = Jemand anderes, { $at }
office-paper-stage-nobody = Noch hat ihn niemand getippt. Bitte das Papier von oben bis unten lesen und ganz abtippen.
office-paper-stage-mine-only = Deiner ist da. Nun meldet sich eine zweite Person mit ihrem eigenen Konto an und tippt dasselbe Papier. Du siehst nichts davon, bis sie fertig ist.
office-paper-stage-other-only = Eine Person hat ihn getippt. Du bist die zweite: Bitte tippen, was du liest, ohne zu fragen. Du siehst ihren, sobald deiner da ist.
office-paper-stage-two-others = Zwei andere haben ihn getippt. Ein dritter wird nicht genommen.
office-paper-stage-differ = { $count ->
    [one] Beide sind da und unterscheiden sich in einem Feld. Bitte noch einmal aufs Papier sehen: Wer sich verlesen hat, bessert den eigenen aus.
   *[other] Beide sind da und unterscheiden sich in { $count } Feldern. Bitte noch einmal aufs Papier sehen: Wer sich verlesen hat, bessert den eigenen aus.
  }
office-paper-stage-overtaken = Der Bogen wurde unterschrieben oder geändert, seit dieses Papier aufgenommen ist. Bitte das Papier mit dem jetzigen Bogen vergleichen, dieses zurückziehen und neu aufnehmen, wenn sie sich unterscheiden.
office-paper-stage-accepted = Beide haben dasselbe gelesen. Es ist Fassung { $revision } des Bogens.
office-paper-stage-withdrawn = Zurückgezogen: { $why }
office-paper-sent-nobody = Festgehalten.
office-paper-sent-mine-only = Deiner ist da. Es fehlt eine zweite Person.
office-paper-sent-other-only = Festgehalten.
office-paper-sent-two-others = Festgehalten.
office-paper-sent-differ = Deiner ist da. Die beiden unterscheiden sich; die Felder stehen über dem Formular.
office-paper-sent-overtaken = Festgehalten, aber der Bogen wurde inzwischen unterschrieben.
office-paper-sent-accepted = Beide haben dasselbe gelesen. Der Bogen ist da.
office-paper-sent-withdrawn = Das Papier wurde inzwischen zurückgezogen.

office-paper-key = So geht es schnell
office-paper-key-enter = Enter geht zum nächsten Feld, Umschalt und Enter zurück; Pfeil auf und ab zum selben Feld des Ritts darüber oder darunter.
office-paper-key-mark = 05 ist 0,5 und -15 ist −1,5, wo der Vordruck halbe Noten hat. Punkt, ½ und 1/2 werden auch verstanden.
office-paper-key-not-seen = / heißt „nicht gesehen“.
office-paper-key-penalty = *3 hinter einer Note ist Abzug 3 dieser Liste; *3*3 zweimal.
office-paper-takes = −{ $points }
office-paper-seconds = +{ $points } s
office-paper-field-mark = Note
office-paper-field-measure = Zeit (s)
office-paper-field-errors = Verreiten
office-paper-field-penalties = Abzüge
office-paper-field-ruling = Entscheid
office-paper-field-paper-total = Summe auf Papier
office-paper-field-of = { $label }, Startnummer { $number }
office-paper-no-ruling = keiner
office-paper-not-seen = nicht gesehen
office-paper-unread = Nicht verstanden: { $pieces }
office-paper-some-unread = Etwas Getipptes ist nicht verstanden; es ist an seinem Feld bezeichnet.
office-paper-differs-here = Die andere Person hat hier etwas anderes.
office-paper-total = Gesamt
office-paper-total-so-far = Bis hierher
office-paper-total-same = wie auf dem Papier
office-paper-total-differs = die Noten ergeben { $total }
office-paper-placed-below = hinter allen, die das Pattern eingehalten haben
office-paper-not-placed = nicht platziert
office-paper-more = { $count ->
    [0] Nr. { $number }: Worte des Richters, Abzüge zum Auswählen
   *[other] Nr. { $number }: Worte des Richters ({ $count }), Abzüge zum Auswählen
  }
office-paper-words-maneuver = Bemerkung zu { $position } { $name }
office-paper-words-ruling = Bemerkung zum Entscheid
office-paper-words-go = Bemerkung zum Ritt
office-paper-penalty = Abzug
office-paper-penalty-at = Für
office-paper-whole-go = den ganzen Ritt
office-paper-penalty-add = Eintragen
office-paper-ranking = Die ersten { $first }, nach Startnummer
office-paper-place = Platz { $place }
office-paper-not-in-class = nicht in dieser Prüfung: { $numbers }
office-paper-twice = steht zweimal
office-paper-ties = Gleichstände auf diesem Bogen
office-paper-ties-what = Hat der Richter den Gleichstand auf dem Papier geordnet, bitte angeben, wer Erster, Zweiter … ist; sonst leer lassen.
office-paper-tie-place = Nr. { $number }
office-paper-maneuver-short = Manöver { $position }
office-paper-spoken-size = { $half ->
    [yes] { $whole ->
        [0] ein halb
       *[other] { $whole } einhalb
      }
   *[no] { $whole }
  }
office-paper-spoken-mark = { $sign ->
    [minus] minus { office-paper-spoken-size }
    [plus] plus { office-paper-spoken-size }
   *[none] { office-paper-spoken-size }
  }

office-paper-whole = Der Bogen ist vollständig. Bitte noch einmal aufs Papier sehen, dann senden.
office-paper-missing = { $count ->
    [one] Eines ist noch offen
   *[other] { $count } Dinge sind noch offen
  }
office-paper-more-missing = und { $count } weitere
office-paper-send = Senden, was ich gelesen habe
office-paper-send-mended = Meinen ausgebessert senden
office-paper-stale = Dein eigener Eintrag wurde in einem anderen Fenster geändert, seit er hier offen ist. Was du getippt hast, steht noch hier.
office-paper-take-saved = Stattdessen den gespeicherten nehmen

office-paper-differences = { $count ->
    [one] Ein Feld unterscheidet sich
   *[other] { $count } Felder unterscheiden sich
  }
office-paper-number = Nr.
office-paper-where = Feld
office-paper-mine = Ich las
office-paper-other = Die andere las
office-paper-nothing = nichts
office-paper-times = { $count } ×
office-paper-in-tie = { $place }. im Gleichstand
office-paper-maneuver = { $position } { $name }
office-paper-part-at = { $label }, bei { $maneuver }
office-paper-part-remark-at = Bemerkung zu { $maneuver }
office-paper-part-errors-of-course = Verreiten
office-paper-part-mark = Note
office-paper-part-measure = Zeit
office-paper-part-ruling = Entscheid
office-paper-part-ruling-remark = Bemerkung zum Entscheid
office-paper-part-remark = Bemerkung zum Ritt
office-paper-part-own-order = Reihenfolge im Gleichstand
office-paper-part-ranking = Reihung

office-paper-photo = Foto des Papiers
office-paper-photo-view = Das Foto; es lässt sich verschieben
office-paper-photo-alt = Der Bogen des Richters auf Papier, wie er fotografiert wurde
office-paper-photo-large = So groß, wie es ist
office-paper-photo-add = Ein Foto des Papiers dazulegen
office-paper-photo-other = Ein anderes Foto an seine Stelle legen
office-paper-photo-hint = JPEG, PNG oder WebP, höchstens 8 MB. Nur das Bild bleibt, nichts davon, wo und wann es entstand.
office-paper-photo-sending = Wird gesendet …
office-paper-photo-stored = Das Foto ist gespeichert.

office-paper-withdraw = Diesen Papierbogen zurückziehen
office-paper-withdraw-title = Diesen Papierbogen zurückziehen?
office-paper-withdraw-what = Was getippt wurde, zählt nicht mehr und lässt sich nicht wieder öffnen. Das Papier kann neu aufgenommen werden.
office-paper-withdraw-why = Warum
office-paper-withdraw-yes = Zurückziehen
office-paper-withdrawn = Der Papierbogen ist zurückgezogen.
