# Tracer sur le tableau : on choisit un geste et la cellule de l’étape s’écrit. Les phrases « canvas_moves-point », « -extend »,
# « -edge », etc. sont lues par les élèves dans l’étape ; $amount tient la place de la longueur tracée.

canvas_moves-draw = Tracer
canvas_moves-choose = Cliquer sur des bords et des points pour les choisir, cliquer de nouveau pour les lâcher ; puis choisir un geste.
canvas_moves-move = Geste
canvas_moves-way = Façon
canvas_moves-amount = Valeur
canvas_moves-title = Titre
canvas_moves-measure = Nom de la mesure
canvas_moves-thing = Nom de ce qui est tracé
canvas_moves-why = Pourquoi (pour l’élève ; peut rester vide)
canvas_moves-says = Les élèves liront
canvas_moves-write = Écrire la cellule
canvas_moves-copy = Copier la cellule
canvas_moves-copied = Copié.
canvas_moves-source = La cellule
canvas_moves-cancel = Annuler
canvas_moves-grip = Glisser pour régler la valeur
canvas_moves-writing = La cellule s’écrit…
canvas_moves-written = La cellule est dans le notebook et a été exécutée. Enregistrer le notebook pour la garder.
canvas_moves-not_run = La cellule est dans le notebook mais n’a pas été exécutée. Cliquer dedans et appuyer sur Maj et Entrée.
# $step : le titre de l’étape que la cellule doit suivre.
canvas_moves-by_hand = Le programme de ce notebook ne laisse pas le tableau ajouter une cellule. Copier le texte, ajouter une cellule de code sous « { $step } », l’y coller et l’exécuter.
canvas_moves-by_hand_first = Le programme de ce notebook ne laisse pas le tableau ajouter une cellule. Copier le texte, ajouter une cellule de code sous celle qui crée la leçon, l’y coller et l’exécuter.
canvas_moves-chosen = Choisi : { $chosen }
canvas_moves-one_chosen = { $name } ({ $piece })
canvas_moves-corner_dot = Angle { $first } / { $second }, { $piece }

# Les gestes du menu.
canvas_moves-name_point = Déplacer un point
canvas_moves-name_extend = Prolonger un bord
canvas_moves-name_edge = Déplacer un bord parallèlement
canvas_moves-name_square = Tracer un nouveau bord d’équerre
canvas_moves-name_round = Arrondir un angle
canvas_moves-name_curve = Tracer un bord en courbe
canvas_moves-name_into = Courbe d’un bord dans un autre
canvas_moves-name_between = Ligne ou courbe entre deux points
canvas_moves-name_line = Ligne de construction d’équerre
canvas_moves-name_parallel = Ligne de construction parallèle
canvas_moves-name_mirror = Relever l’autre moitié
canvas_moves-name_spread = Fendre et écarter
canvas_moves-name_cut = Couper la pièce en deux
canvas_moves-name_opening = Laisser une ouverture
canvas_moves-name_notch = Cran

# La façon de faire un geste.
canvas_moves-way_up = vers le haut
canvas_moves-way_down = vers le bas
canvas_moves-way_out = vers l’extérieur, côté
canvas_moves-way_in = vers l’intérieur, milieu
canvas_moves-at_edge = du côté de « { $edge } »
canvas_moves-square_way = du côté de « { $edge } », { $way }
canvas_moves-inside = à l’intérieur de la pièce
canvas_moves-outside = à l’extérieur de la pièce
canvas_moves-curve_square = d’équerre aux deux voisins
canvas_moves-curve_smooth = en se fondant dans les deux voisins
canvas_moves-curve_square_smooth = d’équerre au début, fondu à la fin
canvas_moves-curve_smooth_square = fondu au début, d’équerre à la fin
canvas_moves-into_smooth = en s’y fondant sans angle
canvas_moves-into_square = en le rencontrant d’équerre
canvas_moves-between_straight = une ligne à la règle
canvas_moves-between_square = une courbe d’équerre aux bords
canvas_moves-between_smooth = une courbe dans la direction des bords
canvas_moves-spread_parallel = autant partout
canvas_moves-spread_hinged = au premier bord seulement
canvas_moves-in_middle = au milieu
canvas_moves-from_edge = depuis « { $edge } »

