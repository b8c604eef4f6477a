# Die Richterseite: ein Telefon an der Bahn oder ein Schreibtisch vor einem Video.

judge-close = Schließen

# Der Tag.
judge-day = Prüfungen
judge-phone-of-judge = Richter: { $judge }
judge-phone-of-scribe = Schreiber für { $judge }
judge-day-empty = Noch keine Prüfung. Sie erscheinen hier, sobald die Meldestelle die Richter einteilt.
judge-day-to-do = Noch zu richten
judge-day-no-time = Noch ohne Zeit
judge-look-again = Noch einmal nachsehen
judge-referee = Schiedsrichter, gefragt nur, wo die beiden Richter abweichen
judge-nothing-here = Diese Prüfung oder diesen Starter hat dieses Telefon nicht; vielleicht hat die Meldestelle sie verlegt.
judge-hint = Vor dem ersten Ritt
judge-hint-signal = Sie brauchen kein Netz. Jeder Tipp liegt auf diesem Telefon, bevor Sie ihn sehen, und wird gesendet, sobald Netz da ist.
judge-hint-marks = Tippen Sie auf eine Note, und das nächste Manöver kommt von selbst. Ein Tipp auf ein Manöver oben nimmt es wieder vor.
judge-hint-undo = Zurücknehmen macht den letzten Tipp rückgängig, so oft Sie wollen.
judge-hint-sign = Nichts ist endgültig, bevor Sie unterschreiben. Danach wird ein Bogen nur noch mit Begründung berichtigt.
judge-hint-read = Verstanden

# Wo kein Tag ist.
judge-loading = Einen Moment
judge-loading-what = Es wird nachgesehen, was dieses Telefon hat.
judge-not-paired = Dieses Telefon ist nicht gekoppelt
judge-not-paired-what = Die Meldestelle gibt Ihnen einen Code für Ihren Platz. Mit ihm wird dieses Telefon für das Turnier Ihres.
judge-to-pair = Code eingeben
judge-paired-no-day = Es fehlen noch Ihre Prüfungen
judge-paired-no-day-what = Dieses Telefon ist gekoppelt, hatte seither aber kein Netz. Gehen Sie kurz dorthin, wo Netz ist; danach brauchen Sie keines.
judge-gate-phone = Dieses Telefon gehört zum Tor
judge-gate-phone-what = Es ruft Starter auf und meldet sie am Tor. Um damit zu richten, geben Sie es ab und koppeln es mit dem Code eines Richters.
judge-to-gate = Zum Tor
judge-no-store = Dieser Browser behält nichts
judge-no-store-what = Noten könnten verloren gehen, darum kann hier nichts geschrieben werden. Ist das ein privates Fenster, oder ist das Telefon voll? Öffnen Sie die Seite in einem gewöhnlichen Fenster, oder schaffen Sie Platz.
judge-revoked = Die Meldestelle hat dieses Telefon zurückgenommen.
judge-revoked-what = Was geschrieben ist, bleibt darauf, und nichts wird gesendet. Bitten Sie die Meldestelle um einen neuen Code, oder übergeben Sie alles als Datei.
judge-revoked-look = Zu diesem Telefon

# Dieses Telefon.
judge-this-phone = Dieses Telefon
judge-export-what = Alles, was auf diesem Telefon liegt, als Datei, aus der die Meldestelle abtippen kann.
judge-export = Als Datei sichern
judge-let-go-what = Ist das Turnier vorbei, oder bekommt jemand anders dieses Telefon? Geben Sie es ab: Schlüssel, Bögen und Bemerkungen werden darauf gelöscht.
judge-let-go = Dieses Telefon abgeben
judge-let-go-title = Dieses Telefon abgeben?
judge-let-go-sure = Es kann dann weder schreiben noch unterschreiben. Was der Dienst hat, bleibt dort.
judge-let-go-keep = Behalten
judge-let-go-unsent = { $unsent ->
    [one] Eine Änderung liegt nur auf diesem Telefon.
   *[other] { $unsent } Änderungen liegen nur auf diesem Telefon.
  }
