# Un dossier pour chaque ligne d’un tableau de corps.
roster-label = N° { $number }
roster-heading = { $title } : les dossiers
roster-sum = { $count ->
    [one] Une ligne,
   *[other] { $count } lignes,
  } { $ready ->
    [0] aucune prête à imprimer.
    [one] une prête à imprimer.
   *[other] { $ready } prêtes à imprimer.
  }
roster-as_table = La même chose en tableau
roster-print_note = Imprimer les pages du patron sans mise à l’échelle et mesurer le carré test de la première page avant de couper.
roster-ignored = Colonnes laissées de côté : { $columns }.
roster-kept = { $count ->
    [one] Un dossier est déjà là et reste.
   *[other] { $count } dossiers sont déjà là et restent.
  }
roster-left_seconds = encore moins d’une minute
roster-left_minutes = encore { $minutes } min environ
roster-left_hours = encore { $hours } h { $minutes } min environ
roster-ready = Prêt à imprimer
roster-failed = Contrôle non réussi : ne pas couper
roster-none = Pas de dossier
roster-number = numéro
roster-line = ligne du tableau
roster-state = état
roster-folder = répertoire
roster-cloth = Tissu à acheter
roster-fit = Retouches par rapport au tableau des tailles
roster-fit_note = Les pages sont tracées aux mesures de chaque personne. Les retouches disent ce qu’il faudrait à un patron dans une taille du tableau.
roster-doubts = Mesures à revoir
roster-found = Ce que le contrôle a trouvé
roster-estimated = Mesures estimées
roster-finished = Mesures finies
roster-trouble = Pourquoi il n’y a pas de dossier
