# Ce qui s’oppose à coudre dans l’ordre de la leçon : ce qui ne va pas, et que faire (clés en _do). Le nom de la pièce ou de
# la bande est dit avant. Les noms restent entre guillemets après « le bord », « la pièce » : rien n’a à s’accorder.
# Ce qui s’écrit dans le notebook, comme make.press(...), reste tel quel.

sewing_trouble-band_not_set = le bord « { $place } » n’est pas encore cousu au vêtement : il n’y a pas de couture à refermer.
sewing_trouble-band_not_set_do = Monter d’abord la ceinture : make.set_band(...).
sewing_trouble-band_not_pressed = la couture du bord « { $place } » n’est pas encore repassée, et une fois la ceinture fermée le fer n’y passe plus.
sewing_trouble-band_not_pressed_do = La repasser d’abord : make.press(..., way=...).
sewing_trouble-band_not_seamed = la pièce « { $piece } » n’est pas encore assemblée à la ceinture extérieure.
sewing_trouble-band_not_seamed_do = Assembler d’abord les deux et les retourner : make.seam_band(...), make.turn_out(...).
sewing_trouble-band_end_open = le bord « { $edge } » (pièce « { $piece } ») est encore brut ; une fois le bord intérieur fermé, on ne peut plus le rentrer.
sewing_trouble-band_end_open_do = Piquer d’abord les extrémités et retourner la ceinture.
sewing_trouble-band_end_raw = le bord « { $place } » est encore brut là où la ceinture commence ou finit.
sewing_trouble-band_end_raw_do = Ourler d’abord ce bord ou y poser une parementure, poser sa fermeture ou faire sa couture : la ceinture finit à sa ligne finie.
sewing_trouble-turned_already = la pièce « { $piece } » est déjà retournée : on ne peut plus piquer son extrémité par l’intérieur.
sewing_trouble-turned_already_do = Piquer les extrémités avant de retourner la bande.
# Dit d’une bande. $length est la longueur coupée, $ends ce qui se replie, $left ce qui reste une fois finie.
sewing_trouble-strip_length = coupée à { $length }, avec { $ends } repliés à chaque bout, cette bande mesure { $left }, et non { $finished_length }.
sewing_trouble-strip_length_do = Changer la longueur coupée, les bouts repliés ou la longueur finie.
sewing_trouble-loop_before_seam = le passant est piqué sur « { $place } » avant que cette couture soit faite.
sewing_trouble-do_sew_seam_first = Faire d’abord la couture.
sewing_trouble-too_few_strips_bound =
    { $count ->
        [one] { $count } est cousue
       *[other] { $count } sont cousues
    }, mais le nombre coupé n’est que de { $cut }.
sewing_trouble-too_few_strips_bound_do = En couper plus, ou border moins de bords.
sewing_trouble-binding_width = coupée à { $width } de large, cette bande ne donne pas { $finished } : il en faut { $cut_width }.
sewing_trouble-binding_width_do = Changer la largeur coupée ou la largeur finie.
sewing_trouble-binding_short_edge = cette bande est coupée à { $length }, mais le bord et ses bouts en demandent { $needed }.
sewing_trouble-binding_short_edge_do = La couper plus longue, ou dire combien de bandes se partagent les bords : count=....
sewing_trouble-binding_not_bias = le bord « { $place } » est courbe, mais la bande « { $piece } » est coupée droit-fil et ne l’épouse pas.
sewing_trouble-binding_not_bias_do = Couper la bande dans le biais.
sewing_trouble-buttons_and_holes =
    { $number ->
        [one] il y a { $number } bouton
       *[other] il y a { $number } boutons
    } pour { $wanted ->
        [one] { $wanted } boutonnière
       *[other] { $wanted } boutonnières
    }.
