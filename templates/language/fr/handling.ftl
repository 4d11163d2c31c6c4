# Ce que le tracé lui-même dit de la tenue du tissu.
handling-stretches = Coupé de biais, le tissu prête : { $place }. Laissez-le à plat sur la table sans tirer ; épinglez d'abord les extrémités, puis les crans et les coutures, puis entre eux.
handling-curved = Avant d'épingler, crantez la marge presque jusqu'à la ligne de couture, tous les 1 à 2 cm ({ $hollow }), pour qu'elle s'ouvre et suive l'autre bord ({ $other }). Piquez avec l'épaisseur crantée dessus.
