# Ce qui est écrit sur les pages du patron, les planches de reprographie, la planche du projecteur et dans les fichiers.
# $title est le titre de la leçon ; « W4 » est un nom de taille.

# ---- papiers

paper-name_a4 = A4
paper-name_a3 = A3
paper-name_a0 = A0
paper-name_letter = US Letter
paper-name_tabloid = Tabloid
paper-name_a4_or_letter = A4 ou US Letter
paper-name_roll_36in = rouleau 36 po
paper-name_roll_914mm = rouleau 914 mm

# ---- en-têtes et légendes de page

paper-edition = édition { $edition }
paper-document = { $title }, { $edition }
paper-document_pages = { $title }, { $edition }, pages { $paper }
paper-document_projector = { $title }, { $edition }, pour projecteur
paper-about_upright =
    { $count ->
        [one] pages du patron { $paper }, en hauteur · { $count } page à suivre
       *[other] pages du patron { $paper }, en hauteur · { $count } pages à suivre
    }
paper-about_sideways =
    { $count ->
        [one] pages du patron { $paper }, en largeur · { $count } page à suivre
       *[other] pages du patron { $paper }, en largeur · { $count } pages à suivre
    }
paper-page_of = page { $page } sur { $pages }
paper-sheet_of = planche { $page } sur { $pages }
# $pieces est paper-pieces.
paper-on_sheets =
    { $count ->
        [one] { $pieces } sur { $count } planche
       *[other] { $pieces } sur { $count } planches
    }
paper-on_one_sheet = { $pieces } sur une seule planche
paper-pieces =
    { $count ->
        [one] { $count } pièce de patron
       *[other] { $count } pièces de patron
    }
paper-place = rangée { $row }, colonne { $column }
paper-glue = coller { $page } ici

# ---- la première page

paper-print = Imprimer
paper-print_first = Imprimer d’abord cette page, à 100 % (taille réelle), sans mise à l’échelle ni ajustement à la page.
paper-print_first_common = Imprimer d’abord cette page, à 100 % (taille réelle), sans mise à l’échelle ni ajustement à la page. Imprimer sur A4 ou sur US Letter, au milieu de la feuille.
paper-print_measure = Mesurer un carré avant de couper : le carré métrique mesure { $metric } de côté, l’autre { $inch }.
paper-print_others = Imprimer ensuite les autres pages avec les mêmes réglages.
paper-join = Assembler
paper-join_plan = Disposer les pages selon le plan d’assemblage. Les rangées ont des numéros, les colonnes des lettres.
paper-join_trim = Couper chaque page le long de ses lignes de coupe en tirets (✂), à gauche et en haut. Une page sans cette ligne de ce côté reste telle quelle.
paper-join_trim_all = Couper chaque page le long de ses lignes de coupe en tirets (✂), sur chaque côté qui en porte une.
paper-join_glue = Coller (colle ou ruban adhésif) la page coupée sur la zone grise de la page précédente. Réunir les moitiés de même numéro : l’anneau doit se fermer et ses diagonales se croiser au centre.
paper-join_tape = Poser les bords coupés l’un contre l’autre, non l’un sur l’autre, et les assembler avec du ruban adhésif. Réunir les moitiés de même numéro : l’anneau doit se fermer et ses diagonales se croiser au centre.
paper-join_rows = Assembler d’abord les pages de chaque rangée, puis les rangées entre elles.
paper-cut = Couper
paper-cut_line = Couper les pièces sur la ligne pleine épaisse.
paper-cut_blades = Les lames coupent. Couper loin des doigts et de soi, refermer le cutter rotatif chaque fois qu’on le pose, l’utiliser sur un tapis de découpe et tenir lames et épingles hors de portée des enfants. La notice du fabricant et les règles de l’atelier passent avant.
paper-practise = S’exercer
paper-practise_smaller = Ces pages servent à s’exercer au tracé sur une table. Tout y est dessiné plus petit, sauf les mots : rien de ce qu’on y coupe ne va à un corps.
paper-practise_blades = Tenir lames et épingles hors de portée des enfants. Les règles de la classe passent avant.

# ---- le plan d’assemblage

paper-plan = Plan d’assemblage
paper-plan_pages =
    { $count ->
        [one] { $count } page
       *[other] { $count } pages
    }
paper-plan_rows =
    { $count ->
        [one] { $count } rangée
       *[other] { $count } rangées
    }
paper-plan_columns =
    { $count ->
        [one] { $count } colonne
       *[other] { $count } colonnes
    }