sewing_trouble-buttons_and_holes_do = Donner son bouton à chaque boutonnière ; nommer un côté quand un repère est sur les deux moitiés (front.left).
sewing_trouble-no_buttonhole = un bouton est posé sous une boutonnière qui n’est pas encore faite.
sewing_trouble-no_buttonhole_do = Faire d’abord les boutonnières : make.buttonholes(...).
# $size est le bouton, $sizes la plus courte boutonnière.
sewing_trouble-button_wide = un bouton de { $size } de diamètre ne passe pas dans une boutonnière de { $sizes }.
sewing_trouble-button_wide_do = Faire la boutonnière aussi longue que le bouton est large, et { $more } de plus. La marquer aussi longue sur le tracé : buttonholes(..., thick=...).
sewing_trouble-buttonhole_size = « { $place } » est marqué sur { $length }, mais la boutonnière est faite sur { $worked }.
sewing_trouble-buttonhole_size_do = Marquer et faire la même longueur.
sewing_trouble-button_slips = un bouton de { $size } de diamètre s’échappe d’une boutonnière de { $sizes }.
sewing_trouble-button_slips_do = Prendre des boutons plus grands, ou faire des boutonnières plus courtes.
sewing_trouble-casing_turns = le premier repli est plus profond que le second : il ne tient pas dans la coulisse.
sewing_trouble-do_deepen_second_turn = Faire le second repli au moins aussi profond que le premier.
sewing_trouble-gap_elsewhere = l’ouverture se trouve sur « { $place } », qui ne fait pas partie de la coulisse.
sewing_trouble-gap_elsewhere_do = La laisser dans un des bords de la coulisse.
sewing_trouble-channel_one_layer = il n’y a encore rien sous « { $place } » : deux piqûres à travers une seule épaisseur ne font pas de coulisse.
sewing_trouble-channel_one_layer_do = L’assembler d’abord à sa doublure ou à sa parementure et retourner (make.seam_to_turn, make.turn_out), ou y faire un ourlet large.
sewing_trouble-channel_beyond = la seconde piqûre se trouve à { $far } du bord « { $place } », mais une des épaisseurs ne va que jusqu’à { $reach }.
sewing_trouble-channel_beyond_do = Piquer plus près du bord, ou couper la doublure, la parementure ou l’ourlet plus large.
sewing_trouble-channel_shallow = entre des piqûres espacées de { $depth }, aucun cordon ne passe.
sewing_trouble-channel_shallow_do = Les espacer d’au moins { $least }.
sewing_trouble-channel_twice = il y a déjà une coulisse le long de « { $place } ».
sewing_trouble-no_slit = le cordon doit sortir à « { $place } », mais aucune couture n’y est restée ouverte.
sewing_trouble-no_slit_do = La laisser ouverte dans la couture : make.plain_seam(..., opening=...).
sewing_trouble-slit_off_casing = « { $place } » dépasse la coulisse, dont la piqûre se trouve à { $high } du pli.
sewing_trouble-slit_off_casing_do = La marquer plus près du pli, ou faire une coulisse plus profonde.
sewing_trouble-hole_off_channel = « { $place } » ne se trouve pas entre les piqûres de la coulisse, à { $low } et { $high } du bord.
sewing_trouble-hole_off_channel_do = La déplacer, ou déplacer les piqûres : distance et depth de make.channel.
sewing_trouble-not_gathered_yet = le bord « { $place } » est plus long de { $share } que celui auquel il est cousu : trop pour être résorbé.
sewing_trouble-not_gathered_yet_do = Le froncer d’abord : make.gather(..., fit=...). Si le plus court est extensible et qu’on l’étire en cousant, le dire : Lesson(..., stretch=0.6).
sewing_trouble-not_eased_yet = le bord « { $place } » est plus long de { $ease } que celui auquel il est cousu, et rien ne le resserre encore.
sewing_trouble-not_eased_yet_do = Y passer d’abord un fil d’embu : make.ease_stitch(...).
sewing_trouble-no_casing = il n’y a pas encore de coulisse le long de « { $place } » où passer quoi que ce soit.
sewing_trouble-no_casing_do = Faire d’abord la coulisse : make.casing(...) ou make.channel(...).
sewing_trouble-threaded_twice = quelque chose passe déjà dans la coulisse de « { $place } ».
sewing_trouble-threaded_out_twice = un cordon sort déjà à « { $place } ».
sewing_trouble-do_take_one_operation_out = Ôter l’une des deux opérations.
sewing_trouble-gap_shut = il faut enfiler par l’ouverture de « { $place } », mais elle est cousue.
sewing_trouble-gap_shut_do = Laisser l’ouverture dans la coulisse : make.casing(..., gap=...) ou make.channel(..., gap=...).
sewing_trouble-elastic_wide = un élastique de { $width } de large ne coulisse pas librement dans une coulisse de { $deep }.
sewing_trouble-elastic_wide_do = Prendre un élastique plus étroit, ou faire la coulisse plus profonde.
sewing_trouble-cord_no_room = un élastique de { $width } de large ne laisse pas de place à un cordon dans une coulisse de { $deep }.
sewing_trouble-cord_no_room_do = Faire la coulisse plus profonde, ou prendre un élastique plus étroit.
sewing_trouble-cords_no_room = deux cordons prennent { $cords } et ne coulissent pas librement côte à côte dans une coulisse de { $deep }.
sewing_trouble-cords_no_room_do = Faire la coulisse plus profonde, ou n’y passer qu’un cordon.
sewing_trouble-elastic_long = l’élastique mesure { $worn } une fois fermé, mais la coulisse n’a que { $whole } : il ne resserrerait rien.
sewing_trouble-elastic_long_do = Couper l’élastique plus court que le bord.
sewing_trouble-strip_not_made_drawn_in = cette bande est enfilée avant d’être confectionnée.
sewing_trouble-do_make_strip_first = Confectionner d’abord la bande.
sewing_trouble-no_eyelet = le cordon doit sortir à « { $place } », mais il n’y a pas encore d’œillet.
sewing_trouble-no_eyelet_do = Faire les œillets avant de coudre la coulisse : make.eyelets(...).
sewing_trouble-cord_short = le cordon mesure { $length }, mais la coulisse { $whole } : ses bouts disparaîtraient à l’intérieur.
sewing_trouble-cord_short_do = Prendre un cordon plus long : le bord, et de quoi nouer aux deux bouts.
sewing_trouble-mock_french_turn = une marge de { $allowance } rentrée de { $turn } laisse { $left } : les bords rentrés ne tiennent pas entre la couture et le pli.
sewing_trouble-mock_french_turn_do = Rentrer au moins { $least } et moins de la moitié de la marge.
sewing_trouble-felled_trim = la marge recoupée fait { $trim }, trop large pour être plate dans une couture rabattue de { $width }.
sewing_trouble-felled_trim_do = La recouper à { $most } ou moins, ou faire la couture rabattue plus large.
sewing_trouble-felled_width = une couture rabattue de { $width } laisse { $turned } à replier sur la marge de { $allowance }.
sewing_trouble-felled_width_do = Il faut replier au moins { $least }, et pas plus que la largeur de la couture rabattue : changer la largeur ou la marge.
sewing_trouble-lapped_row = la piqûre est à { $edgestitch } du pli, au-delà de la marge de dessous, qui fait { $allowance }.
sewing_trouble-lapped_row_do = Piquer plus près du pli.
sewing_trouble-free_edge_raw = le bord « { $place } » est fixé alors qu’il est encore brut.
sewing_trouble-free_edge_raw_do = Le replier (turn=...), ou le finir avant.
sewing_trouble-no_interfacing_cut = cette pièce est entoilée, mais aucun entoilage n’est coupé pour elle.
sewing_trouble-no_interfacing_cut_do = Dire dans le plan de coupe de la pièce qu’elle se coupe aussi en entoilage, ou dessiner son entoilage.
sewing_trouble-fused_twice = cette pièce est déjà entoilée.
sewing_trouble-fused_late = cette pièce est déjà cousue ; l’entoilage se pose sur la pièce à plat.
sewing_trouble-fused_late_do = Entoiler cette pièce avant sa première couture.
sewing_trouble-understitched_early = « { $place } » : rien n’y est encore cousu, il n’y a pas de couture à sous-piquer.
sewing_trouble-understitched_early_do = Poser d’abord la parementure.
sewing_trouble-fasteners_unequal =
    { $number ->
        [one] il y a { $number } emplacement dessus
       *[other] il y a { $number } emplacements dessus
    } et { $other } dessous.
