# Phrases de kit/sewing/pieced.py : assembler les longueurs dont une bande est faite.

pieced-bias_lay = Poser deux longueurs { DU($strip) } endroit contre endroit à angle droit, extrémité oblique sur extrémité oblique, de sorte que les longs bords se croisent à { $allowance } des extrémités obliques : une petite pointe dépasse de chaque côté.
pieced-bias_sew = Piquer à { $allowance } des extrémités obliques, d’un croisement à l’autre.
pieced-bias_open = Ouvrir la couture au fer et couper les pointes.
pieced-corner_lay = Poser les extrémités de deux longueurs { DU($strip) } endroit contre endroit à angle droit, coin sur coin.
pieced-corner_sew = Piquer le carré commun en diagonale, de sorte que le coin où les deux extrémités se rejoignent reste en dehors de la piqûre.
pieced-corner_open = Couper le coin à { $allowance } de la piqûre et ouvrir la couture au fer.
pieced-straight_lay = Poser les extrémités de deux longueurs { DU($strip) } endroit contre endroit.
pieced-straight_sew = Piquer en travers, à { $allowance } des extrémités.
pieced-straight_open = Ouvrir la couture au fer.
pieced-square_halve = Pour { LE($strip) }, couper le carré en deux, d’un coin à l’autre.
pieced-square_seam = Poser les deux moitiés endroit contre endroit le long de deux bords en droit fil, de façon à obtenir une pièce penchée à deux bords en biais, et piquer à { $allowance } du bord. Ouvrir la couture au fer.
pieced-square_rule = Sur l’envers, tracer des lignes espacées de { $width }, à partir d’un bord en biais et parallèles à lui. Couper ce qui reste à l’autre.
pieced-square_tube = Amener les deux bords en droit fil endroit contre endroit pour former un tube, décalés d’une ligne, de sorte que les lignes se rejoignent à { $allowance } du bord et qu’une bande dépasse à chaque bout. Piquer à { $allowance } du bord et ouvrir la couture au fer.
pieced-square_cut = Commencer là où la bande dépasse et couper le long de la ligne, tour après tour, jusqu’à l’autre bout.
pieced-again = Assembler de même les autres longueurs, { $joins } raccords dans chaque bande.
