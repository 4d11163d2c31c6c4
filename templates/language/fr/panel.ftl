# Le panneau des curseurs à côté du tracé, ce qui s’affiche sous les cellules, et les formulaires du corps et des bords.
# Tout se lit à l’écran.

panel-size = Taille
panel-size_tip = La taille dans laquelle la leçon est tracée
panel-own_measurements = { $name } (mesures personnelles)
panel-units = Unités
panel-units_cm = cm
panel-units_inch = po
panel-units_cm_tip = Centimètres d’abord
panel-units_inch_tip = Pouces d’abord
panel-view = Montrer
panel-view_tip = Ce que montre l’image
panel-view_draft = Le tracé
panel-view_step = Étape { $number } : { $title }
panel-view_flat_front = À plat, devant
panel-view_flat_back = À plat, dos
panel-view_worn = Porté

# Valeurs.
panel-preset = Valeurs
panel-preset_tip = Jeux de valeurs au choix
panel-preset_none = celles des curseurs
panel-preset_default = Celles de la leçon
panel-preset_opened = Celles de la dernière séance
panel-reset = Rétablir les valeurs
panel-reset_tip = Rétablir toutes les valeurs de la leçon
panel-fresh = Repartir à neuf
panel-fresh_tip = Laisser de côté les valeurs de la dernière séance : toutes reviennent à celles de la leçon
panel-left_values = Les valeurs sont celles de la dernière séance. « Repartir à neuf » les remet toutes à celles de la leçon.
panel-undo = Annuler
panel-undo_tip = Revenir sur le dernier changement de valeurs
panel-redo = Rétablir
panel-redo_tip = Refaire le dernier changement annulé
panel-old_picture = Cette image est plus ancienne : le dernier tracé qui a abouti.

panel-row_tip = { $name } : { $why }
panel-follows = Découle des mesures du corps ({ $measures }).
panel-follows_size = A une valeur par taille.
panel-before = avant : { $value }
panel-marked = { $count ->
    [one] La vérification nomme cette valeur.
   *[other] La vérification nomme cette valeur { $count } fois.
}
panel-marked_with = { $level } : { $what }

# Sous l’image.
panel-finished = Mesures du vêtement fini
panel-ease = { $ease } d’aisance ({ $over })
panel-ease_less = { $ease } de moins que le corps ({ $over })
panel-proof = Vérification
panel-checking = Vérification en cours…
panel-passed = Tout est vérifié.
panel-level_error = À corriger
panel-level_warning = À revoir
panel-level_note = Remarque
panel-finding = { $level }.
panel-depends = Dépend de : { $names }.
panel-show_where = Montrer où
panel-estimates = Estimations d’après le tableau des tailles, non mesurées ({ $name }) : { $measures }.
panel-stale = La cellule de { $titles } n’est plus dans le notebook, mais l’étape est encore dans le tracé. Pour l’en retirer, redémarrer le noyau et exécuter toutes les cellules ; si la cellule est nouvelle, enregistrer le notebook.
panel-quoted = « { $title } »

# Tissu et pages.
panel-figures = Tissu et pages
panel-figures_tip = Calculer le métrage de tissu et le nombre de pages
panel-cloth_main = Tissu, laize { $width }
panel-cloth_lining = Doublure, laize { $width }
panel-cloth_interfacing = Entoilage, laize { $width }
panel-pages_on = Pages, { $paper }
panel-pages = { $count ->
    [one] { $count } page
   *[other] { $count } pages
}
panel-figure_was = avant : { $figure }
panel-figure_waiting = …
# À la place d’une longueur : une pièce est plus large que le tissu.
panel-figure_narrow = trop étroit
panel-figure_none = pas encore connu

