# Ce que fait une construction, dit dans le terminal.

building-running = Exécution de { $notebook } depuis le début
building-cell = Cellule de code { $number } (« { $title } »)
building-proving = Le patron et l’ordre de couture sont vérifiés
building-lays = Les pièces sont disposées sur le tissu
building-pages = Les pages du patron sont disposées
building-form = Le livret est écrit ({ $form })
building-screen = Le livret est écrit (écran)
building-setting = Le livret est mis en pages ({ $form })
