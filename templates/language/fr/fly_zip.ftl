# Phrases de kit/sewing/operations/fly_zip.py.

fly_zip-face = Épingler { LE($facing) } sur { LE($over) }, endroit contre endroit, et piquer à { $allowance } du bord jusqu’à la fin de l’ouverture. Réduire la marge de moitié, la coucher au fer vers la parementure et la sous-piquer ; rabattre la parementure à l’intérieur et repasser.
fly_zip-press = Replier au fer { LE($under) }, à { $out } à l’extérieur de la ligne de couture.
fly_zip-under = Poser le pli { DU($under) } tout contre les dents de la fermeture à glissière fermée, longue de { $length } et face dessus, son curseur à { $top } sous la ligne de couture du haut, son arrêt du bas au-dessus de la fin de l’ouverture, et épingler.
fly_zip-under_flush = Poser le pli { DU($under) } tout contre les dents de la fermeture à glissière fermée, longue de { $length } et face dessus, son curseur à la ligne de couture du haut, son arrêt du bas au-dessus de la fin de l’ouverture, et épingler.
fly_zip-shield = Épingler { LE($shield) } dessous, le bord coupé au niveau de celui du ruban.
fly_zip-stitch_under = Avec le pied à fermeture, piquer le pli { DU($under) } sur le ruban, au ras du bord, à travers tout ce qui est dessous.
fly_zip-close = Fermer la braguette comme elle se porte : rabattre { LE($over) } sur la fermeture, le bord sur la ligne de couture de l’autre côté, et épingler ou bâtir l’ouverture.
fly_zip-away = Retourner l’ouvrage et écarter le sous-pont.
fly_zip-tape = De l’intérieur, poser le ruban libre sur la parementure et le piquer sur la parementure seule, en deux rangs : un contre les dents, un au bord du ruban.
fly_zip-curve = Sur l’endroit, tracer la courbe à la craie à { $lap } du bord, arrondie jusqu’à la couture à la fin de l’ouverture. La piquer de haut en bas à travers le devant et la parementure, en passant à côté de l’arrêt du bas de la fermeture et jamais dessus.
fly_zip-bar = Faire un point d’arrêt en travers du pied de la courbe, puis retirer épingles et bâti.
fly_zip-bar_shield = Remettre le sous-pont en place et prendre son bout du bas de l’intérieur par un second point d’arrêt.
fly_zip-why = La courbe tient la parementure, pas la fermeture : celle-ci pend à la parementure, reste lisse et peut se remplacer.
fly_zip-why_tape = Fermé d’abord comme il se porte, le ruban libre tombe de lui-même à sa place ; mesuré à part, le recouvrement bâille ou tire.