# Après l’essayage.
panel-tryon = Après l’essayage
panel-tryon_tip = Noter ce qu’un essayage change, et pourquoi
panel-tryon_name = Essayage
panel-tryon_title = Essayage { $number }
panel-tryon_begin = Commencer
panel-tryon_begin_tip = Retenir toutes les valeurs actuelles, puis déplacer les curseurs
panel-tryon_going = Essayage : { $title }. Déplacer les curseurs selon ce que l’essayage demande.
panel-tryon_nothing = Rien n’a encore changé.
panel-tryon_piece = Pièce
panel-tryon_most = celle qui bouge le plus
panel-tryon_why = Pourquoi
panel-tryon_why_hint = Ce qui s’est vu sur le corps, avec ses propres mots
panel-tryon_keep = Garder
panel-tryon_keep_tip = Noter les changements avec leur raison
panel-tryon_cancel = Abandonner
panel-tryon_cancel_tip = Y renoncer et rétablir les valeurs
panel-tryon_kept = Gardé
panel-tryon_none = choisir un essayage
panel-tryon_one_dated = { $title }, { $date }
panel-tryon_back = Reprendre
panel-tryon_back_tip = Supprimer cet essayage et rétablir ses valeurs
panel-tryon_copy = Pour l’avoir dans le notebook, copier ceci dans une cellule :
panel-kit_wrong = Quelque chose a échoué dans le kit lui-même ({ $kind } : { $what }). Les valeurs sont gardées. Ramener la valeur changée en dernier et exécuter de nouveau la cellule.
panel-line_of_cell = { $trouble } (Ligne { $number } de la cellule : { $line })

panel-cell_finished = { $title } :

# Le formulaire du corps.
panel-body_mine = Mes mesures
panel-body_name = Nom
panel-body_name_tip = De qui sont ces mesures
panel-body_cm_tip = Un nombre sans unité est en cm
panel-body_inch_tip = Un nombre sans unité est en pouces
panel-body_more = Montrer toutes les mesures
panel-body_use = Utiliser ces mesures
panel-body_use_tip = Tracer la leçon pour ces mesures
panel-body_file = Fichier
# Nom de fichier : lettres sans accents, et .toml à la fin.
panel-body_file_mine = mes_mesures.toml
panel-body_save = Enregistrer
panel-body_save_tip = Garder ces mesures dans le fichier
panel-body_load = Ouvrir
panel-body_load_tip = Lire des mesures dans le fichier
panel-body_empty = pas mesuré
panel-body_value = { $value }.
panel-body_estimated = { $value }, estimation.
panel-body_used = La leçon est maintenant tracée pour { $name }.
panel-body_saved_code = Enregistré dans { $path }. Pour faire le livret avec ces mesures, mettre { $code } dans une cellule sous la leçon.
panel-body_loaded = Mesures lues dans { $path } : { $name }. Choisir « Utiliser ces mesures » pour tracer d’après elles.

# Le formulaire qui nomme les bords d’un contour relevé.
panel-edges_copy_tip = À copier dans une cellule
panel-edges_done = Tous les bords ont un nom. À garder dans le notebook :
panel-edges_piece = Pièce
panel-edges_piece_tip = Le nom de la pièce dans le code ; vide pour laisser ce contour de côté
panel-edges_edge = de { $from } à { $to } ({ $length })
panel-edges_edge_tip = Le bord de l’angle { $from } à l’angle { $to }
panel-edges_waist = Ligne de taille
panel-edges_waist_tip = Où se trouve la ligne de taille
panel-edges_waist_hint = angle, bord, ou hauteur au-dessus du point le plus bas : 20 cm
panel-edges_outline = Contour { $name }

panel-fit = Retouches
panel-fit_tip = Adapter le patron à une silhouette : allonger, poitrine forte, dos cambré et d’autres
panel-fit_choose = Choisir une retouche
panel-fit_add = Ajouter
panel-fit_by_size = Une taille du tableau ne demande pas de retouche par elle-même. Choisir des mesures pour lire ce qu’elles demandent, ou ajouter une retouche à la main.
panel-fit_take =
    { $count ->
        [0] Tracer la taille { $size }
        [one] Tracer la taille { $size } avec cette retouche
       *[other] Tracer la taille { $size } avec ces retouches
    }
panel-fit_add_tip = Ajouter cette retouche avec son propre curseur
panel-fit_take_tip = Choisir la taille conseillée pour ces mesures et régler les retouches qu’elles demandent
