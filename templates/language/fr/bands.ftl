# Phrases de kit/sewing/operations/bands.py.

seam_band-why = La bande extérieure est celle qui se voit ; elle est entoilée pour que ni les coutures ni l’usure ne marquent.

band_ends-fold = Plier en deux dans la longueur, endroit contre endroit, bord à bord : { $pieces }.
band_ends-sew = Piquer en travers ({ $edge }), à { $allowance } du bord coupé, à travers les deux épaisseurs, avec un point d’arrêt au pli.
band_ends-extra = Du côté de la croisure, continuer la piqûre après l’angle, à travers les deux longs bords, jusqu’à l’endroit où commence le vêtement. Y cranter la marge jusqu’aux points.
band_ends-trim = Recouper les marges et couper les angles au ras des points.
band_ends-why = Les extrémités sont piquées par l’intérieur puis retournées, pour qu’aucun bord brut ne reste là où la bande se ferme.

set_band-pin = Épingler { $band } sur { $edge }, endroit contre endroit.
set_band-match = Faire coïncider milieux, coutures et crans ; les extrémités de la bande ({ $band }) arrivent exactement aux extrémités du bord.
set_band-ends_beyond = Faire coïncider milieux, coutures et crans ; une extrémité de la bande ({ $band }) dépasse le bord de { $beyond }.
set_band-ease = Le bord est volontairement plus long de { $ease } en tout : répartir cet embu régulièrement et épingler.
set_band-sew = Piquer à { $allowance } du bord.
set_band-trim = Recouper les marges, celle de la bande ({ $band }) plus étroite, et cranter les courbes.
set_band-press = Repasser les deux marges vers l’intérieur de la bande ({ $band }).
set_band-why = Les marges remplissent la bande et y sont enfermées quand on la ferme ; elles ne reposent jamais sur le vêtement, où elles marqueraient.

close_band-turn = Replier la marge de { $allowance } sur l’envers et repasser : { $edge }.
close_band-pin = Poser le pli par-dessus la couture, juste au-delà des points, et épingler ou bâtir.
close_band-edgestitch = Surpiquer au ras sur l’endroit, à travers toutes les épaisseurs, en prenant le pli de dessous.
close_band-groove = Sur l’endroit, piquer dans le sillon de la couture en prenant le pli de dessous.
close_band-hand = Coudre le pli sur les points de la couture, à la main, au point coulé.
close_band-why = Posé un rien au-delà de la couture, le pli est sûrement pris par la piqûre faite de l’autre côté.
