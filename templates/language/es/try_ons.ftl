# Frases de kit/sewing/operations/try_ons.py.

try_on-wear = Pruébese la prenda, del revés o del derecho, con los zapatos y la ropa interior que llevará con ella.
try_on-wear_head = Pruébelo en la cabeza, del revés o del derecho.
try_on-mark = Marque { EL($places) } con alfileres o tiza.
try_on-note = { $note }
try_on-found = Al probar la primera prenda se vio esto: { $note } El patrón ya lo tiene corregido.
try_on-look = Mire si pasa lo que se vio al probar la primera prenda: { $note }
try_on-changed = { $name }: hasta ahora { $before }, desde aquí { $after }.
try_on-changed_share = { $name }: hasta ahora { $before } %, desde aquí { $after } %.
try_on-changed_count = { $name }: hasta ahora { $before }, desde aquí { $after }.

try_on-line_all_along_in = La nueva línea { DEL($place) } va { $size } hacia dentro en todo su largo.
try_on-line_all_along_out = La nueva línea { DEL($place) } va { $size } hacia fuera en todo su largo.
try_on-line_to_nothing_in = La nueva línea { DEL($place) } va { $size } hacia dentro en { EL($at) }, hasta perderse en { EL($to) }.
try_on-line_to_nothing_out = La nueva línea { DEL($place) } va { $size } hacia fuera en { EL($at) }, hasta perderse en { EL($to) }.
try_on-line_early_in = La nueva línea { DEL($place) } va { $size } hacia dentro en { EL($at) }, hasta perderse a { $far } de ahí.
try_on-line_early_out = La nueva línea { DEL($place) } va { $size } hacia fuera en { EL($at) }, hasta perderse a { $far } de ahí.
try_on-line_unequal_in = La nueva línea { DEL($place) } va hacia dentro, { $size } en { EL($at) } y { $other } en { EL($to) }.
try_on-line_unequal_out = La nueva línea { DEL($place) } va hacia fuera, { $size } en { EL($at) } y { $other } en { EL($to) }.
try_on-line_middle_in = La nueva línea { DEL($place) } va más hacia dentro, { $size }, a { $far } { DEL($at) }, y hacia los dos extremos se acerca a la anterior.
try_on-line_middle_out = La nueva línea { DEL($place) } va más hacia fuera, { $size }, a { $far } { DEL($at) }, y hacia los dos extremos se acerca a la anterior.
try_on-line_crossing_in_out = La nueva línea { DEL($place) } cruza la anterior; desde { EL($at) } va primero hasta { $size } hacia dentro y después hasta { $other } hacia fuera.
try_on-line_crossing_out_in = La nueva línea { DEL($place) } cruza la anterior; desde { EL($at) } va primero hasta { $size } hacia fuera y después hasta { $other } hacia dentro.

try_on-unpick = Descosa { EL($place) } donde las dos líneas se separan y vuelva a coser igual por la nueva.
try_on-open = Abra { EL($place) } al lado lo que haga falta y ciérrelo cuando la nueva línea esté cosida.
try_on-basted = El hilván { DEL($place) } va por la línea anterior; quítelo e hilvane por la nueva.
try_on-trim = Recorte { EL($place) } a { $allowance } por fuera de la nueva línea.
try_on-trim_line = Recorte { EL($place) } por la nueva línea.
try_on-left = Por fuera de la nueva línea { DEL($place) } queda poco margen: { $left } en { EL($at) }.
try_on-left_far = Por fuera de la nueva línea { DEL($place) } queda poco margen: { $left } a { $far } { DEL($at) }.
try_on-redrawn = { $piece }: sus bordes son otros ahora. Ponga la nueva pieza de patrón sobre la tela y marque sus líneas.
try_on-marks = { $piece }: marque de nuevo { EL($marks) }.
try_on-opening_moved = La abertura { DEL($place) } depende de una marca que ha cambiado de sitio. Ahora va { $stretch }. Cierre la costura donde estaba la antigua, descósala a lo largo de la nueva y allí doble y cosa los bordes como antes.
try_on-row_moved = La fila de puntadas { DEL($place) } depende de una marca que ha cambiado de sitio. Ahora termina { $spot }. Descosa lo que sobra o siga cosiendo hasta allí.
try_on-folds = { $piece }: marque de nuevo { EL($folds) }.
try_on-folds_unpick = { $piece }: descosa { EL($folds) }, marque y cosa de nuevo.
try_on-fresh = { $piece }: corte ahora esta pieza.
try_on-gone = { $piece }: esta pieza ya no hace falta.
try_on-strip_longer = { $strip }: desde ahora { $size } más de largo.
try_on-strip_shorter = { $strip }: corte { $size } del largo.
try_on-strip_wider = { $strip }: desde ahora { $size } más de ancho.
try_on-strip_narrower = { $strip }: corte { $size } del ancho.

trim_to_fit-cut = Recorte la tela de más para la prueba en { EL($edge) }; por fuera de la línea de costura quedan { $allowance } de margen.
trim_to_fit-why = Esa tela se cortó de más para la prueba; cuando la prenda sienta bien, en la costura solo abultaría.
