# Rechazos: qué no va en un valor, una medida, un archivo o un trazado, y qué hacer (claves en _do). El lugar va delante.
# Lo que está escrito en el archivo de la lección queda como está.

refusal-near = ¿Quiso decir «{ $name }»?
refusal-known = Aquí hay: { $names }.
refusal-none = Aquí todavía no hay ninguno.

# ---- líneas y curvas ----
refusal-near_point = { $across } en horizontal, { $up } en vertical
refusal-move_end_do = Mueva uno de los extremos.
refusal-move_point_do = Mueva uno de los puntos.
refusal-no_direction = una línea sin longitud no tiene dirección.
refusal-no_parallel = una línea sin longitud no tiene paralela.
refusal-same_points = dos puntos caen en el mismo lugar, así que no hay dirección del uno al otro.
refusal-no_place = un punto no resulta en ningún lugar del papel.
refusal-no_place_do = Busque en el paso que lo traza una división por cero o una medida que falta.
refusal-lines_apart = las líneas de un trazo no se unen: una termina a { $gap } de donde empieza la siguiente.
refusal-lines_apart_do = Empiece cada línea donde termina la anterior.
refusal-off_end = { $along } a lo largo de una línea de { $length } cae fuera de su extremo.
refusal-off_end_do = Use una distancia entre 0 y { $length }.
refusal-cut_off_end = una línea de { $length } no se puede cortar a { $along }.
refusal-cut_off_end_do = Córtela entre 0 y { $length }.
refusal-nothing_between = no hay nada entre { $start } y { $end } a lo largo de una línea.
refusal-nothing_between_do = Dé dos distancias distintas.
refusal-carried_back = una línea no se puede prolongar { $by }.
refusal-above_zero_do = Dé una distancia mayor que cero.
refusal-never_meets = una línea prolongada en recto desde su extremo nunca encuentra la otra.
refusal-never_meets_do = Compruebe la dirección de la línea o alargue la otra.
refusal-curve_same_points = dos puntos de una curva caen en el mismo lugar.
refusal-leave_one_out_do = Suprima uno de ellos.
refusal-arc_radius = un arco necesita un radio mayor que cero, y este es { $radius }.
refusal-arc_radius_do = Compruebe la medida de la que sale el radio.
refusal-arc_sweep = un arco no puede abarcar { $degrees } grados.
refusal-arc_sweep_do = Use un ángulo de hasta una vuelta entera, distinto de cero.
refusal-curve_ends = una curva necesita dos extremos distintos, y ambos caen en el mismo lugar.
refusal-fullness = una curvatura (fullness) de { $fullness } no da una curva útil.
refusal-fullness_do = Use una curvatura de { $least } a { $most }.
refusal-curve_crosses = la curva se cruzaría consigo misma.
refusal-curve_crosses_do = Separe más sus extremos o use menos curvatura.
refusal-doubles_back = la curva se volvería atrás: en un extremo se aparta { $degrees } grados de la recta hacia el otro.
refusal-doubles_back_do = Mueva sus extremos de modo que cada uno se alcance desde el otro con un giro menor que un ángulo recto.
refusal-doubles_back_full = con una curvatura de { $fullness } la curva se volvería sobre sí misma.
refusal-doubles_back_full_do = Use menos curvatura.
refusal-curve_no_room = la curva no tiene sitio: sus dos extremos caen en el mismo lugar.
refusal-curve_no_room_do = Haga más pequeña la abertura o lleve el borde más lejos antes de que empiece la curva.
refusal-curve_chord = { $what } Sus extremos distan { $across } en horizontal y { $up } en vertical.
refusal-turns_back = la línea gira { $degrees } grados sobre sí misma, demasiado para una paralela.
refusal-turns_back_do = Haga la esquina menos aguda.
refusal-corner_short = en una esquina interior las líneas son demasiado cortas para una paralela a { $by }.
refusal-corner_short_do = Use ahí menos de { $by } o alargue la línea más corta.
refusal-curve_tight = una paralela a { $by } no puede seguir una curva de radio { $radius }; se plegaría sobre sí misma.
refusal-curve_tight_do = Use ahí menos de { $radius } o trace una curva más plana.
refusal-edge_gap = el borde «{ $edge }» termina a { $gap } de donde empieza «{ $next }».
refusal-edge_open = el borde «{ $edge }» no se cierra: termina a { $gap } de su comienzo.
refusal-edge_gap_do = Haga que los bordes se encuentren o trace el que falta entre ellos.

