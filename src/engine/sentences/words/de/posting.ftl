# Was einem Aushang oder einem Entscheid im Weg steht, für die Meldestelle.

card-not-signed = der Bogen ist nicht unterschrieben
card-to-be-amended = seither kam eine Nennung dazu: Der Bogen muss berichtigt werden
card-of-judge-not-in = der Bogen von { $judge } ist nicht da
reason-missing = fehlt

ruling-fault-too-few = Ein Gleichstand hat zwei Starter oder mehr.
ruling-fault-twice = Ein Starter steht zweimal darin.
ruling-fault-declined = Ein abgelehntes Stechen ordnet niemanden: bitte die Gleichplatzierten in einer Gruppe nennen.
ruling-fault-share = Ein geteilter Platz ist eine Gruppe.
ruling-fault-no-tie = Das ist nicht ein Gleichstand, der jetzt offen ist; bitte jeden seiner Starter einmal nennen.