# $pages, $rows et $columns sont les trois messages précédents.
paper-plan_grid = { $pages }, { $rows } sur { $columns }
paper-plan_patches = { $plan }, en { $patches } groupes
paper-plan_single = { $plan }, aucune à assembler
paper-plan_blank =
    { $count ->
        [one] { $plan } ; { $count } page blanche est omise
       *[other] { $plan } ; { $count } pages blanches sont omises
    }

# ---- carrés de contrôle et réglette

paper-square = carré de contrôle : à mesurer avant de couper
paper-square_small = Ce carré mesure { $side } et représente { $stands_for }.
paper-class_half = échelle 1/2 : ne pas couper de tissu
paper-class_quarter = échelle 1/4 : ne pas couper de tissu
paper-gauge_short = Réglette, petit côté du papier
paper-gauge_long = Réglette, grand côté du papier
paper-gauge_sheet_width = Réglette, sur la largeur de la planche
paper-gauge_sheet_height = Réglette, sur la hauteur de la planche
paper-gauge_sheet_short = Réglette, petit côté du papier
paper-gauge_sheet_long = Réglette, grand côté du papier
# Ces deux-là suivent une rangée de nombres, qui sont des pourcentages.
paper-gauge_metric = %, règle à 100 mm
paper-gauge_inch = %, règle à 4 po
paper-gauge_zero = Zéro de la règle sur le trait de ce bout.
paper-gauge_how = Imprimé trop petit ou trop grand ? Si une réglette mesure 97 mm, l’imprimante a imprimé à 97 % : chercher d’abord un réglage d’échelle. Pour une imprimante qui n’obéit pas, il faut des pages à sa mesure ; demander à l’auteur du patron des pages pour 97 %, ou pour 97 % sur le petit côté du papier et 98,5 % sur le grand, d’après les réglettes.
paper-gauge_corrected = Ces pages sont faites pour une imprimante qui imprime à { $scale } %. Sur elle, le carré de contrôle est juste et la réglette montre ce qui a été corrigé. Sur toute autre imprimante, elles sortent fausses.
paper-gauge_corrected_two = Ces pages sont faites pour une imprimante qui imprime à { $short } % sur le petit côté du papier et à { $long } % sur le grand. Sur elle, le carré de contrôle est juste et la réglette montre ce qui a été corrigé. Sur toute autre imprimante, elles sortent fausses.

# ---- l’en-tête d’une planche de reprographie

paper-head_print = Imprimer à 100 %, sur un papier au moins aussi large que cette planche, sans mise à l’échelle ni ajustement à la page.
paper-head_measure = Mesurer les carrés avant de couper : { $metric } et { $inch } de côté.
paper-head_blades = Les lames coupent : couper loin de soi et tenir lames et épingles hors de portée des enfants.

# ---- pages à plusieurs tailles

paper-sizes_run = { $first } à { $last }
paper-sizes_alike = { $sizes }, toutes pareilles
paper-sizes_hint = La page { $page } dit comment trouver sa taille et quelles pages il lui faut.
paper-sizes_find = Trouver sa taille
paper-sizes_hold = Ces pages portent les tailles { $sizes } de « { $title } », l’une sur l’autre.
paper-sizes_count = Compter les marques entre deux longs tirets : un point vaut un, un tiret court vaut cinq. Les tailles paires sont plus épaisses que les impaires.
paper-sizes_shared = Une ligne continue est commune : elle appartient à toutes les tailles dont la ligne y aboutit. Le nom de la taille est écrit çà et là dans sa ligne ; colorier sa ligne avant de couper.
paper-sizes_bunch = Là où les lignes sont trop serrées pour porter un nom, leur ordre est écrit à côté : un trait fin les traverse, de la première taille nommée, près du texte, à la dernière.
paper-sizes_layers = Dans un logiciel qui affiche les calques, éteindre les tailles inutiles ; la ligne de couture de chaque taille est un calque à part, éteint tant qu’on ne l’allume pas.
paper-sizes_allowances = Les marges sont comprises ; leurs largeurs sont écrites le long des bords.
paper-sizes_print = Imprimer seulement les pages indiquées pour sa taille ; la première porte le carré de contrôle.
paper-sizes_head_size = Taille
paper-sizes_head_line = Sa ligne de coupe
paper-sizes_head_pages = Pages à imprimer
paper-sizes_plan = Pages pour { $sizes }
paper-sizes_all = toutes
paper-sizes_all_line = commune aux tailles
paper-strips = À couper sans pièce de patron
paper-strip_every = { $strip } : { $length } sur { $width } dans toutes les tailles.
# $sizes est fait de paper-strip_size, séparés par des points-virgules.
paper-strip_sizes = { $strip } : { $sizes }.
paper-strip_size = { $sizes } { $length } sur { $width }
paper-layers = Tailles
paper-layer_stitch = { $size } ligne de couture

