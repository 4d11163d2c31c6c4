# Phrases de kit/sewing/operations/trimming.py.

clip-cut = Cranter les marges tous les { $spacing } environ, de la pointe des ciseaux, presque jusqu’aux points : { $edge }.
clip-cut_curve = Cranter les marges de la pointe des ciseaux, presque jusqu’aux points, tous les { $spacing } environ là où la courbe est la plus forte : { $edge }.
clip-why = Dans une courbe rentrante, le bord coupé est plus court que la couture : les crans le laissent s’écarter quand on le retourne.

notch_curve-cut = Couper de petits coins en V dans les marges tous les { $spacing } environ, presque jusqu’aux points : { $edge }.
notch_curve-cut_curve = Couper de petits coins en V dans les marges, presque jusqu’aux points, tous les { $spacing } environ là où la courbe est la plus forte : { $edge }.
notch_curve-why = Dans une courbe sortante, le bord coupé est plus long que la couture : avec des coins en moins, il s’étale à plat une fois retourné.

clip_first-cut = Cranter la marge de la pointe des ciseaux, jusqu’à la piqûre de soutien mais sans l’entamer, tous les { $spacing } environ là où la courbe est la plus forte : { $edge }.
clip_first-cut_to_fit = Cranter la marge de « { $edge } » de la pointe des ciseaux, presque jusqu’à la ligne de couture, tous les { $spacing } environ là où cette courbe est la plus forte : { $fit }.
clip_first-why = Cranté d’abord, le bord s’écarte le long de l’autre, et les deux s’épinglent et se piquent sans pli.

trim-cut = Recouper les marges à { $to } : { $edge }.
trim-cut_half = Recouper les marges de moitié, à { $to } : { $edge }.
trim-why = Le tissu ôté là où il serait replié garde le bord mince.

grade-cut = Dégrader la couture : recouper cette marge à { $to } et laisser { $wider } à celle qui est plus près de l’extérieur : { $edge }.
grade-why = Des marges qui finissent à des largeurs différentes font une pente au lieu d’une marche, et la plus large cache la plus étroite.

trim_strip-sides = Recouper à { $to } les marges de la couture en long de la bande ({ $strip }).
trim_strip-sides_half = Recouper de moitié, à { $to }, les marges de la couture en long de la bande ({ $strip }).
trim_strip-ends = Recouper à { $to } les marges du bout cousu de la bande ({ $strip }) et couper les angles.
trim_strip-ends_half = Recouper de moitié, à { $to }, les marges du bout cousu de la bande ({ $strip }) et couper les angles.
grade_strip-sides = Dégrader les marges de la couture en long de la bande ({ $strip }) : recouper l’une à { $to } et laisser l’autre large de { $wider }.
grade_strip-sides_on = Dégrader les marges de la couture qui tient la bande ({ $strip }) : recouper celle de la bande à { $to } et laisser celle du vêtement large de { $wider }.
grade_strip-ends = Dégrader les marges du bout cousu de la bande ({ $strip }) : recouper l’une à { $to } et laisser l’autre large de { $wider }. Couper les angles.

tack_down-sew = Fixer { $edge } aux marges de « { $seam } » par quelques points à la main qui ne traversent pas jusqu’à l’endroit.
tack_down-why = Tenue aux seules coutures, une parementure reste à l’intérieur sans piqûre visible.
