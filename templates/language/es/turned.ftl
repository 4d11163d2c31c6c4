# Frases para coser y volver del derecho.

seam_to_turn-sew = Cosa a { $allowance } del borde. En las esquinas pare con la aguja clavada, levante el prensatelas y gire.
seam_to_turn-sew_smooth = Cosa todo el contorno a { $allowance } del borde.
seam_to_turn-sew_gap = Cosa a { $allowance } del borde, pero deje sin coser { $size } { DEL($edge) } para dar la vuelta a la pieza, empezando en { EL($from) }. Remate con puntadas de retroceso a los dos lados de la abertura.
seam_to_turn-extra = Siga la costura doblando la esquina por debajo del extremo que monta, hasta donde empieza la prenda. Dé ahí un corte en el margen hasta las puntadas.
seam_to_turn-trim = Recorte los márgenes, uno más estrecho que otro, y corte las esquinas en diagonal, muy cerca de las puntadas.
seam_to_turn-trim_smooth = Recorte los márgenes, uno más estrecho que otro.
seam_to_turn-clip = Dé cortes en los márgenes que curvan hacia dentro, casi hasta las puntadas, más o menos cada { $spacing } donde la curva es más cerrada.
seam_to_turn-notch = Recorte cuñas en los márgenes que curvan hacia fuera, casi hasta las puntadas, más o menos cada { $spacing } donde la curva es más cerrada.
seam_to_turn-why = Una vez vuelta la pieza, los dos bordes quedan entre las capas. Poca tela en las esquinas da esquinas marcadas; las capas recortadas a distinto ancho no hacen relieve.

turn_out-turn = Vuelva del derecho { EL($pieces) } por la abertura { DEL($edge) } y empuje las esquinas hacia fuera con cuidado.
turn_out-press = Haga rodar la costura hasta el mismo borde y planche.
turn_out-why = Lo que se vuelve necesita un borde abierto; ese borde se cierra al final.

slip_stitch-turn = Doble { $allowance } hacia dentro en cada borde de la abertura { DEL($edge) }, planche y sujete con alfileres doblez con doblez.
slip_stitch-sew = Cosa a mano con puntada escondida: unos milímetros por dentro de un doblez, recto al otro, y así sucesivamente.
slip_stitch-why = El hilo corre por dentro de los dobleces, así que no se ve por ninguno de los dos lados.
