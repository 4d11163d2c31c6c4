# Ce qui est écrit dans les images et dans leurs textes de remplacement. Les étiquettes ont peu de place : rester bref.

# ---- comment une pièce se coupe

picture-cut =
    { $how ->
        [fold] couper { $count } au pli, { $cloth }
        [mirrored] couper { $count } en miroir, { $cloth }
        [single] couper { $count } à plat, endroit dessus, { $cloth }
       *[plain] couper { $count }, { $cloth }
    }
picture-cut_interfacing = entoilage : couper { $count }
picture-cloth_main = tissu principal
picture-cloth_interfacing = entoilage
picture-cloth_lining = doublure

# ---- ce qui est encore écrit sur une pièce

picture-edition = édition { $edition }
picture-place_on_fold = au pli
picture-one_way = un seul sens
picture-one_way_top = un seul sens : flèche vers le haut
picture-nap_one_way = tissu à sens : flèche vers le haut
picture-nap_print = tissu à sens : raccorder le motif
picture-grain_crosswise = sens de la trame
picture-grain_bias = plein biais

# ---- texte de remplacement d’une pièce

picture-piece = Pièce de patron { $number }, { $title } : { $cut }.
picture-piece_edges = Bords : { $edges }.
picture-edge_on_fold = { $edge } au pli
picture-edge_allowance = { $edge } avec marge de { $allowance }
picture-piece_marks = Repères : { $marks }.
# Un repère qui ne vaut que pour une moitié ; $half est l'un des deux messages suivants ; tel qu’écrit sur la pièce.
picture-mark_on_one = { $mark } : { $half }
picture-one_of_pair = { SIDE($piece, $side) } seulement
picture-one_half =
    { $side ->
        [left] moitié gauche seulement
       *[right] moitié droite seulement
    }
picture-piece_darts = Pinces : { $darts }.
picture-piece_pleats = Plis et plis piqués : { $pleats }.
picture-taking = { $name } prenant { $intake }
picture-laid_crosswise = Placée dans le sens de la trame.
picture-laid_bias = Placée dans le biais.
picture-for_one_way = Pour tissu à sens : flèche vers le haut.
picture-for_print = Pour tissu à sens : raccorder le motif.

# ---- images des étapes de tracé

picture-traced_edge = { $piece } : { $edge }
picture-strip_cut = { $strip }, couper { $count }
picture-measure = { $name } { $value }
# Une mesure : la marge d’un bord.
picture-allowance_of = marge ({ $edge })
picture-step_title = { $title }.
picture-step_pieces = Pièces : { $pieces }.
picture-step_new = Nouveau, en trait épais : { $lines }.
picture-step_points = Nouveaux points : { $points }.
picture-step_measures = Mesures : { $measures }.
picture-step_marked = Repères placés : { $marks }.
picture-step_cut_line = La ligne de coupe est tracée autour de : { $pieces }.
picture-step_removed = Supprimé, en tirets : { $lines }.
picture-step_strip = { $strip } : bande de { $length } sur { $width }.
picture-lettered_point = { $letter }, { $point }
picture-enlarged = agrandi { $times } fois
picture-step_order = Dans l’ordre de la main ({ $piece }) : { $moves }.
picture-step_squares = Angle droit : { $places }.
picture-step_tangents = Se raccorde sans angle : { $places }.
picture-step_diagonals = Les diagonales sont tracées et marquées égales.
picture-step_enlarged_too = Agrandi à côté : { $measures }.
picture-hand_mark = mesurer jusqu’à un point
picture-hand_across = reporter d’équerre
picture-hand_rule = tracer à la règle : { $line }
picture-hand_curve = dessiner : { $line }
picture-hand_parallel = tracer la parallèle : { $line }
picture-hand_trace = décalquer : { $piece }
picture-hand_mirror = retourner le papier
picture-sign_on = { $line } avec { $other }
picture-hand_point = marquer : { $point }
picture-line_on = { $line } ({ $piece })
picture-notch_on =
    { $kind ->
        [double] un double cran : { $edge } ({ $piece })
       *[single] un cran simple : { $edge } ({ $piece })
    }
