# Phrases de kit/sewing/operations/facing_edges.py.

finish_facing-overcast = { START($finish) } { LE($edge) }.
finish_facing-guide = Faire une piqûre de guide à { $turn } du bord coupé { DU($edge) }. Cranter les courbes jusqu’à elle.
finish_facing-fold = Replier le bord sur l’envers le long de la piqûre de guide et repasser.
finish_facing-sew = Piquer au ras du pli, dans le bord replié seulement.
finish_facing-why = Le bord libre d’une parementure reste à plat à l’intérieur ; il suffit qu’il ne s’effiloche pas : un repli à cet endroit marquerait à l’extérieur.
finish_facing-why_turned = Un bord replié est net en tissu fin ; la piqûre de guide donne la ligne du pli et empêche la courbe de s’étirer.
