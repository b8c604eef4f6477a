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

# Rund um die Seiten, die alle lesen.
shared-where-you-are = Wo Sie sind
shared-connection-live = Live: Was geschieht, steht hier sofort.
shared-connection-looking = Sieht jede halbe Minute nach Neuem.
shared-connection-lost = Keine Verbindung. Was Sie sehen, ist von { $time }; es geht von selbst weiter.
shared-connection-back = Die Verbindung ist wieder da.
shared-without-script = In diesem Browser bewegt sich die Seite nicht von selbst. Laden Sie sie neu, um Neues zu sehen.
shared-show-time = Die Zeiten sind die des Turnierplatzes ({ $zone }).
shared-too-much = Von hier wurde zu viel gefragt
shared-too-much-why = Alle an einem Ort teilen sich eine Grenze von Anfragen in der Minute. Warten Sie eine Minute und laden Sie die Seite dann neu.
shared-in-trouble = Der Dienst ist in Schwierigkeiten
shared-in-trouble-why = Nichts von dem, was aushängt, ist verloren. Laden Sie die Seite in einer Minute neu; bleibt es so, sagen Sie es der Meldestelle.

# Eine Note, wie sie gesprochen wird: "plus ein halb", "minus eineinhalb", "null".
shared-spoken-mark = { $sign ->
    [plus] plus
    [minus] minus
   *[none] {""}
  } { $half ->
    [only] ein halb
    [and] { $whole ->
        [1] eineinhalb
        [2] zweieinhalb
       *[other] { $whole } einhalb
      }
   *[no] { $whole }
  }

# Die Zeichnung einer Aufgabe.
shared-drawing-label = Zeichnung der Aufgabe von oben, { $maneuvers } { $maneuvers ->
    [one] Lektion
   *[other] Lektionen
  }{ $cones ->
    [0] .
    [one] , mit Pylone { $letters }.
   *[other] , mit den Buchstaben { $letters }.
  } Die Lektionen stehen in Worten daneben.
shared-drawing-highlighted = Lektion { $highlighted } ist hervorgehoben.
shared-drawing-start = Start
shared-drawing-finish = Ende
shared-drawing-walk = Schritt
shared-drawing-trot = Trab oder Jog
shared-drawing-canter = Galopp oder Lope
shared-drawing-back = Rückwärts
shared-drawing-other = Andere Gangart
shared-drawing-halt = Halt
shared-drawing-turn = Wendung, so oft herum
shared-drawing-flying-change = Fliegender Galoppwechsel
shared-drawing-simple-change = Einfacher Galoppwechsel
shared-drawing-side-pass = Seitwärts (Sidepass)
shared-drawing-pole = Stange
shared-drawing-gate = Tor
shared-drawing-bridge = Brücke
shared-drawing-water = Wasser
shared-drawing-judge = Richter
