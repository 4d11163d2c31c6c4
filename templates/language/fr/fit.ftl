# ---- fit changes: what they are called

fit-lengthen_above_waist = Allonger au-dessus de la taille
fit-lengthen_below_waist = Allonger au-dessous de la taille
fit-lengthen_above_hip = Allonger au-dessus des hanches
fit-lengthen_above_hem = Allonger au-dessus de l’ourlet
fit-lengthen_above_knee = Allonger au-dessus du genou
fit-lengthen_below_knee = Allonger au-dessous du genou
fit-lengthen_above_elbow = Allonger au-dessus du coude
fit-lengthen_below_elbow = Allonger au-dessous du coude
fit-shorten_above_waist = Raccourcir au-dessus de la taille
fit-shorten_below_waist = Raccourcir au-dessous de la taille
fit-shorten_above_hip = Raccourcir au-dessus des hanches
fit-shorten_above_hem = Raccourcir au-dessus de l’ourlet
fit-shorten_above_knee = Raccourcir au-dessus du genou
fit-shorten_below_knee = Raccourcir au-dessous du genou
fit-shorten_above_elbow = Raccourcir au-dessus du coude
fit-shorten_below_elbow = Raccourcir au-dessous du coude
fit-long_rise = Montant long
fit-short_rise = Montant court
fit-full_bust = Poitrine forte
fit-small_bust = Petite poitrine
fit-full_seat = Fessier rond
fit-flat_seat = Fessier plat
fit-sway_back = Dos cambré
fit-round_back = Dos rond
fit-broad_shoulder = Épaule large
fit-narrow_shoulder = Épaule étroite
fit-sloping_shoulder = Épaule tombante
fit-square_shoulder = Épaule carrée
fit-forward_shoulder = Épaule en avant
fit-full_upper_arm = Bras fort
fit-let_out_sides = Élargir les côtés
fit-take_in_sides = Reprendre les côtés
fit-lower_underarm = Baisser l’emmanchure
fit-raise_underarm = Remonter l’emmanchure

# ---- how each is done by hand, $amount being how much