picture-draft = Le tracé de « { $title } », { $body } : { $pieces }.
picture-draft_piece = { $piece }, { $width } sur { $height }

# ---- images de couture

picture-layer_face =
    { $face ->
        [right] { $piece } : endroit
        [wrong] { $piece } : envers
       *[interfacing] { $piece } : entoilage
    }
picture-half =
    { $side ->
        [left] { $piece }, côté gauche
        [right] { $piece }, côté droit
       *[both] { $piece }
    }
picture-section = vue en coupe
picture-strip_as_cut = { $strip }, à la coupe
picture-strip_laid = endroit contre endroit, piquées
picture-strip_opened = ouverte au fer
picture-strip_folded = bande pliée et piquée
picture-strip_sewn = piquée, l’envers dehors
picture-strip_hemmed = ourlée
picture-strip_turned = retournée et repassée
picture-turn_over = retourner
picture-floor = sol
picture-scene_layers = De bas en haut : { $layers }.
picture-scene_layer =
    { $face ->
        [right] { $piece }, endroit dessus, { $lies }
        [wrong] { $piece }, envers dessus, { $lies }
       *[interfacing] { $piece }, entoilage, { $lies }
    }
picture-lies_together = par-dessus, bord à bord
picture-lies_open = à côté, couture dépliée
picture-lies_flat = à plat
picture-scene_rows = Piqûre le long de : { $runs }.
picture-scene_run =
    { $side ->
        [left] { $edges } ({ $piece }, côté gauche)
        [right] { $edges } ({ $piece }, côté droit)
       *[both] { $edges } ({ $piece })
    }
picture-scene_strip = Bande : { $strip }.
picture-scene_empty = Image de couture.

# ---- le vêtement à plat

picture-on_body_worn = { $title } sur le corps ({ $body }), de face et de dos.
picture-on_body_hand = { $title }, à la main, de face et de dos.
picture-on_body_shoulder = { $title }, à l’épaule, de face et de dos.
picture-on_body_head = { $title } sur la tête, de face et de dos.
picture-flat_front = « { $title } » à plat, vu de devant : { $pieces }.
picture-flat_back = « { $title } » à plat, vu de dos : { $pieces }.
picture-flat_finished = Mesures du vêtement fini : { $sizes }.
picture-flat_with = Avec : { $pieces }.
picture-flat_beside = À côté : { $pieces }.
picture-flat_left_out = Non représenté : { $pieces }.

# ---- la légende

picture-legend_right_side = endroit
picture-legend_wrong_side = envers
picture-legend_interfacing = entoilage
picture-legend_facing = parementure
picture-legend_strip = bande
picture-legend_lining = doublure
picture-legend_cut = ligne de coupe
picture-legend_stitch = ligne de couture
picture-legend_fold = pli
picture-legend_mark = repère
picture-legend_lengthen = allonger ou raccourcir ici
picture-legend_placement = pièce à poser ici
picture-legend_pleat = ligne de pli
picture-legend_new = nouveau à cette étape
picture-legend_traced = décalqué
picture-legend_aid = tracé au passage
picture-legend_check = doit être égal ou filer sans cassure
picture-legend_removed = supprimé
picture-legend_guide = ligne de construction
picture-legend_row = piqûre de cette étape
picture-legend_row_sign = début, sens et fin d’une piqûre
picture-legend_crease = bord replié
picture-legend_baste = bâti ou fronces
picture-legend_hand = points à la main
picture-legend_old_row = piqûre déjà faite
picture-legend_hidden = caché dessous
picture-legend_press = repasser de ce côté
picture-legend_grain = droit-fil
picture-legend_notch = crans
picture-legend_kept = d’une étape précédente
picture-legend_lens = agrandi à côté
picture-legend_sign_square = angle droit
picture-legend_sign_tangent = se prolonge sans angle
picture-legend_pin = épinglé ici
picture-legend_point_new = nouveau point
picture-legend_point_kept = point précédent
picture-legend_ply = tissu vu en coupe
picture-legend_ply_face = endroit du tissu, vu en coupe
picture-legend_cut_mark = vue en coupe prise ici, dans ce sens
picture-legend_needle = couture vue en coupe

