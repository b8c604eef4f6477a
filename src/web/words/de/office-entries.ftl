# Das Turnierbüro: Teilnehmer, Pferde und Nennungen; die Starter einer Prüfung und ihre Startfolge.
office-entries-title = Nennungen
office-entries-late = Nachnennung
office-entries-find = Startnummer oder Name
office-entries-find-hint = Ziffern finden eine Nummer, Buchstaben einen Teilnehmer, ein Pferd oder einen Besitzer. Enter öffnet die erste.
office-entries-count = { $found } von { $all }.
office-entries-free = { $count ->
    [0] Nächste freie Nummer: { $next }.
   *[other] Nächste freie Nummer: { $next }; frei dazwischen: { $between }.
  }
office-entries-none = Noch ist niemand genannt. Am besten mit einer Nachnennung beginnen: Teilnehmer, Pferd, Startnummer und Prüfungen in einem Formular.
office-entries-not-found = Zu „{ $words }“ passt niemand. Weniger Buchstaben versuchen oder nachnennen.
office-entries-number = Startnummer
office-entries-exhibitor = Teilnehmer
office-entries-horse = Pferd
office-entries-entry = Nr. { $number }
office-entries-owner = Besitzer { $name }
office-entries-erased-name = Name gelöscht
office-entries-keep = Festhalten
office-entries-change = Ändern
office-entries-why = Warum
office-entries-why-hint = In Worten, die andere lesen werden. Bitte keine Namen.

office-entries-classes = Prüfungen
office-entries-class = { $number } { $name }
office-entries-no-class = Noch in keiner Prüfung. Unten in eine nennen.
office-entries-go = Ritt { $position }
office-entries-place = Platz { $place }
office-entries-enter = Nennen
office-entries-enter-another = In eine weitere Prüfung nennen
office-entries-choose = Prüfung wählen
office-entries-entered = { $count ->
    [0] Nr. { $number } ist genannt, noch in keiner Prüfung.
    [one] Nr. { $number } ist in Prüfung { $classes } genannt.
   *[other] Nr. { $number } ist in den Prüfungen { $classes } genannt.
  }
office-entries-why-late = Warum so spät
office-entries-why-late-hint = Nötig, sobald die Startfolge gelost ist. Wer nachgenannt wird, startet zuletzt. Bitte keine Namen.
office-entries-no-open-class = Keine Prüfung nimmt noch Nennungen: Überall ist schon ein Bogen unterschrieben.

office-entries-change-number = Startnummer
office-entries-new-number = Neue Startnummer
office-entries-next-free = Nächste freie Nummer: { $number }. Eine Nummer bleibt, sobald ein Bogen mit ihr unterschrieben ist.
office-entries-taken = { $number } ist { $exhibitor } mit { $horse }. Bitte eine andere wählen.
office-entries-number-changed = { $before } trägt jetzt { $number }.

office-entries-spoken = Wie die Namen gesprochen werden
office-entries-spoken-exhibitor = { $name }, wie gesprochen
office-entries-spoken-horse = { $name }, wie gesprochen
office-entries-spoken-hint = Für die Ansage, Wort für Wort: „A-nuk O-dan-el“. Wo nur der Vorname öffentlich ist, sieht sie das erste Wort.
office-entries-spoken-kept = Festgehalten. Die Ansage sieht es sofort.

office-entries-consents = Alter und Wort der Familie
office-entries-consents-line = Alter und Einwilligungen einer Familie sind privat. Wer sie öffnet, hinterlässt eine Zeile im Protokoll der Veranstaltung: wer, wann, von wem.
office-entries-consents-open = Öffnen; das hinterlässt eine Zeile
office-entries-consents-close = Schließen
office-entries-born = Geboren am { $day }
office-entries-born-unknown = Geburtsdatum nicht bekannt. In einer Jugendprüfung gilt so jemand als minderjährig.
office-entries-no-consent = Nichts ist festgehalten. Minderjährige werden dann gezeigt, wie die Veranstaltung es vorsieht, Erwachsene mit vollem Namen.
office-entries-consent-holds = Gilt:
office-entries-consent-by = von { $who }, { $day }, { $how }
office-entries-name-full = voller Name
office-entries-name-first-name-and-initial = Vorname und Anfangsbuchstabe
office-entries-name-back-number = nur Startnummer
office-entries-giver-parent = einem Elternteil
office-entries-giver-guardian = einem Vormund
office-entries-giver-exhibitor = der Teilnehmerin selbst
office-entries-how-signed-form = unterschriebenes Formular
office-entries-how-e-mail = E-Mail
office-entries-how-in-person = persönlich
office-entries-consent-new = Ein Wort der Familie festhalten
office-entries-consent-name = Der Name darf öffentlich sein als
office-entries-consent-name-hint = Um ein früheres Wort zurückzunehmen, „nur Startnummer“ festhalten.
office-entries-consent-giver = Wessen Wort es ist
office-entries-consent-day = Gegeben am
office-entries-consent-how = Wie
office-entries-consent-record = Festhalten
office-entries-consent-recorded = Festgehalten. Es gilt sofort, auch in dem, was schon aushängt.

