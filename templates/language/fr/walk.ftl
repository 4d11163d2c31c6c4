# Ce qui se trouve à un endroit d’un bord quand on fait rouler une ligne de couture sur l’autre.

walk-start = début
walk-end = fin
walk-notch = cran
walk-double_notch = double cran
walk-corner = angle
# La rencontre de deux bords.
walk-seam = rencontre { $first } / { $second }
# $first est le nom d’une ouverture marquée sur le bord.
walk-mark_start = début : { $first }
walk-mark_end = fin : { $first }
walk-both = { $names }
