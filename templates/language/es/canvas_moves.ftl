# Trazar en el lienzo: se elige una operación y se escribe la celda del paso. Las frases que empiezan por
# «canvas_moves-point», «-extend», «-edge», etc. se leen en el paso; $amount es la longitud trazada.

canvas_moves-draw = Trazar
canvas_moves-choose = Haga clic en bordes y puntos para elegirlos y otra vez para soltarlos; después elija una operación.
canvas_moves-move = Operación
canvas_moves-way = Cómo
canvas_moves-amount = Cantidad
canvas_moves-title = Título
canvas_moves-measure = Nombre de la medida
canvas_moves-thing = Nombre de lo que se traza
canvas_moves-why = Por qué (para quien aprende; puede quedar vacío)
canvas_moves-says = En el paso se leerá
canvas_moves-write = Escribir la celda
canvas_moves-copy = Copiar la celda
canvas_moves-copied = Copiado.
canvas_moves-source = La celda
canvas_moves-cancel = Cancelar
canvas_moves-grip = Arrastre para fijar la cantidad
canvas_moves-writing = Escribiendo la celda…
canvas_moves-written = La celda está en el cuaderno y se ha ejecutado. Guarde el cuaderno para conservarla.
canvas_moves-not_run = La celda está en el cuaderno, pero no se ha ejecutado. Haga clic en ella y pulse Mayús e Intro.
# $step: el título del paso al que debe seguir la celda.
canvas_moves-by_hand = El programa de este cuaderno no deja que el lienzo añada una celda. Copie el texto, añada una celda de código debajo de «{ $step }», péguelo ahí y ejecútela.
canvas_moves-by_hand_first = El programa de este cuaderno no deja que el lienzo añada una celda. Copie el texto, añada una celda de código debajo de la que crea la lección, péguelo ahí y ejecútela.
# $chosen: los bordes y puntos elegidos, con sus piezas.
canvas_moves-chosen = Elegido: { $chosen }
canvas_moves-one_chosen = { $name } ({ $piece })
canvas_moves-corner_dot = Esquina de { $first } y { $second }, { $piece }

# Las operaciones del menú.
canvas_moves-name_point = Mover un punto
canvas_moves-name_extend = Prolongar un borde
canvas_moves-name_edge = Mover un borde en paralelo
canvas_moves-name_square = Trazar a escuadra un borde nuevo
canvas_moves-name_round = Redondear una esquina
canvas_moves-name_curve = Trazar un borde en curva
canvas_moves-name_into = Curva de un borde a otro
canvas_moves-name_between = Recta o curva entre dos puntos
canvas_moves-name_line = Línea auxiliar a escuadra
canvas_moves-name_parallel = Línea auxiliar paralela
canvas_moves-name_mirror = Calcar la otra mitad
canvas_moves-name_spread = Cortar y abrir
canvas_moves-name_cut = Cortar la pieza en dos
canvas_moves-name_opening = Dejar una abertura
canvas_moves-name_notch = Piquete

# Cómo se hace una operación.
canvas_moves-way_up = hacia arriba
canvas_moves-way_down = hacia abajo
canvas_moves-way_out = hacia fuera, al costado
canvas_moves-way_in = hacia dentro, al centro
canvas_moves-at_edge = junto a { $edge }
canvas_moves-square_way = junto a { $edge }, { $way }
canvas_moves-inside = por dentro de la pieza
canvas_moves-outside = por fuera de la pieza
canvas_moves-curve_square = a escuadra con los dos vecinos
canvas_moves-curve_smooth = en continuidad con los dos vecinos
canvas_moves-curve_square_smooth = comienzo a escuadra, final en continuidad
canvas_moves-curve_smooth_square = comienzo en continuidad, final a escuadra
canvas_moves-into_smooth = en continuidad con él, sin esquina
canvas_moves-into_square = a escuadra con él
canvas_moves-between_straight = una recta
canvas_moves-between_square = una curva a escuadra con los bordes de esos puntos
canvas_moves-between_smooth = una curva en continuidad con los bordes de esos puntos
canvas_moves-spread_parallel = lo mismo en todo el largo
canvas_moves-spread_hinged = solo en el primer borde
canvas_moves-in_middle = en el centro
canvas_moves-from_edge = desde { $edge }

