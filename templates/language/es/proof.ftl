# Hallazgos de la comprobación: qué está mal y qué hacer (claves que terminan en _do). El lugar va delante, de modo que el
# sujeto callado es la pieza o tira nombrada ahí. Lo que se escribe en el cuaderno, como make.press(...), queda como está.

# ---- dónde ----
proof-at = { $where }: { $what }
proof-where_step = { $piece }, paso «{ $step }»
proof-where_step_alone = paso «{ $step }»
# $piece es el título de la pieza, $edge uno de sus bordes.
proof-where_edge = { $piece }, { $edge }, paso «{ $step }»
proof-where_start = Comienzo
proof-where_notions = Mercería

# ---- piezas ----
proof-crosses_itself_above = el borde «{ $edge }» se cruza consigo mismo, a { $across } de la línea vertical del trazado y { $along } por encima de su línea horizontal.
proof-crosses_itself_below = el borde «{ $edge }» se cruza consigo mismo, a { $across } de la línea vertical del trazado y { $along } por debajo de su línea horizontal.
proof-crosses_another_above = el borde «{ $edge }» cruza el borde «{ $other }», a { $across } de la línea vertical del trazado y { $along } por encima de su línea horizontal.
proof-crosses_another_below = el borde «{ $edge }» cruza el borde «{ $other }», a { $across } de la línea vertical del trazado y { $along } por debajo de su línea horizontal.
proof-crosses_do = Devuelva la última medida que cambió hacia su valor anterior, o vuelva a trazar uno de los dos.
proof-no_allowance = el borde «{ $edge }» no tiene margen de costura.
proof-no_allowance_do = Declare uno en el patrón, 0 donde se corte por la línea.
proof-no_grainline = no tiene hilo.
proof-no_grainline_do = Trace uno, para poder colocar la pieza al hilo de la tela.
proof-no_fold_edge = se corta al doblez por «{ $edge }», pero no tiene ese borde.
proof-no_fold_edge_do = Nombre el borde que va al doblez.
proof-fold_not_straight = el borde «{ $edge }» va al doblez, pero no es recto.
proof-fold_not_straight_do = Trácelo recto con la regla, o corte la pieza doble y sin doblez.

# ---- pinzas y pliegues ----
proof-dart_spared = esta figura no necesita pinza aquí.
proof-dart_spared_do = Lo que un paso haga con ella se omite.
proof-dart_again_do = Vuelva a trazar la pinza.
proof-dart_legs = los lados de la pinza «{ $dart }» miden { $one } y { $other }, así que no cierra.
proof-dart_legs_do = Mueva su punta o un lado hasta que los dos midan lo mismo.
proof-slit_adrift = «{ $slit }» no empieza en ningún borde de la pieza.
proof-slit_adrift_do = Trácelo desde el borde en que se abre.
proof-slit_long = «{ $slit }» deja { $room } de tela más allá de su final.
proof-slit_long_do = Hágalo más corto, para que queden al menos { $least }.
proof-slit_raw = «{ $slit }» se corta, pero nada remata sus lados.
proof-slit_raw_do = Cosa una tapeta: { $call }.
proof-double_dart_legs_do = Ponga su lugar más ancho en la línea de punta a punta, o mueva una punta, hasta que los dos lados midan lo mismo.
proof-double_dart_edge = la pinza «{ $dart }» se mete en el borde «{ $edge }»: ahí no tiene punta.
proof-double_dart_edge_do = Acórtela hasta que termine dentro de la pieza, o trace una pinza que se abra en ese borde.
proof-double_dart_sharp = la pinza «{ $dart }» recoge { $intake } en { $length }: en la punta la tela haría una bolsa.
proof-double_dart_sharp_do = Hágala más larga o más estrecha, o recoja la tela en dos pinzas.
proof-double_darts_cross = las pinzas «{ $dart }» y «{ $other }» se cruzan.
proof-double_darts_cross_do = Aparte una de ellas.
proof-dart_point_outside = la punta de la pinza «{ $dart }» queda fuera de la pieza.
proof-dart_point_outside_do = Ponga la punta dentro.
proof-dart_not_true = el borde «{ $edge }» se quiebra { $degrees } grados donde se cierra la pinza «{ $dart }».
proof-dart_not_true_do = Vuelva a trazar el borde, continuo por encima de la pinza cerrada.
# $fold es el nombre de una pinza, un pliegue o una alforza.
proof-no_cap = a «{ $fold }» le falta el pico del borde: al doblarse se quedaría a { $amount } del borde.
# $call es lo que se escribe en el cuaderno.
proof-no_cap_do = Ajústelo: { $call }.
proof-pleat_off_edge = «{ $fold }» no queda sobre su borde: va de { $start } a { $end } a lo largo de «{ $edge }».
proof-pleat_off_edge_do = Póngalo sobre el borde, o vuelva a trazarlo después de cambiar el borde.
proof-pleat_lines = las dos líneas de «{ $fold }» miden { $one } y { $other }, así que no coinciden una sobre otra.
proof-pleat_lines_do = Vuelva a trazarlo de borde a borde, o mueva un extremo hasta que las dos midan lo mismo.
proof-pleat_moved = las líneas de «{ $fold }» empiezan a { $amount } de su lugar en el borde «{ $edge }».
proof-pleat_moved_do = Vuelva a trazar el pliegue: el borde se cambió después.
proof-pleats_overlap = «{ $fold }» y «{ $other }» recogen el mismo tramo, { $amount } del borde «{ $edge }».
proof-pleats_overlap_do = Sepárelos o haga uno menos profundo.
proof-pleat_not_true = el borde «{ $edge }» se quiebra { $degrees } grados donde se dobla «{ $fold }».
proof-pleat_not_true_do = Vuelva a trazar el borde, continuo por encima del pliegue doblado.
proof-never_folded = «{ $fold }» no se dobla nunca.
proof-never_sewn = «{ $fold }» no se cose nunca.
proof-never_folded_do = Cósalo: { $call }.

