# Phrases de kit/sewing/operations/fasteners.py.

snaps-first = Coudre la partie plate de chaque bouton-pression, celle à la bille, à l’intérieur de la croisure, { AU($places) }, dans l’épaisseur intérieure seulement.
snaps-second = { $count ->
    [one] La frotter de craie, fermer le vêtement pour marquer l’endroit, puis coudre l’autre partie { AU($under) }.
   *[other] Les frotter de craie, fermer le vêtement pour marquer l’endroit, puis coudre les autres parties { AU($under) }.
}
snaps-why = La craie marque l’endroit exact, si bien que le bord fermé reste à plat.

hooks-first = { $count ->
    [one] Coudre le crochet à l’intérieur de la croisure, { AU($places) }, un peu en retrait du bord.
   *[other] Coudre les crochets à l’intérieur de la croisure, { AU($places) }, un peu en retrait du bord.
}
hooks-second = { $count ->
    [one] Fermer le vêtement, marquer où arrive le crochet, puis coudre la bride { AU($under) }.
   *[other] Fermer le vêtement, marquer où arrivent les crochets, puis coudre les brides { AU($under) }.
}
hooks-why = Un peu en retrait, le crochet est caché et la croisure bien tendue.
eyes-first = { $count ->
    [one] Coudre le crochet à l’intérieur d’un bord, { AU($places) }, la courbe en retrait de { $reach }, par les deux anneaux et sur la tige sous la courbe.
   *[other] Coudre les crochets à l’intérieur d’un bord, { AU($places) }, la courbe en retrait de { $reach }, par les deux anneaux et sur la tige sous la courbe.
}
eyes-second = { $count ->
    [one] Coudre la porte à l’intérieur de l’autre bord, { AU($under) }, la boucle dépassant de { $reach }, par les deux anneaux et sur le fil de chaque côté, au bord.
   *[other] Coudre les portes à l’intérieur de l’autre bord, { AU($under) }, la boucle dépassant de { $reach }, par les deux anneaux et sur le fil de chaque côté, au bord.
}
eyes-close = { $count ->
    [one] Agrafer le crochet : les bords se touchent tout juste, sans se recouvrir ni bâiller.
   *[other] Agrafer les crochets : les bords se touchent tout juste, sans se recouvrir ni bâiller.
}
eyes-why = En retrait d’autant que la porte dépasse, le crochet rapproche les deux bords et se cache derrière.

eyelets-back = Thermocoller ou bâtir une chute d’entoilage derrière l’emplacement, { AU($places) }.
eyelets-set = Y poser chaque fois un œillet selon la notice du fabricant, ou broder une petite boutonnière, à travers cette seule épaisseur.
eyelets-why = Dans une seule épaisseur, le cordon sort de la coulisse sans traverser le vêtement ; la chute empêche le trou de se déchirer.
cord_holes-work = Broder une petite boutonnière { AU($places) } à travers cette seule épaisseur et son entoilage, assez longue pour que le cordon y passe librement.
cord_holes-cut = Piquer une épingle en travers de chaque extrémité et ouvrir la fente au découd-vite, du milieu vers les bouts.
lacing_eyelets-back = Vérifier qu’un entoilage se trouve entre les épaisseurs à l’endroit des œillets ; sinon, en thermocoller ou bâtir une bande le long du bord.
lacing_eyelets-set = Percer un petit trou à travers toutes les épaisseurs { AU($places) } et, en face, { AU($opposite) }. Poser à chacun un œillet selon la notice du fabricant, sa belle face dehors.
lacing_eyelets-lace = Lacer les deux bords : chaque œillet doit être au niveau de son vis-à-vis.
lacing_eyelets-why = Un laçage tire fort sur chaque trou : toutes les épaisseurs et l’entoilage se partagent l’effort.
