# Frases para rematar, pespuntear, reforzar y probar.

edge_finish-sew = { START($finish) } { EL($edge) }.
edge_finish-why = Las puntadas sobre el borde sujetan los hilos que se deshilacharían.

topstitch-sew = Pespuntee { EL($edge) } por el derecho, a { $distance } del borde.
topstitch-edge = Pespuntee { EL($edge) } al filo por el derecho, a { $distance } del borde.
topstitch-sew_rows = Por el derecho, haga { $rows } pespuntes en { EL($edge) }, separados { $apart }, el primero a { $distance } del borde.
topstitch-edge_rows = Por el derecho, haga { $rows } pespuntes en { EL($edge) }, separados { $apart }, el primero al filo, a { $distance } del borde.
topstitch-why = Un pespunte por el derecho mantiene plano el borde y las capas en su sitio, y está hecho para verse.

staystitch-sew = Haga una costura de refuerzo a lo largo { DEL($edge) }, a { $distance } por fuera de la línea de costura, para que el borde no se dé de sí.
staystitch-why = Una curva que cruza el hilo de la tela se da de sí en cuanto se maneja.