# Lo que dice el paso.
canvas_moves-corner = esquina de { $first } y { $second }
canvas_moves-ruled_again = Vuelva a trazar { $edge } en línea recta desde su otro extremo hasta ahí.
canvas_moves-curved_again = Vuelva a trazar { $edge } desde ahí en una sola curva continua, con la dirección que tenía en los dos extremos.
canvas_moves-allowed = Añada { $amount } de margen de costura: { $edge }.
canvas_moves-on_pieces = Haga lo mismo en estas piezas: { $pieces }.

canvas_moves-point_title = { $way ->
    [up] Subir { $point }
    [down] Bajar { $point }
    [out] Mover hacia fuera { $point }
   *[in] Mover hacia dentro { $point }
}
canvas_moves-point = { $way ->
    [up] Desde { $point } mida a escuadra { $amount } hacia arriba y marque.
    [down] Desde { $point } mida a escuadra { $amount } hacia abajo y marque.
    [out] Desde { $point } mida { $amount } en línea recta hacia el costado y marque.
   *[in] Desde { $point } mida { $amount } en línea recta hacia el centro y marque.
}
canvas_moves-extend_title = Prolongar { $edge }
canvas_moves-extend = Prolongue { $edge } en línea recta { $amount } más allá de { $beside }.
canvas_moves-edge_title = { $way ->
    [up] Subir { $edge }
    [down] Bajar { $edge }
    [out] Mover hacia fuera { $edge }
   *[in] Mover hacia dentro { $edge }
}
canvas_moves-edge = { $way ->
    [up] Vuelva a trazar { $edge } en paralelo, { $amount } más arriba. Recorte { $before } y { $after } hasta encontrarlo, o prolónguelos en línea recta.
    [down] Vuelva a trazar { $edge } en paralelo, { $amount } más abajo. Recorte { $before } y { $after } hasta encontrarlo, o prolónguelos en línea recta.
    [out] Vuelva a trazar { $edge } en paralelo, { $amount } más afuera. Recorte { $before } y { $after } hasta encontrarlo, o prolónguelos en línea recta.
   *[in] Vuelva a trazar { $edge } en paralelo, { $amount } más adentro. Recorte { $before } y { $after } hasta encontrarlo, o prolónguelos en línea recta.
}
canvas_moves-square_title = Trazar a escuadra con { $edge }
canvas_moves-square = { $way ->
    [up] En el extremo de { $edge } junto a { $beside }, trace a escuadra { $amount } hacia arriba. Nombre de este borde: { $thing }.
    [down] En el extremo de { $edge } junto a { $beside }, trace a escuadra { $amount } hacia abajo. Nombre de este borde: { $thing }.
    [out] En el extremo de { $edge } junto a { $beside }, trace a escuadra { $amount } hacia fuera. Nombre de este borde: { $thing }.
   *[in] En el extremo de { $edge } junto a { $beside }, trace a escuadra { $amount } hacia dentro. Nombre de este borde: { $thing }.
}
canvas_moves-line_title = Línea a escuadra con { $edge }
canvas_moves-line = { $way ->
    [up] En el extremo de { $edge } junto a { $beside }, mida a escuadra { $amount } hacia arriba y trace la línea. Su nombre: { $thing }.
    [down] En el extremo de { $edge } junto a { $beside }, mida a escuadra { $amount } hacia abajo y trace la línea. Su nombre: { $thing }.
    [out] En el extremo de { $edge } junto a { $beside }, mida a escuadra { $amount } hacia fuera y trace la línea. Su nombre: { $thing }.
   *[in] En el extremo de { $edge } junto a { $beside }, mida a escuadra { $amount } hacia dentro y trace la línea. Su nombre: { $thing }.
}
canvas_moves-round_title = Redondear la esquina de { $first } y { $second }
canvas_moves-round = Marque { $amount } desde la esquina en { $first } y en { $second }. Una las marcas con una curva que entre en los dos bordes sin hacer esquina.
canvas_moves-curve_title = Trazar en curva { $edge }
canvas_moves-curve = { $way ->
    [square] Vuelva a trazar { $edge } en una sola curva, a escuadra con { $before } y a escuadra con { $after }. Su curvatura es { $amount } de la de una curva regular.
    [smooth] Vuelva a trazar { $edge } en una sola curva que entre en { $before } y en { $after } sin hacer esquina. Su curvatura es { $amount } de la de una curva regular.
    [square_smooth] Vuelva a trazar { $edge } en una sola curva, a escuadra con { $before } y que entre en { $after } sin hacer esquina. Su curvatura es { $amount } de la de una curva regular.
   *[smooth_square] Vuelva a trazar { $edge } en una sola curva que entre en { $before } sin hacer esquina y llegue a escuadra a { $after }. Su curvatura es { $amount } de la de una curva regular.
}
canvas_moves-into_title = Llevar { $edge } en curva hasta { $second }
canvas_moves-into = { $way ->
    [smooth] Mida { $amount } sobre { $second } desde { $edge }. Trace { $edge } en una sola curva continua: sale a escuadra de { $first } y entra ahí en { $second } sin hacer esquina.
   *[square] Mida { $amount } sobre { $second } desde { $edge }. Trace { $edge } en una sola curva continua: sale a escuadra de { $first } y llega ahí a escuadra a { $second }.
}
canvas_moves-between_title = Trazar de { $first } a { $second }
canvas_moves-between = Trace una recta de { $first } a { $second }. Su nombre: { $thing }.
canvas_moves-between_curve = { $way ->
    [square] Trace una curva de { $first } a { $second }, a escuadra con { $one } y a escuadra con { $other }, con { $amount } de la curvatura de una curva regular. Su nombre: { $thing }.
   *[smooth] Trace una curva de { $first } a { $second } que siga { $one } al comienzo y { $other } al final, con { $amount } de la curvatura de una curva regular. Su nombre: { $thing }.
}
canvas_moves-parallel_title = Trazar una paralela a { $edge }
canvas_moves-parallel = { $way ->
    [inside] Trace una línea paralela a { $edge }, { $amount } por dentro. Su nombre: { $thing }.
   *[outside] Trace una línea paralela a { $edge }, { $amount } por fuera. Su nombre: { $thing }.
}
# $example: cómo se llama una de las líneas nuevas.
canvas_moves-mirror_title = Calcar la otra mitad por { $edge }
canvas_moves-mirror = Doble el papel por { $edge } y calque la otra mitad. Sus líneas se llaman { $example } y así sucesivamente.
canvas_moves-spread_title = Abrir de { $first } a { $second }
canvas_moves-spread = { $way ->
    [parallel] Corte desde el centro de { $first } hasta el centro de { $second } y abra el papel { $amount } en todo el largo.
   *[hinged] Corte desde el centro de { $first } hasta el centro de { $second } y abra el papel { $amount } en { $first }; en { $second } sigue unido.
}
canvas_moves-cut_title = Separar { $thing } de { $piece }
canvas_moves-cut = En { $first } de { $piece } mida { $amount } desde { $beside } y marque. Trace desde ahí una línea a escuadra hasta { $second } y corte por ella. Nombre de la parte que lleva { $beside }: { $thing }; nombre de la línea: { $seam }.
canvas_moves-cut_part = la parte que lleva { $edge }
canvas_moves-opening_title = Dejar una abertura en { $edge }
canvas_moves-opening = { $way ->
    [middle] En el centro de { $edge } marque una abertura de { $amount }. Queda abierta al coser la costura.
   *[other] En { $edge } marque una abertura de { $amount }, medida desde { $beside }. Queda abierta al coser la costura.
}
canvas_moves-notch_title = Marcar un piquete en { $edge }
canvas_moves-notch = Marque un piquete en { $edge }, a { $amount } de { $beside }.
# $one y $other: las piezas a las que pertenecen los bordes.
canvas_moves-pair_title = Marcar piquetes que coincidan en { $first } y { $second }
canvas_moves-pair = Marque piquetes que coincidan en { $first } de { $one } y { $second } de { $other }, a { $amount } de los extremos que se encuentran: simple en { $one }, doble en { $other }.

