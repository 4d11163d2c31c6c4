# Refus de courbes et d’arcs impossibles à tracer. $line et $other sont des noms de lignes, $way l’un des word-way_... ; les
# longueurs portent leur unité, les angles sont en degrés.
word-way_up = vers le haut
word-way_down = vers le bas
word-way_out = vers l’extérieur, côté couture
word-way_in = vers l’intérieur, côté milieu

drafting-neither_side = sur la ligne « { $line } », une courbe ne peut ni partir ni arriver { $toward }.
drafting-neither_side_do = Elle y va { $one } ou { $other } : indiquer l’un des deux.
drafting-turns_back = la courbe partirait { $way } et reviendrait en arrière : à un bout elle s’écarte de { $off }° de la droite vers l’autre, et { $most }° est le maximum.
drafting-turns_back_do = Déplacer ses bouts pour que chacun s’atteigne en tournant moins, la faire partir de l’autre côté avec toward=, ou tracer une partie de cercle avec arc.
drafting-doubles_back = la courbe du bout de la ligne « { $line } » à la ligne « { $other } », qui part { $way }, reviendrait sur elle-même.
drafting-doubles_back_do = Déplacer l’endroit où elle rejoint « { $other } », raccourcir « { $line } », ou dire avec toward= dans quelle direction elle part.
drafting-arc_angle = un arc ne peut pas faire { $angle }°.
drafting-arc_angle_do = Donner un angle au-dessus de zéro, au plus un tour entier de 360° ; entre deux points, moins.
drafting-arc_length = un arc de { $length } ne tient pas sur un cercle de { $most } de tour.
drafting-arc_length_do = Donner une longueur au-dessus de zéro et au plus celle du cercle, ou un rayon plus grand.
drafting-arc_radius = un arc demande un rayon au-dessus de zéro, et celui-ci est de { $radius }.
drafting-arc_radius_do = Vérifier la mesure dont le rayon est tiré.
drafting-arc_misses = le compas ouvert à { $radius } n’atteint pas l’autre bout : il est à { $far } du centre.
drafting-arc_misses_do = Déplacer le bout ou le centre, ou dire avec angle= ou length= jusqu’où va l’arc.
drafting-arc_no_way = un arc entre deux points en demande deux différents.
drafting-arc_no_way_do = Déplacer l’un d’eux ou dire où est le centre.
drafting-arc_in_line = les trois points sont sur une droite, ou deux d’entre eux au même endroit.
drafting-arc_in_line_do = Écarter celui du milieu.
drafting-arc_short = un rayon de { $radius } est trop petit pour enjamber { $chord }.
drafting-arc_short_do = Prendre { $least } ou plus, ou rapprocher les bouts.

# $run et $edge sont des bords, $piece le titre d’une pièce.
drafting-facing_end = une parementure de { $depth } de large ne tient pas à un bout : le bord « { $edge } » de la pièce « { $piece } », long de { $long }, y fait { $angle }° avec le bord « { $run } », et le bord extérieur de la parementure ne le rencontre jamais.
drafting-facing_end_do = Faire la parementure plus étroite, la prolonger le long de « { $edge } », ou tracer les deux bords plus près de l’angle droit.