# ---- bordes y márgenes ----
proof-edge_never_sewn = el borde «{ $edge }» no se cose, ni lleva vista ni dobladillo ({ $length }).
# $part es lo que queda sin rematar del total $length.
proof-edge_left_raw = el borde «{ $edge }» queda sin rematar { $stretch }: { $part } de { $length }.
proof-raw_edge_do = Añada la costura, la vista o el dobladillo que lo cierra, o remátelo con make.edge_finish(..., leave=True).
proof-ends_of_ring_caught = los extremos de la tira tienen que quedar sujetos en una costura posterior, pero el borde «{ $place }» ya forma parte de una vuelta cerrada: ninguna costura lo cruza después.
proof-ends_of_ring_caught_do = Escriba ends="ring" para que los extremos se unan, o no escriba ends=.
proof-ends_not_caught = los extremos de la tira tienen que quedar sujetos en una costura posterior, pero después de este paso no se cose ninguna a lo largo de «{ $place }».
proof-ends_not_caught_do = Haga esa costura después, o escriba ends="turned" para meter los extremos hacia dentro.
proof-allowance_too_wide = el patrón da al borde «{ $edge }» { $given }, pero la costura ocupa { $taken }: { $amount } de más.
proof-allowance_too_narrow = el patrón da al borde «{ $edge }» { $given }, pero la costura ocupa { $taken }: { $amount } de menos.
proof-allowance_do = Cambie el margen en el patrón, o las medidas en el paso de costura.

# ---- lo que se corta y se usa ----
proof-interfacing_piece_unused = se corta para «{ $piece }», pero no se termofija nunca.
proof-interfacing_piece_unused_do = Añada el termofijado como primer paso de esa pieza, o quítela del patrón.
proof-piece_unused = se corta, pero ningún paso de costura la usa.
proof-piece_unused_do = Cósala, o quítela del patrón.
proof-interfacing_unused = se corta entretela para ella, pero no se termofija nunca.
proof-interfacing_unused_do = Añada el termofijado como primer paso de esta pieza, o no corte entretela.
proof-interfacing_count =
    { $cloth ->
        [one] se corta { $cloth } de tela
       *[other] se cortan { $cloth } de tela
    }, pero { $interfacing } de entretela.
proof-interfacing_count_do = Corte entretela para cada una: { $call }.
proof-strip_never_made = se corta, pero no se confecciona nunca.
proof-strip_never_attached = se corta, pero no se pone nunca.
proof-strip_too_few =
    { $count ->
        [one] se corta, pero solo se pone { $count } de { $cut }.
       *[other] se corta, pero solo se ponen { $count } de { $cut }.
    }
proof-strip_unused_do = Confecciónela y póngala, o quítela de la lista de corte.
# $pieces es una lista; $count, cuántas piezas nombra.
proof-loose_piece =
    { $count ->
        [one] esta pieza no se une nunca al resto: { $pieces }.
       *[other] estas piezas no se unen nunca al resto: { $pieces }.
    }
proof-loose_piece_do = Añada la costura que falta para unir.

