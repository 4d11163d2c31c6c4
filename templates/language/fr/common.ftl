# Phrases communes des opérations, textes de remplacement des images et petits mots.
# Les noms des leçons restent sans article et sans accord : « encolure (dos) », « devant (côté droit) ».

language-name = Français

phrase-minutes = { $count ->
        [one] environ { $count } minute
       *[other] environ { $count } minutes
    }

phrase-edge_on_side = { $edge } à { $side }
phrase-piece = { $piece }
# $side vaut « gauche » ou « droite ».
phrase-piece_on_side =
    { $side ->
        [droite] { $piece } (côté droit)
       *[gauche] { $piece } (côté gauche)
    }
phrase-place = { $edge } ({ $piece })
phrase-place_on_side =
    { $side ->
        [droite] { $edge } ({ $piece }, côté droit)
       *[gauche] { $edge } ({ $piece }, côté gauche)
    }
phrase-run = { $edge } ({ $piece })
phrase-run_on_side =
    { $side ->
        [droite] { $edge } ({ $piece }, côté droit)
       *[gauche] { $edge } ({ $piece }, côté gauche)
    }
phrase-row = { $first } avec { $last }
phrase-title = { $small }
phrase-two = { $first } et { $last }
phrase-more = { $first }, { $last }
phrase-then = { $first } { $then }
phrase-parted = { $first } ; { $last }
phrase-two_places = { $first } ainsi que { $last }
phrase-more_places = { $first }, { $last }

# Se lisent après « à » et « la moitié ».
# Une partie d’un bord, d’un endroit à un autre : « couture de côté entre fente et bas » ; et ces endroits.
phrase-part = { $place } { $stretch }
phrase-stretch = entre { $start } et { $end }
phrase-stretch_below = de { $start } à { $end } sous « { $edge } »
phrase-stretch_above = de { $start } à { $end } au-dessus de « { $edge } »
phrase-stretch_from = de { $start } à { $end } depuis « { $edge } »
phrase-stretch_along = de { $start } à { $end } depuis son début
phrase-spot_below = à { $size } sous « { $edge } »
phrase-spot_above = à { $size } au-dessus de « { $edge } »
phrase-spot_from = à { $size } de « { $edge } »
phrase-spot_along = à { $size } de son début
phrase-spot_edge = au niveau de « { $edge } »
phrase-spots_below = à { $first } et { $second } sous « { $edge } »
phrase-spots_above = à { $first } et { $second } au-dessus de « { $edge } »
phrase-spots_from = à { $first } et { $second } de « { $edge } »
phrase-spots_along = à { $first } et { $second } de son début
phrase-at_mark = { $mark }
phrase-at_mark_upper = le repère supérieur ({ $mark })
phrase-at_mark_lower = le repère inférieur ({ $mark })
phrase-at_mark_toward = le repère ({ $mark }) du côté { $edge }
phrase-at_notch = le cran
phrase-at_notch_double = le cran double
phrase-at_notch_number = le cran nº { $number } compté depuis { $edge }
phrase-at_edge = { $edge }
phrase-at_start = son début
phrase-at_end = sa fin
phrase-at_below = { $size } vers le bas depuis { $edge }
phrase-at_above = { $size } vers le haut depuis { $edge }
phrase-at_from = { $size } depuis { $edge }
phrase-at_along = { $size } depuis son début

word-left = gauche
word-right = droite
word-face-right = endroit dessus
word-face-wrong = envers dessus
word-interfacing-right = face encollée dessous
word-interfacing-wrong = face encollée dessus
# Se lisent après « finir les bords ».
word-finish-zigzag = au point zigzag
word-finish-overlock = au point de surjet
word-finish-pinked = aux ciseaux cranteurs
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
edge-front_underarm = couture de dessous de bras devant
edge-back_underarm = couture de dessous de bras dos
edge-centre_front = milieu devant
edge-centre_back = milieu dos
edge-front_side = couture de côté devant
edge-back_side = couture de côté dos
edge-left_side = couture de côté à gauche
edge-right_side = couture de côté à droite
edge-top = bord supérieur
edge-bottom = bord inférieur
edge-mouth = ouverture
edge-near_end = extrémité proche
edge-far_end = extrémité éloignée
edge-front_end = extrémité devant
edge-back_end = extrémité dos
edge-button_end = extrémité côté bouton

common-both_sides = Travailler le côté gauche et le côté droit de la même façon.
common-pin_right = Épingler { $a } sur { $b }, endroit contre endroit : { $edge }.
common-pin_wrong = Épingler { $a } sur { $b }, envers contre envers : { $edge }.
common-pin_right_same_piece = Épingler la moitié gauche sur la moitié droite, endroit contre endroit : { $edge }.
common-pin_wrong_same_piece = Épingler la moitié gauche sur la moitié droite, envers contre envers : { $edge }.
common-pin_right_run_on_run = Épingler { $a } sur { $b }, endroit contre endroit.
common-pin_wrong_run_on_run = Épingler { $a } sur { $b }, envers contre envers.
common-match_notches = Faire coïncider les crans.
common-match_seams = Faire coïncider les coutures.
common-match_seams_and_notches = Faire coïncider les coutures et les crans.
common-ease = L’un des bords est volontairement plus long de { $ease } : répartir cet embu régulièrement et épingler.
common-press_open = Ouvrir la couture au fer.
common-press_one_side = Coucher la couture d’un côté au fer.
common-press_later = Ne pas encore repasser.
common-press_towards = Coucher la couture au fer vers cette pièce : { $piece }.

alt-bottom = { $piece } à plat, { $face }.
alt-together = { $piece } par-dessus, { $face }, bord à bord ({ $edge }).
alt-open = { $piece } à côté, couture dépliée ({ $edge }), { $face }.
alt-flat = { $piece } par-dessus, { $face }.
alt-turned = Bord replié de { $depth } : { $edge }.
alt-row = Nouvelle piqûre : { $edge }.
alt-row_inside = Nouvelle piqûre à { $inset } à l’intérieur du bord : { $edge }.
alt-row_outside = Nouvelle piqûre dans la marge, à { $inset } à l’extérieur de la ligne de couture : { $edge }.
alt-old_row = La piqûre précédente se voit : { $edge }.
alt-gap = Elle laisse une ouverture de { $gap }.
alt-strip = L’image montre : { $strip }.
alt-pinned = Épinglé : { $edge }.
alt-folded = { $piece } avec une partie rabattue le long d’une ligne.
alt-thing = En place sur l’image : { $thing }.
alt-things = En place sur l’image, { $count } fois : { $thing }.
alt-row_line = Une nouvelle piqûre suit la ligne tracée.
alt-row_baste = Bâti à longs points : { $edge }.
alt-row_gather = Rangs de longs points pour froncer : { $edge }.
alt-row_box = Un rectangle piqué avec une croix : { $edge }.
alt-row_hand = Points à la main : { $edge }.
alt-section = Une vue en coupe montre la superposition des épaisseurs.
alt-draft = Tracé : { $pieces }.
alt-draft_strips = Bandes à couper : { $strips }.
alt-draft_new = Nouvelles lignes : { $lines }.
alt-draft_removed = Lignes supprimées ou redessinées : { $lines }.
alt-draft_points = Nouveaux points : { $points }.
alt-draft_measures = Mesures : { $measures }.
alt-draft_measure = { $name } { $value }