# ---- piezas ----
refusal-allowance_missing = el borde «{ $edge }» todavía no tiene margen.
refusal-allowance_missing_do = Dele uno, o 0 donde se corta por la línea.
refusal-allowance_negative = el margen del borde «{ $edge }» es { $value }; no puede ser menor que nada.
refusal-allowance_negative_do = Dele un ancho, o 0 donde se corta por la línea.
refusal-notch_off = un piquete queda a { $at } a lo largo del borde «{ $edge }», que solo mide { $length }.
refusal-notch_off_do = Ponga el piquete sobre el borde.
refusal-allowances_meet = los márgenes de «{ $one }» ({ $one_width }) y «{ $other }» ({ $other_width }) chocan en su esquina.
refusal-allowances_meet_do = Estreche uno de ellos o abra más la esquina.
refusal-allowance_tight = el borde «{ $edge }» se curva más de lo que permite su margen de { $width }.
refusal-allowance_tight_do = Haga la curva más abierta o el margen más estrecho.
refusal-dart_off = la pinza «{ $dart }» se abre de { $start } a { $end } a lo largo del borde «{ $edge }», que mide { $length }.
refusal-dart_off_do = Ponga la pinza sobre el borde.
refusal-dart_legs = los lados de la pinza «{ $dart }» miden { $one } y { $other }; deben ser iguales para coserse juntos.
refusal-dart_legs_do = Mueva la punta o uno de los lados hasta que midan lo mismo.
refusal-fold_no_edge = «{ $fold }» se dobla hacia un lado del borde «{ $edge }» donde ya no queda borde debajo.
refusal-fold_no_edge_do = Dóblelo hacia el otro lado o muévalo.
refusal-fold_beyond_edge = «{ $fold }», una vez doblado, no queda bajo su borde.
refusal-dart_beyond_do = Haga la pinza más estrecha.
refusal-pleat_beyond_do = Hágalo menos profundo o trácelo más a escuadra con el borde.
refusal-edge_folded_away = no queda nada del borde cuando se doblan sus pinzas y pliegues.
refusal-folds_over = dos pinzas o pliegues se montan uno sobre otro en el borde «{ $edge }».
refusal-folds_over_do = Mueva uno de ellos.
refusal-off_sewn = { $at } cae fuera del borde «{ $place }», que cosido mide { $length }.
refusal-off_sewn_do = Dé una distancia menor, medida desde el extremo donde se encuentran los dos bordes.
refusal-edges_apart = «{ $one }» y «{ $other }» no se siguen: sus extremos más cercanos distan { $gap }.
refusal-edges_apart_do = Nombre los bordes en el orden en que rodean la pieza.
refusal-pleat_lines = las dos líneas de «{ $pleat }» miden { $one } y { $other }; deben ser iguales para quedar una sobre otra.
refusal-pleat_lines_do = Trácelo de nuevo de borde a borde o mueva un extremo hasta que midan lo mismo.
refusal-pleat_nothing = las líneas de «{ $pleat }» no tienen longitud.
refusal-draw_again_do = Trácelo de nuevo.
refusal-pleat_off = «{ $pleat }» no queda sobre el borde «{ $edge }», que mide { $length }.
refusal-pleat_off_do = Ponga el pliegue sobre el borde.
refusal-joins_eat = las piezas de { $longest } se gastan en uniones que llevan { $cost } cada una.
refusal-joins_eat_do = Corte piezas más largas o únalas con un margen más estrecho.
refusal-strip_nothing = mide { $value }.
refusal-strip_nothing_do = Dele una longitud y un ancho mayores que cero.
refusal-fold_curved = no se puede abrir por el borde «{ $edge }», que no es recto.
refusal-fold_curved_do = Trace recto el doblez o corte la pieza por pares.

