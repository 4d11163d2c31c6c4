# Phrases de kit/sewing/operations/folds.py.

dart-spared = Cette silhouette n’a pas besoin de pince { AU($pieces) }. Passer à l’étape suivante.
dart-fold = Plier chaque pince { DU($pieces) } endroit contre endroit le long de sa ligne du milieu, ses deux lignes de piqûre l’une sur l’autre, et épingler.
dart-fold_one = Plier la pince { DU($pieces) } endroit contre endroit le long de sa ligne du milieu, ses deux lignes de piqûre l’une sur l’autre, et épingler.
dart-sew = Piquer { LE($dart) } { DU($edge) } à la pointe, sur { $depth } : la piqûre commence à { $intake } du pli et les derniers points courent tout au bord du pli.
dart-tie = Pas de point d’arrêt à la pointe : laisser de longs bouts de fil et les nouer.
dart-press = Repasser la pince à plat comme elle a été piquée, puis la coucher vers { LE($toward) }, sur un coussin arrondi pour ne pas marquer de pli au-delà de la pointe.
dart-press_of = Repasser les pinces { DU($edge) } à plat comme elles ont été piquées, puis les coucher vers { LE($toward) }, sur un coussin arrondi pour ne pas marquer de pli au-delà de la pointe.
dart-why = Une pince donne du volume à un tissu plat : ce qu’elle prend au bord est ce que le corps a de moins à cet endroit.
dart-why_point = La piqûre meurt le long du pli : elle finit à rien et aucune cloque ne se voit à la pointe.

pleat-fold = Sur l’endroit { DU($pieces) }, plier { LE($pleat) } le long de la ligne de pli ; profondeur { $intake }.
pleat-lay = Amener les deux lignes l’une sur l’autre, coucher le pli vers { LE($toward) } et épingler.
pleat-baste = Bâtir en travers du pli, dans la marge { DU($edge) }.
pleat-baste_both = Bâtir en travers du pli, dans les marges { DU($edge) } et { DU($far) }.
pleat-press = Repasser légèrement le pli, sous une pattemouille, sur la longueur où il doit rester net.
pleat-why = Bâti à sa place, un pli ne peut pas bouger pendant qu’on pique la couture qui le tient.

tuck-fold = Plier { LE($pleat) } { DU($pieces) } envers contre envers par le milieu, ses deux lignes l’une sur l’autre, et épingler.
tuck-sew = Piquer le long de la ligne, à { $half } du pli.
tuck-sew_part = Piquer le long de la ligne, à { $half } du pli, sur { $sewn } à partir { DU($edge) }. Tirer les fils sur l’envers et les nouer.
tuck-press = Coucher le pli piqué au fer vers { LE($toward) }.
tuck-why = Un pli piqué retient le tissu sur la longueur piquée et le libère au-dessous.
