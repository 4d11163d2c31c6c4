# Phrases de kit/sewing/operations/openings.py. $beside est un bord voisin de la couture.

opening-leave_part = Laisser une ouverture de { $size } le long { DU($edge) }, de { $from } à { $to } depuis le début de la couture. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_part_from = Laisser une ouverture de { $size } le long { DU($edge) } : de { $from } à { $to } à partir { DU($beside) }. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_mark = Laisser { LE($mark) } sans piqûre entre les repères : { $size }, de { $from } à { $to } depuis le début de la couture. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_mark_from = Laisser { LE($mark) } sans piqûre entre les repères : { $size }, de { $from } à { $to } à partir { DU($beside) }. Faire un point d’arrêt aux deux bouts de l’ouverture.
opening-leave_next = Laisser une ouverture de { $size } le long { DU($edge) }, à partir { DU($beside) }. Faire un point d’arrêt là où l’ouverture rencontre la piqûre.
opening-leave_start = Laisser une ouverture de { $size } au début { DU($edge) }. Faire un point d’arrêt là où l’ouverture rencontre la piqûre.
opening-leave_end = Laisser une ouverture de { $size } à la fin { DU($edge) }. Faire un point d’arrêt là où l’ouverture rencontre la piqûre.
opening-gap_part = Pour retourner l’ouvrage, laisser une ouverture de { $size } le long { DU($edge) }, de { $from } à { $to } depuis le début de la couture. Faire un point d’arrêt aux deux bouts.
opening-gap_part_from = Pour retourner l’ouvrage, laisser une ouverture de { $size } le long { DU($edge) } : de { $from } à { $to } à partir { DU($beside) }. Faire un point d’arrêt aux deux bouts.
opening-gap_next = Pour retourner l’ouvrage, laisser une ouverture de { $size } le long { DU($edge) }, à partir { DU($beside) }. Faire un point d’arrêt là où commence la piqûre.
opening-gap_start = Pour retourner l’ouvrage, laisser une ouverture de { $size } au début { DU($edge) }. Faire un point d’arrêt là où commence la piqûre.
opening-gap_end = Pour retourner l’ouvrage, laisser une ouverture de { $size } à la fin { DU($edge) }. Faire un point d’arrêt là où finit la piqûre.
opening-clip = Aux deux bouts de l’ouverture, cranter droit dans les deux marges, sur { $depth } : jusqu’à la ligne de couture et pas un fil de plus.
opening-clip_one = Là où l’ouverture rencontre la piqûre, cranter droit dans les deux marges, sur { $depth } : jusqu’à la ligne de couture et pas un fil de plus.
opening-turn = Le long de l’ouverture, replier chaque marge sur l’envers de sa propre pièce à la ligne de couture, rentrer son bord brut et la piquer. Repasser.
opening-untrimmed = Ne rien recouper le long de l’ouverture : les marges y sont déjà piquées.
opening-again = Ne pas piquer par-dessus l’ouverture ; faire un point d’arrêt à ses bouts.
