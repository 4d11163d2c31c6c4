# Phrases de kit/sewing/operations/pockets.py.

pocket_hem-turn = Remplier { LE($edge) } de { $first } sur l’envers et repasser.
pocket_hem-fold = Rabattre { $second } sur l’endroit le long de la ligne d’ourlet ; les deux replis prennent { $total }.
pocket_hem-ends = Piquer en travers des deux bouts de l’ourlet, à { $ends } des bords latéraux. Dégarnir les angles.
pocket_hem-out = Retourner l’ourlet sur l’envers, repousser les angles et repasser.
pocket_hem-sew = Piquer l’ourlet près de son pli intérieur.
pocket_hem-why = Piqués d’abord sur l’endroit puis retournés, les bouts de l’ourlet restent à l’intérieur et ne dépassent pas aux angles.

fold_pocket-prepare_curved = Passer un rang de longs points dans la marge de chaque angle arrondi { DU($pocket) }.
fold_pocket-prepare_mitred = À chaque angle inférieur { DU($pocket) }, plier en diagonale, endroit contre endroit, et piquer d’équerre au pli, de l’angle des lignes de couture jusqu’au bord. Recouper à quelques millimètres et retourner l’angle.
fold_pocket-press = Replier de { $allowance } sur l’envers { LE($edge) } { DU($pocket) } et repasser.
fold_pocket-square = Aux angles inférieurs, replier d’abord le bas, puis les côtés par-dessus, chaque angle coupé un peu en dedans du pli.
fold_pocket-mitred = Les angles sont plats, chacun avec une couture partant de sa pointe.
fold_pocket-curved = Tirer les longs points sur un carton coupé à la forme finie de l’angle, aplatir les fronces au fer et retirer le carton.
fold_pocket-why_square = Les plis se croisent à l’angle ; le peu de tissu coupé le garde plat.
fold_pocket-why_mitred = Un onglet n’a pas de double pli : c’est le plus plat en tissu épais, et il ne peut pas glisser pendant la piqûre.
fold_pocket-why_curved = Formés sur un carton, les deux angles sont pareils et sans pointes.

patch_pocket-pin = Poser { LE($pocket) } sur l’endroit du tissu, endroit dessus, { AU($place) }, et épingler ou bâtir. Glisser une main dessous : la poche ne doit pas être tendue.
patch_pocket-sew = Piquer à { $distance } des bords pliés : descendre un côté, suivre le bas, remonter l’autre. Laisser l’ouverture libre.
patch_pocket-secure = Aux deux bouts de l’ouverture, faire un point d’arrêt ou piquer un petit triangle.
patch_pocket-why = Une main dans la poche tire sur les deux bouts de l’ouverture ; c’est là qu’elle se déchire, et c’est pourquoi on les pique deux fois.
