# Phrases de kit/sewing/operations/zips.py.

lapped_zip-press = Replier au fer { LE($over) } sur la ligne de couture, sur { $allowance }. En face, replier { LE($under) } un peu à l’extérieur de la ligne de couture.
lapped_zip-under = Poser le pli { DU($under) } tout contre les dents de la fermeture à glissière fermée, longue de { $length }, son curseur à { $top } sous la ligne de couture du haut, et épingler.
lapped_zip-under_flush = Poser le pli { DU($under) } tout contre les dents de la fermeture à glissière fermée, longue de { $length }, son curseur à la ligne de couture du haut, et épingler.
lapped_zip-stitch_under = Avec le pied à fermeture, piquer le pli { DU($under) } sur le ruban, au ras du bord.
lapped_zip-lay = Poser { LE($over) } sur la fermeture, le pli sur la ligne de couture de l’autre côté, de façon à couvrir les dents ; épingler ou bâtir.
lapped_zip-stitch_over = Sur l’endroit, piquer à { $lap } du pli : en travers sous le bas de la fermeture, pivoter, puis remonter jusqu’en haut. Ouvrir la fermeture pour passer le curseur.
lapped_zip-why = Le recouvrement cache les dents ; le pli de dessous ressort un peu plus, pour que le recouvrement le couvre encore quand la fermeture est tendue.

centred_zip-baste = Épingler { LE($over) } sur { LE($under) }, endroit contre endroit, et fermer l’ouverture par un bâti à { $allowance } du bord.
centred_zip-press = Ouvrir la couture au fer.
centred_zip-lay = Poser la fermeture à glissière fermée, longue de { $length }, face contre les marges, les dents sur la couture bâtie et le curseur à { $top } sous la ligne de couture du haut ; épingler ou bâtir les rubans.
centred_zip-lay_flush = Poser la fermeture à glissière fermée, longue de { $length }, face contre les marges, les dents sur la couture bâtie et le curseur à la ligne de couture du haut ; épingler ou bâtir les rubans.
centred_zip-stitch = Sur l’endroit, avec le pied pour fermeture, piquer à { $lap } de la couture : descendre un côté, passer sous le bas de la fermeture et remonter l’autre. Ouvrir la fermeture pour passer le curseur.
centred_zip-open = Retirer le bâti : les deux plis se rejoignent sur les dents.
centred_zip-why = Fermés d’abord par un bâti, les deux plis sont exactement bord à bord sur les dents pendant que l’on coud la fermeture.
