# Refus de courbes et d’arcs impossibles à tracer. $line et $other sont des noms de lignes, $way l’un des word-way_... ; les
# longueurs portent leur unité, les angles sont en degrés.
word-way_up = vers le haut
word-way_down = vers le bas
word-way_out = vers l’extérieur, côté couture
word-way_in = vers l’intérieur, côté milieu

drafting-neither_side = sur la ligne « { $line } », une courbe ne peut ni partir ni arriver { $toward }.
drafting-neither_side_do = Elle y va { $one } ou { $other } : indiquez l’un des deux.
drafting-turns_back = la courbe partirait { $way } et reviendrait en arrière : à un bout elle s’écarte de { $off }° de la droite vers l’autre, et { $most }° est le maximum.
drafting-turns_back_do = Déplacez ses bouts pour que chacun s’atteigne en tournant moins, faites-la partir de l’autre côté avec toward=, ou tracez une partie de cercle avec arc.
drafting-doubles_back = la courbe du bout de la ligne « { $line } » à la ligne « { $other } », qui part { $way }, reviendrait sur elle-même.
drafting-doubles_back_do = Déplacez l’endroit où elle rejoint « { $other } », raccourcissez « { $line } », ou dites avec toward= dans quelle direction elle part.
drafting-arc_angle = un arc ne peut pas faire { $angle }°.
drafting-arc_angle_do = Donnez un angle au-dessus de zéro, au plus un tour entier de 360° ; entre deux points, moins.
drafting-arc_length = un arc de { $length } ne tient pas sur un cercle de { $most } de tour.
drafting-arc_length_do = Donnez une longueur au-dessus de zéro et au plus celle du cercle, ou un rayon plus grand.
drafting-arc_radius = un arc demande un rayon au-dessus de zéro, et celui-ci est de { $radius }.
drafting-arc_radius_do = Vérifiez la mesure dont le rayon est tiré.
drafting-arc_misses = le compas ouvert à { $radius } n’atteint pas l’autre bout : il est à { $far } du centre.
drafting-arc_misses_do = Déplacez le bout ou le centre, ou dites avec angle= ou length= jusqu’où va l’arc.
drafting-arc_no_way = un arc entre deux points en demande deux différents.
drafting-arc_no_way_do = Déplacez l’un d’eux ou dites où est le centre.
drafting-arc_in_line = les trois points sont sur une droite, ou deux d’entre eux au même endroit.
drafting-arc_in_line_do = Écartez celui du milieu.
drafting-arc_short = un rayon de { $radius } est trop petit pour enjamber { $chord }.
drafting-arc_short_do = Prenez { $least } ou plus, ou rapprochez les bouts.

# $run et $edge sont des bords, $piece le titre d’une pièce.
drafting-facing_end = une parementure de { $depth } de large ne tient pas à un bout : le bord « { $edge } » de la pièce « { $piece } », long de { $long }, y fait { $angle }° avec le bord « { $run } », et le bord extérieur de la parementure ne le rencontre jamais.
drafting-facing_end_do = Faites la parementure plus étroite, prolongez-la le long de « { $edge } », ou tracez les deux bords plus près de l’angle droit.
