# Die Seiten der Familie: eine Nennung finden; was sie bekam, von wem, in welcher Lektion und warum.

# Finden.
exhibitor-find-title = Nennung finden: { $show }
exhibitor-find = Nennung finden
exhibitor-find-what = Startnummer, oder der Anfang eines Namens oder Pferdenamens
exhibitor-find-send = Finden
exhibitor-find-how = Wie viel von einem Namen öffentlich ist, entscheidet die Familie. Wer nur mit Nummer geführt wird, ist nur über die Startnummer zu finden.
exhibitor-found = { $count ->
    [one] Eine Nennung passt zu „{ $words }“.
   *[other] { $count } Nennungen passen zu „{ $words }“.
  }
exhibitor-found-more = Das sind die ersten { $count } von mehreren. Geben Sie mehr vom Namen ein, oder die Startnummer.
exhibitor-found-none = Zu „{ $words }“ passt niemand.
exhibitor-found-none-what = Sehen Sie auf die Startnummer. Von einem Namen genügt der Anfang, soweit er öffentlich ist: Ein Kind kann nur mit Nummer geführt sein.
exhibitor-looking = Wird gesucht …
exhibitor-find-failed = Der Dienst antwortet nicht. Was Sie getippt haben, steht noch da: Versuchen Sie es noch einmal.
exhibitor-no-classes = Noch in keiner Prüfung.

# Eine Nennung.
exhibitor-title = Nr. { $number }: { $show }
exhibitor-description = Was Nummer { $number } bei { $show } bekam, Prüfung für Prüfung, mit den Gründen.
exhibitor-number = Startnummer { $number }
exhibitor-back-number = Startnummer
exhibitor-at-a-glance = Auf einen Blick
exhibitor-class = Prüfung
exhibitor-where = Wo sie steht
exhibitor-entered-nowhere = Diese Nennung ist noch in keiner Prüfung. Sobald sie es ist, stehen ihre Prüfungen hier.
exhibitor-find-another = Andere Nennung finden

# Eine Prüfung der Nennung.
exhibitor-class-number = Prüfung { $number }
exhibitor-goes = Startet { $position ->
    [1] als Erste
    [2] als Zweite
    [3] als Dritte
   *[other] an { $position }. Stelle
  }
exhibitor-not-drawn = Die Startfolge ist noch nicht gelost
exhibitor-place-of = Platz { $place } von { $of }
exhibitor-place = Platz
exhibitor-of = von { $of }
exhibitor-tied = geteilt
exhibitor-total = Summe
exhibitor-without-place = ohne Platz
exhibitor-by-judge = Nach dem Bogen von { $judge }
exhibitor-why = Warum
exhibitor-rule = Wie die Prüfung gewertet wird
exhibitor-class-page = Die ganze Prüfung { $number }
exhibitor-posted-at = Ausgehängt { $time }
exhibitor-nothing-posted = Noch ist nichts ausgehängt. Sobald es so weit ist, steht es hier.
exhibitor-not-in-posting = Das ausgehängte Ergebnis enthält diese Nennung nicht. Ist sie gestartet, fragen Sie in der Meldestelle.

# Noten.
exhibitor-marks = Noten, Richter für Richter
exhibitor-maneuver = Lektion
# Wie die Sätze des Ergebnisses sie nennen.
exhibitor-judge-number = Richter { $number }
exhibitor-base = Grundwert
exhibitor-times = (zählt { $coefficient }-fach)
exhibitor-whole-go = Für den ganzen Ritt
exhibitor-errors-of-course = Verreiten
exhibitor-none = keine
exhibitor-its-score-pattern = Wertung
exhibitor-its-score-one-mark = Note
exhibitor-its-score-percentage = Prozent
exhibitor-its-score-measured = Sekunden
exhibitor-its-score-places = Wertung
exhibitor-place-on-card = Platz auf dem Bogen
exhibitor-left-off = nicht gereiht
exhibitor-remark-of = { $judge }:
exhibitor-about-whole-go = Zum ganzen Ritt
exhibitor-stamps = Eine eingerahmte Zeit ist die Stelle im Video dieses Ritts, von seinem Anfang an.
exhibitor-stamp = Bei { $time } im Video:
exhibitor-counts = zählt { $counts }
exhibitor-cards-never = Die Notenbögen dieser Prüfung werden nicht veröffentlicht. Wer sie sehen darf, sagt die Meldestelle.
exhibitor-cards-when-official = Die Notenbögen dieser Prüfung werden veröffentlicht, sobald das Ergebnis amtlich ist.
exhibitor-cards-with-posting = Von dieser Nennung ist kein Bogen veröffentlicht.
exhibitor-amended = geändert, Fassung { $revision }
exhibitor-takes = { $code }: −{ $points }

# Die Aufgabe.
exhibitor-pattern = Aufgabe: { $name }

# Berichtigungen.
exhibitor-corrected = Geändert { $time }. Grund: { $reason }
exhibitor-history = Was wann ausgehängt war
exhibitor-version = Fassung { $version }, { $state }, { $time }
exhibitor-version-now = das gilt jetzt
exhibitor-moved-place = Aus Platz { $before } wurde Platz { $now }.
exhibitor-moved-total = Aus der Summe { $before } wurde { $now }.
exhibitor-got-place = Vor der Änderung war es Platz { $before }. Jetzt ist es keiner.
exhibitor-gets-place = Vorher war es kein Platz, jetzt ist es Platz { $now }.

