# Phrases de kit/sewing/operations/bindings.py.

bind-trim = Couper la marge de { $trim } le long { DU($edge) } : la bande de biais prend sa place.
bind-fold = Plier { LE($strip) } en deux dans la longueur et repasser, rabattre les deux grands côtés sur la pliure centrale, repasser et déplier.
bind-fold_double = Plier { LE($strip) } en deux dans la longueur, envers contre envers, repasser et laisser plié.
bind-pin = Épingler { LE($strip) } sur l’endroit { DU($edge) }, bords bruts ensemble. Soutenir dans les courbes sortantes, étirer un peu dans les courbes rentrantes.
bind-ends_ring = Là où ses extrémités se rejoignent, les assembler à plat avant de piquer la dernière partie, ou replier l’une de { $turned } et y glisser l’autre.
bind-ends_turned = Rentrer { $turned } à chaque extrémité.
bind-ends_caught = Laisser ses extrémités filer dans la marge : une couture suivante les prendra.
bind-sew = Piquer à { $finished } du bord brut.
bind-wrap = Rabattre la bande sur l’envers par-dessus le bord et rentrer son bord brut, de façon que le pli couvre tout juste les points.
bind-wrap_double = Rabattre le bord plié sur l’envers, de façon qu’il couvre tout juste les points.
bind-last_machine = Sur l’endroit, piquer dans le sillon de la couture en prenant le pli de dessous.
bind-last_hand = Coudre le pli sur les points de la couture, à la main, au point coulé.
bind-ties_out = Rabattre { LE($strip) } vers l’extérieur sur la bande de biais et l’y fixer par un petit rectangle piqué avec une croix.
bind-why = Une bande coupée dans le biais épouse une courbe sans faire de plis ; coupée quatre fois plus large que finie, elle couvre le bord des deux côtés, ses propres bords enfermés.
bind-why_double = Pliée en deux, elle se coupe six fois plus large que finie ; elle s’use moins et se travaille mieux en tissu fin, car on pique un pli et il n’y a rien à rentrer.

bias_facing-fold = Replier { $allowance } sur l’envers le long d’un grand côté { DU($strip) } et repasser.
bias_facing-pin = Épingler l’autre grand côté sur { LE($edge) }, endroit contre endroit.
bias_facing-sew = Piquer à { $allowance } du bord.
bias_facing-trim = Recouper et cranter les marges.
bias_facing-turn = Retourner toute la bande vers l’intérieur et repasser, la couture juste au bord : sa largeur y est de { $finished }.
bias_facing-stitch = Piquer au ras du pli, ou le coudre à la main au point coulé.
bias_facing-why = Retournée entièrement à l’intérieur, la bande forme une parementure de largeur égale qui ne demande pas de pièce de patron.
