# Lo que va escrito en las imágenes (rótulos, leyendas) y en sus textos alternativos. Los rótulos tienen poco sitio:
# que sean cortos. Los títulos de piezas y los nombres de bordes y puntos son palabras de la lección.

# ---- cómo se corta una pieza

picture-cut =
    { $how ->
        [fold] cortar { $count } al doblez, { $cloth }
        [mirrored] cortar { $count } en espejo, { $cloth }
        [single] cortar { $count } en tela abierta, por el derecho, { $cloth }
       *[plain] cortar { $count }, { $cloth }
    }
picture-cut_interfacing = entretela: cortar { $count }
picture-cloth_main = tela principal
picture-cloth_interfacing = entretela
picture-cloth_lining = forro

# ---- qué más va escrito en una pieza

picture-edition = edición { $edition }
picture-place_on_fold = al doblez de la tela
picture-one_way = un solo sentido
picture-one_way_top = un solo sentido: flecha hacia arriba
picture-nap_one_way = tela con sentido: flecha hacia arriba
picture-nap_print = tela con sentido: casar el estampado
picture-grain_crosswise = hilo de trama
picture-grain_bias = al bies

# ---- texto alternativo de una pieza. $cut es el mensaje picture-cut

picture-piece = Pieza { $number } del patrón, { $title }: { $cut }.
picture-piece_edges = Bordes: { $edges }.
picture-edge_on_fold = { $edge } al doblez
picture-edge_allowance = { $edge } (margen: { $allowance })
picture-piece_marks = Marcas: { $marks }.
# Una marca que vale solo para una mitad; $half es uno de los dos mensajes siguientes; así va escrita en la pieza.
picture-mark_on_one = { $mark }: { $half }
picture-one_of_pair = solo { SIDE($piece, $side) }
picture-one_half =
    { $side ->
        [left] solo mitad izquierda
       *[right] solo mitad derecha
    }
picture-piece_darts = Pinzas: { $darts }.
picture-piece_pleats = Pliegues y alforzas: { $pleats }.
# Una pinza o un pliegue y cuánto recoge del borde.
picture-taking = { $name } (recoge { $intake })
picture-laid_crosswise = Colocada al hilo de trama.
picture-laid_bias = Colocada al bies.
picture-for_one_way = Para tela con sentido: flecha hacia arriba.
picture-for_print = Para tela con sentido: casar el estampado.

# ---- imágenes de los pasos de trazado

# Una pieza calcada sobre otra: su título y el borde que se nombra.
picture-traced_edge = { $piece }: { $edge }
picture-strip_cut = { $strip }, cortar { $count }
# Una medida con nombre y su valor, junto a una cota.
picture-measure = { $name } { $value }
# Una medida: el margen de un borde.
picture-allowance_of = margen ({ $edge })
picture-step_title = { $title }.
picture-step_pieces = Piezas: { $pieces }.
picture-step_new = Nuevo, en línea gruesa: { $lines }.
picture-step_points = Puntos nuevos: { $points }.
picture-step_measures = Medidas de este paso ({ $measures }).
picture-step_marked = Marcado: { $marks }.
picture-step_cut_line = Con la línea de corte alrededor: { $pieces }.
picture-step_removed = Quitado, en línea discontinua: { $lines }.
picture-step_strip = { $strip }: tira de { $length } de largo y { $width } de ancho.
picture-lettered_point = { $letter }, { $point }
picture-enlarged = ampliado { $times } veces
picture-step_order = En el orden de la mano ({ $piece }): { $moves }.
picture-step_squares = Ángulo recto: { $places }.
picture-step_tangents = Entra sin formar esquina: { $places }.
picture-step_diagonals = Las diagonales están trazadas y marcadas como iguales.
picture-step_enlarged_too = Ampliado al lado: { $measures }.
picture-hand_mark = medir hasta un punto
picture-hand_across = llevar a escuadra
picture-hand_rule = trazar con la regla: { $line }
picture-hand_curve = dibujar: { $line }
picture-hand_parallel = trazar la paralela: { $line }
picture-hand_trace = calcar: { $piece }
picture-hand_mirror = reflejar
picture-sign_on = { $line } con { $other }
picture-hand_point = marcar: { $point }
# Una línea o marca y su pieza, las dos por su nombre simple.
picture-line_on = { $line } ({ $piece })
picture-notch_on =
    { $kind ->
        [double] un piquete doble en { $edge } ({ $piece })
       *[single] un piquete simple en { $edge } ({ $piece })
    }