office-entries-erase = Namen löschen
office-entries-erase-what = Wenn eine Familie darum bittet. Plätze, Bögen und Aushänge bleiben unter der Startnummer.
office-entries-erase-begin = Namen löschen …
office-entries-erase-title = Diesen Namen endgültig löschen?
office-entries-erase-goes = Endgültig weg sind: der Name, wie er gesprochen wird, das Geburtsdatum, die Einwilligungen, die Videos, die Worte der Fragen dieser Familie.
office-entries-erase-stays = Es bleiben: Startnummer, Plätze, Bögen und Aushänge; in ihnen stand der Name nie.
office-entries-erase-never = Nichts holt den Namen zurück. Wer wieder startet, ist neu. Was Leute selbst geschrieben haben, wird nicht durchsucht und nicht geändert.
office-entries-erase-why = Warum
office-entries-erase-asked-by-family = Die Familie bat darum
office-entries-erase-asked-by-exhibitor = Die Teilnehmerin bat darum
office-entries-erase-authority = Eine Behörde verlangt es
office-entries-erase-entered-in-error = Irrtümlich eingetragen
office-entries-erase-owner = Auch den Namen des Besitzers, { $name }
office-entries-erase-repeat = Die Startnummer { $number } noch einmal eintippen
office-entries-erase-yes = Endgültig löschen
office-entries-erase-done = { $queries ->
    [0] Der Name ist gelöscht. Entfernte Einwilligungen: { $consents }.
   *[other] Der Name ist gelöscht. Entfernte Einwilligungen: { $consents }. Fragen, deren Worte weg sind: { $queries }.
  }
office-entries-erase-still = { $count ->
    [one] In einem Eintrag hat jemand ein Wort des Namens in eine Begründung oder Bemerkung geschrieben. Bitte ansehen; er blieb, wie er ist.
   *[other] In { $count } Einträgen hat jemand ein Wort des Namens in eine Begründung oder Bemerkung geschrieben. Bitte ansehen; sie blieben, wie sie sind.
  }

office-entries-late-what = Wer schon da ist, wird am Namen gefunden, damit niemand und kein Pferd in zwei Schreibweisen dasteht.
office-entries-just = Gerade genannt
office-entries-in-no-class = genannt, noch in keiner Prüfung
office-entries-in-classes = genannt in { $classes }
office-entries-late-send = Nennen
office-entries-is-known = Schon auf dem Turnier.
office-entries-new-exhibitor = Wird neu eingetragen, wenn nicht jemand von denen gewählt wird, die schon da sind.
office-entries-new-horse = Wird neu eingetragen, wenn nicht eines der Pferde gewählt wird, die schon da sind.
office-entries-born-on = Geburtsdatum
office-entries-born-on-hint = Nur das Büro sieht es. Unter 18 ist der Name nur so öffentlich, wie die Familie es sagt.
office-entries-goes-on = Was schon getan ist, bleibt. Bitte richten, was oben steht, und noch einmal senden: Es geht dort weiter, und nichts wird zweimal eingetragen.

office-entries-of-class = Starter von Prüfung { $number }
office-entries-order = Startfolge
office-entries-class-empty = In dieser Prüfung ist noch niemand genannt. Unten eine Startnummer eintragen.
office-entries-go-head = Ritt
office-entries-who = Teilnehmer und Pferd
office-entries-has-video = mit Video
office-entries-added-late = nachgenannt
office-entries-change-entry = Nr. { $number } ändern
office-entries-becomes = Nr. { $number }
office-entries-to-entered = startet wieder
office-entries-to-checked-in = ist am Tor gemeldet
office-entries-to-scratched = ist gestrichen
office-entries-to-no-show = ist nicht erschienen
office-entries-to-excused = ist entlassen
office-entries-now = Nr. { $number }: { $status }.
office-entries-undo = Zurücknehmen
office-entries-undo-reason = Am Tisch sofort zurückgenommen.
office-entries-video = Video des Ritts
office-entries-video-hint = Eine Adresse, die mit https:// beginnt. Büro und Richter der Prüfung sehen sie, sonst niemand. Leer nimmt sie weg.
office-entries-keep-video = Adresse festhalten
office-entries-video-kept = Die Richter der Prüfung sehen das Video jetzt.
office-entries-video-off = Das Video ist weggenommen.
office-entries-add = Starter dazunehmen
office-entries-add-hint = Von jemandem, der auf diesem Turnier eine Nummer hat.
office-entries-nobody = Niemand trägt { $number }. Bitte nachnennen.
office-entries-is = { $exhibitor } mit { $horse }
office-entries-there = Schon in der Prüfung: { $status }.

