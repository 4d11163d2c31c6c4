# Refus : ce qui ne va pas dans une valeur, une mesure, un fichier ou un tracé, et que faire (clés en _do). Le lieu est
# placé devant. Ce qui est écrit dans le fichier de la leçon reste tel quel.

refusal-near = S’agit-il de « { $name } » ?
refusal-known = Noms connus ici : { $names }.
refusal-none = Il n’y en a pas encore ici.

# ---- lignes et courbes ----
refusal-near_point = { $across } en largeur, { $up } en hauteur
refusal-move_end_do = Déplacer une extrémité.
refusal-move_point_do = Déplacer un des points.
refusal-no_direction = une ligne sans longueur n’a pas de direction.
refusal-no_parallel = une ligne sans longueur n’a pas de parallèle.
refusal-same_points = deux points tombent au même endroit : il n’y a pas de direction de l’un à l’autre.
refusal-no_place = un point ne donne aucun endroit du papier.
refusal-no_place_do = Chercher dans l’étape qui le trace une division par zéro ou une mesure absente.
refusal-lines_apart = les lignes d’un tracé ne se rejoignent pas : l’une finit à { $gap } du début de la suivante.
refusal-lines_apart_do = Commencer chaque ligne où finit la précédente.
refusal-off_end = { $along } le long d’une ligne de { $length } tombe au-delà de son extrémité.
refusal-off_end_do = Prendre une distance entre 0 et { $length }.
refusal-cut_off_end = une ligne de { $length } ne peut pas être coupée à { $along }.
refusal-cut_off_end_do = La couper entre 0 et { $length }.
refusal-nothing_between = il n’y a rien entre { $start } et { $end } le long d’une ligne.
refusal-nothing_between_do = Donner deux distances différentes.
refusal-carried_back = une ligne ne peut pas être prolongée de { $by }.
refusal-above_zero_do = Donner une distance supérieure à zéro.
refusal-never_meets = une ligne prolongée tout droit ne rencontre jamais l’autre.
refusal-never_meets_do = Vérifier la direction de la ligne, ou allonger l’autre.
refusal-curve_same_points = deux points d’une courbe tombent au même endroit.
refusal-leave_one_out_do = En supprimer un.
refusal-arc_radius = un arc demande un rayon supérieur à zéro ; celui-ci est de { $radius }.
refusal-arc_radius_do = Vérifier la mesure dont vient le rayon.
refusal-arc_sweep = un arc ne peut pas couvrir { $degrees } degrés.
refusal-arc_sweep_do = Prendre un angle d’un tour au plus, différent de zéro.
refusal-curve_ends = une courbe demande deux extrémités différentes ; ici les deux tombent au même endroit.
refusal-fullness = un galbe (fullness) de { $fullness } ne donne pas de courbe utilisable.
refusal-fullness_do = Prendre un galbe de { $least } à { $most }.
refusal-curve_crosses = la courbe se croiserait elle-même.
refusal-curve_crosses_do = Écarter ses extrémités, ou prendre moins de galbe.
refusal-doubles_back = la courbe reviendrait en arrière : à une extrémité elle s’écarte de { $degrees } degrés de la droite vers l’autre.
refusal-doubles_back_do = Déplacer les extrémités pour que chacune s’atteigne depuis l’autre en tournant de moins d’un angle droit.
refusal-doubles_back_full = avec un galbe de { $fullness }, la courbe reviendrait sur elle-même.
refusal-doubles_back_full_do = Prendre moins de galbe.
refusal-curve_no_room = la courbe n’a pas de place : ses deux extrémités tombent au même endroit.
refusal-curve_no_room_do = Réduire l’ouverture, ou prolonger le bord avant le début de la courbe.
refusal-curve_chord = { $what } Ses extrémités sont distantes de { $across } en largeur et de { $up } en hauteur.
refusal-turns_back = la ligne revient sur elle-même de { $degrees } degrés : trop aigu pour une parallèle.
refusal-turns_back_do = Émousser l’angle.
refusal-corner_short = à un angle rentrant, les lignes sont trop courtes pour une parallèle à { $by }.
refusal-corner_short_do = Prendre moins de { $by } à cet endroit, ou allonger la ligne la plus courte.
refusal-curve_tight = une parallèle à { $by } ne peut pas suivre une courbe de rayon { $radius } ; elle se replierait sur elle-même.
refusal-curve_tight_do = Prendre moins de { $radius } à cet endroit, ou tracer une courbe plus plate.
refusal-edge_gap = le bord « { $edge } » finit à { $gap } du début de « { $next } ».
refusal-edge_open = le bord « { $edge } » ne se ferme pas : il finit à { $gap } de son début.
refusal-edge_gap_do = Faire se rejoindre les bords, ou tracer celui qui manque entre eux.

