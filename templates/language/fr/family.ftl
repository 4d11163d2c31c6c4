# Deux éditions, tailles ou réglages d'une leçon côte à côte, et ce qu'une édition a changé.

family-title = { $title } : { $before } à côté de { $after }
family-errata = { $title } : ce que l’édition { $after } a changé
family-errata_lead = Pour qui possède l’édition { $before } : voici tout ce qui diffère. Le corriger à la main dans le livret, ou imprimer le nouveau.
family-nothing = Aucune différence ne se remarque.
family-edition = édition { $edition }
family-edition_dated = édition { $edition } ({ $date })
family-as_it_stands = tel quel
family-with = avec { $values }
family-as_cut = comme coupé au départ
family-corrected = comme corrigé
family-first = le premier
family-second = le second
family-measures = Mesures
family-pieces = Pièces
family-drafting = Tracé
family-sewing = Couture
family-notions = Mercerie
family-measure = mesure
family-difference = différence
family-of_edge = { $name }, longueur sur la ligne de couture
family-of_allowance = { $name }, marge de couture
family-of_extra = { $name }, surplus d’essayage
family-of_notch = { $name }, cran : depuis le début du bord
family-of_strip_length = { $name }, longueur de coupe
family-of_strip_width = { $name }, largeur de coupe
family-of_cut = { $name }, nombre à couper
family-of_cloth = { $cloth }, { $width } de large, à acheter
family-step_new = Nouveau : { $title }
family-step_gone = Supprimé : { $title }
family-was = Avant :
family-now = Maintenant :
family-picture = { $piece } : { $before } en tirets, { $after } en trait plein
family-picture_alt = { $piece }, { $before } en tirets et { $after } par-dessus ; ce qui diffère est en trait fort. { $words }
family-no_such_place = aucune pièce des deux n’a d’endroit « { $place } ».
family-edition_missing = il n’y a pas de fichier « { $file } ».
family-edition_missing_do = Indiquer le fichier pattern.json d’une fabrication précédente, son dossier ou celui d’une publication, ou un notebook.
family-edition_size = la publication « { $file } » n’a pas de taille { $size }.
family-edition_size_do = Elle a { $sizes }.
family-edition_closed = « { $file } » ne peut pas être lu ({ $reason }).
family-edition_closed_do = Vérifier le fichier et ses droits d’accès.
family-edition_damaged = « { $file } » est abîmé : il ne contient pas de patron entier.
family-edition_damaged_do = Le prendre d’une copie de cette édition, ou le refaire avec le notebook d’alors.
family-edition_large = « { $file } » est plus grand qu’un patron ne peut l’être.
family-edition_large_do = Indiquer le fichier pattern.json d’une fabrication précédente.
family-edition_other = « { $file } » n’est pas un patron de ce kit.
family-edition_other_do = Indiquer le fichier pattern.json d’une fabrication précédente, son dossier ou celui d’une publication, ou un notebook.
family-edition_version = « { $file } » est un patron de version { $version }, que ce kit ne connaît pas.
family-edition_version_do = Utiliser le kit qui l’a fait, ou un plus récent.
family-one_edition = une édition seule ne se compare pas.
family-one_edition_do = Indiquer ensuite un notebook ou une autre édition.
family-one_notebook = il n’est pas dit à quoi le notebook est comparé.
family-one_notebook_do = Indiquer --sizes W3,W4, --values sleeve_length=45cm, --preset "Manche longue" ou --as-cut, ou un second notebook ou une édition.
family-two_sizes = { $count ->
    [one] une taille est indiquée.
   *[other] { $count } tailles sont indiquées.
}
family-two_sizes_do = Indiquer deux tailles de la leçon : --sizes W3,W4.
family-two_given = deux sont indiqués, et l’un d’eux doit être comparé à lui-même.
family-two_given_do = Retirer --sizes et --as-cut, ou le second nom.
family-one_size = la leçon n’utilise aucune mesure du corps, elle n’a donc qu’une taille.
family-one_size_do = Comparer plutôt deux valeurs : --values length=40cm.
family-no_lesson = il n’y a pas de leçon à comparer.
family-no_lesson_do = Donner une leçon : compare(lesson, sizes=("W3", "W5")).
family-no_other = il n’est pas dit à quoi la leçon est comparée.
family-no_other_do = Écrire compare(lesson, sizes=("W3", "W5")) ou compare(lesson, seam=1 * cm), ou indiquer une autre leçon ou le dossier d’une fabrication précédente.
family-of_dart = { $name }, largeur à son ouverture
family-of_piece = { $piece } : { $name }
family-grade = { $title } : la gradation
family-grade_unit = { $unit ->
    [inch] valeurs en pouces ; dessous, l’écart avec la taille d’avant
   *[cm] valeurs en cm ; dessous, l’écart avec la taille d’avant
}
family-grade_breaks = D’autres écarts sont voulus à partir d’ici : { $sizes }.
family-grade_same = Pareil dans toutes les tailles
family-grade_even = Chaque écart ressemble à ses voisins.
family-grade_follows = Irrégulier parce que les mesures du corps le sont
family-grade_jump = { $name } : de { $before } à { $size }, l’écart est de { $step }, à côté d’écarts de { $usual }.
family-grade_turn = { $name } : de { $before } à { $size }, cela va dans l’autre sens, { $step }, à côté d’écarts de { $usual }.
family-grade_scales = { $name } : différent en { $before } et en { $size } ({ $step }). S’il doit rester pareil, retirer ce qui lui fait suivre la taille.
family-grade_missing = { $name } : de { $before } et { $size }, une seule l’a.
family-grade_because = La mesure aussi : { $name }.
family-no_grade_do = Une gradation demande deux tailles ou plus ; vérifier le tableau des tailles de la leçon.
family-not_drafted = { $size } manque, car elle ne peut pas être tracée : { $why }
family-grade_off =
    { $way ->
        [above] { $name } : { $size } a { $by } de plus que ne le laissent attendre { $before } et { $after }.
       *[below] { $name } : { $size } a { $by } de moins que ne le laissent attendre { $before } et { $after }.
    }
family-two_editions = deux éditions sont telles qu’elles ont été faites ; ni taille ni valeurs ne s’y appliquent.
family-two_editions_do = Retirer --size, --values et --preset, ou indiquer le notebook.
family-other_language = Les deux sont en langues différentes ; les textes de leurs étapes ne sont donc pas comparés.
