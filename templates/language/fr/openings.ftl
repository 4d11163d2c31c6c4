# Phrases de kit/sewing/operations/openings.py. $beside est un bord voisin de la couture.

opening-leave_part = Laisser { $size } ouverts ({ $edge }), de { $from } à { $to } le long du bord. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_part_from = Laisser { $size } ouverts ({ $edge }) : de { $from } à { $to }, mesurés depuis ce bord : { $beside }. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_mark = Laisser « { $mark } » sans piqûre entre ses repères : { $size }, de { $from } à { $to } le long de la couture. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_mark_from = Laisser « { $mark } » sans piqûre entre ses repères : { $size }, de { $from } à { $to }, mesurés depuis ce bord : { $beside }. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_next = Laisser { $size } ouverts ({ $edge }), en partant de ce bord : { $beside }. Faire un point d’arrêt là où l’ouverture rencontre la piqûre.
opening-leave_start = Laisser ouverts les premiers { $size } ({ $edge }). Faire un point d’arrêt là où l’ouverture rencontre la piqûre.
opening-leave_end = Laisser ouverts les derniers { $size } ({ $edge }). Faire un point d’arrêt là où l’ouverture rencontre la piqûre.
opening-gap_part = Laisser { $size } ouverts pour retourner l’ouvrage ({ $edge }), de { $from } à { $to } le long du bord. Faire un point d’arrêt aux deux bouts.
opening-gap_part_from = Laisser { $size } ouverts pour retourner l’ouvrage ({ $edge }) : de { $from } à { $to }, mesurés depuis ce bord : { $beside }. Faire un point d’arrêt aux deux bouts.
opening-gap_next = Laisser { $size } ouverts pour retourner l’ouvrage ({ $edge }), en partant de ce bord : { $beside }. Faire un point d’arrêt là où commence la piqûre.
opening-gap_start = Laisser ouverts pour retourner l’ouvrage les premiers { $size } ({ $edge }). Faire un point d’arrêt là où commence la piqûre.
opening-gap_end = Laisser ouverts pour retourner l’ouvrage les derniers { $size } ({ $edge }). Faire un point d’arrêt là où finit la piqûre.
opening-clip = Aux deux bouts de l’ouverture, cranter droit dans les deux marges, sur { $depth } : jusqu’à la ligne de couture et pas un fil de plus.
opening-clip_one = Là où l’ouverture rencontre la piqûre, cranter droit dans les deux marges, sur { $depth } : jusqu’à la ligne de couture et pas un fil de plus.
opening-turn = Le long de l’ouverture, replier chaque marge sur l’envers de sa propre pièce à la ligne de couture, rentrer son bord brut et la piquer. Repasser.
opening-untrimmed = Ne rien recouper le long de l’ouverture : les marges y sont déjà piquées.
opening-again = Ne pas piquer par-dessus l’ouverture ; faire un point d’arrêt à ses bouts.