fit-lengthen_text = Couper en travers, sur leur ligne à allonger, toutes les pièces cousues ensemble ici et écarter la coupe de { $amount }. Le droit-fil reste sur une ligne. Tracer la pliure et les coutures droites à la règle d’un bout à l’autre, les courbes en douceur par-dessus le vide.
fit-shorten_text = Plier en travers, sur leur ligne à raccourcir, toutes les pièces cousues ensemble ici ; le pli prend { $amount } en tout. Le droit-fil reste sur une ligne. Tracer la pliure et les coutures droites à la règle d’un bout à l’autre, les courbes en douceur par-dessus le pli.
fit-long_rise_text = Couper devant et dos en travers entre taille et hanches, sur leur ligne à allonger, et écarter les deux de { $amount }. Tracer en douceur la couture d’enfourchure et le côté par-dessus le vide.
fit-short_rise_text = Plier devant et dos en travers entre taille et hanches, sur leur ligne à raccourcir ; le pli prend { $amount }. Tracer en douceur la couture d’enfourchure et le côté par-dessus le pli.
fit-full_bust_text = Fendre le devant du bord inférieur à la pointe de poitrine, puis jusqu’à l’emmanchure (jusqu’au milieu de l’épaule s’il n’y a pas de pince de poitrine). Ne pas couper tout à fait jusque-là : c’est la charnière. S’il y a une pince de poitrine, la fendre jusqu’à la pointe. Ouvrir la fente à la pointe de poitrine de la moitié de { $amount }, et la garder aussi large au-dessous ; la pince de poitrine s’élargit d’elle-même. Couper le milieu en travers sous la poitrine et le descendre jusqu’à ce que les bords inférieurs soient à niveau. Retracer les pinces vers la pointe de poitrine.
fit-small_bust_text = Fendre le devant du bord inférieur à la pointe de poitrine, puis jusqu’à l’emmanchure (jusqu’au milieu de l’épaule s’il n’y a pas de pince de poitrine), et la pince de poitrine s’il y en a une. Superposer la fente à la pointe de poitrine de la moitié de { $amount }, et d’autant au-dessous ; la pince de poitrine se resserre d’elle-même. Couper le milieu en travers sous la poitrine et le superposer jusqu’à ce que les bords inférieurs soient à niveau. Retracer les pinces vers la pointe de poitrine.
fit-full_seat_text = Fendre le dos du milieu vers le côté, au-dessus de l’endroit le plus fort, et l’ouvrir au milieu de { $amount } ; le côté est la charnière. Tracer le milieu en douceur ou, à la pliure, tout droit ; ce que la taille gagne va dans la pince la plus proche du milieu.
fit-flat_seat_text = Plier un coin dans le dos, au-dessus de l’endroit le plus fort : { $amount } au milieu, rien au côté. Tracer le milieu en douceur ou, à la pliure, tout droit ; ce que la taille perd se prend sur la pince la plus proche du milieu.
fit-sway_back_text = Retirer { $amount } au dos, au milieu de la taille, en mourant au côté : tracer là le bord de taille vers l’intérieur de la pièce ou, si la pièce continue au-dessous, plier le coin ; le milieu reste droit. Les pinces gardent leur largeur.
fit-round_back_text = Fendre le dos du milieu vers l’emmanchure, entre les omoplates, et l’ouvrir au milieu de { $amount } ; l’emmanchure est la charnière. Tracer le milieu tout droit vers le haut. Ce que l’encolure gagne se prend dans une pince d’encolure ou se résorbe.
fit-broad_shoulder_text = Au devant comme au dos, fendre de l’épaule à l’emmanchure et ouvrir à l’épaule de { $amount } ; l’emmanchure est la charnière et garde sa longueur. Tracer l’épaule droite de l’encolure à sa nouvelle pointe.
fit-narrow_shoulder_text = Au devant comme au dos, fendre de l’épaule à l’emmanchure et superposer à l’épaule de { $amount } ; l’emmanchure est la charnière et garde sa longueur. Tracer l’épaule droite de l’encolure à sa nouvelle pointe.
fit-sloping_shoulder_text = Au devant comme au dos, descendre l’emmanchure telle quelle de { $amount }, et tracer l’épaule de l’encolure à sa nouvelle pointe. Le dessous de bras descend d’autant.
fit-sloping_shoulder_sleeve = La manche va toujours.
fit-square_shoulder_text = Au devant comme au dos, remonter l’emmanchure telle quelle de { $amount }, et tracer l’épaule de l’encolure à sa nouvelle pointe. Le dessous de bras remonte d’autant.
fit-square_shoulder_sleeve = La manche va toujours.
fit-forward_shoulder_text = Retirer { $amount } au devant, à la pointe de l’épaule, en mourant à l’encolure, et en ajouter autant au dos.
fit-forward_shoulder_sleeve = Sur la manche, avancer d’autant le repère de la couture d’épaule.
fit-full_upper_arm_text = Fendre la manche en long au milieu et en travers au bras. L’écarter au bras de { $amount } en tout ; le poignet, le haut de la tête et les deux dessous de bras sont des charnières. Tête de manche, coutures de manche et poignet gardent leur longueur ; la tête devient plus basse.
fit-let_out_sides_text = Tracer les côtés du devant et du dos plus au dehors, chacun d’un quart de { $amount }, sur toute leur longueur.
fit-let_out_sides_sleeve = Élargir la manche à ses coutures jusqu’à ce que sa tête aille de nouveau à l’emmanchure.
fit-take_in_sides_text = Tracer les côtés du devant et du dos plus au dedans, chacun d’un quart de { $amount }, sur toute leur longueur.
fit-take_in_sides_sleeve = Rétrécir la manche à ses coutures jusqu’à ce que sa tête aille de nouveau à l’emmanchure.
fit-lower_underarm_text = Marquer le dessous de bras de { $amount } plus bas sur les côtés du devant et du dos et tracer l’emmanchure jusque-là.
fit-lower_underarm_sleeve = Descendre les dessous de bras de la manche le long de ses coutures jusqu’à ce que sa tête aille de nouveau à l’emmanchure.
fit-raise_underarm_text = Marquer le dessous de bras de { $amount } plus haut sur les côtés du devant et du dos et tracer l’emmanchure jusque-là.
fit-raise_underarm_sleeve = Remonter les dessous de bras de la manche le long de ses coutures jusqu’à ce que sa tête aille de nouveau à l’emmanchure ; si la tête est basse, les rentrer aussi.

# ---- and what stands beside them

fit-the_difference = la différence
fit-part_1 = { $name }
fit-part_2 = { $name }, la moitié de chaque côté
fit-part_4 = { $name }, un quart à chaque couture
fit-lacking = { $piece } n’a pas les bords et les lignes que demande cette retouche.
fit-lacking_do = Choisir une autre retouche, ou la placer après l’étape qui les trace.
fit-too_short = { $piece } ne peut pas être raccourci ici de { $amount }.
fit-too_much = { $amount }, c’est trop pour { $piece }.
fit-dart = { $dart } ({ $piece }) ne peut pas prendre autant.
fit-bust_far = le devant ne peut pas être changé de { $amount } à la poitrine.
fit-arm_far = la manche ne peut pas être élargie de { $amount } au bras.
fit-no_piece = il n’y a ni devant ni dos où faire cette retouche.
fit-no_level = aucune pièce n’a les deux niveaux du corps entre lesquels on couperait.
fit-too_far = ici, cela ne va pas au-delà de { $most } ; on demande { $amount }.
fit-too_far_do = Mettre { $most } ou moins et ajuster le reste à l’essayage.
fit-no_sleeve = il n’y a pas de manche montée.

fit-picture = { $title } : { $pieces }, avant et après.