# ---- longitudes escritas ----
refusal-not_a_length = «{ $text }» no se puede leer como longitud.
refusal-not_a_length_do = Escriba, por ejemplo, 2,5 cm, 25 mm, 1 1/2 in o 3/8".
refusal-by_zero = «{ $text }» divide por cero.
refusal-by_zero_do = Escriba, por ejemplo, 3/8 in.
refusal-no_unit = «{ $text }» no tiene unidad.
refusal-no_unit_do = Escriba { $text } cm o { $text } in.
refusal-not_finite = una longitud debe ser un número finito.
refusal-not_finite_do = Busque una división por cero o escriba una longitud como 2,5 cm.

# ---- números ----
refusal-no_number = un valor que no es un número

# ---- pasos y valores ----
refusal-step = Paso «{ $step }»
refusal-finished = Medida acabada «{ $title }»
refusal-block = El patrón base del que parte la lección
refusal-endless = el trazado se detuvo a los { $seconds } s, de los cuales { $took } s transcurrieron aquí.
refusal-endless_do = Devuelva a su sitio el último valor que movió y busque un bucle que no acaba nunca. Una lección que necesita más tiempo lo dice: Lesson(..., time_limit=20).
refusal-interrupted = el trazado se interrumpió.
refusal-interrupted_do = Lo que se ve es anterior. Mueva un valor o ejecute de nuevo la celda.
refusal-line = línea
refusal-here = { $place }
refusal-out_of_range = { $name }: { $value } queda fuera de su intervalo, de { $least } a { $most }.
refusal-out_of_range_do = Elija un valor dentro del intervalo o cambie el intervalo donde se define el parámetro.
refusal-not_a_share = «{ $text }» no se puede leer como proporción.
refusal-not_a_share_do = Escriba, por ejemplo, 70 %.
refusal-not_a_count = «{ $text }» no se puede leer como número entero.
refusal-not_a_count_do = Escriba, por ejemplo, 4.
refusal-crosses_worn = «{ $edge }» cruza «{ $other }» a { $across } de la línea central y { $up } por encima de la cintura.
refusal-crosses = «{ $edge }» cruza «{ $other }» a { $across } a la derecha del cero del papel y { $up } por encima.
refusal-crosses_do = Devuelva hacia su valor anterior la última medida que cambió o trace de nuevo uno de los dos.

