# Die Seite des Ringmeisters und der Ansage.

gate-title = Einlass
gate-looking = Es wird nachgesehen, was der Dienst hat …
gate-days = Tage des Turniers
gate-no-day = Noch ohne Zeit
gate-no-ring = Ohne Bahn
gate-no-classes = Noch keine Prüfung. Sie erscheinen hier, sobald die Meldestelle das Programm gemacht hat.
gate-checked-in-count = { $here } von { $going } gemeldet
gate-to-day = Alle Prüfungen
gate-no-class = Diese Prüfung gibt es nicht mehr. Vielleicht hat die Meldestelle sie aus dem Programm genommen.

# Wo kein Einlass ist.
gate-ways-on = Wie es weitergeht
gate-no-store = Dieser Browser behält nichts
gate-no-store-what = Ist das ein privates Fenster? Öffnen Sie die Seite in einem gewöhnlichen: Am Einlass darf nichts verloren gehen.
gate-not-paired = Dieses Gerät gehört noch nicht zum Einlass
gate-not-paired-what = Die Meldestelle gibt Ihnen einen Code für den Einlass. Damit ruft dieses Telefon oder dieser Platz Prüfungen auf, meldet Starter an und liest die Plätze vor.
gate-other-phone = Dieses Telefon ist das eines Richters
gate-other-phone-what = Um damit am Einlass zu arbeiten, geben Sie es zuerst auf seiner eigenen Seite frei und koppeln es dann mit einem Code für den Einlass.
gate-waiting = Warten auf das erste Netz
gate-waiting-what = Dieses Gerät ist gekoppelt und hat vom Dienst noch nichts gehört. Gehen Sie dorthin, wo Netz ist; es geht von selbst weiter.
gate-ended = Dieses Gerät gehört nicht mehr zum Einlass
gate-ended-what = Die Meldestelle hat es vom Turnier genommen, oder die Sitzung ist zu Ende. Kein Name ist mehr darauf.
gate-left-unsent = Diese Änderungen haben den Dienst nie erreicht. Sagen Sie sie der Meldestelle, dann legen Sie sie weg:
gate-to-pair = Code eingeben
gate-to-office = Zur Meldestelle
gate-to-judge = Zur Seite des Richters
gate-choose-show = Der Einlass welches Turniers?
gate-no-show = Noch kein Turnier. Die Meldestelle legt eines an.

# Netz, und was noch zu senden ist.
gate-no-signal = Kein Netz. Was Sie sehen, liegt auf diesem Gerät und kann alt sein.
gate-no-signal-since = Kein Netz seit { $time }. Was Sie sehen, ist von da.
gate-unsent = { $count ->
    [one] Eine Änderung ist noch nicht gesendet.
   *[other] { $count } Änderungen sind noch nicht gesendet.
  }
gate-unsent-what = Sie liegen hier und gehen in dieser Reihenfolge hinaus, sobald Netz da ist.
gate-not-sent = noch nicht gesendet
gate-refused = Vom Dienst nicht angenommen: { $change }
gate-put-away = Weglegen
gate-change-call = Prüfung { NUMBER($number, useGrouping: 0) } aufgerufen
gate-change-order = Prüfung { NUMBER($number, useGrouping: 0) }, andere Startfolge
gate-change-status = Prüfung { NUMBER($number, useGrouping: 0) }, { $backNumber } { $status }
gate-undo = Rückgängig
gate-undone = { $backNumber } steht wie vorher.
gate-undone-order = Die Startfolge ist wie vorher.
gate-said-status = { $backNumber }: { $status }
gate-said-order = Die Startfolge ist geändert.
gate-said-called = Prüfung { NUMBER($number, useGrouping: 0) } ist aufgerufen.

# Eine Prüfung.
gate-call = Prüfung in die Bahn rufen
gate-call-again = Noch einmal rufen
gate-announce = Plätze vorlesen
gate-sheet = Startliste am Einlass
gate-not-drawn = Die Startfolge ist noch nicht gelost; hier stehen alle nach Startnummer.
gate-no-entries = In dieser Prüfung ist niemand genannt.
gate-rail = Alle { $going } gehen zusammen hinein.
gate-late = nachgenannt
gate-here = da
gate-check-in-number = { $backNumber } ist da
gate-more = Mehr für { $backNumber }
gate-moved = In eine andere Prüfung verlegt.
gate-at-the-gate = Am Einlass
gate-in-ring = In der Bahn
gate-on-deck = Als Nächstes
gate-in-the-hole = Danach
gate-gone = geritten
gate-nobody = –
gate-all-gone = Alle sind geritten.
gate-not-here-yet = nicht gemeldet
gate-gone-count = { $gone } von { $going } sind geritten, soweit die Telefone der Richter und der Einlass es wissen.
gate-next = Der Nächste hinein
gate-one-back = Einen zurück