# ---- la silhouette des mesures

picture-figure_title_front = Où mesurer, devant
picture-figure_title_back = Où mesurer, dos
picture-figure_front = Une silhouette debout vue de devant, avec un ruban numéroté pour chaque mesure : { $tapes }.
picture-figure_back = Une silhouette debout vue de dos, avec un ruban numéroté pour chaque mesure : { $tapes }.
picture-figure_none = aucune

# ---- coutures roulées l’une sur l’autre, endroit par endroit

picture-walk_title = { $rolled } ({ $rolled_piece }) contre { $still } ({ $still_piece }) : les lignes de couture roulées l’une sur l’autre
picture-walk_title_sentence = { $title }.
picture-walk_numbered = { $number } : { $place }.
picture-walk_place = { $place } à { $at } : { $difference }
picture-walk_place_alone = { $place } à { $at }, sur une seule pièce ({ $piece })
picture-walk_notch_alone = { $place } à { $at }, sur une seule pièce ({ $piece }), sans cran en face
picture-walk_equal = égal
picture-walk_longer = { $by } de plus ({ $piece })
picture-walk_all = En tout { $first } et { $second } : { $difference }.
picture-walk_all_eased = En tout { $first } et { $second } : { $difference }, à résorber en embu.
picture-walk_heads = à gauche : { $first } ; à droite : { $second }
picture-walk_start = début
picture-walk_end = fin : { $difference }

# ---- l’endroit d’un constat

picture-corner_title = Où l’angle ne raccorde pas
picture-corner_bends = casse de { $degrees }°
picture-corner_differs = les angles diffèrent de { $degrees }°
picture-angle = { $degrees }°
picture-corner_edge = { $edge }, { $piece }

# ---- un contour relevé

picture-outline = Contour { $outline } à { $corners } angles, numérotés dans le sens horaire depuis l’angle inférieur gauche

# Tissu coupé, après un essayage.
picture-recut = { $piece } : ancienne et nouvelle ligne de couture
picture-tried_on_alt = Le vêtement tel qu’il est cousu jusqu’ici, de face et de dos.
picture-tried_on_level = Des épingles marquent l’ourlet tout autour, à la même hauteur du sol.
picture-recut_alt = { $piece } comme elle a été coupée, envers visible : l’ancienne ligne de couture en tirets fins, la nouvelle en trait fort, avec les distances entre les deux ; ce qui est recoupé est hachuré.
picture-recut_left = reste { $size }
picture-recut_lack = manque { $size }

# Surplus d’essayage, en plus de la marge.
picture-with_extra = { $width }, dont { $extra } pour l’essayage
picture-edge_allowance_extra = { $edge } avec { $allowance } de marge et { $extra } pour l’essayage
picture-extra_of = surplus d’essayage : { $edge }
# Surplus recoupé une fois le vêtement ajusté.
picture-trim_extra = { $piece } : recouper le surplus
picture-trim_extra_alt = { $piece } comme elle a été coupée, envers visible : le surplus à recouper est hachuré, la ligne de couture en tirets.

# ---- lengthen and shorten lines

picture-lengthen_here = allonger ou raccourcir ici
picture-piece_lengthen =
 { $count ->
    [one] Une ligne la traverse pour allonger ou raccourcir.
   *[other] { $count } lignes la traversent pour allonger ou raccourcir.
 }
