# Phrases de kit/sewing/operations/hems.py.

hem-catch = Glisser { LE($caught) } à plat dans l’ourlet, qui le maintiendra.
hem-clip_ends = Cranter la marge { AU($ends) }, presque jusqu’à la ligne de couture, pour pouvoir replier cette partie seule.
hem-first = Remplier { LE($edge) } de { $first } sur l’envers et repasser.
hem-second = Remplier encore de { $second } et repasser ; ourlet de { $total } en tout.
hem-narrow = Remplier { LE($edge) } de { $first } sur l’envers et repasser, puis encore de { $second } et repasser : ourlet de { $total } en tout.
hem-finish = { START($finish) } le bord brut { DU($edge) }.
hem-single = Remplier { LE($edge) } de { $first } sur l’envers et repasser.
hem-sew = Piquer à { $row } du pli intérieur.
hem-sew_single = Piquer à { $row } du bord fini.
hem-sew_raw = Piquer à { $row } du bord brut.
hem-press = Repasser l’ourlet.
hem-ring = Mettre l’anneau sur l’envers et piquer tout autour sur le bras libre de la machine, en commençant et en finissant à une couture.
hem-lap_rows = Faire se recouvrir le début et la fin de la piqûre sur quelques points.
hem-why_once = Replié une seule fois, un ourlet est mince et tombe souplement ; son bord brut doit être protégé de l’effilochage.
hem-why_twice = Replié deux fois, l’ourlet enferme son bord brut et ne demande pas d’autre finition.
hem-why_narrow = Plus l’ourlet est étroit, mieux il suit une courbe.
