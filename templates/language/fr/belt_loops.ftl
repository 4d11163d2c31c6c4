# Phrases de kit/sewing/operations/belt_loops.py.

belt_loop-turn = Replier { $ends } à chaque extrémité { DU($strip) } : longueur finie { $length }.
belt_loop-place = Poser le passant sur l’endroit du vêtement, à cheval sur { LE($seam) }, l’extrémité supérieure { $at }.
belt_loop-sew = Piquer en travers des deux extrémités, en aller-retour.