judge-let-go-unsent-what = Sie gingen verloren. Gehen Sie erst dorthin, wo Netz ist, oder sichern Sie sie als Datei.
judge-let-go-anyway = Abgeben und sie verlieren
judge-left-behind = Hier liegt noch, was { $judge } bei { $show } nicht gesendet hat. Geben Sie es der Meldestelle als Datei, bevor Sie es wegwerfen.
judge-left-behind-away = Wegwerfen

# Netz, Uhr, Fassungen.
judge-signal-asking = Es wird nach Netz gesucht …
judge-signal-none = { $unsent ->
    [0] Kein Netz. Alles ist auf diesem Telefon; es geht weiter.
    [one] Kein Netz. Eine Änderung wartet auf diesem Telefon; es geht weiter.
   *[other] Kein Netz. { $unsent } Änderungen warten auf diesem Telefon; es geht weiter.
  }
judge-signal-sending = { $unsent ->
    [one] Eine Änderung wird gesendet …
   *[other] { $unsent } Änderungen werden gesendet …
  }
judge-signal-heard = Der Dienst hat alles, { $time }.
judge-clock-ahead = { $minutes ->
    [one] Die Uhr dieses Telefons geht eine Minute vor. Das schadet nicht: es zählt die Uhr des Dienstes.
   *[other] Die Uhr dieses Telefons geht { $minutes } Minuten vor. Das schadet nicht: es zählt die Uhr des Dienstes.
  }
judge-clock-behind = { $minutes ->
    [one] Die Uhr dieses Telefons geht eine Minute nach. Das schadet nicht: es zählt die Uhr des Dienstes.
   *[other] Die Uhr dieses Telefons geht { $minutes } Minuten nach. Das schadet nicht: es zählt die Uhr des Dienstes.
  }
judge-update = Eine neuere Fassung dieser Seite ist da.
judge-update-take = Jetzt nehmen
judge-update-later = Später
judge-notice-conflicts = { $count ->
    [one] Ein Ritt ist auf zwei Telefonen verschieden geschrieben.
   *[other] { $count } Ritte sind auf zwei Telefonen verschieden geschrieben.
  }
judge-notice-conflicts-look = Ansehen und wählen

# Wo ein Bogen ist.
judge-card = Ihr Bogen
judge-card-blank = Noch nichts geschrieben.
judge-card-only-on-this-phone = { $unsent ->
    [one] Nur auf diesem Telefon: eine Änderung.
   *[other] Nur auf diesem Telefon: { $unsent } Änderungen.
  }
judge-card-on-its-way = { $unsent ->
    [one] Unterwegs: eine Änderung.
   *[other] Unterwegs: { $unsent } Änderungen.
  }
judge-card-at-the-service = Beim Dienst. Nicht unterschrieben.
judge-card-refused = Abgelehnt: { $why }.
judge-card-conflict = { $count ->
    [one] Auf zwei Telefonen verschieden geschrieben: ein Ritt.
   *[other] Auf zwei Telefonen verschieden geschrieben: { $count } Ritte.
  }
judge-card-signed-on-this-phone = Auf diesem Telefon unterschrieben, { $time }. Er wird gesendet, sobald Netz da ist.
judge-card-signed-held = Auf diesem Telefon unterschrieben, { $time }. Er wird zurückgehalten, bis Sie zwischen den beiden Fassungen gewählt haben.
judge-card-signed-and-received = { $revision ->
    [1] Unterschrieben und angekommen, { $time }.
   *[other] Unterschrieben und angekommen, { $time }, berichtigt (Fassung { $revision }).
  }
judge-card-signature-refused = Die Unterschrift wurde abgelehnt: { $why }.
judge-refusal-read = Weglegen

