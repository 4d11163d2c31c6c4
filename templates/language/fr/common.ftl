# Phrases communes des opérations, textes de remplacement des images et petits mots.
# Les noms sont donnés sans article ; LE, DU et AU le mettent devant eux : « l’encolure du dos ».

language-name = Français

phrase-minutes = { $count ->
        [one] environ { $count } minute
       *[other] environ { $count } minutes
    }

phrase-edge_on_side = { SIDE($edge, $side) }
phrase-piece = { $piece }
# $side vaut « gauche » ou « droite ».
phrase-piece_on_side = { SIDE($piece, $side) }
phrase-place = { $edge } { DU($piece) }
phrase-place_on_side = { $edge } { DU(SIDE($piece, $side)) }
phrase-run = { $edge } { DU($piece) }
phrase-run_on_side = { $edge } { DU(SIDE($piece, $side)) }
phrase-row = { $first } avec { LE($last) }
phrase-title = { $small }
phrase-two = { $first } et { $last }
phrase-more = { $first }, { $last }
phrase-then = { $first } { $then }
phrase-parted = { $first } ; { $last }
phrase-two_places = { $first } et { $last }
phrase-more_places = { $first }, { $last }

# Se lisent après « à » et « la moitié ».
# Une partie d’un bord, d’un endroit à un autre : « couture de côté entre fente et bas » ; et ces endroits.
phrase-part = { $place } { $stretch }
phrase-stretch = { DU($start) } jusqu’{ AU($end) }
phrase-stretch_below = de { $start } à { $end } sous { LE($edge) }
phrase-stretch_above = de { $start } à { $end } au-dessus { DU($edge) }
phrase-stretch_from = de { $start } à { $end } à partir { DU($edge) }
phrase-stretch_along = de { $start } à { $end } depuis son début
phrase-spot_below = à { $size } sous { LE($edge) }
phrase-spot_above = à { $size } au-dessus { DU($edge) }
phrase-spot_from = à { $size } { DU($edge) }
phrase-spot_along = à { $size } de son début
phrase-spot_edge = au niveau { DU($edge) }
phrase-spot_mark = { AU($mark) }
phrase-spots_below = à { $first } et { $second } sous { LE($edge) }
phrase-spots_above = à { $first } et { $second } au-dessus { DU($edge) }
phrase-spots_from = à { $first } et { $second } { DU($edge) }
phrase-spots_along = à { $first } et { $second } de son début
phrase-at_mark = { $mark }
phrase-at_mark_upper = le repère supérieur { DU($mark) }
phrase-at_mark_lower = le repère inférieur { DU($mark) }
phrase-at_mark_toward = le repère { DU($mark) } du côté { DU($edge) }
phrase-at_notch = le cran
phrase-at_notch_double = le cran double
phrase-at_notch_number = le cran nº { $number } compté à partir { DU($edge) }
phrase-at_edge = { $edge }
phrase-at_start = son début
phrase-at_end = sa fin
phrase-at_below = { $size } sous { LE($edge) }
phrase-at_above = { $size } au-dessus { DU($edge) }
phrase-at_from = { $size } à partir { DU($edge) }
phrase-at_along = { $size } depuis son début

word-left = gauche
word-right = droite
word-face-right = endroit dessus
word-face-wrong = envers dessus
word-interfacing-right = face encollée dessous
word-interfacing-wrong = face encollée dessus
# Se lisent après « finir les bords ».
word-finish-zigzag = surfiler au point zigzag
word-finish-overlock = surjeter
word-finish-pinked = cranter aux ciseaux cranteurs
word-stuff-interfacing = entoilage
word-thing-zip = fermeture à glissière
word-thing-zip_tape = ruban d’une fermeture ouverte
word-thing-button = bouton
word-thing-buttonhole = boutonnière
word-thing-hook = crochet
word-thing-bar = bride de crochet
word-thing-eye = porte de crochet
word-thing-snap = partie mâle d’un bouton-pression
word-thing-socket = partie femelle d’un bouton-pression
word-thing-eyelet = œillet
word-thing-cut = ligne à couper
word-thing-tower = patte à pointe
word-thing-elastic = longueur d’élastique
word-thing-cord = cordon
word-thing-binding = bande de biais
word-thing-clips = suite de crans dans la marge
word-thing-caught = extrémité d’une bande prise entre les épaisseurs
word-thing-wedges = suite de coins en V coupés dans la marge
word-close = ajusté
word-easy = confortable
word-loose = ample

