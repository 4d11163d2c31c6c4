# Phrases de kit/sewing/operations/belt_loops.py.

belt_loop-turn = Replier { $ends } à chaque extrémité ({ $strip }) : la longueur est alors de { $length }.
belt_loop-place = Poser le passant sur l’endroit du vêtement, à cheval sur « { $seam } », son extrémité supérieure { $at }.
belt_loop-sew = Piquer en travers des deux extrémités, en aller-retour.
