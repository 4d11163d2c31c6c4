# Frases de kit/sewing/operations/try_ons.py.

try_on-wear = Pruébese la prenda, del revés o del derecho, con los zapatos y la ropa interior que llevará con ella.
try_on-mark = Marque con alfileres o tiza: { $places }.
try_on-note = { $note }
try_on-found = Al probar la primera prenda se vio esto: { $note } El patrón ya lo tiene corregido.
try_on-look = Mire si pasa lo que se vio al probar la primera prenda: { $note }
try_on-changed = { $name }: hasta ahora { $before }, desde aquí { $after }.
try_on-changed_share = { $name }: hasta ahora { $before } %, desde aquí { $after } %.
try_on-changed_count = { $name }: hasta ahora { $before }, desde aquí { $after }.

try_on-line_all_along_in = Nueva línea de costura ({ $place }): va { $size } por dentro de la anterior en todo su largo.
try_on-line_all_along_out = Nueva línea de costura ({ $place }): va { $size } por fuera de la anterior en todo su largo.
try_on-line_to_nothing_in = Nueva línea de costura ({ $place }): { $size } hacia dentro en { $at }, hasta perderse en { $to }.
try_on-line_to_nothing_out = Nueva línea de costura ({ $place }): { $size } hacia fuera en { $at }, hasta perderse en { $to }.
try_on-line_early_in = Nueva línea de costura ({ $place }): { $size } hacia dentro en { $at }, hasta perderse a { $far } de ahí.
try_on-line_early_out = Nueva línea de costura ({ $place }): { $size } hacia fuera en { $at }, hasta perderse a { $far } de ahí.
try_on-line_unequal_in = Nueva línea de costura ({ $place }): hacia dentro, { $size } en { $at } y { $other } en { $to }.
try_on-line_unequal_out = Nueva línea de costura ({ $place }): hacia fuera, { $size } en { $at } y { $other } en { $to }.
try_on-line_middle_in = Nueva línea de costura ({ $place }): donde más entra, { $size }, está a { $far } de { $at }; hacia los dos extremos se acerca a la anterior.
try_on-line_middle_out = Nueva línea de costura ({ $place }): donde más sale, { $size }, está a { $far } de { $at }; hacia los dos extremos se acerca a la anterior.
try_on-line_crossing_in_out = Nueva línea de costura ({ $place }): cruza la anterior. Desde { $at } va primero hasta { $size } hacia dentro y después hasta { $other } hacia fuera.
try_on-line_crossing_out_in = Nueva línea de costura ({ $place }): cruza la anterior. Desde { $at } va primero hasta { $size } hacia fuera y después hasta { $other } hacia dentro.

try_on-unpick = Descosa { $place } donde las dos líneas se separan y vuelva a coser igual por la nueva.
try_on-open = Abra al lado lo que haga falta ({ $place }) y ciérrelo cuando la nueva línea esté cosida.
try_on-basted = El hilván va por la línea anterior ({ $place }): quítelo e hilvane por la nueva.
try_on-trim = Recorte { $place } a { $allowance } por fuera de la nueva línea.
try_on-trim_line = Recorte { $place } por la nueva línea.
try_on-left = Por fuera de la nueva línea ({ $place }) no quedan más que { $left } de margen en { $at }.
try_on-left_far = Por fuera de la nueva línea ({ $place }) no quedan más que { $left } de margen a { $far } de { $at }.
try_on-redrawn = { $piece }: sus bordes son otros ahora. Ponga la nueva pieza de patrón sobre la tela y marque sus líneas.
try_on-marks = { $piece }: marque de nuevo: { $marks }.
try_on-folds = { $piece }: marque de nuevo: { $folds }.
try_on-folds_unpick = { $piece }: descosa, marque y cosa de nuevo: { $folds }.
try_on-fresh = { $piece }: corte ahora esta pieza.
try_on-gone = { $piece }: esta pieza ya no hace falta.
try_on-strip_longer = { $strip }: desde ahora { $size } más de largo.
try_on-strip_shorter = { $strip }: corte { $size } del largo.
try_on-strip_wider = { $strip }: desde ahora { $size } más de ancho.
try_on-strip_narrower = { $strip }: corte { $size } del ancho.

trim_to_fit-cut = Recorte la tela de más para la prueba ({ $edge }): por fuera de la línea de costura quedan { $allowance } de margen.
trim_to_fit-why = Esa tela se cortó de más para la prueba; cuando la prenda sienta bien, en la costura solo abultaría.