# Ein Starter.
gate-entry = Startnummer { $backNumber }
gate-do-checked-in = Doch da: anmelden
gate-do-scratched = Streichen
gate-do-no-show = Nicht erschienen
gate-do-excused = Entlassen
gate-do-not-here = Noch nicht da: Anmeldung zurücknehmen
gate-do-take-back = Zurücknehmen: startet doch
gate-why = Warum { $status }? Die Meldestelle liest es.
gate-own-reason = Oder mit eigenen Worten
gate-write-reason = Diesen Grund festhalten
gate-reason-by-exhibitor = Der Reiter will nicht starten
gate-reason-horse-unfit = Das Pferd kann nicht gehen
gate-reason-exhibitor-unfit = Der Reiter kann nicht starten
gate-reason-not-at-gate = Beim Aufruf nicht am Einlass
gate-reason-called-three-times = Dreimal aufgerufen, niemand kam
gate-reason-by-judge = Vom Richter entlassen
gate-reason-equipment = Ausrüstung, nach Entscheidung des Stewards
gate-reason-lameness = Lahmheit, nach Entscheidung des Richters
gate-reason-mistake = Aus Versehen eingetragen
gate-reason-came-after-all = Ist doch noch gekommen
gate-reason-undone = Am Einlass zurückgenommen: ein Versehen

# Die Startfolge.
gate-change-the-order = Startfolge ändern
gate-to-sheet = Startliste
gate-earlier = { $backNumber } einen früher
gate-later = { $backNumber } einen später
gate-last = { $backNumber } ans Ende
gate-keep-order = Diese Folge behalten
gate-order-as-it-was = Wie sie war
gate-why-order = Warum eine andere Folge?
gate-order-is-read = Der Grund ist öffentlich, zusammen mit der Startfolge.
gate-reason-two-goes = Ein Reiter mit zwei Pferden, zu dicht nacheinander
gate-reason-not-ready = Noch nicht fertig
gate-reason-tack = Die Ausrüstung wird gerichtet
gate-reason-other-ring = Noch in der anderen Bahn

# Die Plätze vorlesen.
gate-not-posted = Noch ist nichts ausgehängt. Die Plätze erscheinen hier, sobald die Meldestelle das Ergebnis aushängt.
gate-nobody-placed = In dieser Prüfung ist niemand platziert.
gate-posting-provisional = Vorläufig.
gate-posting-official = Amtlich.
gate-posting-corrected = Amtlich, berichtigt.
gate-posting = Aushang { $version } von { $when }
gate-newer-posting = Ein neueres Ergebnis hängt aus. Hier aufhören: Die Plätze werden neu vom Dienst geholt.
gate-announcement-kept = Kein Netz: Das hier wurde um { $time } geholt. Fragen Sie die Meldestelle, ob es noch gilt, bevor Sie es vorlesen.
gate-judged-by = { $count ->
    [one] Richter: { $names }
   *[other] Richter: { $names }
  }
gate-placings-of = Plätze von Richter { $judge }
gate-places-count = { $count ->
    [one] Ein Platz
   *[other] { $count } Plätze, vom letzten zum ersten
  }
gate-say-provisional = Sagen Sie dazu, dass das Ergebnis vorläufig ist.
gate-place = Platz { $place }
gate-tied = teilt den Platz
gate-back-number = Startnummer
gate-number-only = Nur mit der Startnummer
gate-riding = mit { $horse }
gate-spoken = Gesprochen:
gate-total = Summe { $total }
gate-page = { $at } von { $of }
gate-read-next = Weiter
gate-reading-keys = Tasten: → weiter, ← zurück, Pos 1 von vorn.

# Dieses Gerät.
gate-this-phone = Dieses Telefon
gate-this-office = Dieser Platz
gate-let-go-phone-what = Wenn der Tag vorbei ist, geben Sie das Telefon frei; nichts vom Turnier bleibt darauf.
gate-let-go-office-what = Verlassen Sie den Einlass, wenn Sie den Platz verlassen; nichts davon bleibt in diesem Browser.
gate-let-go-phone = Telefon freigeben
gate-let-go-office = Einlass verlassen
gate-let-go-phone-sure = Es gehört dann nicht mehr zum Einlass und braucht dafür einen neuen Code. Das lässt sich nicht zurücknehmen.
gate-let-go-office-sure = Was in diesem Browser lag, wird weggeworfen.
gate-let-go-judge-unsent = Auf diesem Telefon liegen auch Bögen eines Richters, die nicht gesendet sind. Senden oder sichern Sie sie zuerst.
gate-let-go-unsent = { $count ->
    [one] Eine Änderung hat der Dienst noch nicht angenommen; sie ginge verloren.
   *[other] { $count } Änderungen hat der Dienst noch nicht angenommen; sie gingen verloren.
  }