sewing_trouble-fasteners_unequal_do = Nommer autant d’emplacements de chaque côté.
sewing_trouble-fasteners_apart = « { $place } » est à { $size } du précédent, mais leurs vis-à-vis de l’autre côté sont à { $other } l’un de l’autre.
sewing_trouble-fasteners_apart_do = Marquer les deux côtés à des distances égales : fermé ainsi, { $amount } goderait entre les deux.
sewing_trouble-eyelet_late = la coulisse est déjà cousue à « { $place } » : un œillet traverserait ses deux épaisseurs.
sewing_trouble-eyelet_late_do = Poser les œillets avant de plier la coulisse.
sewing_trouble-eyelet_in_lining = à « { $place } », deux épaisseurs sont déjà l’une sur l’autre : un œillet les tiendrait ensemble, et aucun cordon ne sortirait entre elles.
sewing_trouble-eyelet_in_lining_do = Poser les œillets dans l’épaisseur extérieure seule, avant qu’une doublure, une parementure ou un ourlet ne soit dessous.
sewing_trouble-staystitched_late = le bord « { $place } » est déjà cousu ; la piqûre de soutien tient le bord brut avant qu’il s’étire.
sewing_trouble-staystitched_late_do = La mettre avant la première couture à cet endroit.
sewing_trouble-finished_late = le bord brut de « { $place } » est déjà enfermé ; il n’y a plus rien à finir.
sewing_trouble-finished_late_do = La mettre avant, ou l’ôter.
sewing_trouble-topstitched_raw = le bord « { $place } » est surpiqué alors qu’il est encore brut.
sewing_trouble-topstitched_raw_do = Le coudre, y poser une parementure ou l’ourler d’abord.
sewing_trouble-topstitched_unpressed = le bord « { $place } » est surpiqué avant que sa couture soit repassée.
sewing_trouble-topstitched_unpressed_do = La repasser d’abord : make.press(...).
sewing_trouble-staystitch_outside_cloth = la piqûre serait sur le bord coupé ou au-delà.
sewing_trouble-staystitch_outside_cloth_do = La faire plus près de la ligne de couture que la marge n’est large.
sewing_trouble-blind_hem_narrow = un ourlet de { $depth } est trop étroit pour être cousu à points invisibles.
sewing_trouble-blind_hem_narrow_do = Le faire d’au moins { $least }, ou le roulotter à la main.
sewing_trouble-wide_hem_short = le bord rentre en courbe : relevé de { $first }, le bord brut est trop court de { $surplus } pour l’endroit où il se coud, et tirerait.
sewing_trouble-do_face_or_narrow_hem = Y poser une parementure (make.faced_hem), ou faire l’ourlet plus étroit.
sewing_trouble-wide_hem_full = relevé de { $first }, le bord brut est plus long de { $surplus } que l’endroit où il se coud : trop pour être plat sur un bord aussi courbe.
sewing_trouble-rolled_hem_wide = un bord replié de { $first }, c’est trop pour être roulé entre les doigts.
sewing_trouble-rolled_hem_wide_do = Prendre { $most } ou moins, ou faire un ourlet étroit.
sewing_trouble-caught_loose = « { $place } » doit être pris dans l’ourlet, mais la pièce n’est pas encore cousue au vêtement.
sewing_trouble-caught_loose_in_seam = « { $place } » doit être pris dans la couture, mais la pièce n’est pas encore cousue au vêtement.
sewing_trouble-caught_loose_do = La poser d’abord.
sewing_trouble-caught_length = « { $place } » mesure { $amount }, et aucun bord de la pièce où il doit être pris n’est aussi long.
sewing_trouble-caught_length_do = Tracer le bord du col aussi long que le bord du pied de col où il est pris.
sewing_trouble-not_a_ring_yet = le bord « { $place } » est ourlé en anneau, mais ses extrémités ne sont pas encore cousues ensemble.
sewing_trouble-not_a_ring_yet_do = Faire d’abord la couture qui le ferme, ou ôter ring=True et l’ourler à plat.
sewing_trouble-hem_turns = le premier repli est plus profond que le second : il ne tient pas dans l’ourlet.
sewing_trouble-bags_unequal = les deux sacs diffèrent de { $gap } autour de la poche.
sewing_trouble-bags_unequal_do = Tracer les deux sacs pareils.
sewing_trouble-mouth_whole_seam = l’ouverture prend toute la couture.
sewing_trouble-mouth_whole_seam_do = Laisser une partie de la couture à piquer.
sewing_trouble-bag_whole_seam = le sac est cousu sur toute la longueur de « { $place } » : il ne reste rien de la couture au-dessus ni au-dessous.
sewing_trouble-bag_whole_seam_do = Le coudre à l’ouverture marquée pour la poche.
sewing_trouble-bag_not_set = la pièce « { $piece } » n’est pas encore cousue à son côté de l’ouverture.
sewing_trouble-bag_not_set_do = Coudre d’abord les deux sacs : make.pocket_bag(...).
sewing_trouble-mouth_moved = la couture laisse ouvert de { $start } à { $end }, mais aucun sac n’y est cousu.
sewing_trouble-mouth_moved_do = Nommer la même ouverture pour les sacs et pour la couture.
sewing_trouble-basting_outside_cloth = à { $distance } à l’extérieur de la ligne de couture, le bâti serait sur le bord coupé ou au-delà.
sewing_trouble-basting_outside_cloth_do = Bâtir plus près de la ligne de couture que la marge n’est large.
sewing_trouble-not_joined_yet = « { $place } » et « { $other } » se cousent d’une seule piqûre, mais les pièces n’y sont pas encore assemblées.
sewing_trouble-not_joined_yet_do = Faire d’abord la couture entre elles, ou coudre les deux l’une après l’autre.
sewing_trouble-gathers_not_taken_up = le bord « { $place } » est froncé, mais la couture n’y prend aucune ampleur.
sewing_trouble-gathers_not_taken_up_do = Dire dans la couture de combien le bord froncé est plus long (ease=...), ou ôter les fronces.
sewing_trouble-gathered_to_another_length = le bord « { $place } » est réduit à { $to }, mais le bord auquel il se coud mesure { $size }.
sewing_trouble-gathered_to_another_length_do = Le réduire à la mesure de ce bord : fit=... le nomme.
sewing_trouble-pocket_place_size = la poche mesure { $own } sur ses bords cousus, mais la ligne où elle se pose mesure { $length }.
sewing_trouble-pocket_place_size_do = Tracer l’emplacement d’après la poche, ou la poche d’après son emplacement.
sewing_trouble-pocket_turns = le premier repli est plus profond que le second : il ne tient pas dans l’ourlet de la poche.
sewing_trouble-folded_twice = le bord « { $place } » est déjà replié au fer.
sewing_trouble-do_take_one_out = Ôter l’un des deux.
sewing_trouble-folded_late = le bord « { $place } » est déjà cousu ; sa marge se replie au fer avant de coudre la poche.
sewing_trouble-folded_late_do = Le mettre avant de coudre la poche.
sewing_trouble-pocket_not_hemmed = la pièce « { $piece } » est cousue avant que son ouverture soit ourlée ; après, on n’atteint plus les bouts de l’ourlet.
sewing_trouble-pocket_not_hemmed_do = L’ourler d’abord : make.pocket_hem(pocket.top, ...).
sewing_trouble-pocket_not_folded = le bord « { $edge } » (pièce « { $piece } ») n’est pas encore replié au fer : son bord brut se verrait.
sewing_trouble-pocket_not_folded_do = Replier d’abord les bords au fer : make.fold_pocket(...).
sewing_trouble-pocket_twice = il y a déjà une poche à « { $place } ».
sewing_trouble-pocket_twice_do = Ôter l’une des deux, ou nommer un autre repère.
sewing_trouble-gathers_too_few = le bord « { $place } » mesure { $full } ; resserré à { $drawn }, il ne fait pas de fronces.
sewing_trouble-gathers_too_few_do = Faire le bord plus long, le resserrer davantage, ou y passer un fil d’embu : make.ease_stitch(...).
sewing_trouble-gathers_too_many = le bord « { $place } » mesure { $full }, soit { $ratio } fois les { $drawn } auxquels il doit être resserré : tant de tissu ne peut pas se froncer sur cette longueur.
sewing_trouble-gathers_too_many_do = Faire le bord plus court, ou y former des plis.
sewing_trouble-basted_late = le bord « { $place } » est déjà fermé ; un bâti n’a plus rien à tenir.
sewing_trouble-basted_late_do = Le mettre avant la couture à cet endroit.
sewing_trouble-not_basted = il n’y a pas de bâti à retirer le long de « { $place } ».
sewing_trouble-not_basted_do = Bâtir d’abord, ou ôter ceci.
sewing_trouble-basting_out_early = le bord « { $place } » n’est pas encore cousu : seul le bâti le tient.
sewing_trouble-basting_out_early_do = Piquer d’abord, ou essayer : make.try_on(...).
sewing_trouble-basted_otherwise = { $place } est encore bâti sur la ligne de couture, endroit contre endroit, et ne peut pas se poser comme cette couture commence.
sewing_trouble-basted_otherwise_do = Retirer d’abord le bâti : make.remove_basting(...).
sewing_trouble-pressed_early = il n’y a pas encore de couture à repasser le long de « { $place } ».
sewing_trouble-pressed_early_do = La faire d’abord, ou nommer le bord de la couture voulue.
sewing_trouble-pressed_open_shut_in = les marges le long de « { $place } » sont enfermées : on ne peut pas les ouvrir au fer.
sewing_trouble-pressed_open_shut_in_do = Les coucher d’un côté : make.press(..., way="one side").
sewing_trouble-pressed_no_edge = rien n’est encore retourné à l’intérieur le long de « { $place } » : aucune couture ne se trouve au bord.
sewing_trouble-pressed_no_edge_do = Retourner d’abord la parementure ou la pièce ; une couture qui reste à l’intérieur s’ouvre ou se couche d’un côté.
sewing_trouble-band_meets_no_seam = aucune couture du vêtement ne rencontre « { $place } » : le côté intérieur de la ceinture pendrait.
sewing_trouble-band_meets_no_seam_do = La fermer tout autour : method="hand", "groove" ou "edgestitch".
sewing_trouble-binding_short_seam = border ses marges demande { $wanted }, mais il ne reste que { $left } de la bande.
sewing_trouble-binding_short_seam_do = En couper plus, ou la faire plus longue.
sewing_trouble-french_seam_trimmed = les marges recoupées font { $trim } : elles ne sont pas plus étroites que la seconde piqûre, à { $second } de la pliure, et leurs bords bruts dépasseraient.
sewing_trouble-french_seam_trimmed_do = Les recouper plus étroites, ou faire la seconde piqûre plus large.
sewing_trouble-french_seam_rows = la seconde piqûre est à { $second } de la pliure, trop étroite pour enfermer des bords bruts recoupés.
sewing_trouble-french_seam_rows_do = Faire la seconde piqûre à { $least } au moins.
sewing_trouble-opening_outside_seam = l’ouverture finit à { $end } le long de « { $place } », dont la longueur n’est que de { $size }.
sewing_trouble-opening_outside_seam_do = Remonter l’ouverture, ou la faire plus petite.
sewing_trouble-opening_narrow = une marge de { $depth } est trop étroite pour être rentrée le long de l’ouverture.
sewing_trouble-opening_narrow_do = Donner à la couture une marge d’au moins { $least }.
sewing_trouble-cap_not_eased = la tête de manche est plus longue de { $ease } que l’emmanchure, et aucun fil d’embu ne la resserre encore.
sewing_trouble-cap_not_eased_do = Le passer d’abord le long de la tête : make.ease_stitch(sleeve.cap, fit=...).
sewing_trouble-place_outside_run = la position est à { $at } le long de « { $place } », dont la longueur n’est que de { $size }.
sewing_trouble-place_outside_run_do = Mesurer depuis le début du bord.
sewing_trouble-strip_not_made = cette bande est posée avant d’être confectionnée.
sewing_trouble-too_few_strips =
    { $count ->
        [one] { $count } est posée
       *[other] { $count } sont posées
    }, mais le nombre coupé n’est que de { $cut }.
