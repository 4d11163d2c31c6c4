# Phrases de kit/sewing/operations/ties.py.

attach_handle-caught_place = Poser les deux bouts de la bande ({ $strip }) sur l’endroit, bout brut contre bord brut, { $spots } : { $run }.
attach_handle-in_hem_place = À l’intérieur, poser les deux bouts de la bande ({ $strip }), bout brut contre bord brut, { $spots } : { $run }.
attach_handle-stitched_on_place = Poser les deux bouts de la bande ({ $strip }) en recouvrant le bord de { $lap }, { $spots } : { $run }.
attach_handle-twist = Vérifier qu’elle n’est pas vrillée.
attach_handle-caught_sew = Bâtir les bouts dans la marge ; la couture suivante les prendra. Écarter la boucle.
attach_handle-in_hem_sew = Bâtir les bouts dans la marge. Replier l’ourlet par-dessus ; une fois l’ourlet piqué, relever la bande ({ $strip }) sur l’ourlet et l’y piquer aussi.
attach_handle-stitched_on_sew = Fixer chaque bout par un petit rectangle piqué avec une croix.
attach_handle-why = Ce qui porte du poids est pris dans une couture ou un ourlet et tenu par une seconde piqûre : une seule se déchire.
