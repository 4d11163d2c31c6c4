# El panel de deslizadores junto al trazado, lo que se muestra bajo las celdas y los formularios para un cuerpo y para
# nombrar bordes. Todo se lee en pantalla.

# Talla, unidades y vista.
panel-size = Talla
panel-size_tip = La talla en la que se traza la lección
# Una de las tallas que se pueden elegir: $name es el nombre de alguien a quien se midió.
panel-own_measurements = { $name } (medidas propias)
panel-units = Unidades
panel-units_cm = cm
panel-units_inch = pulg.
panel-units_cm_tip = Primero centímetros
panel-units_inch_tip = Primero pulgadas
panel-view = Mostrar
panel-view_tip = Lo que muestra la imagen
panel-view_draft = El trazado
panel-view_step = Paso { $number }: { $title }
panel-view_flat_front = En plano, por delante
panel-view_flat_back = En plano, por detrás
panel-view_worn = Puesta

# Valores. Un conjunto de valores con nombre; $title es el nombre que le da la lección.
panel-preset = Valores
panel-preset_tip = Conjuntos de valores para elegir
panel-preset_none = como en los deslizadores
panel-preset_default = Los de la lección
panel-preset_opened = Como quedaron en la última sesión
panel-reset = Restablecer valores
panel-reset_tip = Restablece todos los valores de la lección
panel-fresh = Empezar de nuevo
panel-fresh_tip = Dejar a un lado los valores de la última sesión: todos vuelven a los de la lección
panel-left_values = Los valores son los de la última sesión. «Empezar de nuevo» los devuelve todos a los de la lección.
panel-undo = Deshacer
panel-undo_tip = Deshace el último cambio de valores
panel-redo = Rehacer
panel-redo_tip = Vuelve a hacer el último cambio deshecho
panel-old_picture = Esta imagen es anterior: el último trazado que salió bien.

# Una fila: el nombre de un parámetro y por qué está ahí.
panel-row_tip = { $name }: { $why }
panel-follows = Sale de sus medidas ({ $measures }).
panel-follows_size = Tiene un valor para cada talla.
# Junto a un valor durante una prueba: cuánto era antes.
panel-before = antes { $value }
# Junto a un valor del que la comprobación tiene algo que decir.
panel-marked = { $count ->
    [one] La comprobación nombra este valor.
   *[other] La comprobación nombra este valor { $count } veces.
}
# $level es una de las palabras de los niveles de abajo; $what, el hallazgo entero.
panel-marked_with = { $level }: { $what }

# Debajo de la imagen.
panel-finished = Medidas de la prenda acabada
# Junto a una medida acabada. $over es una medida del cuerpo; $ease, una longitud en los dos sistemas.
panel-ease = { $ease } de holgura sobre { $over }
panel-ease_less = { $ease } menos que { $over }
panel-proof = Comprobación
panel-checking = Comprobando…
panel-passed = Todo está bien.
panel-level_error = Por corregir
panel-level_warning = Mire otra vez
panel-level_note = Nota
# $level es una de las tres palabras de arriba.
panel-finding = { $level }.
# $names son los parámetros de los que depende un hallazgo.
panel-depends = Depende de: { $names }.
panel-show_where = Mostrar dónde
panel-estimates = Estimadas de la tabla de tallas para { $name }, no medidas: { $measures }.
# $titles son títulos de pasos entre comillas, con comas.
panel-stale = La celda de { $titles } ya no está en el cuaderno, pero el paso sigue en el trazado. Para quitarlo, reinicie el núcleo (kernel) y ejecute todas las celdas; si la celda es nueva, guarde el cuaderno.
panel-quoted = «{ $title }»

# Tela y páginas.
panel-figures = Tela y páginas
panel-figures_tip = Calcula cuánta tela y cuántas páginas hacen falta
# $width es un ancho de tela como 140 cm (55 pulg.).
panel-cloth_main = Tela, { $width } de ancho
panel-cloth_lining = Forro, { $width } de ancho
panel-cloth_interfacing = Entretela, { $width } de ancho
# $paper es un tamaño de papel, como A4.
panel-pages_on = Páginas, { $paper }
panel-pages = { $count ->
    [one] { $count } página
   *[other] { $count } páginas
}
# Una cifra que no se ha vuelto a calcular desde que se movió un valor.
panel-figure_was = antes { $figure }
panel-figure_waiting = …
panel-figure_none = todavía no se sabe
# En lugar de un largo: una pieza es más ancha que la tela.
panel-figure_narrow = demasiado estrecha

