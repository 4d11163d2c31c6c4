# Phrases de kit/sewing/operations/try_ons.py.

try_on-wear = Essayer, sur l’envers ou sur l’endroit, avec les chaussures et les sous-vêtements qui se porteront avec.
try_on-mark = Marquer avec des épingles ou à la craie : { $places }.
try_on-note = { $note }
try_on-found = À l’essayage du premier vêtement, voici ce qui est apparu : { $note } Le patron est déjà corrigé.
try_on-look = Vérifier ce qui est apparu à l’essayage du premier vêtement : { $note }
try_on-changed = { $name } : { $before } jusqu’ici, { $after } désormais.
try_on-changed_share = { $name } : { $before } % jusqu’ici, { $after } % désormais.
try_on-changed_count = { $name } : { $before } jusqu’ici, { $after } désormais.

try_on-line_all_along_in = Nouvelle ligne de couture ({ $place }) : à { $size } à l’intérieur de l’ancienne, sur toute la longueur.
try_on-line_all_along_out = Nouvelle ligne de couture ({ $place }) : à { $size } à l’extérieur de l’ancienne, sur toute la longueur.
try_on-line_to_nothing_in = Nouvelle ligne de couture ({ $place }) : rentrée de { $size } à ce bord : { $at } ; elle finit à rien à celui-ci : { $to }.
try_on-line_to_nothing_out = Nouvelle ligne de couture ({ $place }) : sortie de { $size } à ce bord : { $at } ; elle finit à rien à celui-ci : { $to }.
try_on-line_early_in = Nouvelle ligne de couture ({ $place }) : rentrée de { $size } à ce bord : { $at } ; elle finit à rien { $far } plus loin.
try_on-line_early_out = Nouvelle ligne de couture ({ $place }) : sortie de { $size } à ce bord : { $at } ; elle finit à rien { $far } plus loin.
try_on-line_unequal_in = Nouvelle ligne de couture ({ $place }) : rentrée de { $size } à ce bord : { $at } ; de { $other } à celui-ci : { $to }.
try_on-line_unequal_out = Nouvelle ligne de couture ({ $place }) : sortie de { $size } à ce bord : { $at } ; de { $other } à celui-ci : { $to }.
try_on-line_middle_in = Nouvelle ligne de couture ({ $place }) : elle rentre le plus, de { $size }, à { $far } de ce bord : { $at } ; vers les deux bouts elle rejoint peu à peu l’ancienne.
try_on-line_middle_out = Nouvelle ligne de couture ({ $place }) : elle sort le plus, de { $size }, à { $far } de ce bord : { $at } ; vers les deux bouts elle rejoint peu à peu l’ancienne.
try_on-line_crossing_in_out = Nouvelle ligne de couture ({ $place }) : elle croise l’ancienne. À partir de ce bord : { $at }, elle rentre jusqu’à { $size }, puis sort jusqu’à { $other }.
try_on-line_crossing_out_in = Nouvelle ligne de couture ({ $place }) : elle croise l’ancienne. À partir de ce bord : { $at }, elle sort jusqu’à { $size }, puis rentre jusqu’à { $other }.

try_on-unpick = Découdre là où les deux lignes s’écartent, puis recoudre de même sur la nouvelle : { $place }.
try_on-open = Ouvrir à côté autant qu’il le faut et refermer quand la nouvelle ligne est cousue : { $place }.
try_on-basted = Le bâti suit l’ancienne ligne ; le retirer et bâtir sur la nouvelle : { $place }.
try_on-trim = Recouper à { $allowance } à l’extérieur de la nouvelle ligne : { $place }.
try_on-trim_line = Recouper sur la nouvelle ligne : { $place }.
try_on-left = À l’extérieur de la nouvelle ligne ({ $place }), il ne reste que { $left } de marge à ce bord : { $at }.
try_on-left_far = À l’extérieur de la nouvelle ligne ({ $place }), il ne reste que { $left } de marge à { $far } de ce bord : { $at }.
try_on-redrawn = { $piece } : ses bords sont maintenant autres. Poser la nouvelle pièce de patron sur le tissu et reporter ses lignes.
try_on-marks = { $piece } : marquer de nouveau : { $marks }.
try_on-folds = { $piece } : marquer de nouveau : { $folds }.
try_on-folds_unpick = { $piece } : découdre, marquer et recoudre : { $folds }.
try_on-fresh = { $piece } : couper cette pièce maintenant.
try_on-gone = { $piece } : cette pièce ne sert plus.
try_on-strip_longer = { $strip } : { $size } de plus en longueur désormais.
try_on-strip_shorter = { $strip } : couper { $size } sur la longueur.
try_on-strip_wider = { $strip } : { $size } de plus en largeur désormais.
try_on-strip_narrower = { $strip } : couper { $size } sur la largeur.

trim_to_fit-cut = Recouper le surplus d’essayage ({ $edge }) : il reste { $allowance } de marge à l’extérieur de la ligne de couture.
trim_to_fit-why = Ce surplus était coupé pour l’essayage ; une fois le vêtement ajusté, il ne ferait qu’épaissir la couture.
