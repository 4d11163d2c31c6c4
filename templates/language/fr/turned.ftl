# Phrases de kit/sewing/operations/turned.py.

seam_to_turn-sew = Piquer à { $allowance } du bord. Aux angles, s’arrêter aiguille plantée, lever le pied et pivoter.
seam_to_turn-sew_smooth = Piquer tout autour, à { $allowance } du bord.
seam_to_turn-sew_gap = Piquer à { $allowance } du bord, en laissant pour retourner une ouverture de { $size } le long { DU($edge) }, à partir { DU($from) }. Faire un point d’arrêt aux deux bouts de l’ouverture.
seam_to_turn-extra = Continuer la piqûre après l’angle sous la croisure, jusqu’à l’endroit où commence le vêtement. Y cranter la marge jusqu’aux points.
seam_to_turn-trim = Recouper les marges, l’une plus étroite que l’autre, et couper les angles au ras des points.
seam_to_turn-trim_smooth = Recouper les marges, l’une plus étroite que l’autre.
seam_to_turn-clip = Cranter les marges des courbes rentrantes, presque jusqu’aux points, tous les { $spacing } environ là où la courbe est la plus forte.
seam_to_turn-notch = Couper des coins en V dans les marges des courbes sortantes, presque jusqu’aux points, tous les { $spacing } environ là où la courbe est la plus forte.
seam_to_turn-why = Une fois retournés, les deux bords bruts sont entre les épaisseurs. Peu de tissu dans les angles donne des angles vifs, et des épaisseurs recoupées à des largeurs différentes ne marquent pas.

turn_out-turn = Retourner { LE($pieces) } sur l’endroit par l’ouverture { DU($edge) } et repousser doucement les angles.
turn_out-press = Rouler la couture juste au bord et repasser.
turn_out-why = Ce qu’on retourne doit garder un bord ouvert ; ce bord se ferme en dernier.

slip_stitch-turn = Rentrer de { $allowance } chaque bord de l’ouverture { DU($edge) }, repasser et épingler pli contre pli.
slip_stitch-sew = Coudre à la main au point coulé : quelques millimètres dans un pli, tout droit dans l’autre, et ainsi de suite.
slip_stitch-why = Le fil court à l’intérieur des plis et ne se voit d’aucun côté.