# ---- pièces ----
refusal-allowance_missing = le bord « { $edge } » n’a pas encore de marge.
refusal-allowance_missing_do = En donner une, ou 0 si l’on coupe sur la ligne.
refusal-allowance_negative = la marge du bord « { $edge } » est de { $value } ; elle ne peut pas être inférieure à zéro.
refusal-allowance_negative_do = Donner une largeur, ou 0 si l’on coupe sur la ligne.
refusal-notch_off = un cran se trouve à { $at } le long du bord « { $edge } », qui ne mesure que { $length }.
refusal-notch_off_do = Placer le cran sur le bord.
refusal-allowances_meet = les marges de « { $one } » ({ $one_width }) et de « { $other } » ({ $other_width }) se heurtent à leur angle.
refusal-allowances_meet_do = Rétrécir l’une d’elles, ou ouvrir l’angle.
refusal-allowance_tight = le bord « { $edge } » est plus courbé que ne le permet sa marge de { $width }.
refusal-allowance_tight_do = Adoucir la courbe, ou rétrécir la marge.
refusal-dart_off = la pince « { $dart } » s’ouvre de { $start } à { $end } le long du bord « { $edge } », qui mesure { $length }.
refusal-dart_off_do = Placer la pince sur le bord.
refusal-dart_legs = les côtés de la pince « { $dart } » mesurent { $one } et { $other } ; ils doivent être égaux pour être cousus ensemble.
refusal-dart_legs_do = Déplacer la pointe ou un des côtés jusqu’à ce qu’ils soient égaux.
refusal-fold_no_edge = « { $fold } » se couche vers un côté du bord « { $edge } » où il ne reste plus de bord.
refusal-fold_no_edge_do = Le coucher de l’autre côté, ou le déplacer.
refusal-fold_beyond_edge = « { $fold } », une fois plié, ne tombe pas sous son bord.
refusal-dart_beyond_do = Rétrécir la pince.
refusal-pleat_beyond_do = Le faire moins profond, ou le tracer plus d’équerre au bord.
refusal-edge_folded_away = il ne reste rien du bord une fois ses pinces et plis fermés.
refusal-folds_over = deux pinces ou plis se chevauchent sur le bord « { $edge } ».
refusal-folds_over_do = En déplacer un.
refusal-off_sewn = { $at } tombe hors du bord « { $place } », qui mesure { $length } une fois cousu.
refusal-off_sewn_do = Donner une distance plus courte, mesurée depuis l’extrémité où les deux bords se rencontrent.
refusal-edges_apart = « { $one } » et « { $other } » ne se suivent pas : leurs extrémités les plus proches sont à { $gap }.
refusal-edges_apart_do = Nommer les bords dans l’ordre où ils font le tour de la pièce.
refusal-pleat_lines = les deux lignes de « { $pleat } » mesurent { $one } et { $other } ; elles doivent être égales pour se superposer.
refusal-pleat_lines_do = Le retracer de bord à bord, ou déplacer une extrémité jusqu’à ce qu’elles soient égales.
refusal-pleat_nothing = les lignes de « { $pleat } » n’ont pas de longueur.
refusal-draw_again_do = Le retracer.
refusal-pleat_off = « { $pleat } » n’est pas sur le bord « { $edge } », qui mesure { $length }.
refusal-pleat_off_do = Placer le pli sur le bord.
refusal-joins_eat = des morceaux de { $longest } sont absorbés par des raccords qui prennent { $cost } chacun.
refusal-joins_eat_do = Couper des morceaux plus longs, ou les raccorder avec une marge plus étroite.
refusal-strip_nothing = la mesure est de { $value }.
refusal-strip_nothing_do = Donner une longueur et une largeur supérieures à zéro.
refusal-fold_curved = la pièce ne peut pas être ouverte le long de « { $edge } », qui n’est pas droit.
refusal-fold_curved_do = Tracer la pliure droite, ou couper la pièce par paire.

