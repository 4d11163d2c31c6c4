# Phrases de kit/sewing/operations/strips.py.

fold_strip-half = Plier { LE($strip) } en deux dans la longueur, envers contre envers, repasser et déplier.
fold_strip-ends = Faire un rentré de { $ends } à chaque extrémité apparente et repasser.
fold_strip-quarter = Rabattre les deux grands côtés sur la pliure centrale, puis replier la bande sur cette pliure centrale : largeur finie { $width }.
fold_strip-sew = Surpiquer les deux grands côtés à { $edgestitch } du bord.
fold_strip-sew_one = Piquer à { $edgestitch } du grand bord ouvert, là où les deux plis se rejoignent.
fold_strip-count = Répéter pour obtenir { $count } exemplaires.

turn_strip-fold = Plier { LE($strip) } en deux dans la longueur, endroit contre endroit, et épingler.
turn_strip-sew = Piquer à { $allowance } des longs bords bruts.
turn_strip-slant = À un bout, continuer en travers et en oblique, de façon que le pli soit plus long de { $slant } que le bord cousu. L’autre bout reste ouvert pour retourner.
turn_strip-slant_trim = Recouper la marge de l’oblique et dégarnir les angles.
turn_strip-turn = Retourner sur l’endroit et repasser : { $width } de large.
turn_strip-ends = Rentrer { $ends } à chaque petit bout qui se verra, et le fermer par une piqûre.
turn_strip-stitch_one = Piquer à { $edgestitch } du bord cousu.
turn_strip-stitch_both = Surpiquer les deux grands côtés à { $edgestitch } du bord.
turn_strip-count = Répéter pour obtenir { $count } exemplaires.

hem_strip-turn = Replier deux fois { $turn } sur l’envers les deux grands côtés { DU($strip) } et repasser : largeur finie { $width }.
hem_strip-sew = Piquer près des plis intérieurs.
hem_strip-ends_both = Replier de même les deux bouts, les angles pliés à plat, et piquer en travers.
hem_strip-ends_one = Replier de même un bout, les angles pliés à plat, et piquer en travers ; l’autre reste à cru jusqu’à ce qu’une couture la prenne.
hem_strip-count = Répéter pour obtenir { $count } exemplaires.
hem_strip-why = Dans un tissu fin, une seule épaisseur donne un nœud souple ; replié deux fois, son bord ne s’effiloche pas.

attach_strip-stitched_on-place_start = À l’intérieur, poser le bout { DU($strip) } sur { LE($run) }, { $at }, en recouvrant le bord de { $lap }.
attach_strip-stitched_on-place_end = À l’intérieur, poser le bout { DU($strip) } sur { LE($run) }, { $at }, en recouvrant le bord de { $lap }.
attach_strip-stitched_on-place_along = À l’intérieur, poser le bout { DU($strip) } sur { LE($run) }, { $at }, en recouvrant le bord de { $lap }.
attach_strip-stitched_on-place_mark = À l’intérieur, poser le bout { DU($strip) } sur { LE($run) }, au repère { DU($mark) }, en recouvrant le bord de { $lap }.
attach_strip-stitched_on-sew = Le fixer par un petit rectangle piqué avec une croix.

attach_strip-caught-place_start = Poser { LE($strip) } sur l’endroit { DU($run) }, { $at }, bout brut contre bord brut.
attach_strip-caught-place_end = Poser { LE($strip) } sur l’endroit { DU($run) }, { $at }, bout brut contre bord brut.
attach_strip-caught-place_along = Poser { LE($strip) } sur l’endroit { DU($run) }, { $at }, bout brut contre bord brut.
attach_strip-caught-place_mark = Poser { LE($strip) } sur l’endroit { DU($run) }, au repère { DU($mark) }, bout brut contre bord brut.
attach_strip-caught-sew = La bâtir dans la marge ; la couture suivante la prendra. Écarter le bout libre.
attach_strip-caught-sew_edge = La bâtir à { $row } du bord brut ; la couture suivante la prendra. Écarter le bout libre.
