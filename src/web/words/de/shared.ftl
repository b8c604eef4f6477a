# Was mehr als eine Seite sagt.
shared-name = Ringledger
shared-language = Sprache
shared-language-en = English
shared-language-de = Deutsch
shared-light = Licht
shared-light-device = Wie dieses Gerät
shared-light-light = Hell
shared-light-dark = Dunkel
shared-light-glare = Volle Sonne
shared-caution = Ringledger schreibt auf und rechnet zusammen; es entscheidet nichts. Die Entscheidungen von Richtern, Steward und Jury stehen darüber.
shared-practice = Übung: Nichts davon zählt.
shared-skip = Zum Inhalt
shared-try-again = Noch einmal versuchen
shared-cancel = Lassen
shared-back = Zurück

# Wo eine Prüfung steht.
shared-state-setting-up = wird angelegt
shared-state-drawn = Startfolge gelost
shared-state-called = in die Bahn gerufen
shared-state-under-way = läuft
shared-state-cards-in = alle Bögen sind da
shared-state-provisional = ausgehängt, noch nicht amtlich
shared-state-official = amtlich
shared-state-corrected = amtlich, berichtigt
shared-state-cancelled = abgesagt
shared-state-combined = mit einer anderen Prüfung zusammengelegt

# Wie eine Nennung in ihrer Prüfung steht.
shared-status-entered = genannt
shared-status-checked-in = am Tor gemeldet
shared-status-scratched = gestrichen
shared-status-no-show = nicht erschienen
shared-status-excused = entlassen
shared-status-moved = in eine andere Prüfung verlegt

# Eine Adresse, die nirgendwohin führt.
shared-nothing-here = Hier ist nichts
shared-nothing-here-why = Vielleicht ist die Adresse vertippt, oder die Veranstaltung hat die Seite weggenommen.
shared-all-shows = Alle Turniere