# ---- longueurs saisies ----
refusal-not_a_length = « { $text } » ne se lit pas comme une longueur.
refusal-not_a_length_do = Saisir par exemple 2,5 cm, 25 mm, 1 1/2 in ou 3/8".
refusal-by_zero = « { $text } » divise par zéro.
refusal-by_zero_do = Saisir par exemple 3/8 in.
refusal-no_unit = « { $text } » n’a pas d’unité.
refusal-no_unit_do = Saisir { $text } cm ou { $text } in.
refusal-not_finite = une longueur doit être un nombre fini.
refusal-not_finite_do = Chercher une division par zéro, ou saisir une longueur telle que 2,5 cm.

# ---- nombres ----
refusal-no_number = une valeur qui n’est pas un nombre

# ---- étapes et valeurs ----
refusal-step = Étape « { $step } »
refusal-finished = Mesure finie « { $title } »
refusal-block = Le patron de base dont part la leçon
refusal-endless = le tracé a été arrêté au bout de { $seconds } s, dont { $took } s passées ici.
refusal-endless_do = Remettre la dernière valeur déplacée où elle était, et chercher une boucle qui ne finit jamais. Une leçon qui demande plus de temps le dit : Lesson(..., time_limit=20).
refusal-interrupted = le tracé a été interrompu.
refusal-interrupted_do = Ce qui est affiché est plus ancien. Déplacer une valeur, ou exécuter de nouveau la cellule.
refusal-line = ligne
refusal-here = { $place }
refusal-out_of_range = { $name } : { $value } est hors de la plage de { $least } à { $most }.
refusal-out_of_range_do = Choisir une valeur dans la plage, ou changer la plage là où le paramètre est défini.
refusal-not_a_share = « { $text } » ne se lit pas comme une part.
refusal-not_a_share_do = Saisir par exemple 70 %.
refusal-not_a_count = « { $text } » ne se lit pas comme un nombre entier.
refusal-not_a_count_do = Saisir par exemple 4.
refusal-crosses_worn = « { $edge } » croise « { $other } » à { $across } de la ligne du milieu et { $up } au-dessus de la taille.
refusal-crosses = « { $edge } » croise « { $other } » à { $across } à droite du zéro du papier et { $up } au-dessus.
refusal-crosses_do = Ramener vers son ancienne valeur la dernière mesure changée, ou retracer l’un des deux.