edge-outer = bord extérieur
edge-inner = bord intérieur
edge-wrist = bord du poignet
edge-side = couture de côté
edge-neck = encolure
edge-shoulder = couture d’épaule
edge-opening = bas de manche
edge-centre = ligne du milieu
edge-hem = bas
edge-waist = ligne de taille
edge-hip = ligne de hanches
edge-armhole = emmanchure
edge-inseam = entrejambe
edge-outseam = couture extérieure de la jambe
edge-cap = tête de manche
edge-overarm = couture de dessus de manche
edge-underarm = couture de dessous de manche
edge-front_underarm = couture de dessous de manche devant
edge-back_underarm = couture de dessous de manche dos
edge-centre_front = milieu devant
edge-centre_back = milieu dos
edge-front_side = couture de côté devant
edge-back_side = couture de côté dos
edge-left_side = couture de côté gauche
edge-right_side = couture de côté droit
edge-top = bord supérieur
edge-bottom = bord inférieur
edge-mouth = ouverture
edge-near_end = extrémité proche
edge-far_end = extrémité éloignée
edge-front_end = extrémité devant
edge-back_end = extrémité dos
edge-button_end = extrémité côté bouton

common-both_sides = Travailler le côté gauche et le côté droit de la même façon.
common-both_sides_open_left = Laisser ouvert du côté gauche seulement ; coudre le côté droit de la même façon, mais d’un bout à l’autre.
common-both_sides_open_right = Laisser ouvert du côté droit seulement ; coudre le côté gauche de la même façon, mais d’un bout à l’autre.
common-pin_right = Épingler { LE($a) } sur { LE($b) }, endroit contre endroit, le long { DU($edge) }.
common-pin_wrong = Épingler { LE($a) } sur { LE($b) }, envers contre envers, le long { DU($edge) }.
common-pin_right_same_piece = Épingler la moitié gauche sur la moitié droite, endroit contre endroit, le long { DU($edge) }.
common-pin_wrong_same_piece = Épingler la moitié gauche sur la moitié droite, envers contre envers, le long { DU($edge) }.
common-pin_right_run_on_run = Épingler { LE($a) } sur { LE($b) }, endroit contre endroit.
common-pin_wrong_run_on_run = Épingler { LE($a) } sur { LE($b) }, envers contre envers.
common-match_notches = Faire coïncider les crans.
common-match_seams = Faire coïncider les coutures.
common-match_seams_and_notches = Faire coïncider les coutures et les crans.
common-ease = L’un des bords est volontairement plus long de { $ease } : répartir cet embu régulièrement et épingler.
common-press_open = Ouvrir la couture au fer.
common-press_one_side = Coucher la couture d’un côté au fer.
common-press_later = Ne pas encore repasser.
common-press_towards = Coucher les marges au fer vers { LE($piece) }.

alt-bottom = { LE($piece) } à plat, { $face }.
alt-together = { LE($piece) } par-dessus, { $face }, bord à bord le long { DU($edge) }.
alt-open = { LE($piece) } à côté, la couture dépliée le long { DU($edge) }, { $face }.
alt-flat = { LE($piece) } par-dessus, { $face }.
alt-turned = Le bord est replié de { $depth } le long { DU($edge) }.
alt-row = Une nouvelle piqûre suit { LE($edge) }.
alt-row_inside = Une nouvelle piqûre suit { LE($edge) }, à { $inset } à l’intérieur du bord.
alt-row_outside = Une nouvelle piqûre dans la marge { DU($edge) }, à { $inset } à l’extérieur de la ligne de couture.
alt-old_row = La piqûre précédente se voit le long { DU($edge) }.
alt-gap = Elle laisse une ouverture de { $gap }.
alt-strip = L’image montre { LE($strip) }.
alt-pinned = Des épingles tiennent { LE($edge) }.
alt-folded = { LE($piece) } avec une partie rabattue le long d’une ligne.
alt-thing = En place sur l’image : { $thing }.
alt-things = En place sur l’image, { $count } fois : { $thing }.
alt-row_line = Une nouvelle piqûre suit la ligne tracée.
alt-row_baste = Un bâti à longs points suit { LE($edge) }.
alt-row_gather = Des rangs de longs points pour froncer suivent { LE($edge) }.
alt-row_box = Un rectangle avec une croix est piqué { AU($edge) }.
alt-row_hand = Des points à la main suivent { LE($edge) }.
alt-section = Une vue en coupe montre la superposition des épaisseurs.
alt-draft = Tracé : { $pieces }.
alt-draft_strips = Bandes à couper : { $strips }.
alt-draft_new = Nouvelles lignes : { $lines }.
alt-draft_removed = Lignes supprimées ou redessinées : { $lines }.
alt-draft_points = Nouveaux points : { $points }.
alt-draft_measures = Mesures : { $measures }.
alt-draft_measure = { $name } { $value }
