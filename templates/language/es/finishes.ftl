# Frases para rematar, pespuntear, reforzar y probar.

edge_finish-sew = Remate con { $finish }: { $edge }.
edge_finish-why = Las puntadas sobre el canto sujetan los hilos que se deshilacharían.

topstitch-sew = Pespuntee por el derecho a { $distance } del borde: { $edge }.
topstitch-edge = Pespuntee al filo por el derecho, a { $distance } del borde: { $edge }.
topstitch-sew_rows = Por el derecho, haga { $rows } pespuntes separados { $apart }, el primero a { $distance } del borde: { $edge }.
topstitch-edge_rows = Por el derecho, haga { $rows } pespuntes separados { $apart }, el primero al filo, a { $distance } del borde: { $edge }.
topstitch-why = Un pespunte por el derecho mantiene plano el borde y las capas en su sitio, y está hecho para verse.

staystitch-sew = Haga una costura de refuerzo a { $distance } por fuera de la línea de costura, para que no se dé de sí: { $edge }.
staystitch-why = Una curva que cruza el hilo de la tela se da de sí en cuanto se maneja.
