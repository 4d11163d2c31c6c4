# Phrases de kit/sewing/operations/interfacing.py.

baste_interfacing-lay = Poser l’entoilage sur l’envers { DU($pieces) } et épingler, les deux épaisseurs à plat.
baste_interfacing-sew = Bâtir tout autour dans la marge, à { $distance } à l’extérieur de la ligne de couture.
baste_interfacing-trim = Une fois les coutures piquées, recouper l’entoilage au ras des points et retirer le bâti qui se voit.
baste_interfacing-why = Un entoilage à coudre reste souple et ne demande pas de chaleur ; bâti dans la marge, il est pris dans les coutures et son propre bord ne marque pas.
