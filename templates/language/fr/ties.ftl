# Phrases de kit/sewing/operations/ties.py.

attach_handle-caught_place = Poser les deux bouts { DU($strip) } sur l’endroit { DU($run) }, bout brut contre bord brut, { $spots }.
attach_handle-in_hem_place = À l’intérieur, poser les deux bouts { DU($strip) } sur { LE($run) }, bout brut contre bord brut, { $spots }.
attach_handle-stitched_on_place = À l’intérieur, poser les deux bouts { DU($strip) } sur { LE($run) }, en recouvrant le bord de { $lap }, { $spots }.
attach_handle-notches = Les crans marquent les deux endroits.
attach_handle-twist = Vérifier que rien n’est vrillé.
attach_handle-caught_sew = Bâtir les bouts dans la marge ; la couture suivante les prendra. Écarter la boucle.
attach_handle-in_hem_sew = Bâtir les bouts dans la marge. Replier l’ourlet par-dessus ; une fois l’ourlet piqué, relever { LE($strip) } sur l’ourlet et y repiquer les bouts.
attach_handle-stitched_on_sew = Fixer chaque bout par un petit rectangle piqué avec une croix.
attach_handle-why = Ce qui porte du poids est pris dans une couture ou un ourlet et tenu par une seconde piqûre : une seule se déchire.
