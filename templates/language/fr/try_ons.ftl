# Phrases de kit/sewing/operations/try_ons.py.

try_on-wear = Essayer, sur l’envers ou sur l’endroit, avec les chaussures et les sous-vêtements que l’on portera avec.
try_on-wear_head = Essayer sur la tête, sur l’envers ou sur l’endroit.
try_on-mark = Marquer { LE($places) } avec des épingles ou à la craie.
try_on-note = { $note }
try_on-found = À l’essayage du premier vêtement, voici ce qui est apparu : { $note } Le patron est déjà corrigé.
try_on-look = Vérifier ce qui est apparu à l’essayage du premier vêtement : { $note }
try_on-changed = { $name } : { $before } jusqu’ici, { $after } désormais.
try_on-changed_share = { $name } : { $before } % jusqu’ici, { $after } % désormais.
try_on-changed_count = { $name } : { $before } jusqu’ici, { $after } désormais.

try_on-line_all_along_in = La nouvelle ligne { DU($place) } passe { $size } vers l’intérieur sur toute la longueur.
try_on-line_all_along_out = La nouvelle ligne { DU($place) } passe { $size } vers l’extérieur sur toute la longueur.
try_on-line_to_nothing_in = La nouvelle ligne { DU($place) } passe { $size } vers l’intérieur { AU($at) } et meurt à rien { AU($to) }.
try_on-line_to_nothing_out = La nouvelle ligne { DU($place) } passe { $size } vers l’extérieur { AU($at) } et meurt à rien { AU($to) }.
try_on-line_early_in = La nouvelle ligne { DU($place) } passe { $size } vers l’intérieur { AU($at) } et meurt à rien { $far } plus loin.
try_on-line_early_out = La nouvelle ligne { DU($place) } passe { $size } vers l’extérieur { AU($at) } et meurt à rien { $far } plus loin.
try_on-line_unequal_in = La nouvelle ligne { DU($place) } passe vers l’intérieur, de { $size } { AU($at) } et de { $other } { AU($to) }.
try_on-line_unequal_out = La nouvelle ligne { DU($place) } passe vers l’extérieur, de { $size } { AU($at) } et de { $other } { AU($to) }.
try_on-line_middle_in = La nouvelle ligne { DU($place) } passe le plus vers l’intérieur, de { $size }, à { $far } { DU($at) }, et se rapproche de l’ancienne vers les deux bouts.
try_on-line_middle_out = La nouvelle ligne { DU($place) } passe le plus vers l’extérieur, de { $size }, à { $far } { DU($at) }, et se rapproche de l’ancienne vers les deux bouts.
try_on-line_crossing_in_out = La nouvelle ligne { DU($place) } croise l’ancienne ; à partir { DU($at) } elle passe jusqu’à { $size } vers l’intérieur, puis jusqu’à { $other } vers l’extérieur.
try_on-line_crossing_out_in = La nouvelle ligne { DU($place) } croise l’ancienne ; à partir { DU($at) } elle passe jusqu’à { $size } vers l’extérieur, puis jusqu’à { $other } vers l’intérieur.

try_on-unpick = Découdre { LE($place) } là où les deux lignes s’écartent, puis recoudre de même sur la nouvelle.
try_on-open = Ouvrir { LE($place) } à côté autant qu’il le faut et refermer quand la nouvelle ligne est cousue.
try_on-basted = Le bâti { DU($place) } suit l’ancienne ligne ; le retirer et bâtir sur la nouvelle.
try_on-trim = Recouper { LE($place) } à { $allowance } à l’extérieur de la nouvelle ligne.
try_on-trim_line = Recouper { LE($place) } sur la nouvelle ligne.
try_on-left = Il ne reste que { $left } de marge au-delà de la nouvelle ligne { DU($place) }, { AU($at) }.
try_on-left_far = Il ne reste que { $left } de marge au-delà de la nouvelle ligne { DU($place) }, à { $far } { DU($at) }.
try_on-redrawn = { $piece } : ses bords sont maintenant autres. Poser la nouvelle pièce de patron sur le tissu et reporter ses lignes.
try_on-marks = { $piece } : marquer de nouveau { LE($marks) }.
try_on-opening_moved = L’ouverture { DU($place) } tient à un repère qui s’est déplacé ; elle va maintenant { $stretch }. Fermer la couture là où était l’ancienne, la découdre le long de la nouvelle, y rentrer et piquer les bords comme avant.
try_on-row_moved = La piqûre { DU($place) } tient à un repère qui s’est déplacé ; elle se termine maintenant { $spot }. Découdre ce qui dépasse, ou continuer la piqûre jusque-là.
try_on-folds = { $piece } : marquer de nouveau { LE($folds) }.
try_on-folds_unpick = { $piece } : découdre { LE($folds) }, marquer de nouveau et recoudre.
try_on-fresh = { $piece } : couper cette pièce maintenant.
try_on-gone = { $piece } : cette pièce ne sert plus.
try_on-strip_longer = { $strip } : { $size } de plus en longueur désormais.
try_on-strip_shorter = { $strip } : couper { $size } sur la longueur.
try_on-strip_wider = { $strip } : { $size } de plus en largeur désormais.
try_on-strip_narrower = { $strip } : couper { $size } sur la largeur.

trim_to_fit-cut = Recouper le surplus d’essayage { DU($edge) } ; il reste { $allowance } de marge à l’extérieur de la ligne de couture.
trim_to_fit-why = Ce surplus était coupé pour l’essayage ; une fois le vêtement ajusté, il ne ferait qu’épaissir la couture.
