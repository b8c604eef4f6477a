# Die Meldestelle: die Prüfung, um die es gerade geht.
office-class-title = Prüfung { $number }: { $name }
office-class-nav = Prüfung { $number }
office-class-result = Bögen und Ergebnis
office-class-entries = Nennungen
office-class-panel = Richter
office-class-paper = Papierbögen
office-class-closeness = Wie knapp es war
office-call = In die Bahn rufen
office-call-again = Noch einmal rufen
office-called = Die Prüfung ist gerufen. Anzeige und Tor haben es gehört.
office-called-at = Gerufen um { $time }
office-cancel-class = Prüfung absagen
office-cancel-class-ask = Prüfung { $number } absagen?
office-cancel-class-why = Die Prüfung findet nicht statt, und alle, die auf die Anzeige schauen, sehen es sofort. Das lässt sich nicht rückgängig machen.
office-cancelled = Die Prüfung ist abgesagt.

# Was als Nächstes kommt.
office-next-nobody-sits = Noch sitzt kein Richter: bitte die Richter einsetzen.
office-next-over = Diese Prüfung findet nicht statt.
office-next-not-begun = Noch ist kein Bogen begonnen.
office-next-called = In die Bahn gerufen; noch ist kein Bogen begonnen.
office-next-cards-missing = { $in ->
    [0] Es wird auf die Bögen gewartet: { $judges }.
   *[other] Noch fehlt: { $judges }. Da: { $in }.
  }
office-next-tie-open = { $count ->
    [one] Alle Bögen sind da. Ein Gleichstand braucht eine Entscheidung.
   *[other] Alle Bögen sind da. { $count } Gleichstände brauchen eine Entscheidung.
  }
office-next-ready = Alle Bögen sind da, kein Gleichstand ist offen: Vorschau lesen und aushängen.
office-next-changed = Was aushängt (Fassung { $version }), ist nicht mehr, was die Bögen sagen.
office-next-official = Ausgehängt, noch nicht amtlich. Amtlich machen, wenn die Zeit für Rückfragen vorbei ist.
office-next-posted = Ausgehängt und amtlich. Es ist nichts zu tun.

# Bögen der Richter.
office-cards = Bögen
office-cards-caption = Bögen der Prüfung { $number }
office-judge = Richter
office-referee = Schiedsrichter
office-judge-seat = Platz { $seat }
office-card = Bogen
office-phone = Telefon
office-card-waiting = wartet
office-card-under-way = in Arbeit, { $written } von { $expected }
office-card-signed = unterschrieben, da seit { $time }
office-card-signed-paper = vom Papier, da seit { $time }
office-card-revision = (Stand { $revision })
office-card-to-be-amended = { $count ->
    [one] nachzutragen: Eine Nennung kam seither dazu
   *[other] nachzutragen: { $count } Nennungen kamen seither dazu
  }
office-card-on-paper = { $count ->
    [0] auf Papier, noch hat ihn niemand abgetippt
    [one] auf Papier, von einer Person abgetippt, die zweite fehlt
   *[other] auf Papier, von zweien abgetippt, die voneinander abweichen
  }
office-card-withdrawn = hat das Gremium verlassen, der Bogen zählt nicht
office-phone-none = kein Telefon
office-phone-of-judge = eigenes seit { $time }
office-phone-of-scribe = Schreiber seit { $time }
office-card-came-on-paper = Er kam auf Papier