# ---- la planche du projecteur

paper-projector_about = { $edition } · pour projecteur, 1:1 · droit-fil de gauche à droite
paper-projector_measure = mesurer chaque côté sur la table

# ---- le fichier SVG : noms des groupes

paper-svg_about = Une unité vaut un millimètre. Un groupe pour chaque taille et pour ce que les tailles ont en commun, dedans un groupe pour chaque pièce, dedans un groupe pour chaque sorte de ligne.
paper-svg_size = Taille { $size }
paper-svg_all_sizes = Toutes les tailles
paper-svg_shared = Commun à { $sizes }
paper-svg_text = Texte
paper-svg_square = Carré de contrôle, 100 mm
paper-svg_measure = 100 mm : mesurer ce carré
paper-svg_cut_line = { $piece } : ligne de coupe
paper-svg_stitch_line = { $piece } : ligne de couture
paper-svg_fold = { $piece } : pli
paper-svg_grainline = { $piece } : droit-fil
paper-svg_notches = { $piece } : crans
paper-svg_marks = { $piece } : repères
paper-svg_names = { $piece } : noms

# ---- ce qui se dit pendant la fabrication des pages

paper-doing_pages = Les pièces sont disposées sur les pages
paper-doing_sheet = Les pièces sont disposées sur une planche
paper-doing_writing = Les pages sont écrites
paper-doing_size = Taille { $size }
paper-doing_projector = La planche du projecteur est préparée
paper-doing_nested = Préparation des pages { $paper } : { $sizes }
paper-doing_paper = { $paper } : { $amount }
paper-amount_roll = { $length } de long
paper-amount_pages =
    { $count ->
        [one] { $count } page
       *[other] { $count } pages
    }
paper-amount_sheets =
    { $count ->
        [one] { $count } planche
       *[other] { $count } planches
    }
paper-amount_blank =
    { $blank ->
        [one] { $amount }, { $blank } blanche omise
       *[other] { $amount }, { $blank } blanches omises
    }

# ---- ce qui ne peut pas être imprimé ----
paper-margins_eat = dans les marges il reste { $width } x { $height } mm : trop peu pour les carrés de contrôle et les réglettes.
paper-margins_eat_do = Choisir un papier plus grand ou des marges plus petites ; il doit rester { $least } mm dans chaque sens.
paper-paper_place = papier { $paper }
paper-no_sizes = aucune taille n’est choisie.
paper-no_sizes_do = En nommer, telles que --sizes W3,W4, ou all.
paper-size_twice = la taille { $size } est choisie deux fois.
paper-size_twice_do = Nommer chaque taille une fois.
paper-no_pieces = ce patron n’a pas de pièces : il n’y a rien à imprimer.
paper-no_pieces_do = Exécuter les étapes de tracé qui font les pièces.
paper-no_class_scale = plusieurs tailles superposées ne se lisent pas à échelle réduite.
paper-no_class_scale_do = Imprimer une seule taille à cette échelle, ou supprimer --scale.
paper-roll_long = les pièces demandent { $length } m de { $roll }, plus qu’une page de PDF ne peut contenir.
paper-roll_long_do = Choisir un papier plus large, ou des feuilles telles que A0 ; { $most } m au plus.
paper-no_such = il n’y a pas de papier « { $paper } ».
paper-no_such_do = { $near } Un format à soi s’écrit 300x500mm ou 13x19in.
paper-size_no_unit = le format de papier « { $paper } » n’a pas d’unité.
paper-size_two_units = le format de papier « { $paper } » mélange deux unités.
paper-size_do = Écrire { $first }x{ $second }mm, ou cm ou in.
paper-too_small = un papier de { $paper } est trop petit : la première page doit contenir un carré de contrôle de 100 mm et une réglette.
paper-too_small_do = Choisir au moins { $width } x { $height } mm.
paper-too_long = un papier de { $paper } est plus long qu’une page de PDF ne peut l’être.
paper-too_long_do = Choisir au plus { $most } m (200 po).
paper-margin_overlap = avec une marge de { $margin } mm et un recouvrement de { $overlap } mm, il reste trop peu de page pour le patron.
paper-margin_overlap_do = Donner une marge ou un recouvrement plus petit.
paper-margin_small = une marge de page de { $margin } mm est inférieure à ce que la plupart des imprimantes savent faire.
paper-margin_small_do = Donner au moins 5 mm.
paper-projector_long = la feuille ferait { $size } de long, plus qu’une page de PDF ne peut l’être.
paper-projector_long_do = Rester au-dessous de { $most } m.
paper-projector_narrow = les pièces ne tiennent pas sur une feuille de { $width } sur { $height } ; il faut au moins { $least } de large.
paper-projector_low = les pièces ne tiennent pas sur une feuille de { $width } sur { $height } ; il faut au moins { $least } de haut.
paper-projector_small_do = Donner une feuille plus grande, ou aucune pour qu’elle soit ajustée.
paper-not_a_sheet = « { $text } » n’est pas une taille de feuille.
paper-not_a_sheet_do = Écrire 1500x900mm ou 60x40in, ou rien.
paper-no_file_kind = il n’y a pas de fichier du type « { $kind } ».
paper-not_a_margin = « { $text } » n’est pas une marge.
paper-not_a_margin_do = Écrire 8mm, ou 6mm,15mm pour les côtés et pour le haut et le bas.
paper-not_a_printer_scale = « { $text } » ne dit pas à quelle échelle l’imprimante imprime.
paper-not_a_printer_scale_do = Lire la réglette de la première page et écrire 97%, ou 97%,98.5% pour le petit et le grand côté du papier.
paper-not_a_scale = « { $text } » n’est pas une échelle pour la classe.
paper-scale_do = Choisir 1, 1/2 ou 1/4.
paper-none_named = aucun papier n’est nommé.
paper-none_named_do = En nommer un, tel que --paper a4.
paper-printer_off = une imprimante qui imprime à { $share } est trop loin de l’échelle vraie pour être corrigée.
paper-printer_off_do = Chercher un réglage tel que « ajuster à la page » et le désactiver ; mesurer ensuite à nouveau la réglette.
paper-no_pattern = la leçon s’est exécutée, mais n’a pas donné de patron.
paper-no_pattern_do = Demander que la copie de classe soit refaite.
paper-no_name = ce fichier n’a pas encore de nom.
paper-no_name_do = L’enregistrer, puis appuyer à nouveau sur le bouton.

