# Das Turnierbüro: was Familien zu einem Ergebnis fragen.
office-queries-title = Fragen der Familien
office-queries-what = Eine Antwort geht an die Familie, die gefragt hat, und an sonst niemanden. Am Ergebnis ändert sie nichts: Eine Berichtigung wird mit der Prüfung ausgehängt.
office-queries-waiting = { $count ->
    [0] Keine Frage wartet.
    [one] Eine Frage wartet.
   *[other] { $count } Fragen warten.
  }
office-queries-open = Warten ({ $count })
office-queries-closed = Erledigt ({ $count })
office-queries-none-open = Niemand wartet auf eine Antwort. Eine Familie fragt auf der Seite ihrer Startnummer; die Frage steht dann sofort hier.
office-queries-none-closed = Noch ist nichts beantwortet.

office-queries-class = Prüfung { $number }, { $name }
office-queries-back-number = Nr. { $number }
office-queries-asked-at = gefragt am { $at }
office-queries-about-place = Zur Platzierung
office-queries-about-marks = Zu den Noten
office-queries-about-who-rode = Dazu, wer geritten ist
office-queries-about-something-else = Zu etwas anderem
office-queries-state-open = wartet auf Antwort
office-queries-state-answered = beantwortet
office-queries-state-withdrawn = von der Familie zurückgenommen
office-queries-state-erased = Worte gelöscht

office-queries-asked = Was die Familie schreibt
office-queries-words-gone = Die Worte sind weg: zurückgenommen oder gelöscht.
office-queries-posting = Gefragt zum Aushang { $version }.
office-queries-overtaken = Gefragt zum Aushang { $seen }; jetzt gilt Aushang { $now }.
office-queries-reached-by = Zu erreichen: { $how }

office-queries-posted = Was aushängt
office-queries-not-posted = Von dieser Prüfung hängt noch nichts aus.
office-queries-whole-class = Die Frage betrifft die Prüfung als Ganzes.
office-queries-not-in-posting = Diese Startnummer steht nicht im ausgehängten Ergebnis.
office-queries-posting-provisional = Aushang { $version }, noch nicht amtlich
office-queries-posting-official = Aushang { $version }, amtlich
office-queries-posting-corrected = Aushang { $version }, berichtigt
office-queries-by-judge = Auf dem Bogen von { $name }:
office-queries-cards = Was jeder Richter gab

office-queries-answered = Antwort
office-queries-answered-by = { $at }, von { $name }
office-queries-somebody = jemandem aus dem Büro
office-queries-outcome = Was dabei herauskam
office-queries-outcome-stands = Das Ergebnis bleibt.
office-queries-outcome-stands-what = Es wurde nachgesehen, und es stimmt.
office-queries-outcome-corrected = Es wurde berichtigt.
office-queries-outcome-corrected-what = Erst die Berichtigung aushängen; die Antwort tut das nicht.
office-queries-outcome-explained = Es ist erklärt.
office-queries-outcome-explained-what = Es gab etwas zu sagen und nichts zu ändern.
office-queries-words = Antwort an die Familie
office-queries-words-hint = Nur die Familie liest sie. Namen anderer bitte weglassen.
office-queries-answer-to = Die Frage zu Prüfung { $number } beantworten
office-queries-send = Antwort senden
office-queries-sent = Beantwortet (Prüfung { $number }). Die Familie sieht es sofort.
office-queries-add = Antwort ergänzen
office-queries-to-class = Zur Prüfung { $number }

office-queries-erase = Worte löschen
office-queries-erase-title = Die Worte dieser Frage löschen?
office-queries-erase-what = Die Worte der Familie und der Antworten sind dann endgültig weg, auch für die Familie, und nichts holt sie zurück. Eine offene Frage ist damit geschlossen. Dass es eine Frage gab, bleibt stehen.
office-queries-erase-yes = Endgültig löschen
office-queries-erased = Die Worte sind gelöscht.