picture-draft = Trazado de { $title } para { $body }: { $pieces }.
picture-draft_piece = { $piece }, { $width } por { $height }

# ---- imágenes de costura

# El nombre de una capa donde se ve; las letras van sobre la capa.
picture-layer_face =
    { $face ->
        [right] { $piece }: derecho
        [wrong] { $piece }: revés
       *[interfacing] { $piece }: entretela
    }
picture-half =
    { $side ->
        [left] { $piece }, izquierda
        [right] { $piece }, derecha
       *[both] { $piece }
    }
picture-section = sección
picture-strip_as_cut = { $strip }, tira sin doblar
picture-strip_laid = derecho con derecho, cosidos
picture-strip_opened = abierta y planchada
picture-strip_folded = tira doblada y cosida
picture-strip_sewn = cosida, con el revés por fuera
picture-strip_hemmed = con dobladillo
picture-strip_turned = vuelta y planchada
picture-turn_over = dar la vuelta
picture-floor = suelo
picture-scene_layers = De abajo arriba: { $layers }.
# Una capa: $piece es picture-half; $lies, picture-lies_...
picture-scene_layer =
    { $face ->
        [right] { $piece }, con el derecho hacia arriba, { $lies }
        [wrong] { $piece }, con el revés hacia arriba, { $lies }
       *[interfacing] { $piece }, entretela, { $lies }
    }
picture-lies_together = encima, borde con borde
picture-lies_open = al lado, tras abrir la costura
picture-lies_flat = en plano
picture-scene_rows = Costuras: { $runs }.
picture-scene_run =
    { $side ->
        [left] { $edges } { DEL(SIDE($piece, $side)) }
        [right] { $edges } { DEL(SIDE($piece, $side)) }
       *[both] { $edges } { DEL($piece) }
    }
picture-scene_strip = Tira: { $strip }.
picture-scene_empty = Imagen de costura.

# ---- la prenda en plano

picture-on_body_worn = { $title } sobre el cuerpo ({ $body }), por delante y por detrás.
picture-on_body_hand = { $title }, en la mano, por delante y por detrás.
picture-on_body_shoulder = { $title }, al hombro, por delante y por detrás.
picture-on_body_head = { $title } en la cabeza, por delante y por detrás.
picture-flat_front = { $title }: prenda en plano, vista por delante: { $pieces }.
picture-flat_back = { $title }: prenda en plano, vista por detrás: { $pieces }.
picture-flat_finished = Medidas de la prenda acabada: { $sizes }.
picture-flat_with = Con { $pieces }.
picture-flat_beside = Al lado: { $pieces }.
picture-flat_left_out = No se muestra: { $pieces }.

# ---- la leyenda

picture-legend_right_side = derecho
picture-legend_wrong_side = revés
picture-legend_interfacing = entretela
picture-legend_facing = vista
picture-legend_strip = tira
picture-legend_lining = forro
picture-legend_cut = línea de corte
picture-legend_stitch = línea de costura
picture-legend_fold = doblez
picture-legend_mark = marca
picture-legend_lengthen = alargar o acortar aquí
picture-legend_placement = aquí se coloca una pieza
picture-legend_pleat = línea de pliegue o alforza
picture-legend_new = nuevo en este paso
picture-legend_traced = calcado
picture-legend_aid = trazado de paso
picture-legend_check = debe ser igual o seguir sin quiebre
picture-legend_removed = se quita
picture-legend_guide = línea auxiliar
picture-legend_row = costura de este paso
picture-legend_row_sign = principio, sentido y fin de una costura
picture-legend_crease = borde doblado
picture-legend_baste = hilván o frunce
picture-legend_hand = puntadas a mano
picture-legend_old_row = costura ya hecha
picture-legend_hidden = queda debajo
picture-legend_press = planchar hacia aquí
picture-legend_grain = hilo de la tela
picture-legend_notch = piquetes
picture-legend_kept = de un paso anterior
picture-legend_lens = ampliado al lado
picture-legend_sign_square = ángulo recto
picture-legend_sign_tangent = sigue sin esquina
picture-legend_pin = prendido con alfiler
picture-legend_point_new = punto nuevo
picture-legend_point_kept = punto anterior
picture-legend_ply = tela vista en sección
picture-legend_ply_face = derecho de la tela, visto en sección
picture-legend_cut_mark = sección tomada aquí, vista en este sentido
picture-legend_needle = costura vista en sección

