# Die Meldestelle: Anmelden, die Turniere, der Tag, Telefone, Konten.
office-one-moment = Einen Augenblick …
office-done = Fertig
office-field-fault = Das fehlt oder hat nicht die verlangte Form.
office-field-as = Noch nicht: { $message }.
office-table = Tabelle: { $caption }
office-reason = Grund
office-look-at-fields = Bitte die markierten Felder ansehen; was Sie getippt haben, ist noch da.
office-to-do = Zu tun
office-copy = Kopieren
office-copied = Kopiert.
office-copy-by-hand = Der Browser kopiert hier nicht. Der Text ist markiert: bitte von Hand kopieren.

# Anmelden.
office-sign-in = Anmelden
office-sign-in-name = Anmeldename
office-sign-in-password = Kennwort
office-sign-in-code = Einmalcode
office-sign-in-code-hint = Sechs Ziffern, wie die Authenticator-App sie jetzt zeigt.
office-sign-in-wait = { $seconds ->
    [one] Eine Sekunde warten, dann noch einmal versuchen.
   *[other] { $seconds } Sekunden warten, dann noch einmal versuchen.
  }
office-sign-out = Abmelden
office-signed-out = Sie sind abgemeldet.
office-session-ended = Ihre Sitzung ist zu Ende
office-session-ended-why = Melden Sie sich wieder an, dann geht es weiter. Was Sie getippt haben, ist noch da.
office-session-somebody-else = Als jemand anderes anmelden (Getipptes geht verloren)
office-sessions = Wo Sie angemeldet sind
office-session-line = Seit { $begun }, zuletzt benutzt { $seen }, endet { $ends }.
office-session-this = Dieses Fenster
office-session-end = Beenden
office-session-ended-other = Die Sitzung ist beendet.

# Ein Konto wird eingerichtet.
office-set-up = Konto einrichten
office-set-up-first = Zum ersten Mal hier? Richten Sie Ihr Konto mit dem Code der Turnierleitung ein.
office-set-up-what = Die Turnierleitung hat Ihnen einen Code gegeben. Er gilt einmal und einen Tag lang.
office-set-up-code = Einrichtungscode
office-set-up-code-hint = Buchstaben und Ziffern, wie Sie sie bekommen haben.
office-set-up-go-on = Weiter
office-set-up-have = Ich habe schon ein Kennwort
office-set-up-hello = Willkommen, { $name }. Noch zwei Dinge, dann sind Sie drin.
office-set-up-factor = 1. Eine Authenticator-App
office-set-up-scan = Scannen Sie das mit der Authenticator-App auf Ihrem Telefon. Von da an zeigt sie sechs Ziffern, die jede halbe Minute wechseln.
office-set-up-qr = QR-Code für die Authenticator-App; dasselbe steht darunter als Text
office-set-up-by-hand = Keine Kamera? Tippen Sie diesen Schlüssel in die App:
office-set-up-open-app = In einer App auf diesem Gerät öffnen
office-set-up-password = 2. Ein Kennwort
office-set-up-new-password = Neues Kennwort
office-set-up-password-hint = Lang ist besser als verzwickt: ein paar Wörter, die niemand zusammenstellen würde, oder was Ihr Passwortmanager vorschlägt.
office-set-up-finish = Einrichten und anmelden
office-password = Kennwort
office-password-present = Jetziges Kennwort
office-password-change = Kennwort ändern
office-password-changed = Das Kennwort ist geändert. Ihre anderen Sitzungen sind beendet.

# Die Turniere.
office-shows = Turniere
office-shows-real = Turniere
office-shows-practice = Übung
office-shows-none = Es gibt noch kein Turnier, an dem Sie arbeiten. Die Turnierleitung legt eines an oder gibt Ihrem Konto ein Turnier.
office-rehearse = Dieses Turnier proben
office-rehearsal-made = Ein Übungsturnier ist angelegt: dieselben Prüfungen und Richter, und von keinem Reiter der Name.
office-nav-show = Dieses Turnier
office-nav-own = Ihr Konto
office-entries = Nennungen
office-queries-way = Rückfragen

# Der Tag.
office-day = Der Tag
office-day-empty = Noch gibt es keine Prüfung. Prüfungen kommen mit der Ausschreibung des Turniers dazu.
office-needs = Braucht jetzt die Meldestelle
office-needs-none = Gerade wartet nichts auf die Meldestelle.
office-need-tie-open = { $count ->
    [one] Alle Bögen sind da; ein Gleichstand ist offen.
   *[other] Alle Bögen sind da; { $count } Gleichstände sind offen.
  }
office-need-changed-since = Geändert, seit Fassung { $version } ausgehängt wurde.
office-need-to-be-amended = Eine Nennung kam nach der Unterschrift dazu: { $judges } muss nachtragen.
office-need-card-missing = { $missing ->
    [one] Einer von { $expected } Bögen fehlt; die anderen sind da.
   *[other] { $missing } von { $expected } Bögen fehlen; die anderen sind da.
  }
