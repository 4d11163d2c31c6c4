# Phrases de kit/sewing/operations/seams.py.

plain_seam-sew = Piquer à { $allowance } du bord.
plain_seam-sew_with_opening = Piquer à { $allowance } du bord, en laissant une ouverture de { $size } le long { DU($edge) }, { $stretch }. Faire un point d’arrêt aux deux bouts de l’ouverture.
plain_seam-sew_to_marks = Piquer à { $allowance } du bord, en laissant { LE($mark) } sans piqûre entre les repères : { $size }, { $stretch }. Faire un point d’arrêt aux deux bouts de l’ouverture.
plain_seam-sew_open_start = Piquer à { $allowance } du bord, en laissant une ouverture de { $size } au début { DU($edge) }. Faire un point d’arrêt là où finit l’ouverture.
plain_seam-sew_open_end = Piquer à { $allowance } du bord, en laissant une ouverture de { $size } à la fin { DU($edge) }. Faire un point d’arrêt là où commence l’ouverture.
plain_seam-sew_line_to_line = Piquer à { $allowance } du bord, mais commencer et finir au croisement des lignes de couture des bords voisins, pas au bord brut. Y faire un point d’arrêt.
plain_seam-finish = { START($finish) } les bords des marges.
plain_seam-finish_together = { START($finish) } les deux marges ensemble.
plain_seam-bound = Plier { LE($strip) } sur le bord brut de chaque marge et piquer au ras de son bord, à travers toutes les épaisseurs.
plain_seam-bound_bought = Plier le biais sur le bord brut de chaque marge et le piquer au ras, à travers toutes ses épaisseurs.
plain_seam-bound_together = Réunir les deux marges, plier { LE($strip) } sur les deux bords bruts et piquer au ras de son bord, à travers toutes les épaisseurs.
plain_seam-bound_together_bought = Réunir les deux marges, plier le biais sur les deux bords bruts et le piquer au ras, à travers toutes les épaisseurs.
plain_seam-why_open = Ouverte au fer, une couture est la plus plate : nulle part plus de deux épaisseurs superposées.
plain_seam-why_one_side = Couchée d’un côté, une couture est plus solide, et les deux marges se finissent ou se piquent ensemble.
plain_seam-why_later = Le fer vient plus tard, car la piqûre suivante est plus facile tant que les marges se tiennent droites.
plain_seam-why_line_to_line = Laissés sans piqûre, les bouts des marges peuvent se tourner d’un côté ou de l’autre quand la couture suivante rencontre celle-ci dans un angle.
plain_seam-opening_edges = Le long de l’ouverture, ouvrir aussi les marges au fer, rentrer leurs bords bruts et les piquer.
plain_seam-gap_edges = Le long de l’ouverture à retourner, replier aussi les marges au fer ; elles restent à bords bruts jusqu’à la fermeture à la main.

french_seam-first = Piquer à { $first } du bord brut.
french_seam-trim = Couper les fils effilochés.
french_seam-trim_narrow = Recouper les deux marges à un peu moins de { $second }, pour qu’aucun bord brut ne puisse dépasser ensuite.
french_seam-trim_sliver = Couper un mince filet des deux marges : plus étroites que la deuxième piqûre, elles ne laisseront dépasser aucun bord brut.
french_seam-trim_to = Recouper les deux marges à { $trim }.
french_seam-turn = Retourner les pièces endroit contre endroit et marquer nettement la pliure le long de la couture.
french_seam-second = Piquer à { $second } de la pliure : les bords bruts sont enfermés.
french_seam-takes = Les deux piqûres ensemble prennent la marge de couture de { $total }.
french_seam-why = Une couture anglaise enferme ses bords bruts et convient aux tissus fins qui s’effilochent ou laissent voir au travers. En tissu épais, elle est trop grosse.
french_seam-why_wrong_sides = La première piqûre semble faite à l’envers, envers contre envers : le retournement remet tout en ordre et cache les bords à l’intérieur.

press-open = Ouvrir au fer { LE($edge) }, d’abord sur l’envers, puis légèrement sur l’endroit sous une pattemouille.
press-one_side = Coucher d’un côté au fer les marges { DU($edge) }.
press-towards = Coucher au fer les marges { DU($edge) } vers { LE($piece) }.
press-edge = Rouler { LE($edge) } juste au bord et repasser.
press-why = Repasser chaque couture avant qu’une autre ne la croise : après, le fer n’y a plus accès.
