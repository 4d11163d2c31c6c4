# Frases de kit/sewing/operations/try_ons.py.

try_on-wear = Pruébese la prenda, del revés o del derecho, con los zapatos y la ropa interior que llevará con ella.
try_on-mark = Marque con alfileres o tiza: { $places }.
try_on-note = { $note }
try_on-found = Al probar la primera prenda se vio esto: { $note } El patrón ya lo tiene corregido.
try_on-look = Mire si pasa lo que se vio al probar la primera prenda: { $note }
try_on-changed = { $name }: hasta ahora { $before }, desde aquí { $after }.
try_on-changed_share = { $name }: hasta ahora { $before } %, desde aquí { $after } %.
try_on-changed_count = { $name }: hasta ahora { $before }, desde aquí { $after }.

try_on-line_all_along_in = La nueva línea de costura va { $size } hacia dentro en todo su largo: { $place }.
try_on-line_all_along_out = La nueva línea de costura va { $size } hacia fuera en todo su largo: { $place }.
try_on-line_to_nothing_in = La nueva línea de costura va { $size } hacia dentro junto a «{ $at }», hasta perderse junto a «{ $to }»: { $place }.
try_on-line_to_nothing_out = La nueva línea de costura va { $size } hacia fuera junto a «{ $at }», hasta perderse junto a «{ $to }»: { $place }.
try_on-line_early_in = La nueva línea de costura va { $size } hacia dentro junto a «{ $at }», hasta perderse a { $far } de ahí: { $place }.
try_on-line_early_out = La nueva línea de costura va { $size } hacia fuera junto a «{ $at }», hasta perderse a { $far } de ahí: { $place }.
try_on-line_unequal_in = La nueva línea de costura va hacia dentro, { $size } junto a «{ $at }» y { $other } junto a «{ $to }»: { $place }.
try_on-line_unequal_out = La nueva línea de costura va hacia fuera, { $size } junto a «{ $at }» y { $other } junto a «{ $to }»: { $place }.
try_on-line_middle_in = La nueva línea de costura va más hacia dentro, { $size }, a { $far } de «{ $at }», y hacia los dos extremos se acerca a la anterior: { $place }.
try_on-line_middle_out = La nueva línea de costura va más hacia fuera, { $size }, a { $far } de «{ $at }», y hacia los dos extremos se acerca a la anterior: { $place }.
try_on-line_crossing_in_out = La nueva línea de costura cruza la anterior; desde «{ $at }» va primero hasta { $size } hacia dentro y después hasta { $other } hacia fuera: { $place }.
try_on-line_crossing_out_in = La nueva línea de costura cruza la anterior; desde «{ $at }» va primero hasta { $size } hacia fuera y después hasta { $other } hacia dentro: { $place }.

try_on-unpick = Descosa donde las dos líneas se separan y vuelva a coser igual por la nueva: { $place }.
try_on-open = Abra al lado lo que haga falta y ciérrelo cuando la nueva línea esté cosida: { $place }.
try_on-basted = El hilván va por la línea anterior; quítelo e hilvane por la nueva: { $place }.
try_on-trim = Recorte a { $allowance } por fuera de la nueva línea: { $place }.
try_on-trim_line = Recorte por la nueva línea: { $place }.
try_on-left = Por fuera de la nueva línea queda poco margen, { $left } junto a «{ $at }»: { $place }.
try_on-left_far = Por fuera de la nueva línea queda poco margen, { $left } a { $far } de «{ $at }»: { $place }.
try_on-redrawn = { $piece }: sus bordes son otros ahora. Ponga la nueva pieza de patrón sobre la tela y marque sus líneas.
try_on-marks = { $piece }: marque de nuevo: { $marks }.
try_on-opening_moved = La abertura depende de una marca que ha cambiado de sitio: { $place }. Ahora va { $stretch }. Cierre la costura donde estaba la antigua, descósala a lo largo de la nueva y allí doble y cosa los bordes como antes.
try_on-row_moved = La costura depende de una marca que ha cambiado de sitio: { $place }. Ahora termina { $spot }. Descosa lo que sobra o siga cosiendo hasta allí.
try_on-folds = { $piece }: marque de nuevo: { $folds }.
try_on-folds_unpick = { $piece }: descosa, marque y cosa de nuevo: { $folds }.
try_on-fresh = { $piece }: corte ahora esta pieza.
try_on-gone = { $piece }: esta pieza ya no hace falta.
try_on-strip_longer = { $strip }: desde ahora { $size } más de largo.
try_on-strip_shorter = { $strip }: corte { $size } del largo.
try_on-strip_wider = { $strip }: desde ahora { $size } más de ancho.
try_on-strip_narrower = { $strip }: corte { $size } del ancho.

trim_to_fit-cut = Recorte la tela de más para la prueba; por fuera de la línea de costura quedan { $allowance } de margen: { $edge }.
trim_to_fit-why = Esa tela se cortó de más para la prueba; cuando la prenda sienta bien, en la costura solo abultaría.