# ---- trazado ----
refusal-below_zero = { $value } es menos que nada.
refusal-below_zero_do = Dé una distancia de cero o más.
refusal-square_misses = trazando a escuadra desde aquí nunca se encuentra «{ $line }».
refusal-square_misses_do = Pruebe hacia el otro lado.
refusal-line_nothing = una línea necesita dos puntos distintos.
refusal-line_nothing_do = Dele alguna longitud.
refusal-lines_added = las líneas del papel no se suman con +.
refusal-lines_added_do = Nombre varios bordes seguidos, como [front.neck, back.neck], o haga una sola línea de dos que se tocan: one.joined(other).
refusal-line_short = «{ $line }» solo mide { $length }, así que no hay punto a { $at }.
refusal-shorter_do = Dé una distancia menor.
refusal-lines_miss = «{ $line }» no se encuentra con «{ $other }».
refusal-lines_miss_do = Compruebe que ambas están donde espera.
refusal-share_outside = una proporción está entre 0 y 1, no { $share }.
refusal-share_outside_do = Dé un número de 0 a 1.
refusal-join_below = la curva debe unirse a «{ $line }» a { $at }, pero «{ $line }» solo mide { $length }.
refusal-join_below_do = Haga que se una más arriba o alargue la prenda.
refusal-reaches_below = «{ $line }» tiene { $length } de profundidad y llega más abajo que el final de «{ $other }».
refusal-reaches_below_do = Haga «{ $line }» menos profunda o «{ $other }» más larga.
refusal-no_room_to_round = desde el final de «{ $line }» ninguna curva de { $radius } de radio entra en «{ $other }»: por encima de su final no hay sitio.
refusal-no_room_to_round_do = Haga «{ $line }» más corta, admita una curva más cerrada o haga «{ $other }» más larga.
refusal-never_clear = una línea de { $size } desde ahí no llega, por más que se curve, a { $by } por fuera de «{ $line }».
refusal-never_clear_do = Empiece más hacia fuera o hágala más larga: debe terminar por fuera de «{ $line }».
refusal-edges_miss = «{ $one }» y «{ $other }» no se encuentran ni prolongados en recto.
refusal-edges_miss_do = Compruebe las líneas anteriores o trace la esquina a mano.
refusal-grain_outside = el hilo quedaría fuera de la pieza.
refusal-grain_outside_do = Póngalo dentro: at=....
refusal-grain_curved = el hilo es recto; «{ $line }» es curva.
refusal-grain_curved_do = Nombre una línea recta o una dirección: along="up".
refusal-fold_is_curved = la tela se dobla en recto; «{ $edge }» es curvo.
refusal-fold_is_curved_do = Trácelo recto o corte la pieza por pares.
refusal-paper_fold_curved = el papel solo se dobla por una línea recta; «{ $line }» es curva.
refusal-strip_size = una tira necesita longitud y ancho; mide { $length } de largo y { $width } de ancho.
refusal-notch_past = un piquete a { $at } queda más allá del final de «{ $edge }», que mide { $length }.
refusal-nearer_do = Póngalo más cerca.
refusal-opening_off = la abertura de { $start } a { $end } no cabe en «{ $edge }», que mide { $length }.
refusal-opening_off_do = Acorte la abertura, súbala o alargue la prenda.
refusal-notch_taken = ya hay un piquete a { $at } a lo largo de «{ $edge }».
refusal-notch_taken_do = Suprima este o póngalo en otro sitio.
refusal-mark_over = la marca «{ $mark }» pasaría por dos bordes.
refusal-mark_over_do = Marque una parte para cada borde.
refusal-point_off = el punto no está en «{ $place }».
refusal-point_off_do = Márquelo sobre el borde.
refusal-mark_off = la marca «{ $mark }» no está en «{ $place }».
refusal-mark_off_do = Nombre el borde en que está marcada.
refusal-level_misses = a escuadra desde ese punto, ninguna línea encuentra «{ $edge }».
refusal-level_misses_do = Tome otro punto.
refusal-line_misses_edge = «{ $line }» no encuentra «{ $edge }», ni como está ni doblada por la línea central.
refusal-line_misses_edge_do = Dé la altura como longitud o un punto a esa altura.
refusal-buttonholes_off = los ojales de { $start } a { $end } no caben en «{ $edge }», que mide { $length }.
refusal-buttonholes_off_do = Dé el primer lugar antes del último, ambos medidos desde el comienzo del borde.
refusal-buttonhole_nothing = un ojal necesita alguna longitud.
refusal-buttonhole_nothing_do = Dé, por ejemplo, button=1.5 * cm.
refusal-slits_meet = ojales de { $size } cada { $gap } se tocan entre sí.
refusal-slits_meet_do = Ponga menos o colóquelos a escuadra con el borde.
refusal-buttons_length = el borde de los botones, «{ $edge }», mide { $length } y el de los ojales { $other }.
refusal-buttons_length_do = Iguale antes los dos bordes o ajústelos entre sí.
refusal-laid_outside = «{ $piece }», colocada ahí, sobresale { $by } de la pieza.
refusal-laid_outside_do = Colóquela más adentro o hágala más pequeña.
refusal-laid_over_fold_do = Pasa del doblez, donde está la otra mitad: córtela también al doblez y ponga doblez sobre doblez, o colóquela más adentro.
refusal-dart_in_way = una pinza se abre en «{ $edge }».
refusal-dart_in_way_do = Coloque los ojales según otra línea.
refusal-buttonholes_count = { $count } ojales no llenan { $length }.
refusal-buttonholes_count_do = Dé al menos 2, o el mismo primer y último lugar para 1.
refusal-spacing_nothing = la separación es nula.
refusal-spacing_nothing_do = Dé, por ejemplo, spacing=8 * cm.
refusal-buttonholes_many = { $count } ojales son más de los que tiene una prenda.
refusal-unit_do = Compruebe la unidad.
refusal-outside_piece = queda fuera de la pieza.
refusal-outside_piece_do = Muévalo hacia dentro.
refusal-folds_order = los dobleces están a { $folds }.
refusal-folds_order_do = Délos desde la línea de costura hacia fuera, separados al menos 1 mm: folds=(0, 4 * cm).
refusal-fold_beyond = un doblez a { $at } por fuera de «{ $edge }» queda más allá de la tela, que termina a { $most }.
refusal-fold_beyond_do = Doble más cerca de la línea de costura o haga el margen más ancho.
refusal-corner_size = un tamaño de { $size } no se puede cortar.
refusal-corner_size_do = Dé la distancia desde la esquina de las líneas de costura.
refusal-corner_arc = un arco a { $size } de la esquina cortaría el margen, que mide { $width }.
refusal-corner_arc_do = Que sea { $width } o más, o suprima size.
refusal-corner_reach = la punta está a { $reach } de la esquina, así que { $size } no corta nada.
refusal-corner_reach_do = Dé un tamaño menor que { $reach }.

