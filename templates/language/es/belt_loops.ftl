# Frases para las trabillas.

belt_loop-turn = Doble { $ends } hacia dentro en cada extremo de { $strip }: así mide { $length } de largo.
belt_loop-place = Colóquela sobre { $seam } por fuera de la prenda, con el extremo superior a { $at } del comienzo de la costura.
belt_loop-sew = Cosa de través los dos extremos, adelante y atrás.