# Ce que dit l’étape.
canvas_moves-corner = angle { $first } / { $second }
canvas_moves-ruled_again = Retracer « { $edge } » à la règle, de son autre extrémité jusque-là.
canvas_moves-curved_again = Retracer « { $edge } » depuis là en une seule courbe régulière, avec ses directions d’avant aux deux bouts.
canvas_moves-allowed = Ajouter { $amount } de marge le long de « { $edge } ».
canvas_moves-on_pieces = Faire de même sur toutes ces pièces : { $pieces }.

canvas_moves-point_title = { $way ->
    [up] Monter « { $point } »
    [down] Descendre « { $point } »
    [out] Écarter « { $point } » vers l’extérieur
   *[in] Rentrer « { $point } » vers l’intérieur
}
canvas_moves-point = { $way ->
    [up] Depuis « { $point } », monter d’équerre de { $amount } et marquer.
    [down] Depuis « { $point } », descendre d’équerre de { $amount } et marquer.
    [out] Depuis « { $point } », mesurer { $amount } tout droit vers le côté et marquer.
   *[in] Depuis « { $point } », mesurer { $amount } tout droit vers le milieu et marquer.
}
canvas_moves-extend_title = Prolonger « { $edge } »
canvas_moves-extend = Prolonger « { $edge } » tout droit de { $amount } au-delà de « { $beside } ».
canvas_moves-edge_title = { $way ->
    [up] Monter « { $edge } »
    [down] Descendre « { $edge } »
    [out] Écarter « { $edge } » vers l’extérieur
   *[in] Rentrer « { $edge } » vers l’intérieur
}
canvas_moves-edge = { $way ->
    [up] Retracer « { $edge } » parallèlement, { $amount } plus haut. Arrêter « { $before } » et « { $after } » à cette ligne, ou les prolonger tout droit jusqu’à elle.
    [down] Retracer « { $edge } » parallèlement, { $amount } plus bas. Arrêter « { $before } » et « { $after } » à cette ligne, ou les prolonger tout droit jusqu’à elle.
    [out] Retracer « { $edge } » parallèlement, { $amount } plus à l’extérieur. Arrêter « { $before } » et « { $after } » à cette ligne, ou les prolonger tout droit jusqu’à elle.
   *[in] Retracer « { $edge } » parallèlement, { $amount } plus à l’intérieur. Arrêter « { $before } » et « { $after } » à cette ligne, ou les prolonger tout droit jusqu’à elle.
}
canvas_moves-square_title = Tracer d’équerre au bout de « { $edge } »
canvas_moves-square = { $way ->
    [up] Au bout de « { $edge } » du côté de « { $beside } », monter d’équerre de { $amount } : c’est le bord « { $thing } ».
    [down] Au bout de « { $edge } » du côté de « { $beside } », descendre d’équerre de { $amount } : c’est le bord « { $thing } ».
    [out] Au bout de « { $edge } » du côté de « { $beside } », aller d’équerre vers l’extérieur sur { $amount } : c’est le bord « { $thing } ».
   *[in] Au bout de « { $edge } » du côté de « { $beside } », aller d’équerre vers l’intérieur sur { $amount } : c’est le bord « { $thing } ».
}
canvas_moves-line_title = Tracer une ligne d’équerre au bout de « { $edge } »
canvas_moves-line = { $way ->
    [up] Au bout de « { $edge } » du côté de « { $beside } », monter d’équerre de { $amount } et tracer la ligne à la règle : c’est la ligne « { $thing } ».
    [down] Au bout de « { $edge } » du côté de « { $beside } », descendre d’équerre de { $amount } et tracer la ligne à la règle : c’est la ligne « { $thing } ».
    [out] Au bout de « { $edge } » du côté de « { $beside } », aller d’équerre vers l’extérieur sur { $amount } et tracer la ligne à la règle : c’est la ligne « { $thing } ».
   *[in] Au bout de « { $edge } » du côté de « { $beside } », aller d’équerre vers l’intérieur sur { $amount } et tracer la ligne à la règle : c’est la ligne « { $thing } ».
}
canvas_moves-round_title = Arrondir l’angle { $first } / { $second }
canvas_moves-round = Marquer { $amount } depuis l’angle, le long de « { $first } » et le long de « { $second } ». Joindre les marques par une courbe qui se fond dans les deux sans angle.
canvas_moves-curve_title = Tracer « { $edge } » en courbe
canvas_moves-curve = { $way ->
    [square] Retracer « { $edge } » en une seule courbe, d’équerre à « { $before } » et d’équerre à « { $after } ». Son ampleur est de { $amount } d’une courbe régulière.
    [smooth] Retracer « { $edge } » en une seule courbe qui se fond sans angle dans « { $before } » et dans « { $after } ». Son ampleur est de { $amount } d’une courbe régulière.
    [square_smooth] Retracer « { $edge } » en une seule courbe, d’équerre à « { $before } » et se fondant sans angle dans « { $after } ». Son ampleur est de { $amount } d’une courbe régulière.
   *[smooth_square] Retracer « { $edge } » en une seule courbe qui se fond sans angle dans « { $before } » et rencontre « { $after } » d’équerre. Son ampleur est de { $amount } d’une courbe régulière.
}
canvas_moves-into_title = Mener « { $edge } » en courbe dans « { $second } »
canvas_moves-into = { $way ->
    [smooth] Mesurer { $amount } le long de « { $second } » depuis « { $edge } ». Tracer « { $edge } » en une seule courbe régulière : elle quitte « { $first } » d’équerre et s’y fond sans angle dans « { $second } ».
   *[square] Mesurer { $amount } le long de « { $second } » depuis « { $edge } ». Tracer « { $edge } » en une seule courbe régulière : elle quitte « { $first } » d’équerre et y rencontre « { $second } » d’équerre.
}
canvas_moves-between_title = Tracer de « { $first } » à « { $second } »
canvas_moves-between = Tracer une ligne à la règle de « { $first } » à « { $second } » : c’est la ligne « { $thing } ».
canvas_moves-between_curve = { $way ->
    [square] Tracer une courbe de « { $first } » à « { $second } », d’équerre à « { $one } » et d’équerre à « { $other } », avec { $amount } de l’ampleur d’une courbe régulière : c’est la ligne « { $thing } ».
   *[smooth] Tracer une courbe de « { $first } » à « { $second } » qui suit « { $one } » à son début et « { $other } » à sa fin, avec { $amount } de l’ampleur d’une courbe régulière : c’est la ligne « { $thing } ».
}
canvas_moves-parallel_title = Tracer une parallèle à « { $edge } »
canvas_moves-parallel = { $way ->
    [inside] Tracer une ligne parallèle à « { $edge } », { $amount } à l’intérieur : c’est la ligne « { $thing } ».
   *[outside] Tracer une ligne parallèle à « { $edge } », { $amount } à l’extérieur : c’est la ligne « { $thing } ».
}
# $example : le nom d’une des nouvelles lignes.
canvas_moves-mirror_title = Relever l’autre moitié par-dessus « { $edge } »
canvas_moves-mirror = Plier le papier le long de « { $edge } » et relever l’autre moitié. Ses lignes s’appellent « { $example } » et ainsi de suite.
canvas_moves-spread_title = Écarter de « { $first } » à « { $second } »
canvas_moves-spread = { $way ->
    [parallel] Fendre du milieu de « { $first } » au milieu de « { $second } » et écarter le papier de { $amount } partout.
   *[hinged] Fendre du milieu de « { $first } » au milieu de « { $second } » et écarter le papier de { $amount } sur « { $first } » ; sur « { $second } », il reste attaché.
}
canvas_moves-cut_title = Couper « { $thing } » ({ $piece })
canvas_moves-cut = Sur « { $first } » (pièce « { $piece } »), mesurer { $amount } depuis « { $beside } » et marquer. De là, tracer d’équerre jusqu’à « { $second } » et couper le long de cette ligne. La partie qui porte « { $beside } » est la pièce « { $thing } » ; la ligne en est le bord « { $seam } ».
canvas_moves-cut_part = la partie qui porte « { $edge } »
canvas_moves-opening_title = Laisser une ouverture dans « { $edge } »
canvas_moves-opening = { $way ->
    [middle] Au milieu de « { $edge } », marquer une ouverture de { $amount }. Elle reste ouverte quand on pique la couture.
   *[other] Sur « { $edge } », marquer une ouverture de { $amount }, mesurée depuis « { $beside } ». Elle reste ouverte quand on pique la couture.
}
canvas_moves-notch_title = Cran sur « { $edge } »
canvas_moves-notch = Marquer un cran sur « { $edge } », à { $amount } de « { $beside } ».
# $one et $other : les pièces des deux bords.
canvas_moves-pair_title = Crans communs à « { $first } » et « { $second } »
canvas_moves-pair = Marquer ensemble un cran sur « { $first } » (pièce « { $one } ») et sur « { $second } » (pièce « { $other } »), à { $amount } des extrémités qui se rencontrent : simple sur « { $one } », double sur « { $other } ».