# ---- tracé ----
refusal-below_zero = { $value } est inférieur à zéro.
refusal-below_zero_do = Donner une distance nulle ou positive.
refusal-square_misses = en traçant d’équerre d’ici, on ne rencontre jamais « { $line } ».
refusal-square_misses_do = Essayer dans l’autre sens.
refusal-line_nothing = une ligne demande deux points différents.
refusal-line_nothing_do = Lui donner une longueur.
refusal-lines_added = les lignes du papier ne s’ajoutent pas avec +.
refusal-lines_added_do = Nommer plusieurs bords à la suite, comme [front.neck, back.neck], ou faire une ligne de deux qui se touchent : one.joined(other).
refusal-line_short = « { $line } » ne mesure que { $length } : il n’y a pas de point à { $at }.
refusal-shorter_do = Donner une distance plus courte.
refusal-lines_miss = « { $line } » ne rencontre pas « { $other } ».
refusal-lines_miss_do = Vérifier que les deux sont bien où on les attend.
refusal-share_outside = une part est entre 0 et 1, pas { $share }.
refusal-share_outside_do = Donner un nombre de 0 à 1.
refusal-join_below = la courbe doit rejoindre « { $line } » à { $at }, mais « { $line } » ne mesure que { $length }.
refusal-join_below_do = La faire rejoindre plus haut, ou allonger le vêtement.
refusal-reaches_below = « { $line } » a une profondeur de { $length } et descend plus bas que la fin de « { $other } ».
refusal-reaches_below_do = Faire « { $line } » moins profond, ou « { $other } » plus long.
refusal-no_room_to_round = depuis la fin de « { $line } », aucun arrondi de { $radius } de rayon ne rejoint « { $other } » : il n’y a pas la place au-dessus de sa fin.
refusal-no_room_to_round_do = Raccourcir « { $line } », accepter un arrondi plus serré ou allonger « { $other } ».
refusal-never_clear = une ligne de { $size } depuis là n’arrive pas, même courbée, à { $by } à l’extérieur de « { $line } ».
refusal-never_clear_do = Commencer plus à l’extérieur ou l’allonger : elle doit finir à l’extérieur de « { $line } ».
refusal-edges_miss = « { $one } » et « { $other } » ne se rejoignent pas, même prolongés tout droit.
refusal-edges_miss_do = Vérifier les lignes qui précèdent, ou tracer l’angle à la main.
refusal-grain_outside = le droit-fil serait hors de la pièce.
refusal-grain_outside_do = Le placer à l’intérieur : at=....
refusal-grain_curved = un droit-fil est droit ; « { $line } » est courbe.
refusal-grain_curved_do = Nommer une ligne droite ou une direction : along="up".
refusal-fold_is_curved = le tissu se plie droit ; « { $edge } » est courbe.
refusal-fold_is_curved_do = Le tracer droit, ou couper la pièce par paire.
refusal-paper_fold_curved = le papier ne se plie que le long d’une ligne droite ; « { $line } » est courbe.
refusal-strip_size = une bande demande une longueur et une largeur ; elle mesure { $length } sur { $width }.
refusal-notch_past = un cran à { $at } tombe au-delà de la fin de « { $edge } », qui mesure { $length }.
refusal-nearer_do = Le placer plus près.
refusal-opening_off = l’ouverture de { $start } à { $end } ne tient pas sur « { $edge } », qui mesure { $length }.
refusal-opening_off_do = Raccourcir ou remonter l’ouverture, ou allonger le vêtement.
refusal-notch_taken = il y a déjà un cran à { $at } le long de « { $edge } ».
refusal-notch_taken_do = Supprimer celui-ci, ou le placer ailleurs.
refusal-mark_over = la marque « { $mark } » passerait sur deux bords.
refusal-mark_over_do = Marquer une partie pour chaque bord.
refusal-point_off = le point n’est pas sur « { $place } ».
refusal-point_off_do = Le marquer sur le bord.
refusal-mark_off = la marque « { $mark } » n’est pas sur « { $place } ».
refusal-mark_off_do = Nommer le bord où elle est marquée.
refusal-level_misses = d’équerre depuis ce point, aucune ligne ne rencontre « { $edge } ».
refusal-level_misses_do = Prendre un autre point.
refusal-line_misses_edge = « { $line } » ne rencontre pas « { $edge } », ni telle quelle ni pliée sur la ligne du milieu.
refusal-line_misses_edge_do = Donner la hauteur comme longueur, ou un point à cette hauteur.
refusal-buttonholes_off = des boutonnières de { $start } à { $end } ne tiennent pas sur « { $edge } », qui mesure { $length }.
refusal-buttonholes_off_do = Donner la première place avant la dernière, mesurées toutes deux depuis le début du bord.
refusal-buttonhole_nothing = une boutonnière demande une longueur.
refusal-buttonhole_nothing_do = Donner par exemple button=1.5 * cm.
refusal-slits_meet = des fentes de { $size } tous les { $gap } se touchent.
refusal-slits_meet_do = En mettre moins, ou les placer d’équerre au bord.
refusal-buttons_length = le bord des boutons, « { $edge } », mesure { $length } et celui des boutonnières { $other }.
refusal-buttons_length_do = Égaliser d’abord les deux bords, ou les ajuster.
refusal-laid_outside = posée là, la pièce « { $piece } » dépasse de { $by }.
refusal-laid_outside_do = La poser plus à l’intérieur, ou la réduire.
refusal-laid_over_fold_do = Elle dépasse la pliure, où se trouve l’autre moitié : la couper aussi au pli et poser pli sur pli, ou la poser plus à l’intérieur.
refusal-dart_in_way = une pince s’ouvre sur « { $edge } ».
refusal-dart_in_way_do = Placer les boutonnières d’après une autre ligne.
refusal-buttonholes_count = { $count } boutonnières ne remplissent pas { $length }.
refusal-buttonholes_count_do = En donner au moins 2, ou la même première et dernière place pour 1.
refusal-spacing_nothing = l’écart est nul.
refusal-spacing_nothing_do = Donner par exemple spacing=8 * cm.
refusal-buttonholes_many = { $count } boutonnières, c’est plus qu’un vêtement n’en a.
refusal-unit_do = Vérifier l’unité.
refusal-outside_piece = il est hors de la pièce.
refusal-outside_piece_do = Le déplacer vers l’intérieur.
refusal-folds_order = les pliures sont à { $folds }.
refusal-folds_order_do = Les donner de la ligne de couture vers l’extérieur, à 1 mm au moins : folds=(0, 4 * cm).
refusal-fold_beyond = une pliure à { $at } hors de « { $edge } » tombe au-delà du tissu, qui s’arrête à { $most }.
refusal-fold_beyond_do = Plier plus près de la ligne de couture, ou élargir la marge.
refusal-corner_size = une taille de { $size } ne peut pas être coupée.
refusal-corner_size_do = Donner la distance depuis l’angle des lignes de couture.
refusal-corner_arc = un arc à { $size } de l’angle entamerait la marge, large de { $width }.
refusal-corner_arc_do = Prendre { $width } ou plus, ou supprimer size.
refusal-corner_reach = la pointe est à { $reach } de l’angle : { $size } ne coupe rien.
refusal-corner_reach_do = Donner une taille inférieure à { $reach }.

