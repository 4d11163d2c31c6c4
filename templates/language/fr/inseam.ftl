# Phrases de kit/sewing/operations/inseam.py.

pocket_bag-pin = Épingler { LE($bag) } sur { LE($garment) }, endroit contre endroit, aux repères de poche { DU($edge) }.
pocket_bag-sew = Piquer à { $allowance } du bord, d’un repère à l’autre, avec un point d’arrêt à chacun.
pocket_bag-finish = { START($finish) } les bords bruts ensemble.
pocket_bag-press = Rabattre le sac vers l’extérieur, loin du vêtement, et repasser les marges vers le sac.
pocket_bag-why = Repassé et piqué loin du vêtement, le sac roule vers l’intérieur et ne peut pas se voir à l’ouverture.

pocket_seam-sew = Piquer à { $allowance } du bord jusqu’au repère supérieur de la poche, { $from } ; laisser l’aiguille plantée.
pocket_seam-round = Pivoter et piquer tout autour { DU($bags) }, à { $bag_allowance } du bord, jusqu’au repère inférieur. L’ouverture de la poche reste libre sur { $size }.
pocket_seam-on = Pivoter de nouveau et piquer la couture jusqu’au bout.
pocket_seam-finish = { START($finish) } les bords bruts de la couture et des fonds de poche.
pocket_seam-clip = Cranter la marge derrière la couture aux deux bouts de l’ouverture, pour pouvoir repasser la couture.
pocket_seam-press = Repasser la poche vers le devant.
pocket_seam-why = Piqués d’une traite avec un pivot à chaque repère, la couture et le sac n’ont pas de point faible à leur rencontre ; l’ouverture reste dans la ligne de la couture.