# Einem Bogen nachgehen.
office-open-chase = Nachgehen
office-open-phones = Telefone
office-chase-where = { $judge } sitzt hier: { $ring }.
office-chase-has-phone = Das Telefon ist gekoppelt; Wertungen, die darauf auf Empfang warten, sind hier nicht zu sehen.
office-chase-no-phone = Kein Telefon ist gekoppelt: eines koppeln oder den Bogen auf Papier nehmen.
office-chase-say = Was zu sagen ist
office-say-waiting = Prüfung { $number } ({ $name }): Der Meldestelle liegt von Ihrem Bogen noch nichts vor. Haben Sie schon gerichtet? Bitte nachsehen, ob Ihr Telefon Empfang hat.
office-say-under-way = Prüfung { $number } ({ $name }): Die Meldestelle sieht { $written } von { $expected } Ritten auf Ihrem Bogen. Bitte fertig schreiben und unterschreiben.
office-say-sign = Prüfung { $number } ({ $name }): Ihr Bogen ist vollständig, aber noch nicht unterschrieben. Bitte unterschreiben.
office-say-amend = { $count ->
    [one] Prüfung { $number } ({ $name }): Nach Ihrer Unterschrift kam eine Nennung dazu. Bitte den Bogen nachtragen und neu unterschreiben.
   *[other] Prüfung { $number } ({ $name }): Nach Ihrer Unterschrift kamen { $count } Nennungen dazu. Bitte den Bogen nachtragen und neu unterschreiben.
  }
office-say-on-paper = Prüfung { $number } ({ $name }): Wir tippen Ihren Bogen gerade vom Papier ab. Bitte in der Nähe bleiben, falls eine Zahl nicht zu lesen ist.
office-chase-note = Notieren: angesprochen
office-chase-noted = Angesprochen um { $time } (nur in diesem Fenster notiert).
office-chase-strike = Notiz streichen

# Gleichstände und Entscheidungen.
office-ties = Gleichstände
office-tie-wait = Entschieden werden kann, sobald alle Bögen da sind.
office-tie-decide = Entscheidung festhalten
office-own-tie = Auf dem Bogen von { $judge } liegen { $numbers } gleichauf. Das ist auf dem eigenen Bogen aufzulösen, mit einem Nachtrag.
office-rulings = Entscheidungen
office-ruling-record = Entscheidung festhalten
office-ruling-kind = Entschieden durch
office-ruling-run-off = Stechen
office-ruling-re-work = Nachritt
office-ruling-judge = Entscheidung eines Richters
office-ruling-coin = Münze
office-ruling-share = der Platz wird geteilt
office-ruling-declined = Stechen abgelehnt
office-ruling-order = Reihung derer, die gleichauf lagen
office-ruling-order-hint = Derselbe Rang zweimal heißt: Sie bleiben gleichauf.
office-ruling-rank = Rang { $rank }
office-ruling-by = Wer entschieden hat
office-ruling-by-hint = Der Hauptrichter, der Steward, die Turnierleitung; mit Namen.
office-ruling-why = Warum
office-ruling-why-hint = Die Teilnehmer werden es lesen.
office-ruled = Die Entscheidung ist festgehalten.
office-ruling-told = { $by } hat entschieden, festgehalten { $time }:
office-ruling-anew = Neu entscheiden

# Die Vorschau.
office-preview = Vorschau
office-preview-caption = Vorschau des Ergebnisses, Richter nebeneinander
office-preview-caption-judge = Vorschau des Ergebnisses von { $judge }
office-preview-empty = Noch ist nichts zusammenzuführen: Kein Bogen, der zählt, ist da.
office-preview-partial = Das ist aus den Bögen, die da sind. Es fehlt: { $judges }.
office-place = Platz
office-number = Nummer
office-exhibitor = Teilnehmer, Pferd
office-total = Summe
office-why = Warum
office-tied = gleichauf
office-did-not-go = Nicht geritten:
office-rule = Wie diese Prüfung platziert wird