# ---- costuras ----
# $longer y $shorter son piezas con sus bordes.
proof-seam_length = el borde «{ $longer }» mide { $amount } más que el borde «{ $shorter }» al que se cose, medido por la línea de costura.
proof-seam_length_do = Iguale los dos en el trazado, o diga en la costura que uno va embebido: ease=...
proof-facing_length_do = Trace la vista a partir del propio borde de la prenda.
proof-ease_amount = la costura dice que embebe { $ease }, pero sus bordes se diferencian en { $amount }.
proof-ease_amount_do = Cambie el embebido o el trazado para que coincidan.
proof-notch_alone = el piquete que está a { $at } en el borde «{ $run }» se cose a «{ $other }» y allí no tiene pareja.
proof-notch_misses = el piquete que está a { $at } en el borde «{ $run }» se cose a «{ $other }» y allí se desvía { $amount } de su pareja.
proof-notch_do = Ponga los dos piquetes a la misma distancia a lo largo de la costura.
# $left y $right son donde empieza y termina la abertura que deja la costura.
proof-opening_moved = la abertura «{ $mark }» está marcada de { $start } a { $end } a lo largo de «{ $edge }», pero al coser queda abierto de { $left } a { $right }.
proof-opening_moved_do = Marque los dos lados de la costura en el mismo lugar.
proof-opening_sewn_shut = lleva marcada la abertura «{ $mark }», pero ninguna costura la deja abierta.
proof-opening_sewn_shut_do = Nombre la marca en la costura que pasa por ella: opening=..., o gap=... si solo sirve para volver la labor.
proof-no_sewing = la lección no tiene pasos de costura, así que no se comprueban costuras ni bordes sin rematar.
proof-no_sewing_do = Añada los pasos de costura.

# ---- esquinas ----
proof-corner_facing = al final del borde «{ $edge }» ({ $piece }) la esquina con «{ $beside }» mide { $degrees } grados; la de la vista sobre la que se vuelve ({ $facing }), { $facing_degrees }: las dos no coincidirán.
proof-corner_facing_do = Trace la vista a partir de los propios bordes de la prenda.
proof-corner_point = donde el borde «{ $edge }» ({ $piece }) se encuentra con «{ $other_edge }» ({ $other_piece }) al final de esta costura, la línea se quiebra { $degrees } grados: hace un pico.
proof-corner_dip = donde el borde «{ $edge }» ({ $piece }) se encuentra con «{ $other_edge }» ({ $other_piece }) al final de esta costura, la línea se quiebra { $degrees } grados: se hunde.
proof-corner_point_halves = donde el borde «{ $edge }» ({ $piece }) se encuentra con el de la otra mitad al final de esta costura, la línea se quiebra { $degrees } grados: hace un pico.
proof-corner_dip_halves = donde el borde «{ $edge }» ({ $piece }) se encuentra con el de la otra mitad al final de esta costura, la línea se quiebra { $degrees } grados: se hunde.
proof-corner_do = Rectifique los dos bordes: junte la costura y trace la línea continua por encima; o declare la esquina donde deba haberla.

