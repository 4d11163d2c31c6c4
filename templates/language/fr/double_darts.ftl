# Phrases de kit/sewing/operations/double_darts.py.

double_dart-fold = Marquer au fil ou à la craie les deux pointes et l’endroit le plus large de chaque pince { DU($places) }. Plier la pince endroit contre endroit sur la ligne de pointe à pointe, ses deux lignes de piqûre l’une sur l’autre, et épingler.
double_dart-sew = Piquer { LE($dart) } en deux fois : de l’endroit le plus large, à { $half } du pli, jusqu’à la pointe du bas, sur { $down } ; puis retourner l’ouvrage, repasser { $over } sur les premiers points et aller de l’endroit le plus large jusqu’à la pointe du haut, sur { $up }. Les derniers points de chaque partie courent tout au bord du pli.
double_dart-tie = Pas de point d’arrêt aux pointes : laisser de longs bouts de fil et les nouer.
double_dart-clip = Cranter le pli à l’endroit le plus large, jusqu’à { $left } de la piqûre, pour qu’il puisse s’ouvrir.
double_dart-press_centre = Repasser les pinces à plat comme elles ont été piquées, puis les coucher vers le milieu sur un coussin arrondi, de l’endroit le plus large vers chaque pointe et pas au-delà.
double_dart-press_side = Repasser les pinces à plat comme elles ont été piquées, puis les coucher vers le côté sur un coussin arrondi, de l’endroit le plus large vers chaque pointe et pas au-delà.
double_dart-why = Du milieu vers l’extérieur, les deux parties finissent à rien sur une pointe, et ce qui a glissé s’arrête là ; le cran laisse le bord plié, plus court que la ligne où il se couche, s’ouvrir dans le creux de la taille.