# Por qué no sirve una operación.
canvas_moves-choose_edge = { $count ->
    [one] Elija un borde.
   *[other] Elija { $count } bordes de una misma pieza.
}
canvas_moves-choose_point = { $count ->
    [one] Elija un punto o una esquina.
   *[other] Elija { $count } puntos o esquinas de una misma pieza.
}
canvas_moves-choose_alike = En varias piezas elija bordes y puntos del mismo nombre y la misma clase, para que un solo paso los trace todos.
canvas_moves-one_piece = Elija en una sola pieza.
canvas_moves-not_there_yet = Lo elegido todavía no está trazado en ese paso. Elija primero el paso en «Mostrar» y después elija sobre él.
canvas_moves-not_closed = Para esto la pieza necesita al menos tres bordes.
canvas_moves-has_dart = En el borde «{ $edge }» se abre una pinza; lleve antes la pinza a otro borde.
canvas_moves-has_pleat = En el borde «{ $edge }» termina un pliegue; haga esta operación antes de trazar el pliegue.
canvas_moves-has_corner = El borde «{ $edge }» tiene dentro una esquina que una línea nueva perdería. Trácelo a mano.
canvas_moves-on_fold = El borde «{ $edge }» va al doblez y tiene que quedarse donde está; su extremo solo puede moverse a lo largo de él.
canvas_moves-fold_straight = El borde «{ $edge }» va al doblez; la tela se dobla en línea recta.
canvas_moves-fold_moved = El borde «{ $edge }» va al doblez y tiene que quedarse donde está. Haga esta operación antes del paso que lo pone al doblez.
canvas_moves-fold_curved = El papel solo se dobla por un borde recto; el borde «{ $edge }» es curvo.
canvas_moves-mirrored_already = La otra mitad ya está calcada por «{ $edge }».
canvas_moves-no_corner = «{ $point }» no es una esquina del contorno.
canvas_moves-no_corner_there = «{ $first }» entra en «{ $second }» sin hacer esquina; no hay nada que redondear.
canvas_moves-no_edge_at = Ningún borde termina en «{ $point }», así que ahí una curva no tiene por dónde guiarse. Elija una recta.
canvas_moves-not_neighbours = «{ $first }» y «{ $second }» no se encuentran. Elija una esquina, o dos bordes que se encuentren en ella.
canvas_moves-not_one_between = Entre «{ $first }» y «{ $second }» tiene que haber un borde: ese pasa a ser la curva.
canvas_moves-same_place = Los dos puntos están en el mismo lugar.
canvas_moves-cut_earlier = La pieza «{ $piece }» ya tiene sus márgenes de costura o sus piquetes. Elija un paso anterior en «Mostrar» y córtela ahí.
canvas_moves-too_long = El borde «{ $edge }» solo mide { $length } de largo. Dé menos.
canvas_moves-too_small = Dé una cantidad mayor que cero.
# $name: lo que se escribió.
canvas_moves-bad_amount = «{ $name }» no es un tanto por ciento. Escriba, por ejemplo, 90 %.
