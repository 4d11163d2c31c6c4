# Frases para las trabillas.

belt_loop-turn = Doble { $ends } hacia dentro en cada extremo ({ $strip }): así mide { $length } de largo.
belt_loop-place = Coloque la trabilla por fuera de la prenda, sobre la costura ({ $seam }), con el extremo superior { $at }.
belt_loop-sew = Cosa de través los dos extremos, adelante y atrás.