# ---- pinzas, pliegues y cortes en el papel ----
refusal-legs_differ = los lados de la pinza «{ $dart }» difieren en { $by }.
refusal-legs_differ_do = Iguale sus lados antes de trasladarla.
refusal-dart_share = una parte de una pinza es una proporción mayor que 0 y hasta 1, no { $share }.
refusal-dart_on_old = la pinza nueva caería sobre la antigua.
refusal-beside_do = Dé un lugar al lado.
refusal-slash_fold = el corte partiría en dos el doblez.
refusal-other_edge_do = Elija otro borde.
refusal-dart_nothing = una pinza necesita un contenido mayor que cero.
refusal-more_do = Dé, por ejemplo, { $size }.
refusal-dart_no_fit = una pinza de { $intake } no cabe a { $at } a lo largo de «{ $edge }», que mide { $length }.
refusal-dart_no_fit_do = Hágala más estrecha o póngala más cerca del centro.
refusal-dart_points_out = la pinza apuntaría fuera de la pieza.
refusal-dart_points_out_do = Ponga su punta dentro.
refusal-dart_wide = la pinza es más ancha que profunda.
refusal-dart_wide_do = Hágala más estrecha o más profunda.
refusal-dart_legs_miss = los lados de la pinza no llegan ambos a «{ $edge }».
refusal-dart_aside = la punta de la pinza queda demasiado a un lado de su lugar en «{ $edge }».
refusal-dart_opposite_do = Ponga la pinza frente a su punta.
refusal-dart_short = la pinza «{ $dart }» tiene { $deep } de profundidad; no puede terminar { $by } antes del vértice.
refusal-shorten_less_do = Acórtela menos.
refusal-take_in = { $amount } no se pueden embeber en { $over }.
refusal-spread_more_do = Repártalo más.
refusal-pleat_along = la línea corre casi a lo largo de «{ $edge }», así que no se puede plegar nada en ella.
refusal-pleat_along_do = Dé una línea que cruce el borde.
refusal-no_edge_across = no hay ningún borde justo enfrente.
refusal-no_edge_across_do = Nombre el borde al que llega.
refusal-takes_nothing = debe recoger más que nada.
refusal-pleat_same_edge = empieza y termina en «{ $edge }».
refusal-pleat_same_edge_do = Llévelo a otro borde.
refusal-tuck_short = una alforza de { $long } no se puede coser { $sewn }.
refusal-tuck_short_do = Cósala menos o suprima sewn= para coserla entera.
refusal-box_narrow = un tablón de { $wide } no puede ocultar dos dobleces de { $deep }.
refusal-box_narrow_do = Haga el tablón más ancho o recoja menos.
refusal-row_empty = una fila tiene al menos una alforza, no { $count }.
refusal-row_empty_do = Dé un número desde 1.
refusal-tucks_over = alforzas de { $depth } separadas { $apart } quedarían sobre la costura de la vecina.
refusal-tucks_over_do = Sepárelas al menos { $depth }.
refusal-tucks_off = { $count } alforzas separadas { $apart } terminan a { $last } de «{ $edge }», que mide { $length }.
refusal-tucks_off_do = Haga menos, póngalas más juntas o empiece más cerca del comienzo.
refusal-spread_far = no se puede abrir tanto.
refusal-spread_far_do = Ábralo menos.
refusal-dart_opens_on = la pinza «{ $dart }» se abre en «{ $edge }»; cambiar ese borde haría desiguales sus lados.
refusal-dart_opens_on_do = Traslade antes la pinza a otro borde.
refusal-pleat_ends_on = «{ $pleat }» termina en «{ $edge }»; cambiar ese borde dejaría atrás sus líneas.
refusal-pleat_ends_on_do = Cambie antes el borde y trace después el pliegue.
refusal-edge_short = «{ $edge }» solo mide { $length }.
refusal-move_less_do = Muévalo menos.
refusal-neck_into_dart = el escote llegaría hasta la pinza «{ $dart }».
refusal-widen_less_do = Ensánchelo menos.
refusal-no_place_on = no hay ningún lugar a { $at } a lo largo de «{ $edge }», que mide { $length }.
refusal-inside_fold = { $at } a lo largo de «{ $edge }» cae dentro de «{ $fold }».
refusal-slash_leaves = la línea de corte sale del papel en «{ $edge }».
refusal-slash_leaves_do = Elija un lugar al que se llegue en línea recta.
refusal-slash_outside = la línea de corte queda fuera del papel.
refusal-other_place_do = Elija otro lugar.
refusal-slash_through = la línea de corte atraviesa «{ $fold }».
refusal-slash_dart_do = Traslade antes esa pinza.
refusal-slash_pleat_do = Mantenga los dos separados o trace este primero.

