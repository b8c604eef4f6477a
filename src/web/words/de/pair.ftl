# Die Seite, auf der ein Telefon gekoppelt wird.
pair-title = Dieses Telefon koppeln
pair-opening = Einen Augenblick: Es wird nachgesehen, ob dieses Telefon schon gekoppelt ist.
pair-asking = Der Dienst wird gefragt …
pair-pairing = Wird gekoppelt …

pair-no-key-title = Dieses Telefon kann hier nicht gekoppelt werden
pair-no-answer-title = Dieses Telefon hat seinen Schlüssel

pair-code-why = Die Meldestelle gibt den Code für den Richtersitz. Er gilt einmal und für kurze Zeit.
pair-code = Code
pair-code-like = XK7P-4M2Q
pair-code-hint = Acht Buchstaben und Ziffern, wie die Meldestelle sie vorliest.
pair-code-not-whole = Der Code ist nicht vollständig.
pair-code-not-whole-do = Er hat acht Buchstaben und Ziffern, etwa XK7P-4M2Q.
pair-code-none = Das ist kein Code.
pair-code-none-do = Bitte noch einmal Zeichen für Zeichen lesen: Er sieht aus wie XK7P-4M2Q.
pair-key-stays = Das Telefon macht sich einen eigenen Schlüssel, der es nie verlässt. Wer dieses Telefon hat, unterschreibt damit: bitte gesperrt halten.
pair-pair = Dieses Telefon koppeln

pair-who-judge = Dieses Telefon gehört zu Richter { $name }
pair-who-scribe = Dieses Telefon schreibt für Richter { $name }
pair-who-gate = Dieses Telefon ist am Tor
pair-who-gate-called = Dieses Telefon ist am Tor: { $label }
pair-for = für { $show }
pair-for-practice = zur Übung: { $show }
pair-what-for-judge = Darauf werden Bögen geschrieben und unterschrieben.
pair-what-for-scribe = Es nimmt auf, was der Richter ansagt; nur das Telefon des Richters unterschreibt.
pair-what-for-gate = Es ruft Prüfungen auf und vermerkt, wer nicht kommt.
pair-paired-already = Dieses Telefon ist schon gekoppelt.
pair-paired-already-do = Der Code im Link wurde nicht verwendet. Soll das Telefon in andere Hände, muss es erst freigegeben werden.
pair-classes = Prüfungen
pair-class-heard = Prüfung { $number }
pair-no-classes = Noch keine Prüfung. Sie erscheinen hier, sobald die Meldestelle die Richter einsetzt.
pair-seat-left = dieser Richter ist ausgeschieden
pair-seat-signed = { $state }; der Bogen ist unterschrieben
pair-to-classes = Zu den Prüfungen
pair-to-gate = Zum Tor
pair-lost = Telefon verloren, oder geht es nach Hause? Bitte der Meldestelle sagen; sie kann dieses Telefon sofort aussperren.
pair-look-again = Neu nachsehen
pair-let-go = Dieses Telefon freigeben
pair-let-go-title = Dieses Telefon freigeben?
pair-let-go-what = Es vergisst seinen Schlüssel endgültig und kann nicht mehr schreiben oder unterschreiben. Was gespeichert ist, bleibt beim Dienst, und ein Telefon mit einem neuen Code macht dort weiter.
pair-let-go-unsent = { $unsent ->
    [one] Eine Änderung auf diesem Telefon ist noch nicht gesendet. Sie ginge verloren: bitte zuerst dort, wo Empfang ist, die Seite des Richters öffnen.
   *[other] { $unsent } Änderungen auf diesem Telefon sind noch nicht gesendet. Sie gingen verloren: bitte zuerst dort, wo Empfang ist, die Seite des Richters öffnen.
}
pair-let-go-keep = Behalten
pair-let-go-do = Freigeben