# ---- pinces, plis et coupes du papier ----
refusal-legs_differ = les côtés de la pince « { $dart } » diffèrent de { $by }.
refusal-legs_differ_do = Égaliser les côtés avant de la déplacer.
refusal-dart_share = une partie de pince est une part supérieure à 0 et jusqu’à 1, pas { $share }.
refusal-dart_on_old = la nouvelle pince tomberait sur l’ancienne.
refusal-beside_do = Donner une place à côté.
refusal-slash_fold = la coupe couperait la pliure en deux.
refusal-other_edge_do = Choisir un autre bord.
refusal-dart_nothing = une pince demande une valeur supérieure à zéro.
refusal-more_do = Donner par exemple { $size }.
refusal-dart_no_fit = une pince de { $intake } ne tient pas à { $at } le long de « { $edge } », qui mesure { $length }.
refusal-dart_no_fit_do = La rétrécir, ou la placer plus près du milieu.
refusal-dart_points_out = la pince pointerait hors de la pièce.
refusal-dart_points_out_do = Placer sa pointe à l’intérieur.
refusal-dart_wide = la pince est plus large que profonde.
refusal-dart_wide_do = La rétrécir ou l’approfondir.
refusal-dart_legs_miss = les côtés de la pince n’atteignent pas tous deux « { $edge } ».
refusal-dart_aside = la pointe de la pince est trop décalée par rapport à sa place sur « { $edge } ».
refusal-dart_opposite_do = Placer la pince en face de sa pointe.
refusal-dart_short = la pince « { $dart } » a une profondeur de { $deep } ; elle ne peut pas s’arrêter { $by } avant le sommet.
refusal-shorten_less_do = La raccourcir moins.
refusal-take_in = { $amount } ne peuvent pas être résorbés sur { $over }.
refusal-spread_more_do = L’étaler davantage.
refusal-pleat_along = la ligne longe presque « { $edge } » : rien ne peut y être plié.
refusal-pleat_along_do = Donner une ligne qui croise le bord.
refusal-no_edge_across = il n’y a pas de bord juste en face.
refusal-no_edge_across_do = Nommer le bord où elle va.
refusal-takes_nothing = il doit prendre plus que rien.
refusal-pleat_same_edge = il commence et finit sur « { $edge } ».
refusal-pleat_same_edge_do = Le mener à un autre bord.
refusal-tuck_short = une nervure de { $long } ne peut pas être piquée sur { $sewn }.
refusal-tuck_short_do = La piquer moins loin, ou supprimer sewn= pour la piquer entière.
refusal-box_narrow = un pli creux de { $wide } ne peut pas cacher deux plis de { $deep }.
refusal-box_narrow_do = Élargir le pli, ou prendre moins.
refusal-row_empty = une rangée a au moins une nervure, pas { $count }.
refusal-row_empty_do = Donner un nombre à partir de 1.
refusal-tucks_over = des nervures de { $depth } espacées de { $apart } couvriraient la piqûre voisine.
refusal-tucks_over_do = Les espacer d’au moins { $depth }.
refusal-tucks_off = { $count } nervures espacées de { $apart } finissent à { $last } le long de « { $edge } », qui mesure { $length }.
refusal-tucks_off_do = En faire moins, les rapprocher, ou commencer plus près du début.
refusal-spread_far = on ne peut pas l’écarter autant.
refusal-spread_far_do = L’écarter moins.
refusal-dart_opens_on = la pince « { $dart } » s’ouvre sur « { $edge } » ; changer ce bord rendrait ses côtés inégaux.
refusal-dart_opens_on_do = Déplacer d’abord la pince sur un autre bord.
refusal-pleat_ends_on = « { $pleat } » finit sur « { $edge } » ; changer ce bord laisserait ses lignes en arrière.
refusal-pleat_ends_on_do = Changer d’abord le bord, puis tracer le pli.
refusal-edge_short = « { $edge } » ne mesure que { $length }.
refusal-move_less_do = Le déplacer moins.
refusal-neck_into_dart = l’encolure entrerait dans la pince « { $dart } ».
refusal-widen_less_do = L’élargir moins.
refusal-no_place_on = il n’y a pas de place à { $at } le long de « { $edge } », qui mesure { $length }.
refusal-inside_fold = { $at } le long de « { $edge } » tombe dans « { $fold } ».
refusal-slash_leaves = la ligne de coupe sort du papier à « { $edge } ».
refusal-slash_leaves_do = Choisir une place que l’on atteint en ligne droite.
refusal-slash_outside = la ligne de coupe est hors du papier.
refusal-other_place_do = Choisir une autre place.
refusal-slash_through = la ligne de coupe traverse « { $fold } ».
refusal-slash_dart_do = Déplacer d’abord cette pince.
refusal-slash_pleat_do = Tenir les deux séparés, ou tracer celui-ci d’abord.