# ---- ajustar bordes, vistas, forros ----
refusal-true_too_far = «{ $one }» mide { $one_length } y «{ $other }» { $other_length }: difieren en { $by }, más de lo que el ajuste debe ocultar.
refusal-true_too_far_do = Busque el error en el trazado o diga cuánto se embebe: ease=....
refusal-true_fold = «{ $edge }» termina en el doblez, que no se puede mover.
refusal-true_fold_do = Mantenga ese extremo y cambie el otro.
refusal-true_take_off = no se pueden quitar { $by } a «{ $edge }»: solo hay { $left } entre su extremo y la siguiente pinza o esquina.
refusal-true_take_off_do = Cambie el otro borde o el otro extremo.
refusal-true_sharp = «{ $one }» y «{ $other }» se encuentran a { $degrees }° al final de la costura; es demasiado agudo para suavizarlo.
refusal-true_sharp_do = Trace de nuevo la esquina o declárela si debe serlo.
refusal-true_no_room = no hay sitio en «{ $edge }» para suavizarlo: solo { $reach } hasta la siguiente pinza o esquina.
refusal-true_no_room_do = Mantenga este extremo, con hold="start" o hold="end", o mueva la pinza.
refusal-hem_shorter = el bajo no puede quedar { $by } más corto: los bordes contiguos solo miden { $length }.
refusal-dart_left_out = la pinza «{ $dart }» se abre en «{ $edge }», que el forro omite.
refusal-dart_left_out_do = Traslade antes la pinza a otro borde o cósala antes de calcar el forro.
refusal-facing_deeper = la vista es más profunda que el largo de «{ $edge }», así que no queda nada para el forro.
refusal-facing_narrower_do = Haga la vista más estrecha.
refusal-pleat_curved = un pliegue se añade a lo largo de una línea recta; «{ $edge }» es curvo.
refusal-pleat_curved_do = Nombre el borde central: at='centre'.
refusal-dart_cut_away = la pinza «{ $dart }» se abre donde se recorta «{ $edge }».
refusal-dart_cut_away_do = Traslade antes la pinza a otro lugar.
refusal-dart_not_beside = «{ $edge }» no se encuentra con «{ $beside }», así que la pinza «{ $dart }» no se puede cerrar ahí.
refusal-dart_not_beside_do = Nombre un borde que empiece o termine donde lo hace «{ $beside }».
refusal-dart_into_fold = «{ $edge }» está sobre el doblez, así que la pinza «{ $dart }» no se puede cerrar ahí.
refusal-dart_into_fold_do = Nombre el borde del otro extremo, o quite la pinza antes de poner la pieza sobre el doblez.
refusal-facing_no_fit = una vista de { $depth } de profundidad no cabe dentro ({ $pieces }): { $what }
refusal-drawn_short = el borde exterior mide { $length } y no se puede meter { $by } en «{ $edge }».
refusal-drawn_short_do = Métalo menos.
refusal-seam_past = la costura se mueve más allá del final del tramo.
refusal-seam_past_do = Muévala menos o suprima la costura.
refusal-run_gone = no queda nada del tramo para ella.
refusal-seam_less_do = Mueva menos la costura.

