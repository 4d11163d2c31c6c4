# Frases para las trabillas.

belt_loop-turn = Doble { $ends } hacia dentro en cada extremo { DEL($strip) }: largo acabado { $length }.
belt_loop-place = Coloque la trabilla por el derecho, sobre { EL($seam) }, con el extremo superior { $at }.
belt_loop-sew = Cosa los dos extremos de lado a lado, en ida y vuelta.