# Después de la prueba: lo que alguien cambia al probarse la prenda, y por qué.
panel-tryon = Después de la prueba
panel-tryon_tip = Anota lo que cambia una prueba, y por qué
panel-tryon_name = Prueba
# Cómo se llama al principio una prueba nueva; $number cuenta las pruebas de la lección.
panel-tryon_title = Prueba { $number }
panel-tryon_begin = Empezar
panel-tryon_begin_tip = Guarda todos los valores como están; después se mueven los deslizadores
panel-tryon_going = Prueba: { $title }. Mueva los deslizadores hasta donde lo pida la prueba.
panel-tryon_nothing = Todavía no ha cambiado nada.
panel-tryon_piece = Pieza
panel-tryon_most = la que más se movió
panel-tryon_why = Por qué
panel-tryon_why_hint = Lo que se vio en el cuerpo, con sus palabras
panel-tryon_keep = Guardar
panel-tryon_keep_tip = Anota los cambios con su motivo
panel-tryon_cancel = Cancelar
panel-tryon_cancel_tip = Abandona la prueba y restablece los valores
panel-tryon_kept = Pruebas guardadas
panel-tryon_none = elija una prueba
panel-tryon_one_dated = { $title }, { $date }
panel-tryon_back = Retirar
panel-tryon_back_tip = Quita esta prueba y restablece sus valores
panel-tryon_copy = Para tenerla en el cuaderno, copie esto en una celda:
# Algo que el programa no previó; $kind y $what son técnicos.
panel-kit_wrong = Ha fallado algo del propio programa ({ $kind }: { $what }). Sus valores se conservan. Devuelva el último valor que cambió y ejecute la celda otra vez.
# $trouble es una frase; $line, la línea del código de la lección que la causó.
panel-line_of_cell = { $trouble } (Línea { $number } de la celda: { $line })

# Debajo de una celda.
panel-cell_finished = { $title }:

# El formulario para un cuerpo.
panel-body_mine = Mis medidas
panel-body_name = Nombre
panel-body_name_tip = De quién es el cuerpo
panel-body_cm_tip = Un número sin unidad está en cm
panel-body_inch_tip = Un número sin unidad está en pulgadas
panel-body_more = Mostrar todas las medidas
panel-body_use = Usar este cuerpo
panel-body_use_tip = Traza la lección para este cuerpo
panel-body_file = Archivo
# El nombre de un archivo: letras sin acentos y .toml al final.
panel-body_file_mine = mio.toml
panel-body_save = Guardar
panel-body_save_tip = Guarda este cuerpo en el archivo
panel-body_load = Cargar
panel-body_load_tip = Lee un cuerpo del archivo
panel-body_empty = sin medir
panel-body_value = { $value }.
panel-body_estimated = { $value }, estimada.
panel-body_used = La lección está trazada ahora para { $name }.
# $code es una línea de código.
panel-body_saved_code = Guardado en { $path }. Para hacer el cuadernillo de este cuerpo, ponga { $code } en una celda debajo de la lección.
panel-body_loaded = { $name } se ha leído de { $path }. Pulse «Usar este cuerpo» para trazar la lección con esas medidas.

# El formulario que nombra los bordes de un contorno calcado.
panel-edges_copy_tip = Texto para copiar en una celda
panel-edges_done = Todos los bordes tienen nombre. Conserve esto en el cuaderno:
panel-edges_piece = Pieza
panel-edges_piece_tip = Cómo se llama la pieza en el código; vacío, para dejar fuera este contorno
# Un borde entre dos esquinas numeradas; $length es su largo.
panel-edges_edge = de { $from } a { $to } ({ $length })
panel-edges_edge_tip = El borde de la esquina { $from } a la esquina { $to }
panel-edges_waist = Línea de cintura
panel-edges_waist_tip = Dónde está la línea de cintura
panel-edges_waist_hint = esquina, borde o 20 cm por encima del punto más bajo
panel-edges_outline = Contorno { $name }

panel-fit = Arreglos de talla
panel-fit_tip = Adapta el patrón a una figura: alargar, busto grande, espalda hundida y otros
panel-fit_choose = Elegir un arreglo
panel-fit_add = Añadir
panel-fit_by_size = Una talla de la tabla no pide arreglos por sí misma. Elija un cuerpo para leer lo que pide, o añada un arreglo a mano.
panel-fit_take =
    { $count ->
        [0] Trazar la talla { $size }
        [one] Trazar la talla { $size } con este arreglo
       *[other] Trazar la talla { $size } con estos arreglos
    }
panel-fit_add_tip = Añade este arreglo con su propio deslizador
panel-fit_take_tip = Elige la talla aconsejada para este cuerpo y ajusta los arreglos que pide
