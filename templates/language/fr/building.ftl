# Ce que fait une construction, dit dans le terminal.

building-running = Exécution de { $notebook } depuis le début
building-cell = Cellule de code { $number } (« { $title } »)
building-proving = Vérification du patron et de l’ordre de couture
building-lays = Disposition des pièces sur le tissu
building-pages = Disposition des pages du patron
building-form = Écriture du livret ({ $form })
building-screen = Écriture du livret (écran)
building-setting = Mise en page du livret ({ $form })

# Dit en premier, avant que le code de la leçon s’exécute.
building-code = Le code du fichier de la leçon va s’exécuter.
building-left_out = Laissé hors du livret : { $what }
building-failed = Vérification échouée : le livret le dit en couverture. Ne pas couper d’après ces pages.
building-earlier = D’une création précédente, non refait : { $files }
