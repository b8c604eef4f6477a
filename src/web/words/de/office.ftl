# Die Meldestelle.
office-one-moment = Einen Augenblick …
office-day = Der Tag
office-sign-in = Anmelden
office-sign-in-name = Anmeldename
office-sign-in-password = Kennwort
office-sign-in-code = Einmalcode
office-sign-in-code-hint = Sechs Ziffern, wie die Authenticator-App sie jetzt zeigt.
office-sign-in-wait = { $seconds ->
    [one] Eine Sekunde warten, dann noch einmal versuchen.
   *[other] { $seconds } Sekunden warten, dann noch einmal versuchen.
  }
office-session-ended = Ihre Sitzung ist zu Ende
office-session-ended-why = Melden Sie sich wieder an, dann geht es weiter. Was Sie getippt haben, ist noch da.