# Wo ein Ritt ist.
judge-written-blank = nichts geschrieben
judge-written-only-on-this-phone = nur auf diesem Telefon
judge-written-on-its-way = unterwegs
judge-written-at-the-service = beim Dienst
judge-written-conflict = zwei Fassungen
judge-written-refused = abgelehnt: { $why }
judge-written-signed = unterschrieben

# Was nicht geschrieben werden konnte.
judge-not-written-signed = Dieser Bogen ist unterschrieben. Um ihn zu ändern, berichtigen Sie ihn mit Begründung.
judge-not-written-not-going = Dieser Starter startet nicht mehr.
judge-not-written-unknown-class = Diese Prüfung ist nicht mehr auf diesem Telefon.
judge-not-written-withdrawn = Sie haben die Richtergruppe dieser Prüfung verlassen; der Bogen ist geschlossen.
judge-not-written-no-conflict = Das hat sich inzwischen erledigt.
judge-not-written-nothing-to-undo = Es gibt nichts zurückzunehmen.
judge-not-written-not-kept = Das Telefon hat es nicht behalten, also hat sich nichts geändert. Ist es voll? Schaffen Sie Platz und tippen Sie noch einmal.

# Eine Prüfung.
judge-class-short = Prüfung { $number }
judge-pattern = Pattern: { $name }
judge-rule = Wie platziert wird
judge-rule-ties-must = Lösen Sie die Gleichstände auf Ihrem Bogen auf, bevor Sie unterschreiben.
judge-rule-ties-may = Gleichstände auf Ihrem Bogen dürfen bleiben; Sie können sie auflösen.
judge-you = Sie
judge-gate-sheet = Startfolge
judge-gate-empty = Noch ist niemand genannt. Die Starter erscheinen hier, sobald die Meldestelle sie hat.
judge-gate-next = als Nächstes
judge-gate-done = fertig
judge-gate-under-way = { $marked } von { $of }
judge-next-go = Als Nächstes: { $number }
judge-to-compare = Vergleichen
judge-to-sign = Unterschreiben
judge-to-signed = Ihr Bogen
judge-to-places = Die Prüfung reihen
judge-change-added = { $number } ist dazugekommen.
judge-change-gone = { $number } wurde aus dieser Prüfung genommen.
judge-change-status = { $number }: { $status }.
judge-change-order = Die Startfolge hat sich geändert.
judge-change-read = Gesehen

# Ein Ritt.
judge-back-number = Startnummer
judge-go-title = Ritt von { $number }
judge-go-place = { $position } von { $of }
judge-goes = Andere Ritte
judge-go-before = Der Ritt davor: { $number }
judge-go-after = Der Ritt danach: { $number }
judge-in-hand = Vorgenommen
judge-step-back = Das Manöver davor
judge-step-on = Das Manöver danach
judge-step-mark = Note
judge-step-measure = Zeit
judge-sign-mark = N
judge-sign-measure = Z
judge-sign-extra = { $count ->
    [1] F
   *[other] F{ $number }
  }
judge-sign-not-seen = ng
judge-all-marked = Alles benotet
judge-staff = Der Ritt, Manöver für Manöver
judge-staff-penalties = Abzüge
judge-not-marked = nicht benotet
judge-not-seen = Nicht ge­sehen
judge-marks = Noten
judge-marks-on = Weiter benoten
judge-tens = Ab { $from }
judge-tens-back = Zurück
judge-typed-maneuver = Note
judge-typed-extra = Note
judge-typed-mark = Note
judge-typed-measure = Zeit in Sekunden
judge-typed-take = Eintragen
judge-typed-wrong = Schreiben Sie eine Zahl von { $low } bis { $high }.
judge-percent = { $figure } %
judge-seconds = { $figure } s
judge-undo = Zurück­nehmen
judge-unmark = Ohne Note
judge-remark = Bemer­kung
judge-ruling = Ent­scheid
judge-line = Zeile
judge-amending = Sie berichtigen einen unterschriebenen Bogen. Er zählt, wie er war, bis Sie die Berichtigung unterschreiben.
judge-to-amend = Ansehen oder berichtigen
judge-shut-withdrawn = Sie haben die Richtergruppe dieser Prüfung verlassen. Ihr Bogen ist geschlossen.
judge-needs-ruling = Ein Manöver wurde nicht gesehen und gilt als nicht gezeigt. Sagen Sie, was das für das Pattern heißt.