# ---- costura ----
refusal-not_negative_do = Escriba una longitud de cero o más.
refusal-too_wide = { $value } es más que { $most }, más ancho de lo que permite esta labor.
refusal-unit_mm_do = Compruebe la unidad: mm, cm o inch.
refusal-zero = es cero.
refusal-zero_do = Escriba un ancho, como 1 * cm.
refusal-opening_off_seam = una abertura de { $start } a { $end } no cabe en una costura de { $length }.
refusal-opening_off_seam_do = Dé primero el extremo más cercano y mantenga ambos en la costura.
refusal-opening_whole = la abertura ocupa toda la costura.
refusal-opening_whole_do = Deje parte de la costura para coser.
refusal-off_run = { $at } cae fuera del borde «{ $place }», que mide { $length }.
refusal-from_start_do = Mida desde el comienzo del tramo.
refusal-at_beside_mark = { $at } está escrito junto a la marca «{ $mark }», que ya es un lugar por sí misma.
refusal-at_past_mark = { $at } cae fuera de la marca «{ $mark }», que mide { $length }.
refusal-at_beside_mark_do = Quite at=, o nombre el borde en lugar de la marca y mida a lo largo de él.
refusal-at_missing = no se dice en qué lugar del borde.
refusal-at_missing_do = Escríbalo: at=10 * cm; o nombre una marca en lugar del borde.
refusal-band_fold_eaten = El doblez debe sobrepasar la costura { $deeper } y solo se doblan { $allowance }.
refusal-band_fold_eaten_do = Escriba un deeper= menor, como 3 mm, o un margen más ancho.
refusal-no_part = una parte de { $start } a { $end } no es parte de un borde.
refusal-no_part_do = Dé primero el extremo más cercano, ambos medidos desde el comienzo del tramo.
refusal-part_before = una parte no puede empezar a { $start } de un borde.
refusal-part_reversed = { $from } está a { $start } y { $to } a solo { $end }, medidos los dos desde { $tip }: en este orden no hay ningún tramo entre ellos.
refusal-part_reversed_do = Nombre primero el más cercano.
refusal-part_empty = { $from } y { $to } son el mismo lugar, a { $start } desde { $tip }: no hay ningún tramo entre ellos.
refusal-part_empty_do = Nombre dos lugares separados o mueva uno de ellos en el trazado.
refusal-part_past = la parte termina a { $end }, pero el tramo solo mide { $length }.
refusal-part_backward = la parte termina a { $end } pero empieza a { $start }, y los bordes miden { $length }.
refusal-zip_narrow = un margen de { $width } es demasiado estrecho para coser una cremallera.
refusal-zip_narrow_do = Dé a la abertura al menos { $least }.
refusal-zip_row = pespuntada a { $at } del doblez, la costura no tomaría el margen de { $width } de detrás.
refusal-zip_row_do = Pespuntee más cerca del doblez o dé a la abertura un margen más ancho.
refusal-tower_piece = la tapeta y los bordes que la rodean deben estar en una sola pieza aparte.
refusal-tower_piece_do = Nombre bordes de la pieza cortada para la tapeta, como tower.edge y around=[tower.point, tower.outer].
refusal-slit_long = «{ $slit }», de { $length } desde el borde «{ $edge }», no deja tela más allá de su final.
refusal-slit_long_do = Hágalo más corto: detrás deben quedar al menos { $least } de la pieza.
refusal-fly_same_piece = la vista de la bragueta o su contrabragueta no es una pieza aparte.
refusal-fly_same_piece_do = Nombre el borde largo de una pieza cortada para ello, como facing=fly_facing.edge.
refusal-double_dart_order = su lugar más ancho no está entre sus dos puntas.
refusal-double_dart_order_do = Nombre la punta de arriba como top, la de abajo como bottom y un punto entre las dos como at.
refusal-double_dart_edge = la pinza «{ $dart }» llega al borde «{ $edge }»: una pinza de dos puntas termina dentro de la pieza.
refusal-double_dart_edge_do = Hágala terminar al menos { $least } más adentro, o trace con add_dart una pinza que se abra en ese borde.
refusal-no_double_dart = la marca «{ $mark }» no es una pinza de dos puntas.
refusal-no_double_dart_do = Trace una con add_double_dart y nómbrela aquí; la pinza que se abre en un borde se cose con make.dart.
refusal-other_fastener = la marca «{ $mark }» dice: { $is }. Aquí va otra cosa: { $wanted }.
refusal-other_fastener_do = Nombre una marca de esa clase ({ $wanted }) o un simple punto. El lado que monta lleva el gancho o la mitad macho; el de debajo, la presilla, la anilla o la mitad hembra.
refusal-grade = { $wide } no es más ancho que { $narrow }.
refusal-grade_do = Escalone a dos anchos distintos.
refusal-strip_eaten = un margen de { $width } no deja nada de una tira cortada de { $cut } de ancho.
refusal-strip_eaten_do = Córtela más ancha o use un margen más estrecho.
refusal-overlap_long = un cruce de { $size } ocupa todo «{ $edge }», que mide { $length }.
refusal-overlap_long_do = Compruebe el cruce y nombre el extremo corto de la pretina.
refusal-cloth_narrow = «{ $piece }» mide { $across } de ancho, más de lo que da una tela de { $width }.
refusal-cloth_narrow_do = Use una tela más ancha o prevea una costura en esa pieza.