# ---- pièces coupées d’après leurs mesures, sans papier

paper-measures_fold = la moitié, telle qu’elle se pose au pli du tissu ; au pli : { $edge }
# Les noms des bords restent nus : un titre et ce à quoi il se rapporte.
paper-measures_along = Dans la longueur : { $edges }
paper-measures_top = Vers le haut du tissu : { $edge }
paper-measures_allowance = Marge comprise : { $width } tout autour
paper-measures_allowances = Marges comprises : { $edges }
paper-measures_edge = { $edge } { $width }
paper-measures_notch =
    { $count ->
        [one] Cran simple ({ $edge }) : à { $at } du bord coupé ({ $start })
       *[other] Crans simples ({ $edge }) : à { $at } du bord coupé ({ $start })
    }
paper-measures_double =
    { $count ->
        [one] Cran double ({ $edge }), son milieu : à { $at } du bord coupé ({ $start })
       *[other] Crans doubles ({ $edge }), leurs milieux : à { $at } du bord coupé ({ $start })
    }
paper-measures_line = Ligne ({ $mark }) : à { $at } du bord coupé ({ $start }), parallèle à celui-ci
paper-measures_point = Repère ({ $mark }) : à { $at } du bord coupé ({ $start }) et à { $up } du bord coupé ({ $edge })
paper-measures_slit = Ligne ({ $mark }) : de { $at } à { $to }, mesurés depuis le bord coupé ({ $start }), à { $up } du bord coupé ({ $edge })
paper-measures_opening = Ouverture ({ $edge } ; { $mark }) : de { $at } à { $to }, mesurés depuis le bord coupé ({ $start })
paper-by_measures = Ces pièces n’ont pas besoin de papier : les tracer à la craie directement sur le tissu, la longueur en droit-fil, marges comprises. Les repères sont indiqués dans le livret. { $pieces }
paper-by_measures_sizes = Ces pièces n’ont pas besoin de papier ; leurs mesures se trouvent sur la page des tailles, et leurs repères dans le livret de la taille choisie : { $pieces }.
paper-by_measures_one = { $piece } : { $size }
paper-by_measures_also = { $about } · sans papier : { $pieces }
paper-about_no_pages = patron { $paper } · aucune page à suivre : toutes les pièces se coupent d’après leurs mesures
paper-no_such_piece = il n’y a pas de pièce « { $name } » dans ce patron.
paper-needs_paper = la pièce « { $piece } » ne peut pas se couper d’après ses seules mesures : avec ses marges, ce n’est pas un rectangle en droit-fil, ou elle a une pince, un pli ou un repère que des mesures ne situent pas.
paper-needs_paper_do = L’imprimer sur papier : retirer son nom de no_paper.