judge-gait-walk = Schritt
judge-gait-jog = Jog
judge-gait-trot = Trab
judge-gait-extended-trot = verstärkter Trab
judge-gait-lope = Lope
judge-gait-canter = Galopp
judge-gait-gallop = schneller Galopp
judge-gait-back = rückwärts
judge-gait-halt = Halt
judge-gait-turn = Wendung
judge-hand-left = links
judge-hand-right = rechts
judge-way = { $from } nach { $to }
judge-way-at = bei { $cone }
judge-coefficient = zählt { $coefficient }-fach

# Die Wertung und ihre Teile.
judge-total-line = Wertung bis jetzt
judge-part-base = Grundwert
judge-part-maneuvers = Noten
judge-part-form = Form
judge-part-penalties = Abzüge
judge-part-ruling = Entscheid
judge-part-movements = Noten
judge-part-collectives = Gesamtnoten
judge-part-errors = Verreiten
judge-part-maximum = von
judge-part-mark = Note
judge-part-time = Zeit
judge-part-total = gesamt
judge-total-said = Gesamt { $total }
judge-total-barred = keine: nicht platzierbar
judge-total-none = noch keine

# Abzüge.
judge-penalties-at = Abzug bei { $position }
judge-penalties-of-go = Abzug für den ganzen Ritt
judge-penalty-said = { $count ->
    [0] { $label }, Abzug { $points }
    [one] { $label }, Abzug { $points }, einmal gegeben
   *[other] { $label }, Abzug { $points }, { $count }-mal gegeben
  }
judge-pardon = { $count ->
    [one] Abzug streichen: { $label }, { $points }
   *[other] Einen von { $count } Abzügen streichen: { $label }, { $points }
  }
judge-errors = Verreiten: { $count }
judge-errors-next = Das nächste Mal kostet { $points }.
judge-errors-next-eliminates = Das nächste Mal führt zum Ausschluss.
judge-errors-more = Verritten
judge-errors-less = Eins weniger

# Entscheide.
judge-rulings = Entscheid für { $number }
judge-rulings-caution = Sie entscheiden; diese Seite schreibt es nur auf. Was es bewirkt, steht dabei.
judge-ruling-remark = Warum (wenn Sie es sagen wollen)
judge-ruling-back = Entscheid zurücknehmen
judge-effect-takes-points-off = kostet { $points }
judge-effect-placed-below = hinter allen, die das Pattern eingehalten haben
judge-effect-not-placed = darf nicht platziert werden
judge-effect-score-stands = die Wertung bleibt, und es wird gezeigt

# Bemerkungen und das Video.
judge-remarks = Bemerkungen zu { $number }
judge-remark-which = Manöver
judge-remark-at = Zu Manöver { $position }
judge-remark-of-go = Zum ganzen Ritt
judge-stamp = { $time } einsetzen
judge-video = Video
judge-video-open = Das Video öffnen
judge-watch = Stoppuhr
judge-watch-start = Uhr starten
judge-watch-stop = Uhr anhalten
judge-watch-wrong = Schreiben Sie eine Zeit wie 1:23.

