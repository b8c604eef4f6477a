# Das Brett: Turniere, Prüfungen und was aushängt, wie alle es lesen.

board-shows-title = Turniere
board-shows-description = Prüfungen, Ergebnisse und die Gründe für jede Platzierung, wie die Meldestelle sie aushängt.
board-shows-empty = Hier ist noch kein Turnier. Es erscheint, sobald die Meldestelle eines anlegt.
board-shows-present = Jetzt
board-shows-coming = Demnächst
board-shows-past = Vergangen
board-shows-practice = Zum Üben

board-title = { $show }: Brett
board-description = { $show }, { $place }. { $now ->
    [0] Keine Prüfung ist in der Bahn.
    [one] Eine Prüfung ist in der Bahn.
   *[other] { $now } Prüfungen sind in der Bahn.
  } { $posted ->
    [0] Noch hängt nichts aus.
    [one] Ein Ergebnis hängt aus.
   *[other] { $posted } Ergebnisse hängen aus.
  }
board-empty = Das Programm hat noch keine Prüfungen. Sie erscheinen, sobald die Meldestelle sie anlegt.
board-now = Jetzt
board-now-empty = Keine Prüfung ist in der Bahn.
board-next = Als Nächstes
board-next-empty = Es steht nichts mehr auf dem Programm.
board-posted = Ausgehängt
board-posted-empty = Noch hängt nichts aus. Ein Ergebnis steht hier, sobald die Meldestelle es aushängt.
board-over = Findet nicht statt
board-no-ring = Noch ohne Bahn
board-class-number = Prüfung { $number }
board-cards-in = { $expected ->
    [one] { $in } von einem Bogen ist da
   *[other] { $in } von { $expected } Bögen { $in ->
        [one] ist
       *[other] sind
      } da
  }
board-posted-at = ausgehängt { $time }
board-new = neu
board-new-count = { $count ->
    [one] Ein Ergebnis ist neu für Sie.
   *[other] { $count } Ergebnisse sind neu für Sie.
  }
board-new-seen = Gesehen
board-news = Prüfung { $number }, { $name }: { $state ->
    [corrected] Eine Berichtigung hängt aus.
   *[other] Das Ergebnis hängt aus.
  }
board-find = Startnummer oder Name
board-find-send = Suchen
board-to-screen = Das Brett für einen großen Bildschirm

# Eine Prüfung.
board-class-title = Prüfung { $number }, { $name }: { $show }
board-class-description = { $show }: { $state }.
board-class-description-posted = { $show }: { $state }, { $time }. { $placed ->
    [one] Eine Nennung ist platziert
   *[other] { $placed } Nennungen sind platziert
  }, jede mit dem Grund dafür.
board-class-cancelled = Die Prüfung findet nicht statt.
board-class-combined = Die Prüfung wurde mit einer anderen zusammengelegt und wird dort gerichtet.
board-order = Startfolge
board-entries = Nennungen
board-order-empty = Noch keine Nennungen.
board-order-not-drawn = Die Startfolge ist noch nicht gelost; hier stehen sie nach der Startnummer.
board-go = Start
board-back-number = Nr.
board-who = Reiter und Pferd
board-name-not-public = Name nicht öffentlich
board-pattern = Aufgabe: { $name }

board-posted-line = { $version ->
    [1] Ausgehängt { $time }.
   *[other] Ausgehängt { $time }, Fassung { $version }.
  }
board-changed-because = Geändert, weil: { $reason }
board-places = Plätze
board-places-of-judge = Plätze von { $judge }
board-nobody-placed = Niemand ist platziert.
board-place = Platz
board-tied = geteilt
board-total = Summe
board-place-on-card = Platz { $place }
board-unplaced = Ohne Platz
board-why-not = Warum
board-did-not-go = Nicht gestartet
board-rule = Wie die Prüfung platziert wird

board-cards = Die Bögen der Richter
board-cards-are-out = Wie jeder Richter ihn unterschrieben hat. Die Zahl über einer Spalte ist die der Lektion.
board-cards-never = Die Bögen dieser Prüfung werden nicht veröffentlicht.
board-cards-with-posting = Die Bögen dieser Prüfung werden mit dem Ergebnis veröffentlicht.
board-cards-when-official = Die Bögen dieser Prüfung werden veröffentlicht, wenn das Ergebnis amtlich ist.
board-card-of = Bogen von { $judge }
board-card-revision = berichtigt, Fassung { $revision }
board-coefficient = (mal { $coefficient })
board-not-seen = nicht gesehen
board-penalty = Abzug
board-taken-off = Abzug
board-score-pattern = Wertung
board-score-one-mark = Note
board-score-places = Wertung
board-score-percentage = Prozent
board-score-measured = Sekunden
board-fault = { $label }: −{ $points }
board-fault-at = Lektion { $position }, { $label }: −{ $points }
board-remark = Bemerkung des Richters: { $remark }
board-remark-at = Lektion { $position }: { $remark }
board-errors-of-course = Verreiten: −{ $points }
board-lower-limit = Zusammen ergibt es { $points }; dafür zählt die niedrigste Wertung des Bogens.
board-ruling-off-pattern = Aufgabe nicht eingehalten
board-ruling-disqualified = Disqualifiziert
board-ruling-excused = Entlassen
board-ruling-eliminated = Ausgeschieden
board-ruling-no-score = Ohne Wertung
board-ruling-no-show = Nicht erschienen
board-ruling-scratched = Gestrichen
board-ruling-retired = Aufgegeben

board-postings = Jeder Aushang dieser Prüfung
board-version = Fassung { $version }:
board-posting-shown = Sie steht auf dieser Seite.
board-posting-read = Fassung { $version } lesen
board-older = Fassung { $version }, inzwischen ersetzt
board-older-note = So hing es aus: { $time } ({ $state }). Jetzt gilt Fassung { $now }.
board-place-now = Jetzt

board-check = Für alle, die nachprüfen
board-check-why = Nichts, was vor diesem Aushang aufgeschrieben wurde, lässt sich unbemerkt ändern, solange jemand den Kopf des Buches aufhebt, der hier steht.
board-head = Kopf des Buches, Zeile { $sequence }
board-body-hash = Prüfsumme des Aushangs
board-signed-posting = Der Aushang, wie der Dienst ihn unterschrieben hat
board-keys = Die Schlüssel des Dienstes
board-csv = Das Ergebnis als Tabelle (CSV)
board-printed = { $show }, Prüfung { $number }, Fassung { $version } ({ $state }), ausgehängt { $time }

# Das Brett für einen Bildschirm an der Bahn.
board-screen-title = { $show }: Brett für einen Bildschirm
board-screen-part = Blatt { $part } von { $parts }
board-screen-still = In diesem Browser wechseln die Blätter nicht von selbst: Alle stehen hier untereinander. Laden Sie die Seite neu, um Neues zu sehen.
board-screen-progress = Bis zum nächsten Blatt
board-screen-sheet = { $at } / { $count }
board-screen-as-of = Stand { $time }
board-screen-previous = Voriges Blatt
board-screen-next = Nächstes Blatt
board-screen-pause = Anhalten
board-screen-go-on = Weiter
board-screen-fill = Ganzer Bildschirm
board-screen-back = Zum Brett