# ---- dobladillos, vistas y márgenes doblados ----
# $depth: ancho del doblez; $surplus: en todo el borde; $sharp: dentro de $window donde es peor, a $at a lo largo.
proof-fold_longer = doblado { $depth }, el borde «{ $edge }» mide en la orilla { $surplus } más que la línea sobre la que cae; lo peor está a { $at } a lo largo: { $sharp } en { $window } ({ $share }, y la tela embebe alrededor de { $eases }).
proof-fold_longer_by_far = doblado { $depth }, el borde «{ $edge }» mide en la orilla { $surplus } más que la línea sobre la que cae; lo peor está a { $at } a lo largo: { $sharp } en { $window } (más de { $share }, y la tela embebe alrededor de { $eases }).
proof-fold_shorter = doblado { $depth }, el borde «{ $edge }» mide en la orilla { $surplus } menos que la línea sobre la que cae; lo peor está a { $at } a lo largo: { $sharp } en { $window } ({ $share }, y la tela embebe alrededor de { $eases }).
proof-fold_longer_there = doblado { $depth }, el borde «{ $edge }» mide en la orilla, a { $at } a lo largo, { $sharp } más en { $window } que la línea sobre la que cae ({ $share }, y la tela embebe alrededor de { $eases }).
proof-fold_shorter_there = doblado { $depth }, el borde «{ $edge }» mide en la orilla, a { $at } a lo largo, { $sharp } menos en { $window } que la línea sobre la que cae ({ $share }, y la tela embebe alrededor de { $eases }).
# Una de estas cuatro sigue como frase propia.
proof-fold_can_be_eased = Repartido en todo su largo se puede embeber; solo ahí, no.
proof-fold_can_be_drawn_out = Repartido en todo su largo se puede estirar; solo ahí, no.
proof-fold_in_pleats = Quedará con pliegues.
proof-fold_pulls = Tirará.
proof-fold_clip_do = Dé cortes en la curva: clip=True.
proof-fold_shallower_do = Dóblelo { $depth } como mucho, o ponga una vista en el borde.
proof-fold_ease_do = Recójalo con una costura de embebido a lo largo del dobladillo, o dóblelo { $depth } como mucho.
proof-fold_face_do = Ponga una vista o un ribete en el borde: ahí ningún dobladillo queda plano.
proof-end_angle = el borde «{ $edge }» es curvo, y el final de su margen en «{ $beside }» se aparta { $degrees } grados de la imagen en espejo de ese borde.
proof-hem_end_angle_do = Haga que el final del dobladillo refleje en espejo el borde con que se encuentra, o ponga el dobladillo a escuadra con él.
proof-seam_end_angle_do = Haga que el final del margen refleje en espejo el borde con que se encuentra.
proof-hem_beside_fold = el borde «{ $edge }» no llega en ángulo recto al doblez: una vez doblado, su margen se aparta { $amount } del doblez.
proof-seam_beside_fold = el borde «{ $edge }» no llega en ángulo recto al doblez: planchado hacia atrás, su margen se aparta { $amount } del doblez.
proof-beside_fold_do = Trace el último tramo del dobladillo a escuadra con el doblez, o declare la esquina si se quiere un pico.
proof-hem_end_beyond = una vez doblado, el extremo de «{ $edge }» sobresale { $amount } del borde de «{ $beside }».
proof-hem_end_short = una vez doblado, el extremo de «{ $edge }» se queda a { $amount } del borde de «{ $beside }».
proof-seam_end_beyond = planchado hacia atrás, el extremo de «{ $edge }» sobresale { $amount } del borde de «{ $beside }».
proof-seam_end_short = planchado hacia atrás, el extremo de «{ $edge }» se queda a { $amount } del borde de «{ $beside }».
# "turned" es lo que se escribe en el cuaderno.
proof-end_do = Haga que su final refleje en espejo «{ $beside }»: deje la esquina al orden de costura o escriba "turned"; donde el ángulo sea demasiado agudo, haga el margen más estrecho o ponga una vista en el borde.

# ---- lo que se empezó y no se terminó ----
proof-never_pressed = la costura de «{ $edge }» se dejó para planchar más tarde y no se plancha nunca.
proof-never_pressed_do = Añada { $call }.
proof-never_finished = { $place }: se empieza y no se termina nunca; faltan pasadas por coser.
proof-never_finished_do = Escriba { $call } en este paso, después de empezarla, o en uno posterior.
# $place es un borde o una marca.
proof-never_turned_out = se cose para volver del derecho y no se vuelve nunca.
proof-never_turned_out_do = Añada make.turn_out(...).
proof-never_band_closed = la pretina puesta en «{ $place }» no se cierra nunca sobre la costura.
proof-never_band_closed_do = Añada make.close_band(...).
proof-never_buttoned = ningún botón corresponde al ojal «{ $place }».
proof-never_buttoned_do = Añada make.buttons(..., holes=...). Una cinta pasa por una abertura dejada en una costura: front.leave_open(...).
proof-never_eyelet_used = por el ojete «{ $place }» no sale ningún cordón.
proof-never_eyelet_used_do = Pase un cordón: make.thread_cord(...).
proof-never_threaded = la jareta de «{ $place }» se queda vacía.
proof-never_threaded_do = Pase por ella un elástico o un cordón.
proof-never_row_gap_closed = la abertura que se dejó en la jareta de «{ $place }» no se cierra nunca.
proof-never_row_gap_closed_do = Nómbrela donde se pasa el elástico o el cordón: gap=....
proof-never_bag_closed = la bolsa de su bolsillo no se cierra nunca.
proof-never_bag_closed_do = Cosa las dos bolsas una con otra.
proof-never_pocket_edge_sewn = el borde «{ $place }» se dobla con la plancha y no se cose nunca.
proof-never_pocket_edge_sewn_do = Cosa el bolsillo: make.patch_pocket(...).
proof-never_basting_out = el hilván de «{ $place }» no se quita nunca.
proof-never_basting_out_do = Añada make.remove_basting(...).
proof-never_used = lo que se preparó en «{ $place }» no se llega a hacer.
proof-never_used_do = Termínelo.