# ---- el código del paso ----
refusal-at_line = { $place }, en «{ $line }»

# ---- esquinas ----
refusal-folds_none = no se nombra ningún doblez.
refusal-extra_on_fold = este borde va al doblez, donde no se corta nada: { $edge }.
refusal-extra_on_fold_do = Dé la tela de más a un borde que se corte.

# A bound that follows from other values; $causes are these, each with its value.
refusal-bound_cause = { $name } { $value }
refusal-bound_at_least = { $name }: { $value } es demasiado poco; con { $causes } son al menos { $bound }.
refusal-bound_at_least_do = Ponga { $name } en { $bound } como mínimo, o cambie aquello de lo que depende.
refusal-bound_at_most = { $name }: { $value } es demasiado; con { $causes } son como máximo { $bound }.
refusal-bound_at_most_do = Ponga { $name } en { $bound } como máximo, o cambie aquello de lo que depende.
refusal-no_answer = el cuaderno no dio respuesta.
refusal-no_answer_do = Ejecútelo otra vez.
refusal-cut_alike_left = { $piece } no tiene mitad izquierda: sus { $count } capas se cortan iguales.
refusal-cut_alike_right = { $piece } no tiene mitad derecha: sus { $count } capas se cortan iguales.
refusal-cut_alike_do = Para una mitad izquierda y otra derecha escriba { $call }.
refusal-no_moment = { $name } es «{ $said }», que no es un número de segundos.
refusal-no_moment_do = Indique segundos enteros desde el comienzo de 1970, o quite esa variable.