office-need-ready-to-post = Alle Bögen sind da: bereit zum Aushängen.
office-no-ring = Noch keine Bahn
office-ring-caption = Prüfungen: { $ring }
office-class = Prüfung
office-time = Zeit
office-state = Stand
office-cards-in = { $in } von { $expected } Bögen da
office-version = Fassung { $version }
office-live-streaming = laufend aktuell
office-live-polling = alle paar Sekunden nachgefragt
office-live-no-answer = Der Dienst antwortet nicht. Was Sie sehen, kann alt sein; es wird von selbst wieder gefragt.

# Finden und Kurztasten.
office-find = Finden
office-find-hint = Prüfung, Startnummer, Name
office-found = { $count ->
    [0] Nichts gefunden.
    [one] Eins gefunden.
   *[other] { $count } gefunden.
  }
office-keys = Kurztasten
office-keys-wanted = Kurztasten wirken (sie ruhen, während Sie tippen)
office-key-find = Eine Prüfung oder Startnummer finden
office-key-help = Diese Liste
office-key-next-part = Nächster Teil der Seite
office-key-part-before = Teil davor
office-key-next-need = Nächste Prüfung, die die Meldestelle braucht

# Telefone.
office-phones = Telefone
office-gate = das Tor
office-role-judge = Richter
office-role-scribe = Schreiber
office-role-gate = Tor
office-invite = Ein Telefon koppeln
office-people-none = Noch ist niemand eingetragen, der richten darf. Personen kommen dort dazu, wo ein Richtergremium besetzt wird.
office-pair-judge = Richtertelefon koppeln
office-pair-scribe = Schreibertelefon koppeln
office-pair-gate = Telefon am Tor koppeln
office-invite-judge = Telefon von Richter { $name }
office-invite-scribe = Telefon des Schreibers von { $name }
office-invite-gate = Telefon am Tor
office-invite-label = Wie das Telefon heißen soll
office-invite-label-hint = Wenn Sie mögen: „blaue Hülle“. Es steht dann in der Liste der Telefone.
office-invite-make = Code erstellen
office-invite-show = Mit dem Telefon scannen oder den Code auf der Kopplungsseite eintippen. Er gilt für ein Telefon.
office-invite-qr = QR-Code, der die Kopplungsseite öffnet; der Code steht darunter
office-invite-ends = Gilt bis { $time }.
office-invite-link = Der Link zum Verschicken
office-invite-taken = Ein Telefon hat den Code benutzt: Es ist gekoppelt.
office-invitations = Codes, die warten
office-invitations-none = Kein Code wartet auf ein Telefon.
office-invitation-take-back = Zurücknehmen
office-invitation-taken-back = Der Code ist zurückgenommen.
office-phones-paired = Gekoppelte Telefone
office-phones-none = Noch ist kein Telefon gekoppelt. Erstellen Sie oben einen Code und halten Sie ihn vor die Kamera des Telefons.
office-phones-gone = Weggenommen
office-phones-gone-none = Kein Telefon wurde weggenommen.
office-phone-whose = Von wem
office-phone-role = Als
office-phone-since = Seit
office-phone-gone = weggenommen { $time }.
office-phone-revoke = Wegnehmen
office-revoke-title = Dieses Telefon vom Turnier nehmen?
office-revoke-what = Das Telefon ({ $name }) kann ab sofort weder schreiben noch unterschreiben. Was es gesendet hat, bleibt; ein anderes Telefon macht mit einem neuen Code dort weiter. Das lässt sich nicht rückgängig machen.
office-revoke-why = Warum
office-revoke-do = Wegnehmen
office-revoke-keep = Behalten
office-revoke-done = Das Telefon ist vom Turnier genommen.

# Konten der Meldestelle.
office-accounts = Konten
office-accounts-managers = Um Konten kümmert sich die Turnierleitung.
office-accounts-who = Wer in der Meldestelle arbeitet
office-account-name = Name
office-account-duty = Aufgabe
office-account-where = Wo
office-account-everywhere = alle Turniere
office-account-state-invited = Code vergeben, noch nicht eingerichtet
office-account-state-set-up-ended = Code abgelaufen, bevor er benutzt wurde
office-account-state-active = in Gebrauch
office-account-state-closed = geschlossen
office-account-make = Konto anlegen
office-account-reset = Zurücksetzen
office-account-reset-ask = Das Konto von { $name } zurücksetzen?
office-account-reset-why = Kennwort, zweiter Faktor und alle Sitzungen sind sofort ungültig. Sie bekommen einen Code, mit dem das Konto neu eingerichtet wird.
office-account-reset-done = Das Konto von { $name } ist zurückgesetzt.
office-account-close = Schließen
office-account-close-ask = Das Konto von { $name } schließen?
office-account-close-why = Es wird für immer geschlossen: Niemand meldet sich mehr damit an. Was darunter getan wurde, bleibt festgehalten.
office-account-close-done = Das Konto von { $name } ist geschlossen.
office-account-code = Einrichtungscode
office-account-code-what = Geben Sie diesen Code an { $name } weiter; er wird auf { $address } eingetippt. Er wird nur dieses eine Mal gezeigt.
office-account-code-ends = Gilt bis { $time }, einmal.
office-account-code-given = Ich habe ihn weitergegeben
office-duty-manager = Turnierleitung
office-duty-secretary = Meldestelle
office-duty-points-secretary = Punktewart
