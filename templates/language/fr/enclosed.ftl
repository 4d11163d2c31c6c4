# Phrases de kit/sewing/operations/enclosed.py.

mock_french_seam-sew = Piquer à { $allowance } du bord.
mock_french_seam-turn = Rentrer de { $turn } le bord brut de chaque marge, l’un vers l’autre, et repasser : les deux plis se superposent.
mock_french_seam-stitch = Piquer les deux plis ensemble au ras du bord.
mock_french_seam-why = À l’intérieur elle ressemble à une couture anglaise, mais elle se pique sur la ligne de couture comme une couture simple : elle convient donc aussi aux courbes.

flat_felled_seam-sew = Piquer à { $allowance } du bord et repasser les marges vers { LE($under) }, celle { DU($lapping) } dessus.
flat_felled_seam-trim = Recouper à { $trim } la seule marge de dessous, celle { DU($under) }.
flat_felled_seam-trim_same_piece = Recouper à { $trim } la seule marge de dessous, celle de la moitié { $under_side }.
flat_felled_seam-fold = Replier le bord de la marge de dessus, celle { DU($lapping) }, autour de la marge recoupée, sur une largeur de { $width }, et repasser.
flat_felled_seam-fold_same_piece = Replier le bord de la marge de la moitié { $lapping_side } autour de la marge recoupée, sur une largeur de { $width }, et repasser.
flat_felled_seam-lay = Rabattre le pli à plat sur { LE($under) }, de façon que tous les bords bruts soient cachés, et épingler.
flat_felled_seam-lay_same_piece = Rabattre le pli à plat sur la moitié { $under_side }, de façon que tous les bords bruts soient cachés, et épingler.
flat_felled_seam-stitch = Piquer à { $row } du pli, à travers toutes les épaisseurs.
flat_felled_seam-why = Une couture rabattue est plate, ne montre de bord brut d’aucun côté et tient par deux piqûres : la plus solide pour vêtements de travail et chemises.
flat_felled_seam-why_trim = Une marge est recoupée pour que l’autre se replie autour d’elle sans surépaisseur.

lapped_seam-turn = Replier { LE($edge) } de { $allowance } sur l’envers, jusqu’à la ligne de couture, et repasser.
lapped_seam-lay = Poser le pli sur l’endroit { DU($other) }, le long de la ligne de couture, et épingler.
lapped_seam-lay_raw = Poser { LE($edge) } sur l’endroit { DU($other) }, les deux lignes de couture l’une sur l’autre, et épingler.
lapped_seam-stitch = Piquer à { $row } du pli, à travers toutes les épaisseurs.
lapped_seam-stitch_raw = Piquer à { $row } du bord brut de dessus, puis de nouveau à la même distance de celui de dessous.
lapped_seam-finish = { START($finish) } les bords bruts à l’intérieur.
lapped_seam-why = Une couture superposée se pique sur l’endroit : on voit exactement où tombent les angles et les courbes.