# Kurzschrift.
judge-shorthand = Kurzschrift
judge-shorthand-example = +1/2, +1, −2 p5a, 0, ns, f4
judge-shorthand-take = Eintragen
judge-shorthand-not-understood = Nicht verstanden: { $written }. Nichts wurde geändert.
judge-shorthand-not-on-scale = { $written }: die Noten gehen hier von { $low } bis { $high }. Nichts wurde geändert.
judge-shorthand-no-maneuver-left = { $written }: dafür ist kein Manöver mehr da. Nichts wurde geändert.
judge-shorthand-not-seen-here = { $written }: nicht gesehen sein kann nur ein Manöver. Nichts wurde geändert.
judge-shorthand-no-form = { $written }: diese Note hat der Vordruck nicht. Nichts wurde geändert.
judge-shorthand-penalty-unknown = { $written }: diesen Abzug hat der Vordruck nicht. Nichts wurde geändert.
judge-shorthand-which-penalty = { $written } kann mehrere meinen. Welchen?
judge-shorthand-nothing = Die Zeile ist leer.

# Die Tastatur.
judge-keys = Tasten
judge-keys-key = Taste
judge-keys-does = Was sie tut
judge-keys-line = eine Note, in der Zeile der Kurzschrift
judge-keys-penalty = ein Abzug, in der Zeile: p5, p3a
judge-keys-form = Form und Einwirkung, in der Zeile: f4
judge-keys-enter = trägt die Zeile ein; ohne Zeile der nächste Ritt
judge-keys-not-seen = nicht gesehen
judge-keys-turn = das Manöver davor, danach
judge-keys-goes = der Ritt davor, danach
judge-keys-undo = zurücknehmen
judge-keys-unmark = die Note wegnehmen
judge-keys-remark = Bemerkung
judge-keys-ruling = Entscheid
judge-keys-watch = Stoppuhr an oder aus
judge-keys-escape = leert die Zeile, legt ein Blatt weg
judge-keys-keys = diese Tasten

# Alle Ritte nebeneinander.
judge-compare = Alle Ritte
judge-compare-empty = Noch ist kein Ritt ganz benotet. Der erste steht dann hier.
judge-compare-place = Platz
judge-compare-entry = Nummer
judge-compare-unplaced = –
judge-compare-open = Noch zu richten
judge-tie-open = Gleichauf: { $numbers }
judge-tie-broken = Gleichauf, von Ihnen geordnet: { $numbers }
judge-tie-up = { $number } nach oben
judge-tie-down = { $number } nach unten
judge-tie-as-is = Diese Reihenfolge gilt
judge-tie-flagged = Das darf bleiben; die Meldestelle sieht es.

# Prüfungen an der Bande.
judge-places = Plätze
judge-places-how = Tippen Sie die Nummern in der Reihenfolge ihrer Plätze. Der Vordruck will die ersten { $first }.
judge-places-empty = Noch ist niemand gereiht.
judge-places-left = Noch nicht gereiht
judge-places-type = Oder eine Nummer schreiben
judge-places-place = Reihen
judge-places-unknown = { $number } startet in dieser Prüfung nicht.
judge-places-twice = { $number } ist schon gereiht.
judge-places-line = { $shared ->
    [yes] { $number } teilt Platz { $place }
   *[no] { $number } auf Platz { $place }
  }
judge-places-up = Nach oben
judge-places-down = Nach unten
judge-places-level = Gleichauf mit dem darüber
judge-places-out = Herausnehmen
judge-places-ruling = Entscheid, Bemerkung

# Die Unterschrift.
judge-sign-title = Ihren Bogen unterschreiben
judge-signed-card = Ihr unterschriebener Bogen
judge-missing = Es fehlt noch
judge-nothing-missing = Es fehlt nichts.
judge-summary = { $count ->
    [one] Ihr Bogen: ein Starter
   *[other] Ihr Bogen: { $count } Starter
  }