# ---- las palabras de la lección y su lista de mercería ----
# $name va entre llaves, como en la lección.
proof-placeholder = el texto nombra { $name }, que el paso no conoce.
proof-placeholder_near = ¿Quería decir «{ $name }»?
proof-placeholder_known = Aquí se conocen: { $names }.
proof-placeholder_none = Aquí todavía no hay ninguno.
proof-notion_missing = para coser hace falta { $need }, y la lista de mercería no lo nombra.
proof-notion_missing_do = Añada a la mercería de la lección: { $need }.
proof-notion_braces = la lista de mercería dice «{ $notion }», y entre sus llaves no se pone nada: se imprime tal como está escrito.
proof-notion_braces_do = Escriba el número, o déjelo fuera: el paso de costura dice cuánto se corta.
proof-notion_spare = la lista de mercería nombra «{ $notion }», pero ningún paso de costura lo usa.
proof-notion_spare_do = Quítelo de la lista, o añada el paso que lo necesita.
proof-notion_count = la costura lleva { $wanted } × { $need }, y la lista de mercería tiene { $listed }.
proof-notion_count_do = Escriba { $wanted } × { $need } en la lista.
proof-notion_length = la costura lleva { $wanted } ({ $need }), y la lista de mercería tiene { $listed }.
proof-notion_length_do = Escriba { $wanted } en la lista, o cambie lo que lleva la costura.

# Lo que hace falta para coser, dentro de una frase.
proof-need_thread = hilo
proof-need_interfacing = entretela
proof-need_sewn_in_interfacing = entretela de coser
proof-need_zip = cremallera
proof-need_invisible_zip = cremallera invisible
proof-need_buttons = botones
proof-need_snaps = broches a presión
proof-need_hooks = corchetes
proof-need_eyelets = ojetes
proof-need_elastic = elástico
proof-need_cord = cordón
proof-need_bias_binding = bies
proof-need_hem_tape = cinta para dobladillo

# Palabras por las que se reconoce la mercería de una lección (separadas por |, en minúscula).
proof-listed_thread = hilo | hilos | thread
proof-listed_interfacing = entretela | interfacing
proof-listed_sewn_in_interfacing = entretela | interfacing
proof-listed_zip = cremallera | cierre | zíper | zip
proof-listed_invisible_zip = cremallera invisible | cierre invisible | invisible zip
proof-listed_buttons = botón | boton | button
proof-listed_snaps = broche | automático | snap
proof-listed_hooks = corchete | gancho | hook
proof-listed_eyelets = ojete | ojal metálico | eyelet
proof-listed_elastic = elástic | goma | elastic
proof-listed_cord = cordón | cordon | cord
proof-listed_bias_binding = bies | cinta al bies | bias binding
proof-listed_hem_tape = cinta para dobladillo | cinta de dobladillo | hem tape
proof-halves_crossed = { $edge } se cose con { $other } de { $piece }: una de las dos queda entonces del revés.
proof-halves_crossed_do = Cosa izquierda con izquierda y derecha con derecha.
proof-band_way = { $piece }: en el orden en que se nombran los bordes, «{ $end }» queda en { $place }; dibujada así y cortada con la cara impresa hacia arriba sobre el derecho de la tela, queda en { $other }.
proof-band_way_do = Nombre los bordes en el orden contrario, o dibuje la pieza con este extremo al otro lado.

# ---- tela de más para la prueba, y trazados que una prueba cambia ----
proof-extra_left = este borde se corta { $amount } más ancho para la prueba, y eso no se recorta nunca: { $edge }.
proof-extra_left_do = Recórtelo cuando la prenda siente bien: { $call }.
proof-extra_sewn = este borde se cose cuando aún tiene { $amount } de tela de más; medida desde el borde cortado, la costura queda otro tanto demasiado fuera: { $edge }.
proof-extra_sewn_do = Para la prueba hilvane por la línea de costura, make.baste(..., distance=0 * mm), y recorte antes de coser: { $call }.
proof-in_draft_first = en el trazado que se corta primero: { $what }
proof-in_draft_corrected = en el trazado corregido: { $what }
proof-raw_inside = por dentro queda el borde sin rematar ({ $edges }) y puede deshilacharse al lavar.
proof-raw_inside_do = Una tela que no se deshilacha puede quedarse así. Si no, remata o ribetea los bordes, o haz una costura cerrada.