sewing_trouble-too_few_strips_do = En couper plus, ou en poser moins (nommer un côté : front.left).
sewing_trouble-strip_made_twice = cette bande est déjà confectionnée.
sewing_trouble-strip_made_twice_do = En ôter une.
sewing_trouble-strip_width = coupée à { $width } de large, cette bande finit à { $comes }, et non à { $finished_width }.
sewing_trouble-strip_width_do = Changer la largeur coupée ou la largeur finie.
sewing_trouble-slant_long = une oblique de { $slant } fait plus de la moitié de sa longueur de { $length }.
sewing_trouble-slant_long_do = Faire l’oblique plus courte.
sewing_trouble-edge_closed_already = le bord « { $place } » est déjà fermé : aucune couture ne peut l’y prendre.
sewing_trouble-edge_closed_already_do = La poser avant cette couture, ou la piquer par-dessus.
sewing_trouble-strip_edge_raw = cette bande est piquée sur « { $place } » alors que ce bord est encore brut.
sewing_trouble-strip_edge_raw_do = Finir d’abord le bord, ou laisser la couture la prendre.
sewing_trouble-end_outside_run = un bout est placé à { $at } le long de « { $place } », dont la longueur n’est que de { $size }.
sewing_trouble-end_outside_run_do = Mesurer les deux endroits depuis le début du bord.
sewing_trouble-handle_twice = une bande est déjà fixée à cet endroit : « { $place } ».
sewing_trouble-handle_edge_raw = cette bande est piquée sur « { $place } » alors que ce bord est encore brut.
sewing_trouble-handle_edge_raw_do = Finir d’abord le bord, ou laisser une couture ou un ourlet la prendre.
sewing_trouble-handle_edge_closed = le bord « { $place } » est déjà fermé : rien ne peut y prendre les bouts.
sewing_trouble-handle_edge_closed_do = La poser avant que ce bord soit cousu ou ourlé, ou la piquer par-dessus.
sewing_trouble-trimmed_away = une marge de { $to } s’effiloche hors de sa couture.
sewing_trouble-trimmed_away_do = Laisser au moins { $least }.
sewing_trouble-nothing_to_trim = la marge de « { $place } » ne fait que { $width } : la recouper à { $to } n’ôte rien.
sewing_trouble-nothing_to_trim_do = La recouper plus étroite, ou ôter ceci.
sewing_trouble-strip_seam_not_sewn = { $piece } : sa couture n’est pas encore piquée, ou les ciseaux n’y ont plus accès.
sewing_trouble-strip_seam_not_sewn_do = Recouper entre la piqûre et le retournement : make.turn_strip(..., rows="sew"), puis ceci, puis make.finish(...).
sewing_trouble-strip_nothing_to_trim = { $piece } : la marge mesure { $width }, il n’y a donc rien à couper jusqu’à { $to }.
sewing_trouble-strip_end_open = { $piece } : aucune couture ne traverse ses bouts.
sewing_trouble-strip_end_open_do = Nommer ses côtés (sides), ou coudre un bout en oblique : make.turn_strip(..., slant=3 * cm).
sewing_trouble-one_layer_graded = le bord « { $place } » n’est cousu à aucun autre : il n’y a pas deux marges à dégrader.
sewing_trouble-one_layer_graded_do = Faire d’abord la couture, ou recouper : make.trim(...).
sewing_trouble-tacked_raw = le bord « { $place } » est fixé alors qu’il est encore brut.
sewing_trouble-tacked_raw_do = Le finir d’abord.
sewing_trouble-tacked_to_no_seam = il n’y a pas encore de couture où le fixer le long de « { $place } ».
sewing_trouble-tacked_to_no_seam_do = Faire d’abord cette couture.
sewing_trouble-tacked_loose = la pièce « { $piece } » n’est pas encore cousue au vêtement.
sewing_trouble-tacked_loose_do = La poser d’abord, puis fixer son bord.
sewing_trouble-inside_out = la pièce « { $piece } » est encore sur l’envers.
sewing_trouble-inside_out_do = La retourner d’abord : make.turn_out(..., through=...).
sewing_trouble-right_side_out_already = la pièce « { $piece } » n’est pas sur l’envers : il n’y a rien à retourner.
sewing_trouble-right_side_out_already_do = La coudre d’abord endroit contre endroit, ou ôter ceci.
sewing_trouble-gap_narrow = une ouverture de { $size } est trop étroite pour retourner la pièce.
sewing_trouble-gap_narrow_do = Laisser au moins { $least } ; davantage en tissu épais.
sewing_trouble-gap_unequal = les deux bords de l’ouverture diffèrent : { $one } et { $two }.
sewing_trouble-gap_unequal_do = Nommer la même partie des deux bords.
sewing_trouble-turned_gap_shut = il faut retourner par « { $place } », mais ce bord est cousu.
sewing_trouble-turned_gap_shut_do = Laisser une ouverture dans la couture, ou retourner avant de fermer ce bord.
sewing_trouble-zip_sides = les deux côtés de son ouverture diffèrent : { $size } et { $other }.
sewing_trouble-zip_sides_do = Marquer l’ouverture au même endroit sur les deux bords.
sewing_trouble-seam_below_zip = le bord « { $place } » n’est pas encore cousu à côté de l’ouverture ; une fermeture se pose dans une couture qui s’y arrête.
sewing_trouble-seam_below_zip_do = Faire d’abord la couture jusqu’à l’ouverture.
sewing_trouble-slit_adrift = « { $place } » ne part d’aucun bord de sa pièce et ne peut donc pas s’y ouvrir.
sewing_trouble-slit_adrift_do = Tracer la fente depuis le bord où elle s’ouvre.
sewing_trouble-placket_late = le bord « { $place } » est déjà fermé là où la fente s’ouvre : on ne peut plus la mettre droite.
sewing_trouble-placket_late_do = Faire la patte tant que ce bord est brut, avant ses fronces, son poignet ou son ourlet.
sewing_trouble-placket_short = la bande est coupée sur { $length } de long, mais les deux côtés de la fente en demandent { $needed }.
sewing_trouble-placket_short_do = La couper plus longue.
sewing_trouble-placket_narrow = la bande est coupée sur { $width } de large : repliée, elle ne couvrirait pas sa propre couture, qui demande { $needed }.
sewing_trouble-placket_narrow_do = La couper plus large, ou la piquer avec une marge plus étroite.
sewing_trouble-tower_short = la patte monte de { $given } le long de la fente et finit avant la piqûre qui la tient.
sewing_trouble-tower_short_do = La couper longue d’au moins { $least } sans les marges, ou raccourcir la fente.
sewing_trouble-tower_narrow = pliée, la patte est large de { $given }, trop peu pour couvrir la fin de la fente.
sewing_trouble-tower_narrow_do = Pliée, elle doit faire au moins { $least } : la couper plus large ou faire le rectangle plus étroit.
sewing_trouble-fly_facing_narrow = la parementure de braguette est large de { $wide } : la courbe à { $lap } du bord la prendrait à peine.
sewing_trouble-fly_facing_narrow_do = La couper large d’au moins { $least } sans les marges, ou piquer plus près du bord.
sewing_trouble-fly_facing_length = le bord « { $place } » est long de { $length } et l’ouverture de { $opening }.
sewing_trouble-fly_facing_length_do = Le couper aussi long que l’ouverture, ou un peu plus en bas : jusqu’à { $most }.
sewing_trouble-fly_shield_open = « { $place } » doit être pris avec la fermeture, mais ses deux bouts sont encore bruts.
sewing_trouble-fly_shield_open_do = Piquer d’abord le sous-pont en bas et le retourner ; ensuite on n’atteint plus son bout.
sewing_trouble-seam_before_zip = le bord « { $place } » est déjà cousu à côté de l’ouverture ; une fermeture invisible se coud sur deux pièces à plat, et la couture voisine ensuite.
sewing_trouble-seam_before_zip_do = Poser la fermeture avant la couture du dessous.
sewing_trouble-zip_late = le bord « { $edge } » est déjà fermé : le haut de la fermeture ne peut plus y être pris.
sewing_trouble-zip_late_do = Poser la fermeture avant la ceinture, la parementure ou l’ourlet qui couvre son bout.
sewing_trouble-fold_sewn = le bord « { $edge } » est au pli : il n’y a pas de bord brut à coudre.
sewing_trouble-fold_sewn_do = Nommer un autre bord, ou couper la pièce en double avec une couture à cet endroit.
sewing_trouble-band_inner_longer = le bord « { $place } » est plus long de { $amount } que le bord sur lequel il se pose.
sewing_trouble-band_inner_shorter = le bord « { $place } » est plus court de { $amount } que le bord sur lequel il se pose.
sewing_trouble-band_inner_do = Tracer pareils les deux bords de la ceinture.
sewing_trouble-band_inner_deeper = le bord « { $place } » descend { $amount } plus bas que la ceinture extérieure : le pli dépasse d’autant la couture.
sewing_trouble-band_inner_shallower = le bord « { $place } » s’arrête { $amount } plus haut que la ceinture extérieure : le pli n’atteint pas la couture.
sewing_trouble-band_inner_depth_do = Tracer les deux pièces de la ceinture de même hauteur, ou écrire deeper=3 * mm si le pli doit dépasser la couture.
sewing_trouble-worked_before_band = la pièce « { $piece } » n’est pas encore fermée : il n’y a qu’une épaisseur à « { $place } ».
sewing_trouble-worked_before_band_do = Fermer d’abord la ceinture : make.close_band(...).
sewing_trouble-worked_at_raw_edge = le bord « { $edge } » à côté de « { $place } » est encore brut : il n’y a là qu’une épaisseur.
sewing_trouble-worked_at_raw_edge_do = Finir d’abord ce bord (parementure, bande ou ourlet).
sewing_trouble-worked_twice = « { $place } » : c’est déjà fait.
# $wanted est ce que mesure le premier bord.
sewing_trouble-fits_longer = le bord « { $place } » donne { $wanted }, mais le bord auquel il se coud est plus long de { $amount }.
sewing_trouble-fits_shorter = le bord « { $place } » donne { $wanted }, mais le bord auquel il se coud est plus court de { $amount }.
sewing_trouble-fits_longer_with_ease = le bord « { $place } » donne { $wanted }, mais le bord auquel il se coud est, embu compris, plus long de { $amount }.
sewing_trouble-fits_shorter_with_ease = le bord « { $place } » donne { $wanted }, mais le bord auquel il se coud est, embu compris, plus court de { $amount }.
sewing_trouble-fits_do = Tracer les deux pareils, froncer le plus long à mesure, ou dire la croisure et l’embu.
# $fold est le nom d’une pince, d’un pli ou d’un pli piqué.
sewing_trouble-fold_twice = « { $fold } » : c’est déjà piqué ou plié.
sewing_trouble-fold_late = « { $fold } » s’ouvre sur le bord « { $edge } », qui est déjà fermé.
sewing_trouble-fold_late_do = Placer cela avant la première couture, l’ourlet, la parementure ou la bande à cet endroit.
sewing_trouble-seam_not_gathered = le bord « { $place } » est plus long de { $share } que celui auquel il est cousu : trop pour être résorbé.
sewing_trouble-seam_not_gathered_do = Le froncer d’abord : make.gather(...). Si le plus court est extensible et qu’on l’étire en cousant, le dire : Lesson(..., stretch=0.6).
sewing_trouble-seam_not_eased = le bord « { $place } » est plus long de { $share } que celui auquel il est cousu : trop pour être réparti aux épingles.
sewing_trouble-seam_not_eased_do = Y passer d’abord un fil d’embu : make.ease_stitch(...).
sewing_trouble-drawn_up_late = le bord « { $place } » est déjà cousu : on ne peut plus le resserrer.
sewing_trouble-drawn_up_late_do = Placer cela avant la couture qui prend l’ampleur.
sewing_trouble-gathered_twice = le bord « { $place } » est déjà froncé.
sewing_trouble-eased_twice = le bord « { $place } » a déjà son fil d’embu.
sewing_trouble-nothing_to_ease = le bord « { $place } » mesure { $full } et doit être resserré à { $drawn }, ce qui n’est pas moins.
sewing_trouble-nothing_to_ease_do = Vérifier les deux longueurs.
sewing_trouble-too_much_to_ease = le bord « { $place } » mesure { $full } et doit être resserré à { $drawn } : { $share }, c’est trop pour rester lisse.
sewing_trouble-too_much_to_ease_do = Le froncer, ou y mettre une pince ou des plis.
sewing_trouble-sleeve_no_ring = le bord « { $place } » ne forme pas un anneau fermé : la couture de dessous de manche n’est pas encore faite.
sewing_trouble-sleeve_no_ring_do = Faire d’abord la couture de dessous de manche, ou monter la manche à plat par une couture simple.
sewing_trouble-armhole_no_ring = le bord « { $place } » ne forme pas un anneau fermé : la couture d’épaule ou celle de côté n’est pas encore faite.
sewing_trouble-armhole_no_ring_do = Faire d’abord les deux, ou monter la manche à plat par une couture simple.
# Dit quand on recoupe, crante ou dégrade une marge.
sewing_trouble-cut_into_early = la marge de « { $place } » est coupée avant que sa couture soit faite.
sewing_trouble-cut_into_late = la marge de « { $place } » est déjà enfermée, hors d’atteinte des ciseaux.
sewing_trouble-cut_into_late_do = Placer cela avant.
sewing_trouble-clip_first_late = le bord « { $place } » est déjà cousu ; le cranter d’abord ne sert plus à rien.
sewing_trouble-clip_first_late_do = Le mettre avant la première couture à cet endroit, ou cranter le bord cousu : make.clip(...).
sewing_trouble-clip_first_straight = le bord « { $place } » n’a pas à s’écarter : aucune courbe prononcée n’est à suivre.
sewing_trouble-clip_first_straight_do = Ôter ceci, ou nommer la courbe à laquelle un bord droit doit s’ajuster : fit=front.waist.
sewing_trouble-clip_first_loose = le bord « { $place } » n’a pas de piqûre de soutien ; il se déchirerait à partir des crans.
sewing_trouble-clip_first_loose_do = Faire d’abord la piqûre de soutien : make.staystitch(...).
sewing_trouble-clipped_outward_curve = le bord « { $place } » est une courbe sortante : retournée, sa marge crantée ferait encore un bourrelet.
sewing_trouble-clipped_outward_curve_do = Couper plutôt des coins en V : make.notch_curve(...).
sewing_trouble-notched_inward_curve = le bord « { $place } » est une courbe rentrante : sa marge doit s’écarter une fois retournée, et des coins coupés laisseraient des trous.
sewing_trouble-notched_inward_curve_do = La cranter plutôt : make.clip(...).
sewing_trouble-zip_length = la fermeture mesure { $length }, mais son ouverture { $opening }.
sewing_trouble-zip_long_do = Prendre une fermeture plus courte ou une ouverture plus longue.
sewing_trouble-zip_short_do = Prendre une fermeture plus longue ou une ouverture plus courte ; on ne peut laisser en haut plus de { $most }.
sewing_trouble-zip_ends_short = la fermeture est longue de { $length } : son curseur gênerait les derniers points.
sewing_trouble-zip_ends_short_do = Pour cette ouverture de { $opening }, prendre une fermeture d’au moins { $least } ; ce qui dépasse en bas se coupe.
sewing_trouble-fold_open = le bord « { $edge } » est fermé alors que « { $fold } » y est encore à plier.
sewing_trouble-fold_open_do = Le faire d’abord : { $call }.
sewing_trouble-not_pressed = une couture croise le bord « { $edge } » avant qu’il soit repassé.
sewing_trouble-not_pressed_do = Repasser d’abord cette couture : make.press(...), ou dire press=... là où elle se pique.
sewing_trouble-half_sewn = une couture croise le bord « { $edge } » avant que sa dernière piqûre soit faite.
sewing_trouble-half_sewn_do = Terminer d’abord cette couture : make.finish(...).
sewing_trouble-not_left_there = { $place } : repris avant d’être commencé, ou deux fois.
sewing_trouble-not_left_there_do = Faire les piqûres l’une après l’autre, chacune une fois.
sewing_trouble-closed_twice_do = Ôter l’une des deux opérations, ou ne nommer que la partie encore brute, comme front.side.before(front.slit).
# $amount est une longueur, $step le titre d’une étape de couture.
sewing_trouble-closed_twice_sewn = { $amount } du bord « { $edge } » : déjà cousu.
sewing_trouble-closed_twice_sewn_by = { $amount } du bord « { $edge } » : déjà cousu à l’étape « { $step } ».
sewing_trouble-closed_twice_faced = { $amount } du bord « { $edge } » : déjà fini par une parementure.
sewing_trouble-closed_twice_faced_by = { $amount } du bord « { $edge } » : déjà fini par une parementure à l’étape « { $step } ».
sewing_trouble-closed_twice_hemmed = { $amount } du bord « { $edge } » : déjà ourlé.
sewing_trouble-closed_twice_hemmed_by = { $amount } du bord « { $edge } » : déjà ourlé à l’étape « { $step } ».
sewing_trouble-closed_twice_finished = { $amount } du bord « { $edge } » : déjà fini.
sewing_trouble-closed_twice_finished_by = { $amount } du bord « { $edge } » : déjà fini à l’étape « { $step } ».
sewing_trouble-understitched_garment = { $place } est le côté du vêtement ; la sous-piqûre se fait sur la parementure et ne doit pas se voir à l’extérieur.
sewing_trouble-understitched_garment_do = Nommer les bords de la parementure : make.understitch(front_facing.inner, ...).
sewing_trouble-understitched_wide = à { $distance } de la couture, la sous-piqûre ({ $place }) ne prend aucune marge, car les marges font { $wide }.
sewing_trouble-understitched_wide_do = Piquer plus près de la couture, à 2 mm environ.
sewing_trouble-button_on_hole = le bouton est cousu sur { $place }, où se trouve une boutonnière.
sewing_trouble-button_on_hole_do = Nommer la place du bouton, sur l’épaisseur du dessous.
sewing_trouble-folded_otherwise = { $allowance } sont rentrés au fer ({ $edge }) et { $added } ont été ajoutés.
sewing_trouble-folded_otherwise_do = Rentrer ce qui a été ajouté, ou ajouter ce qui est rentré.
sewing_trouble-pockets_and_places = { $number ->
    [one] une poche est posée
   *[other] { $number } poches sont posées
} et { $places ->
    [one] une place est nommée.
   *[other] { $places } places sont nommées.
}
sewing_trouble-pockets_and_places_do = Nommer une place pour chaque poche : un repère d’une pièce symétrique, sans gauche ni droite, vaut pour les deux moitiés.
sewing_trouble-loop_over_opening = il est piqué par-dessus une ouverture ({ $place }) et la ferme.
sewing_trouble-loop_over_opening_do = Le placer à côté de l’ouverture ou de l’autre côté.
sewing_trouble-facing_apart = { $place } et { $other } sont finis séparément, avant que les parementures soient assemblées.
sewing_trouble-facing_apart_do = Assemblées d’abord, les extrémités de leur couture se trouvent sous la finition ; on peut aussi laisser ainsi.
sewing_trouble-try_on_refused = l’un de ses deux tracés ne peut être dessiné : { $why }
sewing_trouble-try_on_refused_do = Changer les valeurs de l’essayage, ou celles de la leçon.
sewing_trouble-tried_on_nothing = rien ne change dans le tracé à cet essayage.
sewing_trouble-tried_on_nothing_do = Nommer la valeur changée avec sa mesure avant et après, ou l’ôter.
sewing_trouble-tried_on_elsewhere = rien ne change à cet essayage : la leçon est réglée sur d’autres valeurs que celles avec lesquelles il a été fait.
sewing_trouble-tried_on_elsewhere_do = Régler la valeur sur celle d’avant ou d’après pour voir ce qui a changé.
sewing_trouble-spot_at = du côté de « { $edge } »
sewing_trouble-spot_from = à { $far } de « { $edge } »
sewing_trouble-cloth_beyond = la nouvelle ligne de couture ({ $edge }) se trouve à { $amount } au-delà du bord du tissu, { $spot }.
sewing_trouble-cloth_beyond_do = Couper ce bord avec un surplus d’essayage, allow_to_fit(...), élargir moins, ou recouper la pièce.
sewing_trouble-cloth_narrow = il ne reste que { $left } de tissu à l’extérieur de la nouvelle ligne de couture ({ $edge }), { $spot } ; sa couture en prend { $need }.
sewing_trouble-cloth_narrow_do = Couper ce bord avec un surplus d’essayage, allow_to_fit(...), ou élargir moins.
sewing_trouble-cloth_narrow_plain = il ne reste que { $left } des { $need } de marge à l’extérieur de la nouvelle ligne de couture ({ $edge }), { $spot }.
sewing_trouble-cloth_narrow_plain_do = Une couture simple se coud avec cela ; surfiler les bords avant qu’ils s’effilochent.
sewing_trouble-strip_cut_short = cette bande est coupée { $amount } trop petite pour ce qu’elle doit être désormais : { $strip }.
sewing_trouble-strip_cut_short_do = La couper plus grande d’emblée, ou la recouper.
sewing_trouble-old_row_left_in = la piqûre de ce bord reste en place, jusqu’à { $amount } à l’extérieur de la nouvelle ligne : { $edge }.
sewing_trouble-old_row_left_out = la piqûre de ce bord reste en place, jusqu’à { $amount } à l’intérieur de la nouvelle ligne, où elle se voit et tire : { $edge }.
sewing_trouble-old_row_left_do = Ôter ce bord de leave=..., pour que la piqûre soit décousue.
sewing_trouble-no_extra_to_trim = ce bord n’a pas de surplus d’essayage : { $place }.
sewing_trouble-no_extra_to_trim_do = Lui en donner à une étape de tracé, allow_to_fit(...), ou ne pas le nommer ici.
sewing_trouble-trimmed_to_fit_twice = le surplus d’essayage est déjà recoupé ici : { $place }.
sewing_trouble-trimmed_to_fit_late = le surplus d’essayage est déjà enfermé ou replié, hors de portée des ciseaux : { $place }.
sewing_trouble-trimmed_to_fit_late_do = Le recouper avant.
sewing_trouble-part_of_edge = { $place } n’est qu’une partie, alors que tout le bord se coud ici.
sewing_trouble-part_of_edge_do = Nommer le bord entier.
