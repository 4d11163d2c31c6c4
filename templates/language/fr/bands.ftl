# Phrases de kit/sewing/operations/bands.py.

seam_band-catch = Poser { LE($caught) } sur l’endroit, le long { DU($on) }, bords bruts et milieux alignés, et bâtir : la couture le prend entre les deux épaisseurs.
seam_band-why = La ceinture extérieure est celle qui se voit ; elle est entoilée pour que ni les coutures ni l’usure ne marquent.

band_ends-fold = Plier { LE($pieces) } en deux dans la longueur, endroit contre endroit, bord à bord.
band_ends-fold_marked = Plier { LE($pieces) } dans la longueur sur la ligne marquée, endroit contre endroit ; un grand bord dépasse l’autre.
band_ends-sew = Piquer en travers { AU($edge) }, à { $allowance } du bord coupé, à travers les deux épaisseurs, avec un point d’arrêt au pli.
band_ends-sew_set = Piquer en travers { AU($edge) }, à { $allowance } du bord coupé, du pli jusqu’à la couture de montage, à travers les deux épaisseurs de la pièce montée seulement. Écarter le vêtement et faire un point d’arrêt aux deux bouts.
band_ends-extra = Du côté de la croisure, continuer la piqûre après l’angle, à travers les deux longs bords, jusqu’à l’endroit où commence le vêtement. Y cranter la marge jusqu’aux points.
band_ends-trim = Recouper les marges et couper les angles au ras des points.
band_ends-why = Les extrémités sont piquées par l’intérieur puis retournées, pour qu’aucun bord brut ne reste à la fermeture.

set_band-staystitch = Faire une piqûre de soutien le long { DU($edge) }, à { $row } à l’extérieur de la ligne de couture, et cranter la marge jusqu’à elle, tous les { $spacing } environ là où la courbe est la plus forte : la marge s’écarte ainsi et se pose droit le long { DU($band) }.
set_band-clip_curve = Cranter la marge { DU($edge) } jusqu’à la piqûre de soutien, tous les { $spacing } environ là où la courbe est la plus forte : la marge s’écarte ainsi et se pose droit le long { DU($band) }.
set_band-clip_band = Cranter la marge { DU($straight) } presque jusqu’à la ligne de couture, tous les { $spacing } environ là où la courbe { DU($edge) } est la plus forte, pour que la marge s’écarte autour d’elle.
set_band-catch = Poser { LE($caught) } à plat sur l’envers, bords bruts alignés : ce bord sera pris dans la couture.
set_band-pin = Épingler { LE($band) } sur { LE($edge) }, endroit contre endroit.
set_band-match = Faire coïncider milieux, coutures et crans ; les extrémités { DU($band) } arrivent exactement aux extrémités du bord.
set_band-match_raw = Faire coïncider milieux, coutures et crans ; les lignes de couture des extrémités { DU($band) } arrivent exactement aux extrémités finies du bord, les marges dépassent.
set_band-match_ring = Les deux sont fermés en anneau : épingler d’abord la couture { DU($band) } sur une couture du bord, puis les milieux et les crans, puis ce qui reste entre eux.
set_band-ends_beyond = Faire coïncider milieux, coutures et crans ; { LE($band) } dépasse le bord de { $beyond } { AU($end) }.
set_band-ends_beyond_raw = Faire coïncider milieux, coutures et crans ; { LE($band) } dépasse le bord de { $beyond } et de sa marge { AU($end) }, de sa seule marge à l’autre bout.
set_band-ease = Le bord est volontairement plus long de { $ease } en tout : répartir cet embu régulièrement et épingler.
set_band-pull = Le bord est plus long de { $ease } en tout : épingler les deux ensemble aux quarts et, en cousant, étirer { LE($band) } jusqu’à la longueur du bord, jamais le bord lui-même.
set_band-sew = Piquer à { $allowance } du bord.
set_band-trim = Dégrader les marges : recouper celle du vêtement plus court que celle { DU($band) }.
set_band-clip = Cranter les marges dans les courbes, presque jusqu’aux points.
set_band-press = Repasser { LE($band) } en l’écartant du vêtement, les deux marges vers l’intérieur.
set_band-why = Les marges remplissent la pièce montée et y sont enfermées quand on la ferme ; elles ne reposent jamais sur le vêtement, où elles marqueraient.

close_band-turn = Replier { LE($edge) } de { $turned } sur l’envers et repasser.
close_band-pin = Poser le pli par-dessus la couture, juste au-delà des points, et épingler ou bâtir.
close_band-edgestitch = Surpiquer au ras du bord sur l’endroit, à travers toutes les épaisseurs, en prenant le pli de dessous.
close_band-groove = Sur l’endroit, piquer dans le sillon de la couture en prenant le pli de dessous.
close_band-hand = Coudre le pli sur les points de la couture, à la main, au point coulé.
close_band-seams = À chaque couture rencontrée, fixer le pli aux marges de dessous par quelques points à la main qui ne traversent pas jusqu’à l’endroit ; entre elles il reste libre.
close_band-why = Posé un rien au-delà de la couture, le pli est sûrement pris par la piqûre faite de l’autre côté.