# Das sieht falsch aus.
exhibitor-wrong = Das sieht falsch aus
exhibitor-wrong-ask = Die Meldestelle fragen
exhibitor-wrong-what = Von hier können Sie die Meldestelle zur Prüfung { $number } fragen. Sie liest, was Sie schreiben, sieht in die Bögen und antwortet. Dass Sie gefragt haben, sieht sonst niemand.
exhibitor-wrong-caution = Die Entscheidung der Richter steht. Ein Einspruch ist etwas anderes: Er geht nach den Regeln des Verbands an den Steward oder die Turnierleitung, oft innerhalb einer Frist, und nicht über diese Seite.
exhibitor-wrong-without-script = Ohne JavaScript geht das Formular in diesem Browser nicht. Fragen Sie in der Meldestelle, mit Prüfung und Startnummer.
exhibitor-wrong-about = Worum geht es?
exhibitor-about-place = Um den Platz oder die Summe
exhibitor-about-marks = Um eine Note oder einen Abzug
exhibitor-about-who-rode = Darum, wer geritten ist, oder auf welchem Pferd
exhibitor-about-something-else = Um etwas anderes
exhibitor-wrong-words = Was sieht falsch aus?
exhibitor-wrong-words-hint = Die Lektion, der Richter, was Sie gesehen haben. Lassen Sie die Namen fremder Kinder weg.
exhibitor-wrong-left = { $count ->
    [one] Ein Zeichen ist noch frei.
   *[other] { $count } Zeichen sind noch frei.
  }
exhibitor-wrong-reached = Wie erreicht die Meldestelle Sie? (muss nicht sein)
exhibitor-wrong-reached-hint = Eine Box, ein Telefon. Nur die Meldestelle sieht es.
exhibitor-wrong-send = An die Meldestelle senden
exhibitor-wrong-sending = Wird gesendet …
exhibitor-wrong-choose = Sagen Sie, worum es geht.
exhibitor-wrong-say = Sagen Sie, was falsch aussieht.
exhibitor-wrong-no-answer = Der Dienst antwortet nicht.
exhibitor-wrong-no-answer-what = Was Sie getippt haben, steht noch da. Senden Sie es noch einmal, sobald es Empfang gibt: Es zählt einmal, so oft Sie es auch senden.
exhibitor-wrong-queries_waiting = Ihre Fragen dazu warten schon auf eine Antwort.
exhibitor-wrong-queries_waiting-what = Gehen Sie zur Meldestelle, oder fragen Sie wieder, wenn sie geantwortet hat. Gesendet wurde nichts.
exhibitor-wrong-too_many_requests = Von hier fragen gerade viele auf einmal.
exhibitor-wrong-too_many_requests-what = Was Sie getippt haben, steht noch da. Warten Sie eine Minute und senden Sie es dann noch einmal.
exhibitor-wrong-back_number_not_in_class = Diese Nummer ist nicht mehr in der Prüfung.
exhibitor-wrong-back_number_not_in_class-what = Laden Sie die Seite neu und sehen Sie auf die Nummer; was Sie getippt haben, bleibt.
exhibitor-wrong-other = Der Dienst hat es nicht angenommen.
exhibitor-wrong-other-what = Was Sie getippt haben, steht noch da. Laden Sie die Seite neu und senden Sie es noch einmal, oder gehen Sie zur Meldestelle.

# Was gefragt wurde.
exhibitor-asked = Was Sie gefragt haben
exhibitor-asked-sent = Gesendet. Die Antwort wird hier stehen.
exhibitor-asked-at = Gefragt { $time }. { $about }.
exhibitor-asked-version = Es geht um Fassung { $version } des Ergebnisses.
exhibitor-asked-open = Die Meldestelle hat es und hat noch nicht geantwortet.
exhibitor-asked-answered = Beantwortet
exhibitor-asked-withdrawn = Sie haben es zurückgenommen. Die Worte sind weg.
exhibitor-asked-closed = Die Meldestelle hat es geschlossen.
exhibitor-asked-erased = Die Worte wurden gelöscht.
exhibitor-asked-gone = Diese Frage gibt es nicht mehr.
exhibitor-asked-not-read = Sie ist gerade nicht zu lesen. Die Seite versucht es wieder.
exhibitor-answer-at = Die Meldestelle, { $time }
exhibitor-outcome-stands = Das Ergebnis bleibt.
exhibitor-outcome-corrected = Das Ergebnis wurde berichtigt.
exhibitor-outcome-explained = Es wurde erklärt; geändert wurde nichts.
exhibitor-asked-new-answer = Die Meldestelle hat Ihre Frage zur Prüfung { $number } beantwortet.
exhibitor-follow = Anderswo weiterlesen
exhibitor-follow-what = Mit diesem Link lesen Sie die Antwort auf einem anderen Gerät. Wer ihn hat, kann sie auch lesen: Behalten Sie ihn für sich.
exhibitor-follow-copy = Link kopieren
exhibitor-follow-copied = Kopiert.
exhibitor-follow-by-hand = Kopieren Sie ihn von Hand aus dem Feld.
exhibitor-not-kept = Dieser Browser merkt sich nichts. Kopieren Sie den Link jetzt, sonst finden Sie die Antwort nicht wieder.
exhibitor-withdraw = Zurücknehmen
exhibitor-withdraw-sure = Die Worte sind sofort weg, auch für die Meldestelle. Das lässt sich nicht rückgängig machen.
exhibitor-withdraw-yes = Ja, zurücknehmen
exhibitor-withdraw-failed = Das ging nicht: Der Dienst antwortet nicht, oder die Meldestelle hat gerade geantwortet. Geändert wurde nichts.
exhibitor-forget = Auf diesem Gerät vergessen
exhibitor-forget-sure = Ohne den Link finden Sie es nicht wieder. Die Meldestelle behält die Frage.
exhibitor-forget-yes = Ja, hier vergessen
exhibitor-ask-again = Noch etwas fragen