# ---- ajustement, parementures, doublures ----
refusal-true_too_far = « { $one } » mesure { $one_length } et « { $other } » { $other_length } : l’écart de { $by } est plus grand que ce que l’ajustement doit cacher.
refusal-true_too_far_do = Chercher l’erreur dans le tracé, ou dire combien est soutenu : ease=....
refusal-true_fold = « { $edge } » finit sur la pliure, qui ne peut pas être déplacée.
refusal-true_fold_do = Garder cette extrémité et changer l’autre.
refusal-true_take_off = on ne peut pas ôter { $by } à « { $edge } » : il n’y a que { $left } entre son extrémité et la pince ou l’angle suivant.
refusal-true_take_off_do = Changer l’autre bord, ou l’autre extrémité.
refusal-true_sharp = « { $one } » et « { $other } » se rejoignent à { $degrees }° au bout de la couture ; c’est trop aigu pour être adouci.
refusal-true_sharp_do = Retracer l’angle, ou le déclarer s’il est voulu.
refusal-true_no_room = il n’y a pas de place sur « { $edge } » pour l’adoucir : seulement { $reach } avant la pince ou l’angle suivant.
refusal-true_no_room_do = Garder cette extrémité, avec hold="start" ou hold="end", ou déplacer la pince.
refusal-hem_shorter = l’ourlet ne peut pas être raccourci de { $by } : les bords voisins ne mesurent que { $length }.
refusal-dart_left_out = la pince « { $dart } » s’ouvre sur « { $edge } », que la doublure laisse de côté.
refusal-dart_left_out_do = Déplacer d’abord la pince sur un autre bord, ou la coudre avant de relever la doublure.
refusal-facing_deeper = la parementure est plus profonde que « { $edge } » n’est long : il ne reste rien pour la doublure.
refusal-facing_narrower_do = Rétrécir la parementure.
refusal-pleat_curved = un pli s’ajoute le long d’une ligne droite ; « { $edge } » est courbe.
refusal-pleat_curved_do = Nommer le bord du milieu : at='centre'.
refusal-dart_cut_away = la pince « { $dart } » s’ouvre là où « { $edge } » est coupé.
refusal-dart_cut_away_do = Déplacer d’abord la pince ailleurs.
refusal-dart_not_beside = « { $edge } » ne rencontre pas « { $beside } » : la pince « { $dart } » ne peut pas y être fermée.
refusal-dart_not_beside_do = Nommer un bord qui commence ou finit là où « { $beside } » le fait.
refusal-dart_into_fold = « { $edge } » est sur la pliure : la pince « { $dart } » ne peut pas y être fermée.
refusal-dart_into_fold_do = Nommer le bord de l’autre bout, ou supprimer la pince avant de poser la pièce sur la pliure.
refusal-facing_no_fit = une parementure de { $depth } de profondeur ne tient pas à l’intérieur ({ $pieces }) : { $what }
refusal-drawn_short = le bord extérieur mesure { $length } et ne peut pas être rentré de { $by } à « { $edge } ».
refusal-drawn_short_do = Le rentrer moins.
refusal-seam_past = la couture est déplacée au-delà du bout du bord.
refusal-seam_past_do = La déplacer moins, ou supprimer la couture.
refusal-run_gone = il ne reste rien du bord pour elle.
refusal-seam_less_do = Déplacer moins la couture.

