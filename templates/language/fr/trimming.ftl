# Phrases de kit/sewing/operations/trimming.py.

clip-cut = Cranter les marges { DU($edge) } tous les { $spacing } environ, de la pointe des ciseaux, presque jusqu’aux points.
clip-cut_curve = Cranter les marges { DU($edge) } de la pointe des ciseaux, presque jusqu’aux points, tous les { $spacing } environ là où la courbe est la plus forte.
clip-why = Dans une courbe rentrante, le bord coupé est plus court que la couture : les crans le laissent s’écarter quand on le retourne.

notch_curve-cut = Couper de petits coins en V dans les marges { DU($edge) } tous les { $spacing } environ, presque jusqu’aux points.
notch_curve-cut_curve = Couper de petits coins en V dans les marges { DU($edge) }, presque jusqu’aux points, tous les { $spacing } environ là où la courbe est la plus forte.
notch_curve-why = Dans une courbe sortante, le bord coupé est plus long que la couture : avec des coins en moins, il s’étale à plat une fois retourné.

clip_first-cut = Cranter la marge { DU($edge) } de la pointe des ciseaux, jusqu’à la piqûre de soutien mais sans l’entamer, tous les { $spacing } environ là où la courbe est la plus forte.
clip_first-cut_to_fit = Cranter la marge { DU($edge) } de la pointe des ciseaux, presque jusqu’à la ligne de couture, tous les { $spacing } environ là où la courbe { DU($fit) } est la plus forte.
clip_first-why = Cranté d’abord, le bord s’écarte le long de l’autre, et les deux s’épinglent et se piquent sans pli.

trim-cut = Recouper à { $to } les marges { DU($edge) }.
trim-cut_half = Recouper de moitié, à { $to }, les marges { DU($edge) }.
trim-why = Le tissu ôté là où il serait replié garde le bord mince.

grade-cut = Dégrader les marges { DU($edge) } : recouper celle-ci à { $to } et laisser { $wider } à celle qui est plus près de l’extérieur.
grade-why = Des marges qui finissent à des largeurs différentes font une pente au lieu d’une marche, et la plus large cache la plus étroite.

trim_strip-sides = Recouper à { $to } les marges de la couture en long { DU($strip) }.
trim_strip-sides_half = Recouper de moitié, à { $to }, les marges de la couture en long { DU($strip) }.
trim_strip-ends = Recouper à { $to } les marges du bout cousu { DU($strip) } et dégarnir les angles.
trim_strip-ends_half = Recouper de moitié, à { $to }, les marges du bout cousu { DU($strip) } et dégarnir les angles.
grade_strip-sides = Dégrader les marges de la couture en long { DU($strip) } : recouper l’une à { $to } et laisser l’autre large de { $wider }.
grade_strip-sides_on = Dégrader les marges de la couture qui tient { LE($strip) } : recouper celle de la bande à { $to } et laisser celle du vêtement large de { $wider }.
grade_strip-ends = Dégrader les marges du bout cousu { DU($strip) } : recouper l’une à { $to } et laisser l’autre large de { $wider }. Dégarnir les angles.

tack_down-sew = Fixer { LE($edge) } aux marges { DU($seam) } par quelques points à la main qui ne traversent pas jusqu’à l’endroit.
tack_down-why = Tenue aux seules coutures, une parementure reste à l’intérieur sans piqûre visible.
