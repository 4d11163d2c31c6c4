# Phrases de kit/sewing/operations/fasteners.py.

snaps-first = Coudre la partie plate de chaque bouton-pression à l’intérieur de la croisure, dans l’épaisseur intérieure seulement : { $places }.
snaps-second = La frotter de craie, fermer le vêtement pour marquer l’endroit, puis coudre l’autre partie : { $under }.
snaps-why = La craie marque l’endroit exact, si bien que le bord fermé reste à plat.

hooks-first = Coudre les crochets à l’intérieur de la croisure, un peu en retrait du bord : { $places }.
hooks-second = Fermer le vêtement, marquer où arrivent les crochets, puis coudre les portes ou les brides : { $under }.
hooks-why = Un peu en retrait, le crochet est caché et la croisure bien tendue.

eyelets-back = Thermocoller ou bâtir une chute d’entoilage derrière l’emplacement : { $places }.
eyelets-set = Y poser chaque fois un œillet selon la notice du fabricant, ou broder une petite boutonnière, à travers cette seule épaisseur.
eyelets-why = Dans une seule épaisseur, le cordon sort de la coulisse sans traverser le vêtement ; la chute empêche le trou de se déchirer.