judge-sign = Diesen Bogen unterschreiben
judge-sign-not-yet = Noch nicht zu unterschreiben
judge-sign-caution = Die Unterschrift entsteht auf diesem Telefon, auch ohne Netz. Was Sie unterschrieben haben, wird nie geändert, nur von Ihnen berichtigt.
judge-sign-again = Legen Sie weg, was abgelehnt wurde, sehen Sie den Bogen durch, und unterschreiben Sie ihn noch einmal.
judge-scribe-signs-not = { $judge } unterschreibt, auf dem eigenen Telefon. Was Sie hier schreiben, ist auch dort, sobald Netz da ist.
judge-scribe-amends-not = { $judge } berichtigt, auf dem eigenen Telefon.
judge-not-signed-not-signable = Es fehlt noch etwas; es steht oben.
judge-not-signed-scribe-phone = Der Richter unterschreibt, auf dem eigenen Telefon.
judge-not-signed-unknown-class = Diese Prüfung ist nicht mehr auf diesem Telefon.
judge-not-signed-withdrawn = Sie haben die Richtergruppe dieser Prüfung verlassen.
judge-not-signed-revoked = Die Meldestelle hat dieses Telefon zurückgenommen; es unterschreibt nicht mehr.
judge-not-signed-already-signed = Dieser Bogen ist schon unterschrieben.
judge-not-signed-not-signed = Dieser Bogen ist noch nicht unterschrieben.
judge-not-signed-reason-missing = Schreiben Sie, warum Sie ihn berichtigen; jeder kann die Begründung lesen.
judge-not-signed-changes-nothing = Nichts ist anders, als Sie es unterschrieben haben.
judge-not-signed-not-kept = Das Telefon hat die Unterschrift nicht behalten. Ist es voll? Schaffen Sie Platz und unterschreiben Sie noch einmal.
judge-amended-because = Berichtigt: { $reason }
judge-amend-what = Was Sie unterschrieben haben, bleibt lesbar. Eine Berichtigung mit Begründung folgt ihm, und die Meldestelle erfährt davon.
judge-amend-begin = Diesen Bogen berichtigen
judge-amend-reason = Warum berichtigen Sie ihn?
judge-amend-sign = Die Berichtigung unterschreiben
judge-amend-drop = Die Berichtigung wegwerfen

# Zwei Fassungen eines Ritts.
judge-differences = Zwei Fassungen
judge-differences-none = Es gibt nichts zu wählen. Beide Telefone haben dasselbe.
judge-differences-what = Zwei Telefone haben über denselben Ritt geschrieben. Nichts ist verloren; Sie wählen, was gilt.
judge-difference-go = { $number }, Prüfung { $class }
judge-difference-order = Reihung der Prüfung { $class }
judge-difference-when = Die andere Fassung wurde um { $time } gesichert.
judge-difference-part = Was
judge-difference-mine = Dieses Telefon
judge-difference-theirs = Das andere
judge-difference-none = nichts
judge-difference-penalties = Abzüge für den Ritt
judge-difference-errors = Verreiten
judge-difference-ruling = Entscheid
judge-difference-remark = Bemerkung
judge-difference-together = Beides zusammen nehmen
judge-difference-take-mine = Alles von diesem Telefon
judge-difference-take-theirs = Alles von dem anderen
judge-difference-take-picked = Nehmen, was ich gewählt habe
judge-difference-signed = Die andere Fassung ist schon unterschrieben. Damit Ihre auf den Bogen kommt, nehmen Sie hier die andere und berichtigen sie dann.

# Ihr eigener Maßstab, nur für Sie.
judge-tendency = Nur für Sie
judge-tendency-mean = Der Mittelwert Ihrer { $goes } Wertungen ist { $mean }.
judge-tendency-rose = Sie stiegen um etwa { $by } Punkte auf je zehn Ritte; vielleicht kamen die besseren Ritte einfach spät.
judge-tendency-fell = Sie fielen um etwa { $by } Punkte auf je zehn Ritte; vielleicht kamen die besseren Ritte einfach früh.
judge-tendency-level = Über die Startfolge hin sind sie weder gestiegen noch gefallen.
judge-tendency-own = Auf diesem Telefon aus Ihrem eigenen Bogen gerechnet. Eine Verschiebung ist für sich kein Fehler.