# Pourquoi un geste ne convient pas.
canvas_moves-choose_edge = { $count ->
    [one] Choisir { $count } bord.
   *[other] Choisir { $count } bords d’une même pièce.
}
canvas_moves-choose_point = { $count ->
    [one] Choisir { $count } point ou angle.
   *[other] Choisir { $count } points ou angles d’une même pièce.
}
canvas_moves-choose_alike = Sur plusieurs pièces, choisir des bords et des points de mêmes noms et de mêmes sortes, pour qu’une seule étape les trace tous.
canvas_moves-one_piece = Choisir sur une seule pièce.
canvas_moves-not_there_yet = Ce qui est choisi n’est pas encore tracé à cette étape. Choisir d’abord l’étape dans « Montrer », puis y choisir.
canvas_moves-not_closed = Il faut pour cela au moins trois bords à la pièce.
canvas_moves-has_dart = Une pince s’ouvre sur « { $edge } » ; la déplacer d’abord sur un autre bord.
canvas_moves-has_pleat = Un pli finit sur « { $edge } » ; faire ce geste avant de tracer le pli.
canvas_moves-has_corner = « { $edge } » contient un angle qu’une nouvelle ligne ferait disparaître. Tracer à la main.
canvas_moves-on_fold = « { $edge } » se place au pli et doit rester en place ; son extrémité ne peut que glisser dessus.
canvas_moves-fold_straight = « { $edge } » se place au pli ; le tissu se plie tout droit.
canvas_moves-fold_moved = « { $edge } » se place au pli et doit rester en place. Faire ce geste avant l’étape qui met ce bord au pli.
canvas_moves-fold_curved = Le papier ne se plie que le long d’un bord droit ; « { $edge } » est courbe.
canvas_moves-mirrored_already = L’autre moitié est déjà relevée par-dessus « { $edge } ».
canvas_moves-no_corner = « { $point } » n’est pas un angle du contour.
canvas_moves-no_corner_there = « { $first } » se fond dans « { $second } » sans angle ; il n’y a rien à arrondir.
canvas_moves-no_edge_at = Aucun bord ne finit en « { $point } » : une courbe n’a rien à suivre là. Choisir une ligne à la règle.
canvas_moves-not_neighbours = « { $first } » et « { $second } » ne se rencontrent pas. Choisir un angle, ou deux bords qui s’y rencontrent.
canvas_moves-not_one_between = Il faut un seul bord entre « { $first } » et « { $second } » : c’est lui qui devient la courbe.
canvas_moves-same_place = Les deux points sont au même endroit.
canvas_moves-cut_earlier = La pièce « { $piece } » a déjà ses marges ou ses crans. Choisir une étape antérieure dans « Montrer » et la couper là.
canvas_moves-too_long = « { $edge } » ne mesure que { $length }. Donner moins.
canvas_moves-too_small = Donner une valeur plus grande que zéro.
# $name : ce qui a été tapé.
canvas_moves-bad_amount = « { $name } » n’est pas un pourcentage. Taper, par exemple, 90 %.