# ---- couture ----
refusal-not_negative_do = Écrire une longueur nulle ou positive.
refusal-too_wide = { $value } dépasse { $most } : c’est plus large que ce travail ne le permet.
refusal-unit_mm_do = Vérifier l’unité : mm, cm ou inch.
refusal-zero = c’est nul.
refusal-zero_do = Écrire une largeur, telle que 1 * cm.
refusal-opening_off_seam = une ouverture de { $start } à { $end } ne tient pas sur une couture de { $length }.
refusal-opening_off_seam_do = Donner d’abord l’extrémité la plus proche et les garder toutes deux sur la couture.
refusal-opening_whole = l’ouverture prend toute la couture.
refusal-opening_whole_do = Laisser une partie de la couture à coudre.
refusal-off_run = { $at } tombe hors du bord « { $place } », qui mesure { $length }.
refusal-from_start_do = Mesurer depuis le début du bord.
refusal-at_beside_mark = { $at } est écrit à côté du repère « { $mark } », qui est déjà un endroit à lui seul.
refusal-at_past_mark = { $at } tombe au-delà du repère « { $mark } », qui mesure { $length }.
refusal-at_beside_mark_do = Retirer at=, ou nommer le bord au lieu du repère et mesurer le long de ce bord.
refusal-at_missing = il n’est pas dit à quel endroit du bord.
refusal-at_missing_do = L’écrire : at=10 * cm ; ou nommer un repère au lieu du bord.
refusal-band_fold_eaten = Le pli doit dépasser la couture de { $deeper }, et on ne rentre que { $allowance }.
refusal-band_fold_eaten_do = Écrire un deeper= plus petit, par exemple 3 mm, ou une marge plus large.
refusal-no_part = une partie de { $start } à { $end } n’est pas une partie d’un bord.
refusal-no_part_do = Donner d’abord l’extrémité la plus proche, mesurées toutes deux depuis le début du bord.
refusal-part_before = une partie ne peut pas commencer à { $start } d’un bord.
refusal-part_reversed = { $from } se trouve à { $start } et { $to } à { $end } seulement, mesurés depuis { $tip } : dans cet ordre, aucune partie ne se trouve entre les deux.
refusal-part_reversed_do = Nommer d’abord l’endroit le plus proche.
refusal-part_empty = { $from } et { $to } sont le même endroit, à { $start } depuis { $tip } : aucune partie ne se trouve entre les deux.
refusal-part_empty_do = Nommer deux endroits distincts, ou déplacer l’un d’eux dans le tracé.
refusal-part_past = la partie finit à { $end }, mais le bord ne mesure que { $length }.
refusal-part_backward = la partie finit à { $end } mais commence à { $start }, et les bords mesurent { $length }.
refusal-zip_narrow = une marge de { $width } est trop étroite pour y coudre une fermeture à glissière.
refusal-zip_narrow_do = Donner à l’ouverture au moins { $least }.
refusal-zip_row = piquée à { $at } de la pliure, la couture manquerait la marge de { $width } placée derrière.
refusal-zip_row_do = Piquer plus près de la pliure, ou donner à l’ouverture une marge plus large.
refusal-tower_piece = la patte et les bords qui l’entourent doivent être sur une seule pièce à part.
refusal-tower_piece_do = Nommer des bords de la pièce coupée pour la patte, comme tower.edge et around=[tower.point, tower.outer].
refusal-slit_long = « { $slit } », long de { $length } depuis le bord « { $edge } », ne laisse pas de tissu après sa fin.
refusal-slit_long_do = Le raccourcir : il faut au moins { $least } de la pièce au-delà.
refusal-fly_same_piece = la parementure de braguette ou le sous-pont n’est pas une pièce à part.
refusal-fly_same_piece_do = Nommer le grand bord d’une pièce coupée pour cela, comme facing=fly_facing.edge.
refusal-double_dart_order = son endroit le plus large n’est pas entre ses deux pointes.
refusal-double_dart_order_do = Nommer la pointe du haut top, celle du bas bottom, et un point entre les deux at.
refusal-double_dart_edge = la pince « { $dart } » atteint le bord « { $edge } » : une pince à deux pointes finit à l’intérieur de la pièce.
refusal-double_dart_edge_do = La faire finir au moins { $least } avant, ou tracer avec add_dart une pince qui s’ouvre sur ce bord.
refusal-no_double_dart = le repère « { $mark } » n’est pas une pince à deux pointes.
refusal-no_double_dart_do = En tracer une avec add_double_dart et la nommer ici ; une pince qui s’ouvre sur un bord se coud avec make.dart.
refusal-other_fastener = le repère « { $mark } » dit : { $is }. Ici il faut autre chose : { $wanted }.
refusal-other_fastener_do = Nommer un repère de cette sorte ({ $wanted }) ou un simple point. Le côté qui recouvre porte le crochet ou la partie mâle, celui de dessous la bride, la porte ou la partie femelle.
refusal-grade = { $wide } n’est pas plus large que { $narrow }.
refusal-grade_do = Dégrader à deux largeurs différentes.
refusal-strip_eaten = une marge de { $width } ne laisse rien d’une bande coupée à { $cut } de large.
refusal-strip_eaten_do = La couper plus large, ou prendre une marge plus étroite.
refusal-overlap_long = une croisure de { $size } prend tout « { $edge } », qui mesure { $length }.
refusal-overlap_long_do = Vérifier la croisure, et nommer le petit côté de la ceinture.
refusal-cloth_narrow = « { $piece } » mesure { $across } de large, plus qu’un tissu de { $width } n’en donne.
refusal-cloth_narrow_do = Prendre un tissu plus large, ou prévoir une couture dans cette pièce.

