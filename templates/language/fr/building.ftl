# Ce que fait une construction, dit dans le terminal.

building-running = Exécution de { $notebook } depuis le début
building-cell = Cellule de code { $number } (« { $title } »)
building-proving = Vérification du patron et de l’ordre de couture
building-lays = Disposition des pièces sur le tissu
building-pages = Disposition des pages du patron
building-form = Écriture du livret ({ $form })
building-screen = Écriture du livret (écran)
building-setting = Mise en page du livret ({ $form })