# Aushängen.
office-post-head-first = Aushängen
office-post-head-anew = Neu aushängen
office-post-head-official = Amtlich machen
office-post-head-correction = Berichtigen
office-post-first = Dieses Ergebnis aushängen
office-post-anew = Dieses Ergebnis neu aushängen
office-post-correction = Die Berichtigung aushängen
office-post-official = Amtlich machen
office-post-official-ask = Dieses Ergebnis amtlich machen?
office-post-official-why = Ein amtliches Ergebnis steht. Es kann mit einem Grund berichtigt werden, und das alte bleibt lesbar; zurücknehmen lässt es sich nicht.
office-post-official-do = Es ist amtlich
office-post-reason = Warum es sich ändert
office-post-reason-hint = Die Teilnehmer werden es lesen, z. B. „Richterin Lund hat bei 148 Lektion 4 nachgetragen.“
office-posted-said-first = Das Ergebnis hängt aus.
office-posted-said-anew = Das Ergebnis hängt neu aus.
office-posted-said-official = Das Ergebnis ist amtlich.
office-posted-said-correction = Die Berichtigung hängt aus.
office-preview-changed = Die Vorschau hat sich geändert, während Sie sie lasen.
office-preview-changed-moved = { $count ->
    [0] Kein Platz und keine Summe ändert sich dadurch.
    [one] Dadurch ändert sich etwas für eine Nennung.
   *[other] Dadurch ändert sich etwas für { $count } Nennungen.
  }
office-preview-seen = Ich habe es gelesen, weiter damit

# Was eine Änderung ändert.
office-change-caption = { $before } und { $after } nebeneinander
office-change-posted = Ausgehängt (Fassung { $version })
office-change-preview = Vorschau
office-change-as-read = Wie Sie es lasen
office-change-now = Wie es jetzt ist
office-change-total-before = Summe vorher
office-change-total-after = Summe nachher
office-change-same = unverändert
office-change-none = Kein Platz und keine Summe ändert sich.
office-change-moves = { $number }: vorher { $was }, jetzt { $willBe }.
office-change-total = { $number } behält den Platz; die Summe geht von { $was } auf { $willBe }.
office-change-card = { $judge } hat den eigenen Bogen nachgetragen: vorher Stand { $from }, jetzt { $to }.
office-change-card-new = Der Bogen von { $judge } kam dazu.
office-change-rulings = { $count ->
    [one] Eine Entscheidung kam dazu.
   *[other] { $count } Entscheidungen kamen dazu.
  }
office-standing-placed = Platz { $place }
office-standing-tied = Platz { $place }, gleichauf
office-standing-unplaced = nicht platziert
office-standing-absent = nicht dabei

# Was aushängt.
office-postings = Aushang
office-posted-nothing = Noch hängt nichts aus.
office-posted-line = Fassung { $version }, { $state }, { $time }.
office-posted-provisional = vorläufig
office-posted-official = amtlich
office-posted-corrected = berichtigt
office-posted-ledger = Nach Zeile { $line } des Protokolls.
office-posted-heard = Die Anzeige, die Bildschirme an der Bahn, das Tor mit der Ansage und alle, die dem Turnier folgen, haben es sofort gehört.
office-posted-look = Wie alle es lesen

# Die Richter.
office-seats = Plätze
office-seat = Platz
office-seat-order = Ruf und Gleichstand
office-seats-none = Noch sitzt kein Richter. Bitte unten einsetzen.
office-seat-call = Hauptrichter { $order }
office-seat-tie = Richter für Gleichstände { $order }
office-seat-leaves = Verlässt das Gremium
office-seat-left = gegangen { $time }
office-seat-leaves-ask = { $judge } verlässt das Gremium?
office-seat-leaves-why = Der Bogen zählt nicht mehr, und in dieser Prüfung kann nichts mehr darauf geschrieben werden. Das lässt sich nicht rückgängig machen.
office-seat-leaves-do = Aus dem Gremium nehmen
office-seat-left-said = { $judge } hat das Gremium verlassen.
office-seat-replacement = Wer den Platz einnimmt
office-seat-nobody = niemand
office-seat-panel = Richter einsetzen
office-seat-role = Als
office-seat-add = Noch ein Platz
office-seat-take-off = Platz wegnehmen
office-seat-save = Diese Richter einsetzen
office-seat-saved = Die Richter sind eingesetzt.
office-person-name = Name einer Person, die richten darf
office-person-add = Person hinzufügen
office-person-added = { $name } ist hinzugefügt.