# ---- la figura de medidas

picture-figure_title_front = Dónde medir, por delante
picture-figure_title_back = Dónde medir, por detrás
picture-figure_front = Una figura de pie vista por delante, con una cinta numerada para cada medida: { $tapes }.
picture-figure_back = Una figura de pie vista por detrás, con una cinta numerada para cada medida: { $tapes }.
picture-figure_none = ninguna

# ---- costuras comprobadas haciendo rodar un borde sobre el otro, lugar por lugar

picture-walk_title = { $rolled } { DEL($rolled_piece) }, rodando sobre { EL($still) } { DEL($still_piece) }
picture-walk_title_sentence = { $title }.
picture-walk_numbered = { $number }: { $place }.
# Un lugar en los dos bordes: qué es, a qué distancia, y picture-walk_equal o picture-walk_longer.
picture-walk_place = { $place } a { $at }: { $difference }
picture-walk_place_alone = { $place } a { $at }, solo en { $piece }
picture-walk_notch_alone = { $place } a { $at }, solo en { $piece }, sin pareja
picture-walk_equal = iguales
picture-walk_longer = { $piece } mide { $by } más
picture-walk_all = En total { $first } y { $second }: { $difference }.
picture-walk_all_eased = En total { $first } y { $second }: { $difference }, que se embebe.
picture-walk_heads = izquierda: { $first }; derecha: { $second }
picture-walk_start = comienzo
picture-walk_end = final: { $difference }

# ---- el lugar de un hallazgo

picture-corner_title = Dónde la esquina no casa
picture-corner_bends = se quiebra { $degrees }°
picture-corner_differs = esquinas distintas en { $degrees }°
picture-angle = { $degrees }°
# Un borde y su pieza, junto al borde.
picture-corner_edge = { $edge }, { $piece }

# ---- un contorno calcado

picture-outline = Contorno { $outline } con { $corners } esquinas, numeradas en el sentido de las agujas del reloj desde la inferior izquierda

# Tela cortada, después de una prueba.
picture-recut = { $piece }: línea de costura anterior y nueva
picture-tried_on_alt = La prenda tal como está cosida hasta aquí, por delante y por detrás.
picture-tried_on_level = Hay alfileres en todo el bajo, a la misma altura del suelo.
picture-recut_alt = { $piece } como se cortó, con el revés hacia arriba: la línea de costura anterior fina y discontinua, la nueva gruesa, con las distancias entre las dos; lo que se recorta va rayado.
picture-recut_left = quedan { $size }
picture-recut_lack = faltan { $size }

# Tela de más para la prueba, además del margen.
picture-with_extra = { $width }, incluye { $extra } para la prueba
picture-edge_allowance_extra = { $edge } con { $allowance } de margen y { $extra } para la prueba
picture-extra_of = para la prueba, { $edge }
# Tela de más que se recorta cuando la prenda sienta bien.
picture-trim_extra = { $piece }: recortar la tela de más
picture-trim_extra_alt = { $piece } como se cortó, con el revés hacia arriba: la tela de más que se recorta va rayada; la línea de costura, discontinua.

# ---- lengthen and shorten lines

picture-lengthen_here = alargar o acortar aquí
picture-piece_lengthen =
 { $count ->
    [one] La cruza una línea para alargar o acortar.
   *[other] La cruzan { $count } líneas para alargar o acortar.
 }