office-entries-draw = Losen
office-entries-nobody-goes = In dieser Prüfung startet niemand, also gibt es nichts zu losen.
office-entries-draw-first = Startfolge losen
office-entries-draw-again = Noch einmal losen
office-entries-seed = Gelost wird aus dem Startwert { $seed }, der beim Anlegen der Prüfung gespeichert wurde. Niemand kann losen, bis es gefällt: Ein zweites Losen steht mit seiner Begründung fest.
office-entries-gap = Ritte zwischen zwei Ritten eines Reiters
office-entries-gap-hint = Leer: so viele, wie das Feld erlaubt.
office-entries-why-draw = Warum noch einmal gelost wird
office-entries-why-draw-hint = Jeder kann es lesen. Bitte keine Namen.
office-entries-drawn = { $gap ->
    [0] { $count } Ritte sind gelost.
   *[other] { $count } Ritte sind gelost; zwischen zweien eines Reiters liegen mindestens { $gap } Ritte.
  }
office-entries-not-drawn = Die Startfolge ist noch nicht gelost.
office-entries-how = { $count ->
    [one] Wie sie zustande kam: ein Eintrag
   *[other] Wie sie zustande kam: { $count } Einträge
  }
office-entries-kind-drawn = Gelost
office-entries-kind-redrawn = Noch einmal gelost
office-entries-kind-by-hand = Von Hand gesetzt
office-entries-kind-late-add = Nachgenannt, startet zuletzt
office-entries-seed-of = Startwert { $seed }.
office-entries-repeat-same = Dieser Browser hat noch einmal gelost: dieselbe Folge.
office-entries-repeat-differs = Dieser Browser hat noch einmal gelost und kam auf eine andere Folge. Bitte denen sagen, die den Dienst betreuen.
office-entries-repeat-not-here = Aus dem, was jetzt hier steht, lässt es sich nicht wiederholen: Jemand hat die Prüfung oder die Nummer seither verlassen.
office-entries-repeat-what = Diese Zeile gibt die Nummern nach ihren Losen aus, die erste zuerst. Hat ein Reiter mehrere Pferde, wird übergangen, wessen Reiter noch nicht ausgeruht ist.

office-entries-by-hand = Von Hand setzen
office-entries-by-hand-what = Die Pfeile verschieben einen Starter; mit der Tastatur auch die Pfeiltasten, Pos1 und Ende. Mit der Maus lässt sich ziehen.
office-entries-sooner = Nr. { $number } früher
office-entries-later = Nr. { $number } später
office-entries-moved-to = Nr. { $number } ist jetzt Ritt { $position }.
office-entries-order-changes = { $count ->
    [0] Noch ist nichts geändert.
   *[other] { $count } Starter sind zu einer anderen Zeit dran als vorher.
  }
office-entries-set-order = Diese Folge setzen
office-entries-as-it-was = Wie sie war
office-entries-why-order = Warum sich die Folge ändert
office-entries-order-set = Die Startfolge ist gesetzt. Das Tor sieht sie sofort.

office-entries-split-combine = Teilen und zusammenlegen
office-entries-split = Diese Prüfung teilen
office-entries-split-what = Eine neue Prüfung bekommt Vordruck, Pattern, Regel und Richter dieser Prüfung, einen eigenen Startwert, und wird neu gelost. Nur bevor ein Bogen unterschrieben ist.
office-entries-split-who = Wer in die neue Prüfung geht
office-entries-class-number = Nummer der neuen Prüfung
office-entries-class-name = Name der neuen Prüfung
office-entries-division = Abteilung
office-entries-split-do = Teilen
office-entries-split-preview = { $moving ->
    [0] Bitte wählen, wer geht. { $staying } bleiben: { $rest }.
   *[other] { $moving } gehen in Prüfung { $number }: { $who }. { $staying } bleiben: { $rest }.
  }
office-entries-split-done = { $count } Starter sind jetzt in Prüfung { $number }.
office-entries-combine = Andere Prüfungen in diese zusammenlegen
office-entries-combine-what = Ihre Starter kommen in Prüfung { $number }, die Vordruck, Regel und Richter behält. Jene Prüfungen enden damit, und nichts trennt sie wieder.
office-entries-combine-do = Endgültig zusammenlegen
office-entries-combine-preview = { $both ->
    [0] { $joining } kommen in Prüfung { $number }: { $who }.
   *[other] { $joining } kommen in Prüfung { $number }: { $who }. Schon in beiden, also nur einmal am Start: { $twice }.
  }
office-entries-combine-done = { $count } Starter kamen in Prüfung { $number }.