# ---- le code de l’étape ----
refusal-at_line = { $place }, à « { $line } »

# ---- angles ----
refusal-folds_none = aucune pliure n’est nommée.
refusal-extra_on_fold = ce bord est à la pliure, où rien n’est coupé : { $edge }.
refusal-extra_on_fold_do = Donner le surplus à un bord qui se coupe.

# A bound that follows from other values; $causes are these, each with its value.
refusal-bound_cause = { $name } { $value }
refusal-bound_at_least = { $name } : { $value }, c’est trop peu ; avec { $causes }, il faut au moins { $bound }.
refusal-bound_at_least_do = Mettre { $name } à { $bound } au moins, ou changer ce dont cela dépend.
refusal-bound_at_most = { $name } : { $value }, c’est trop ; avec { $causes }, il faut au plus { $bound }.
refusal-bound_at_most_do = Mettre { $name } à { $bound } au plus, ou changer ce dont cela dépend.
refusal-no_answer = le notebook n’a pas donné de réponse.
refusal-no_answer_do = L’exécuter encore une fois.
refusal-cut_alike_left = { $piece } n’a pas de moitié gauche : ses { $count } épaisseurs sont coupées à l’identique.
refusal-cut_alike_right = { $piece } n’a pas de moitié droite : ses { $count } épaisseurs sont coupées à l’identique.
refusal-cut_alike_do = Pour une moitié gauche et une moitié droite, écrire { $call }.
refusal-no_moment = { $name } vaut « { $said } », ce qui n’est pas un nombre de secondes.
refusal-no_moment_do = Donner des secondes entières depuis le début de 1970, ou supprimer cette variable.
