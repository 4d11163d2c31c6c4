# Ein Satz für jede Zeile einer Tabelle von Körpern.
roster-label = Nr. { $number }
roster-heading = { $title }: die Sätze
roster-sum = { $count ->
    [one] Eine Zeile,
   *[other] { $count } Zeilen,
  } { $ready ->
    [0] keine davon druckfertig.
    [one] eine davon druckfertig.
   *[other] { $ready } davon druckfertig.
  }
roster-as_table = Dasselbe als Tabelle
roster-print_note = Schnittseiten ohne Skalierung drucken und vor dem Zuschneiden das Testquadrat auf der ersten Seite nachmessen.
roster-ignored = Nicht verwendete Spalten: { $columns }.
roster-kept = { $count ->
    [one] Ein Satz ist schon da und bleibt.
   *[other] { $count } Sätze sind schon da und bleiben.
  }
roster-left_seconds = noch weniger als eine Minute
roster-left_minutes = noch etwa { $minutes } min
roster-left_hours = noch etwa { $hours } h { $minutes } min
roster-ready = Druckfertig
roster-failed = Prüfung nicht bestanden: nicht zuschneiden
roster-none = Kein Satz
roster-number = Nummer
roster-line = Zeile der Tabelle
roster-state = Stand
roster-folder = Ordner
roster-cloth = Stoff zu kaufen
roster-fit = Passformänderungen gegenüber der Größentabelle
roster-fit_note = Die Schnittseiten sind nach den eigenen Maßen jeder Person konstruiert. Die Passformänderungen sagen, was ein Schnitt in einer Größe der Tabelle bräuchte.
roster-doubts = Maße, die noch einmal zu prüfen sind
roster-found = Was die Prüfung fand
roster-estimated = Geschätzte Maße
roster-finished = Fertigmaße
roster-trouble = Warum es keinen Satz gibt
