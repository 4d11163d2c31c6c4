# Ce que le tracé lui-même dit de la tenue du tissu.
handling-stretches = Coupé de biais, le tissu prête { AU($place) }. Le laisser à plat sur la table sans tirer ; épingler d’abord les extrémités, puis les crans et les coutures, puis entre eux.
handling-curved = Avant d’épingler, cranter la marge { DU($hollow) } presque jusqu’à la ligne de couture, tous les { $near } à { $far }, pour qu’elle s’ouvre le long { DU($other) }. Piquer avec l’épaisseur crantée dessus.
