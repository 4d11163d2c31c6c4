# Lo que impide coser en el orden de la lección: qué está mal y qué hacer (claves que terminan en _do). El título de la
# pieza va delante, de modo que el sujeto callado es esa pieza o tira. Lo que se escribe en el cuaderno queda como está.

sewing_trouble-band_not_set = el borde «{ $place }» no está cosido todavía a la prenda, así que no hay costura sobre la que cerrar.
sewing_trouble-band_not_set_do = Ponga primero la pretina: make.set_band(...).
sewing_trouble-band_not_pressed = la costura del borde «{ $place }» aún no está planchada, y una vez cerrada la pretina no llega la plancha.
sewing_trouble-band_not_pressed_do = Plánchela antes: make.press(..., way=...).
sewing_trouble-band_not_seamed = la pieza «{ $piece }» no está cosida todavía a la pretina exterior.
sewing_trouble-band_not_seamed_do = Cosa primero las dos y vuélvalas del derecho: make.seam_band(...), make.turn_out(...).
sewing_trouble-band_end_open = el borde «{ $edge }» ({ $piece }) sigue sin rematar; una vez cerrado el borde interior ya no se podrá doblar hacia dentro.
sewing_trouble-band_end_open_do = Cosa primero los extremos y vuelva la pretina.
sewing_trouble-band_end_raw = el borde «{ $place }» sigue sin rematar donde empieza o termina la pretina.
sewing_trouble-band_end_raw_do = Antes haga el dobladillo o la vista de ese borde, ponga su cremallera o cosa su costura: la pretina termina en su línea acabada.
sewing_trouble-turned_already = la pieza «{ $piece }» ya está vuelta, así que su extremo ya no se puede coser por dentro.
sewing_trouble-turned_already_do = Cosa los extremos antes de volver la pretina.
# Se dice de una tira; su título va delante. $length es el largo cortado, $ends lo que se dobla, $left lo que mide acabada.
sewing_trouble-strip_length = cortada a { $length } de largo, con { $ends } doblados en cada extremo queda en { $left }, no en { $finished_length }.
sewing_trouble-strip_length_do = Cambie el largo cortado, los extremos doblados o el largo acabado.
sewing_trouble-loop_before_seam = se cose sobre «{ $place }» antes de hacer esa costura.
sewing_trouble-do_sew_seam_first = Haga primero la costura.
sewing_trouble-too_few_strips_bound =
    { $count ->
        [one] se cose { $count } tira
       *[other] se cosen { $count } tiras
    }, pero { $cut ->
        [one] solo se corta { $cut }
       *[other] solo se cortan { $cut }
    }.
sewing_trouble-too_few_strips_bound_do = Corte más, o ribetee menos bordes.
sewing_trouble-binding_width = cortada a { $width } de ancho no da { $finished }: para eso se necesita un ancho de { $cut_width }.
sewing_trouble-binding_width_do = Cambie el ancho cortado o el ancho acabado.
sewing_trouble-binding_short_edge = se corta de { $length } de largo, pero el borde con sus extremos necesita { $needed }.
sewing_trouble-binding_short_edge_do = Córtela más larga, o diga cuántas tiras se reparten los bordes: count=....
sewing_trouble-binding_not_bias = el borde «{ $place }» es curvo, pero la tira «{ $piece }» está cortada al hilo y no se adapta a la curva.
sewing_trouble-binding_not_bias_do = Corte la tira al bies.
sewing_trouble-buttons_and_holes =
    { $number ->
        [one] hay { $number } botón
       *[other] hay { $number } botones
    } para { $wanted ->
        [one] { $wanted } ojal
       *[other] { $wanted } ojales
    }.
sewing_trouble-buttons_and_holes_do = Dé a cada ojal su botón; nombre un solo lado donde haya una marca en las dos mitades (front.left).
sewing_trouble-no_buttonhole = se pone un botón bajo un ojal que todavía no está hecho.
sewing_trouble-no_buttonhole_do = Haga primero los ojales: make.buttonholes(...).
# $size es el botón, $sizes el ojal más corto.
sewing_trouble-button_wide = un botón de { $size } de ancho no pasa por un ojal de { $sizes }.
sewing_trouble-button_wide_do = Haga el ojal tan largo como el ancho del botón y { $more } más. Márquelo igual de largo en el patrón: buttonholes(..., thick=...).
sewing_trouble-buttonhole_size = el ojal «{ $place }» está marcado de { $length } de largo, pero se hace de { $worked }.
sewing_trouble-buttonhole_size_do = Márquelo y hágalo igual.
sewing_trouble-button_slips = un botón de { $size } de ancho se sale de un ojal de { $sizes }.
sewing_trouble-button_slips_do = Ponga botones más grandes, o haga ojales más cortos.
sewing_trouble-casing_turns = el primer doblez es más ancho que el segundo, así que no cabe dentro de la jareta.
sewing_trouble-do_deepen_second_turn = Haga el segundo doblez al menos tan ancho como el primero.
sewing_trouble-gap_elsewhere = la abertura está en «{ $place }», que no forma parte de la jareta.
sewing_trouble-gap_elsewhere_do = Déjela en uno de los bordes de la jareta.
sewing_trouble-channel_one_layer = debajo de «{ $place }» no hay nada todavía: dos pespuntes por una sola capa no forman jareta.
sewing_trouble-channel_one_layer_do = Únalo antes a su forro o vista y vuélvalo (make.seam_to_turn, make.turn_out), o hágale un dobladillo ancho.
sewing_trouble-channel_beyond = el segundo pespunte queda a { $far } del borde «{ $place }», pero una de las capas llega solo hasta { $reach }.
sewing_trouble-channel_beyond_do = Cosa más cerca del borde, o corte más anchos el forro, la vista o el dobladillo.
sewing_trouble-channel_shallow = entre pespuntes separados { $depth } no corre ningún cordón.
sewing_trouble-channel_shallow_do = Sepárelos al menos { $least }.
sewing_trouble-channel_twice = en «{ $place }» ya hay una jareta.
sewing_trouble-no_slit = el cordón tiene que salir por «{ $place }», pero ninguna costura lo ha dejado abierto.
sewing_trouble-no_slit_do = Déjelo abierto en la costura: make.plain_seam(..., opening=...).
sewing_trouble-slit_off_casing = «{ $place }» se sale de la jareta, cuyo pespunte está a { $high } del doblez.
sewing_trouble-slit_off_casing_do = Márquelo más cerca del doblez, o haga la jareta más ancha.
sewing_trouble-hole_off_channel = «{ $place }» no queda entre los pespuntes de la jareta, que están a { $low } y { $high } del borde.
sewing_trouble-hole_off_channel_do = Muévalo, o mueva los pespuntes: distance y depth de make.channel.
# $share es un tanto por ciento.
sewing_trouble-not_gathered_yet = el borde «{ $place }» es un { $share } más largo que aquello a lo que se cose: demasiado para embeber.
sewing_trouble-not_gathered_yet_do = Frúnzalo primero: make.gather(..., fit=...). Si lo más corto es elástico y se estira al coser, indíquelo: Lesson(..., stretch=0.6).
sewing_trouble-not_eased_yet = el borde «{ $place }» mide { $ease } más que aquello a lo que se cose, y todavía nada lo recoge.
sewing_trouble-not_eased_yet_do = Haga primero en él una costura de embebido: make.ease_stitch(...).
sewing_trouble-no_casing = en «{ $place }» no hay todavía ninguna jareta por la que pasar nada.
sewing_trouble-no_casing_do = Haga primero la jareta: make.casing(...) o make.channel(...).
sewing_trouble-threaded_twice = por la jareta de «{ $place }» ya se ha pasado algo.
sewing_trouble-threaded_out_twice = por «{ $place }» ya sale un cordón.
sewing_trouble-do_take_one_operation_out = Quite una de las dos operaciones.
sewing_trouble-gap_shut = se tiene que pasar por la abertura de «{ $place }», pero está cosida.
sewing_trouble-gap_shut_do = Deje la abertura en la jareta: make.casing(..., gap=...) o make.channel(..., gap=...).
sewing_trouble-elastic_wide = un elástico de { $width } de ancho no corre con holgura en una jareta de { $deep }.
sewing_trouble-elastic_wide_do = Ponga un elástico más estrecho, o haga la jareta más ancha.
sewing_trouble-cord_no_room = un elástico de { $width } de ancho no deja sitio para un cordón en una jareta de { $deep }.
sewing_trouble-cord_no_room_do = Haga la jareta más ancha, o ponga un elástico más estrecho.
sewing_trouble-cords_no_room = dos cordones ocupan { $cords } y no corren sueltos uno junto a otro en una jareta de { $deep }.
sewing_trouble-cords_no_room_do = Haga la jareta más ancha, o pase un solo cordón.
sewing_trouble-elastic_long = el elástico mide { $worn } una vez unido, pero la jareta solo mide { $whole } de largo: no recogería nada.
sewing_trouble-elastic_long_do = Corte el elástico más corto que el borde.
sewing_trouble-strip_not_made_drawn_in = se pasa antes de confeccionarla.
sewing_trouble-do_make_strip_first = Confeccione primero la tira.
sewing_trouble-no_eyelet = el cordón tiene que salir por «{ $place }», pero todavía no hay ningún ojete.
sewing_trouble-no_eyelet_do = Haga los ojetes antes de coser la jareta: make.eyelets(...).
sewing_trouble-cord_short = el cordón mide { $length } de largo, pero la jareta { $whole }: los extremos se meterían dentro.
sewing_trouble-cord_short_do = Ponga un cordón más largo: el borde y lo suficiente en los dos extremos para atar.
sewing_trouble-mock_french_turn = un margen de { $allowance } doblado { $turn } deja { $left }: los bordes doblados no caben entre la costura y el doblez.
sewing_trouble-mock_french_turn_do = Doble al menos { $least } y menos de la mitad del margen.
sewing_trouble-felled_trim = el margen recortado mide { $trim } de ancho, demasiado para quedar plano en una costura sobrecargada de { $width }.
sewing_trouble-felled_trim_do = Recórtelo a { $most } o menos, o haga la costura sobrecargada más ancha.
sewing_trouble-felled_width = una costura sobrecargada de { $width } deja para doblar { $turned } del margen de { $allowance }.
sewing_trouble-felled_width_do = Hay que doblar al menos { $least }, y no más que el ancho de la costura sobrecargada: cambie el ancho o el margen.
sewing_trouble-lapped_row = el pespunte va a { $edgestitch } del doblez, más allá del margen que tiene debajo, que mide { $allowance } de ancho.
sewing_trouble-lapped_row_do = Pespuntee más cerca del doblez.
sewing_trouble-free_edge_raw = el borde «{ $place }» se cose mientras sigue sin rematar.
sewing_trouble-free_edge_raw_do = Dóblelo hacia dentro (turn=...), o remátelo antes.
sewing_trouble-no_interfacing_cut = lleva entretela, pero no se corta entretela para ella.
sewing_trouble-no_interfacing_cut_do = Diga en el plan de corte de la pieza que se corta también en entretela, o trace su entretela.
sewing_trouble-fused_twice = ya lleva entretela.
sewing_trouble-fused_late = ya está cosida; la entretela se pone en la pieza plana.
sewing_trouble-fused_late_do = Ponga la entretela en esta pieza antes de su primera costura.
sewing_trouble-understitched_early = el borde «{ $place }» no está cosido todavía a nada, así que no hay costura en la que hacer el bajopespunte.
sewing_trouble-understitched_early_do = Ponga primero la vista.
sewing_trouble-fasteners_unequal =
    { $number ->
        [one] hay { $number } lugar encima
       *[other] hay { $number } lugares encima
    } y { $other } debajo.
sewing_trouble-fasteners_unequal_do = Nombre el mismo número de lugares en los dos lados.
sewing_trouble-fasteners_apart = «{ $place }» está a { $size } del anterior, pero sus parejas del otro lado están a { $other } una de otra.
sewing_trouble-fasteners_apart_do = Marque los dos lados a distancias iguales: cerrado así, entre los dos se fruncirían { $amount }.
sewing_trouble-eyelet_late = la jareta de «{ $place }» ya está cosida: un ojete atravesaría sus dos capas.
sewing_trouble-eyelet_late_do = Ponga los ojetes antes de doblar la jareta.
sewing_trouble-eyelet_in_lining = en «{ $place }» ya hay dos capas una sobre otra: un ojete las sujetaría juntas y por entre ellas no saldría ningún cordón.
sewing_trouble-eyelet_in_lining_do = Ponga los ojetes solo en la capa exterior, antes de que debajo haya forro, vista o dobladillo.
sewing_trouble-staystitched_late = el borde «{ $place }» ya está cosido; la costura de refuerzo sujeta el borde antes de que se dé de sí.
sewing_trouble-staystitched_late_do = Póngala antes de la primera costura de ese borde.
sewing_trouble-finished_late = «{ $place }» ya está encerrado en la costura; no queda nada que rematar.
sewing_trouble-finished_late_do = Póngalo antes de eso, o quítelo.
sewing_trouble-topstitched_raw = el borde «{ $place }» se pespuntea mientras sigue sin rematar.
sewing_trouble-topstitched_raw_do = Antes cósalo o hágale una vista o un dobladillo.
sewing_trouble-topstitched_unpressed = el borde «{ $place }» se pespuntea antes de planchar su costura.
sewing_trouble-topstitched_unpressed_do = Plánchela primero: make.press(...).
sewing_trouble-staystitch_outside_cloth = la costura quedaría en el borde o más allá.
sewing_trouble-staystitch_outside_cloth_do = Cósala a menos distancia de la línea de costura que el ancho del margen.
sewing_trouble-blind_hem_narrow = un dobladillo de { $depth } es demasiado estrecho para coserlo con puntada invisible.
sewing_trouble-blind_hem_narrow_do = Hágalo al menos de { $least }, o enróllelo a mano.
sewing_trouble-wide_hem_short = el borde curva hacia dentro, así que su orilla, doblada { $first } se queda { $surplus } corto para el lugar donde se cose, y tiraría.
sewing_trouble-do_face_or_narrow_hem = Póngale una vista (make.faced_hem), o haga el dobladillo más estrecho.
sewing_trouble-wide_hem_full = doblado { $first }, la orilla mide { $surplus } más que el lugar donde se cose: demasiado para quedar plano en un borde tan curvo.
sewing_trouble-rolled_hem_wide = { $first } de doblez es demasiado para enrollar entre los dedos.
sewing_trouble-rolled_hem_wide_do = Dele { $most } o menos, o cosa un dobladillo estrecho.
sewing_trouble-caught_loose = «{ $place }» tiene que quedar sujeto en el dobladillo, pero la pieza no está cosida todavía a la prenda.
sewing_trouble-caught_loose_in_seam = «{ $place }» tiene que quedar sujeto en la costura, pero la pieza no está cosida todavía a la prenda.
sewing_trouble-caught_loose_do = Cósala primero.
sewing_trouble-caught_length = «{ $place }» mide { $amount }, y ningún borde de la pieza en que ha de ir es igual de largo.
sewing_trouble-caught_length_do = Trace el borde del cuello tan largo como el borde del pie de cuello en que va.
sewing_trouble-not_a_ring_yet = el borde «{ $place }» se dobladilla en redondo, pero sus extremos no están cosidos todavía uno con otro.
sewing_trouble-not_a_ring_yet_do = Haga primero la costura que lo cierra, o quite ring=True y haga el dobladillo en plano.
sewing_trouble-hem_turns = el primer doblez es más ancho que el segundo, así que no cabe dentro del dobladillo.
sewing_trouble-bags_unequal = las dos bolsas se diferencian en { $gap } alrededor del bolsillo.
sewing_trouble-bags_unequal_do = Trace iguales las dos bolsas.
sewing_trouble-mouth_whole_seam = la boca ocupa toda la costura.
sewing_trouble-mouth_whole_seam_do = Deje parte de la costura para coser.
sewing_trouble-bag_whole_seam = la bolsa está cosida a todo lo largo de «{ $place }», así que no queda costura por encima ni por debajo.
sewing_trouble-bag_whole_seam_do = Cósalo en la abertura marcada para la boca del bolsillo.
sewing_trouble-bag_not_set = la pieza «{ $piece }» no está cosida todavía a su lado de la boca.
sewing_trouble-bag_not_set_do = Cosa primero las dos bolsas: make.pocket_bag(...).
sewing_trouble-mouth_moved = la costura deja abierto de { $start } a { $end }, pero ahí no hay cosida ninguna bolsa.
sewing_trouble-mouth_moved_do = Nombre la misma abertura para las bolsas y para la costura.
sewing_trouble-basting_outside_cloth = hilvanado a { $distance } por fuera de la línea de costura, quedaría al filo de la tela o más allá.
sewing_trouble-basting_outside_cloth_do = Hilvane a menos distancia de la línea de costura que el ancho del margen.
sewing_trouble-not_joined_yet = «{ $place }» y «{ $other }» se cosen en una sola costura, pero las piezas no están unidas todavía ahí.
sewing_trouble-not_joined_yet_do = Haga primero la costura que las une, o cosa las dos una después de otra.
sewing_trouble-gathers_not_taken_up = el borde «{ $place }» está fruncido, pero la costura no recoge ahí ninguna amplitud.
sewing_trouble-gathers_not_taken_up_do = Diga en la costura cuánto más largo es el borde fruncido (ease=...), o quite el fruncido.
sewing_trouble-gathered_to_another_length = el borde «{ $place }» queda reducido a { $to }, pero el borde al que se cose mide { $size }.
sewing_trouble-gathered_to_another_length_do = Redúzcalo hasta que encaje en ese borde: fit=... lo nombra.
sewing_trouble-pocket_place_size = el bolsillo mide { $own } alrededor de sus bordes cosidos, pero la línea sobre la que se coloca mide { $length }.
sewing_trouble-pocket_place_size_do = Trace la colocación a partir del bolsillo, o el bolsillo a partir de su colocación.
sewing_trouble-pocket_turns = el primer doblez es más ancho que el segundo, así que no cabe dentro del dobladillo del bolsillo.
sewing_trouble-folded_twice = el borde «{ $place }» ya está doblado con la plancha.
sewing_trouble-do_take_one_out = Quite uno de los dos.
sewing_trouble-folded_late = el borde «{ $place }» ya está cosido; su margen se dobla con la plancha antes de coser el bolsillo.
sewing_trouble-folded_late_do = Póngalo antes de coser el bolsillo.
sewing_trouble-pocket_not_hemmed = la pieza «{ $piece }» se cose antes de hacer el dobladillo de su boca; después ya no se llega a los extremos del dobladillo.
sewing_trouble-pocket_not_hemmed_do = Haga primero el dobladillo: make.pocket_hem(pocket.top, ...).
sewing_trouble-pocket_not_folded = el borde «{ $edge }» ({ $piece }) no está doblado todavía con la plancha, así que se vería la tela sin rematar.
sewing_trouble-pocket_not_folded_do = Doble primero los bordes con la plancha: make.fold_pocket(...).
sewing_trouble-pocket_twice = en «{ $place }» ya hay un bolsillo.
sewing_trouble-pocket_twice_do = Quite uno de los dos, o nombre otra marca.
sewing_trouble-gathers_too_few = el borde «{ $place }» mide { $full }; recogido hasta { $drawn } no hace frunces.
sewing_trouble-gathers_too_few_do = Alargue el borde, recójalo más o embébalo: make.ease_stitch(...).
# $ratio es un número como 3,5.
sewing_trouble-gathers_too_many = el borde «{ $place }» mide { $full }, { $ratio } veces los { $drawn } a los que se tiene que recoger: tanta tela no se puede juntar.
sewing_trouble-gathers_too_many_do = Acorte el borde, o hágale pliegues.
sewing_trouble-basted_late = el borde «{ $place }» ya está cerrado; no queda nada que sujetar con un hilván.
sewing_trouble-basted_late_do = Póngalo antes de la costura de ese borde.
sewing_trouble-not_basted = en «{ $place }» no hay ningún hilván que quitar.
sewing_trouble-not_basted_do = Hilvánelo primero, o quite esto.
sewing_trouble-basting_out_early = el borde «{ $place }» no está cosido todavía, así que solo lo sujeta el hilván.
sewing_trouble-basting_out_early_do = Cósalo primero, o pruebe la prenda: make.try_on(...).
sewing_trouble-basted_otherwise = { $place } sigue hilvanado por la línea de costura, derecho con derecho, y no se puede colocar como empieza esta costura.
sewing_trouble-basted_otherwise_do = Quite antes el hilván: make.remove_basting(...).
sewing_trouble-pressed_early = en «{ $place }» no hay todavía ninguna costura que planchar.
sewing_trouble-pressed_early_do = Cósala primero, o nombre el borde de la costura a la que se refiere.
sewing_trouble-pressed_open_shut_in = los márgenes de «{ $place }» están encerrados, así que no se pueden planchar abiertos.
sewing_trouble-pressed_open_shut_in_do = Plánchelos hacia un lado: make.press(..., way="one side").
sewing_trouble-pressed_no_edge = a lo largo de «{ $place }» todavía no se ha vuelto nada hacia dentro, así que ahí no hay costura en el borde.
sewing_trouble-pressed_no_edge_do = Vuelva antes la vista o la pieza; una costura que queda dentro se plancha abierta o hacia un lado.
sewing_trouble-band_meets_no_seam = ninguna costura de la prenda llega a «{ $place }»: el lado interior de la pretina quedaría suelto.
sewing_trouble-band_meets_no_seam_do = Ciérrela en todo el contorno: method="hand", "groove" o "edgestitch".
sewing_trouble-binding_short_seam = ribetear sus márgenes ocupa { $wanted }, pero de la tira solo hay { $left }.
sewing_trouble-binding_short_seam_do = Corte más cantidad, o hágala más larga.
sewing_trouble-french_seam_trimmed = los márgenes recortados miden { $trim } de ancho, no menos que la segunda costura, a { $second } del doblez: se verían sus bordes.
sewing_trouble-french_seam_trimmed_do = Recórtelos más, o haga la segunda costura más ancha.
sewing_trouble-french_seam_rows = la segunda costura va a { $second } del doblez, demasiado cerca para encerrar los bordes recortados.
sewing_trouble-french_seam_rows_do = Haga la segunda costura al menos de { $least }.
sewing_trouble-opening_outside_seam = la abertura termina a { $end } en el borde «{ $place }», que solo mide { $size }.
sewing_trouble-opening_outside_seam_do = Suba la abertura, o hágala más pequeña.
sewing_trouble-opening_narrow = un margen de { $depth } es demasiado estrecho para meterlo hacia dentro a lo largo de la abertura.
sewing_trouble-opening_narrow_do = Dé a la costura un margen de al menos { $least }.
sewing_trouble-cap_not_eased = la copa mide { $ease } más que la sisa, y todavía no la recoge ninguna costura de embebido.
sewing_trouble-cap_not_eased_do = Hágala primero a lo largo de la copa: make.ease_stitch(sleeve.cap, fit=...).
sewing_trouble-place_outside_run = se coloca a { $at } en el borde «{ $place }», que solo mide { $size }.
sewing_trouble-place_outside_run_do = Mida desde el comienzo del borde.
sewing_trouble-strip_not_made = se pone antes de confeccionarla.
sewing_trouble-too_few_strips =
    { $count ->
        [one] se pone { $count } tira
       *[other] se ponen { $count } tiras
    }, pero { $cut ->
        [one] solo se corta { $cut }
       *[other] solo se cortan { $cut }
    }.
sewing_trouble-too_few_strips_do = Corte más, o ponga menos (nombre un solo lado: front.left).
sewing_trouble-strip_made_twice = ya está confeccionada.
sewing_trouble-strip_made_twice_do = Quite una de las dos operaciones.
sewing_trouble-strip_width = cortada a { $width } de ancho queda en { $comes }, no en { $finished_width }.
sewing_trouble-strip_width_do = Cambie el ancho cortado o el ancho acabado.
sewing_trouble-slant_long = una punta en diagonal de { $slant } es más de la mitad de su largo de { $length }.
sewing_trouble-slant_long_do = Haga más corta la diagonal.
sewing_trouble-edge_closed_already = el borde «{ $place }» ya está cerrado, así que ninguna costura puede sujetarla ahí.
sewing_trouble-edge_closed_already_do = Póngala antes de hacer esa costura, o cósala encima.
sewing_trouble-strip_edge_raw = se cose sobre el borde «{ $place }» mientras este sigue sin rematar.
sewing_trouble-strip_edge_raw_do = Remate primero el borde, o deje que la sujete la costura.
sewing_trouble-end_outside_run = un extremo se coloca a { $at } en el borde «{ $place }», que solo mide { $size }.
sewing_trouble-end_outside_run_do = Mida los dos lugares desde el comienzo del borde.
sewing_trouble-handle_twice = en este lugar de «{ $place }» ya hay fijada una tira.
sewing_trouble-handle_edge_raw = se cose sobre el borde «{ $place }» mientras este sigue sin rematar.
sewing_trouble-handle_edge_raw_do = Remate primero el borde, o deje que la sujete una costura o un dobladillo.
sewing_trouble-handle_edge_closed = el borde «{ $place }» ya está cerrado, así que nada puede sujetar ahí los extremos.
sewing_trouble-handle_edge_closed_do = Póngala antes de coser o dobladillar ese borde, o cósala encima.
sewing_trouble-trimmed_away = un margen de { $to } se deshilacha y se sale de la costura.
sewing_trouble-trimmed_away_do = Deje al menos { $least }.
sewing_trouble-nothing_to_trim = el margen de «{ $place }» solo mide { $width } de ancho, así que recortarlo a { $to } no quita nada.
sewing_trouble-nothing_to_trim_do = Recórtelo más estrecho, o quite esto.
sewing_trouble-strip_seam_not_sewn = «{ $piece }»: su costura aún no está cosida, o las tijeras ya no la alcanzan.
sewing_trouble-strip_seam_not_sewn_do = Recorte entre coser y volver: make.turn_strip(..., rows="sew"), luego esto, luego make.finish(...).
sewing_trouble-strip_nothing_to_trim = «{ $piece }»: el margen mide { $width }, así que no queda nada que recortar a { $to }.
sewing_trouble-strip_end_open = «{ $piece }»: ninguna costura cruza sus extremos.
sewing_trouble-strip_end_open_do = Nombre sus lados (sides), o cosa un extremo en diagonal: make.turn_strip(..., slant=3 * cm).
sewing_trouble-one_layer_graded = el borde «{ $place }» no se cose a ningún otro, así que no hay dos márgenes que escalonar.
sewing_trouble-one_layer_graded_do = Haga primero la costura, o recórtelo: make.trim(...).
sewing_trouble-tacked_raw = el borde «{ $place }» se sujeta mientras sigue sin rematar.
sewing_trouble-tacked_raw_do = Remátelo primero.
sewing_trouble-tacked_to_no_seam = en «{ $place }» no hay todavía ninguna costura a la que sujetarlo.
sewing_trouble-tacked_to_no_seam_do = Haga primero esa costura.
sewing_trouble-tacked_loose = la pieza «{ $piece }» no está cosida todavía a la prenda.
sewing_trouble-tacked_loose_do = Cósala primero y después sujete su borde.
sewing_trouble-inside_out = la pieza «{ $piece }» sigue del revés.
sewing_trouble-inside_out_do = Vuélvala primero: make.turn_out(..., through=...).
sewing_trouble-right_side_out_already = la pieza «{ $piece }» no está del revés, así que no hay nada que volver.
sewing_trouble-right_side_out_already_do = Cósala primero derecho con derecho, o quite esto.
sewing_trouble-gap_narrow = una abertura de { $size } es demasiado estrecha para volver la pieza por ella.
sewing_trouble-gap_narrow_do = Deje al menos { $least }; más en telas gruesas.
sewing_trouble-gap_unequal = los dos bordes de la abertura son distintos: { $one } y { $two }.
sewing_trouble-gap_unequal_do = Nombre la misma parte de los dos bordes.
sewing_trouble-turned_gap_shut = se tiene que volver por «{ $place }», pero está cosido.
sewing_trouble-turned_gap_shut_do = Deje una abertura en la costura, o vuélvala antes de cerrar ese borde.
sewing_trouble-zip_sides = los dos lados de su abertura son distintos: { $size } y { $other }.
sewing_trouble-zip_sides_do = Marque la abertura en el mismo lugar de los dos bordes.
sewing_trouble-seam_below_zip = junto a la abertura, el borde «{ $place }» no está cosido todavía; la cremallera se pone en una costura que termina en ella.
sewing_trouble-seam_below_zip_do = Haga primero la costura hasta la abertura.
sewing_trouble-slit_adrift = «{ $place }» no empieza en ningún borde de su pieza, así que ahí no se puede abrir.
sewing_trouble-slit_adrift_do = Trace el corte desde el borde en que se abre.
sewing_trouble-placket_late = el borde «{ $place }» ya está cerrado donde se abre el corte, así que este ya no se puede poner recto.
sewing_trouble-placket_late_do = Cosa la tapeta mientras ese borde está sin coser, antes de fruncirlo o de ponerle el puño o el dobladillo.
sewing_trouble-placket_short = la tira está cortada de { $length } de largo, pero los dos lados del corte necesitan { $needed }.
sewing_trouble-placket_short_do = Córtela más larga.
sewing_trouble-placket_narrow = la tira está cortada de { $width } de ancho: doblada no taparía su propia costura, para lo que hacen falta { $needed }.
sewing_trouble-placket_narrow_do = Córtela más ancha, o cósala con un margen más estrecho.
sewing_trouble-tower_short = la tapeta sube { $given } a lo largo del corte y termina antes del pespunte que la sujeta.
sewing_trouble-tower_short_do = Córtela de al menos { $least } de largo sin los márgenes, o acorte el corte.
sewing_trouble-tower_narrow = doblada, la tapeta mide { $given } de ancho, demasiado poco para tapar el final del corte.
sewing_trouble-tower_narrow_do = Doblada debe medir al menos { $least }: córtela más ancha o haga el rectángulo más estrecho.
sewing_trouble-fly_facing_narrow = la vista de la bragueta mide { $wide } de ancho: la curva a { $lap } del borde apenas la tomaría.
sewing_trouble-fly_facing_narrow_do = Córtela de al menos { $least } de ancho sin los márgenes, o cosa más cerca del borde.
sewing_trouble-fly_facing_length = el borde «{ $place }» mide { $length } y la abertura { $opening }.
sewing_trouble-fly_facing_length_do = Córtelo tan largo como la abertura, o un poco más por abajo: hasta { $most }.
sewing_trouble-fly_shield_open = «{ $place }» se va a coser con la cremallera, pero sus dos extremos están todavía sin coser.
sewing_trouble-fly_shield_open_do = Cosa antes la contrabragueta por su extremo inferior y vuélvala; después ya no se llega a él.
sewing_trouble-seam_before_zip = junto a la abertura, el borde «{ $place }» ya está cosido; una cremallera invisible se cose a dos piezas planas y la costura de al lado se hace después.
sewing_trouble-seam_before_zip_do = Ponga la cremallera antes de la costura de debajo.
sewing_trouble-zip_late = el borde «{ $edge }» ya está cerrado, así que ya no se puede sujetar ahí el extremo superior de la cremallera.
sewing_trouble-zip_late_do = Ponga la cremallera antes de la pretina, la vista o el dobladillo que cubre su extremo.
sewing_trouble-fold_sewn = el borde «{ $edge }» va al doblez, así que no hay borde cortado que coser.
sewing_trouble-fold_sewn_do = Nombre otro borde, o corte la pieza doble con una costura ahí.
sewing_trouble-band_inner_longer = el borde «{ $place }» mide { $amount } más que el borde sobre el que se coloca.
sewing_trouble-band_inner_shorter = el borde «{ $place }» mide { $amount } menos que el borde sobre el que se coloca.
sewing_trouble-band_inner_do = Trace iguales los dos bordes de la pretina.
sewing_trouble-band_inner_deeper = el borde «{ $place }» queda { $amount } más abajo que la pretina exterior: el doblez sobrepasa en eso la costura.
sewing_trouble-band_inner_shallower = el borde «{ $place }» queda { $amount } más arriba que la pretina exterior: el doblez no llega a la costura.
sewing_trouble-band_inner_depth_do = Trace las dos piezas de la pretina igual de altas, o escriba deeper=3 * mm si el doblez debe sobrepasar la costura.
sewing_trouble-worked_before_band = la pieza «{ $piece }» no está cerrada todavía: en «{ $place }» hay una sola capa.
sewing_trouble-worked_before_band_do = Cierre primero la pretina: make.close_band(...).
sewing_trouble-worked_at_raw_edge = el borde «{ $edge }», junto a «{ $place }», sigue sin rematar: ahí hay todavía una sola capa.
sewing_trouble-worked_at_raw_edge_do = Acabe primero ese borde (vista, pretina o dobladillo).
sewing_trouble-worked_twice = en «{ $place }» ya está hecho.
# $wanted es lo que mide el primer borde.
sewing_trouble-fits_longer = «{ $place }» da { $wanted }, pero el borde al que se cose mide { $amount } más.
sewing_trouble-fits_shorter = «{ $place }» da { $wanted }, pero el borde al que se cose mide { $amount } menos.
sewing_trouble-fits_longer_with_ease = «{ $place }» da { $wanted }, pero el borde al que se cose mide { $amount } más, contando su embebido.
sewing_trouble-fits_shorter_with_ease = «{ $place }» da { $wanted }, pero el borde al que se cose mide { $amount } menos, contando su embebido.
sewing_trouble-fits_do = Trace iguales los dos, frunza el más largo hasta que encaje, o diga cuánto monta y cuánto se embebe.
# $fold es el nombre de una pinza, un pliegue o una alforza.
sewing_trouble-fold_twice = «{ $fold }» ya tiene su costura o su doblez.
sewing_trouble-fold_late = «{ $fold }» se abre en el borde «{ $edge }», que ya está cerrado.
sewing_trouble-fold_late_do = Póngalo antes de la primera costura, dobladillo, vista o pretina de ese borde.
sewing_trouble-seam_not_gathered = el borde «{ $place }» es un { $share } más largo que aquello a lo que se cose: demasiado para embeber.
sewing_trouble-seam_not_gathered_do = Frúnzalo primero: make.gather(...). Si lo más corto es elástico y se estira al coser, indíquelo: Lesson(..., stretch=0.6).
sewing_trouble-seam_not_eased = el borde «{ $place }» es un { $share } más largo que aquello a lo que se cose: demasiado para repartirlo con alfileres.
sewing_trouble-seam_not_eased_do = Haga primero en él una costura de embebido: make.ease_stitch(...).
sewing_trouble-drawn_up_late = el borde «{ $place }» ya está cosido, así que ya no se puede recoger.
sewing_trouble-drawn_up_late_do = Póngalo antes de la costura que recoge la amplitud.
sewing_trouble-gathered_twice = el borde «{ $place }» ya está fruncido.
sewing_trouble-eased_twice = el borde «{ $place }» ya está embebido.
sewing_trouble-nothing_to_ease = el borde «{ $place }» mide { $full } y se tiene que embeber hasta { $drawn }, que no es menos.
sewing_trouble-nothing_to_ease_do = Revise las dos medidas.
sewing_trouble-too_much_to_ease = el borde «{ $place }» mide { $full } y se tiene que embeber hasta { $drawn }: un { $share } es demasiado para quedar liso.
sewing_trouble-too_much_to_ease_do = Frúnzalo, o hágale una pinza o pliegues.
sewing_trouble-sleeve_no_ring = el borde «{ $place }» no es un anillo cerrado: la costura de debajo del brazo no está cosida todavía.
sewing_trouble-sleeve_no_ring_do = Haga primero la costura de debajo del brazo de la manga, o monte la manga en plano con una costura simple.
sewing_trouble-armhole_no_ring = el borde «{ $place }» no es un anillo cerrado: la costura del hombro o la lateral que tiene al lado no está cosida todavía.
sewing_trouble-armhole_no_ring_do = Haga primero las dos, o monte la manga en plano con una costura simple.
# Se dice al recortar, dar cortes, quitar cuñas o escalonar un margen.
sewing_trouble-cut_into_early = el margen de «{ $place }» se corta antes de hacer su costura.
sewing_trouble-cut_into_late = el margen de «{ $place }» ya está encerrado, donde no llegan las tijeras.
sewing_trouble-cut_into_late_do = Póngalo antes de eso.
sewing_trouble-clip_first_late = el borde «{ $place }» ya está cosido; dar cortes antes ya no sirve.
sewing_trouble-clip_first_late_do = Póngalo antes de la primera costura de ese borde, o dé cortes en el borde cosido: make.clip(...).
sewing_trouble-clip_first_straight = el borde «{ $place }» no tiene que abrirse: no hay ninguna curva cerrada que seguir.
sewing_trouble-clip_first_straight_do = Quite esto, o nombre la curva a la que debe ajustarse un borde recto: fit=front.waist.
sewing_trouble-clip_first_loose = el borde «{ $place }» no tiene costura de refuerzo; los cortes seguirían rasgándose.
sewing_trouble-clip_first_loose_do = Haga primero la costura de refuerzo: make.staystitch(...).
sewing_trouble-clipped_outward_curve = el borde «{ $place }» curva hacia fuera: una vez vuelto, su margen con cortes seguiría amontonado.
sewing_trouble-clipped_outward_curve_do = Quite cuñas en su lugar: make.notch_curve(...).
sewing_trouble-notched_inward_curve = el borde «{ $place }» curva hacia dentro: su margen tiene que abrirse al volverlo, y las cuñas recortadas dejarían huecos.
sewing_trouble-notched_inward_curve_do = Dé cortes en su lugar: make.clip(...).
sewing_trouble-zip_length = la cremallera mide { $length } de largo, pero su abertura { $opening }.
sewing_trouble-zip_long_do = Ponga una cremallera más corta o una abertura más larga.
sewing_trouble-zip_short_do = Ponga una cremallera más larga o una abertura más corta; arriba puede quedar como mucho { $most }.
sewing_trouble-zip_ends_short = la cremallera mide { $length }: el cursor estorbaría a las últimas puntadas.
sewing_trouble-zip_ends_short_do = Para esta abertura de { $opening }, tome una cremallera de al menos { $least }; lo que sobre se corta por abajo.
sewing_trouble-fold_open = el borde «{ $edge }» se cierra mientras «{ $fold }» sigue sin cerrar en él.
# $call es lo que se escribe en el cuaderno, como make.dart(front).
sewing_trouble-fold_open_do = Cósalo primero: { $call }.
sewing_trouble-not_pressed = la costura de «{ $edge }» se cruza antes de plancharla.
sewing_trouble-not_pressed_do = Planche primero esa costura: make.press(...), o diga press=... donde se cose.
sewing_trouble-half_sewn = la costura de «{ $edge }» se cruza antes de coser su última pasada.
sewing_trouble-half_sewn_do = Termine primero esa costura: make.finish(...).
sewing_trouble-not_left_there = { $place }: se sigue cosiendo antes de empezar, o dos veces.
sewing_trouble-not_left_there_do = Cosa sus pasadas una tras otra, cada una una sola vez.
sewing_trouble-closed_twice_do = Quite una de las dos operaciones, o nombre solo la parte que sigue sin coser, como front.side.before(front.slit).
# $amount es una longitud; $step, el título de un paso de costura.
sewing_trouble-closed_twice_sewn = ya hay { $amount } de costura en el borde «{ $edge }».
sewing_trouble-closed_twice_sewn_by = ya hay { $amount } de costura en el borde «{ $edge }», hecha en «{ $step }».
sewing_trouble-closed_twice_faced = ya hay { $amount } con vista en el borde «{ $edge }».
sewing_trouble-closed_twice_faced_by = ya hay { $amount } con vista en el borde «{ $edge }», puesta en «{ $step }».
sewing_trouble-closed_twice_hemmed = ya hay { $amount } con dobladillo en el borde «{ $edge }».
sewing_trouble-closed_twice_hemmed_by = ya hay { $amount } con dobladillo en el borde «{ $edge }», hecho en «{ $step }».
sewing_trouble-closed_twice_finished = ya hay { $amount } con remate en el borde «{ $edge }».
sewing_trouble-closed_twice_finished_by = ya hay { $amount } con remate en el borde «{ $edge }», hecho en «{ $step }».
sewing_trouble-understitched_garment = { $place } es el lado de la prenda; el pespunte de sujeción va sobre la vista y no debe verse por fuera.
sewing_trouble-understitched_garment_do = Nombre los bordes de la vista: make.understitch(front_facing.inner, ...).
sewing_trouble-understitched_wide = a { $distance } de la costura, el pespunte de sujeción ({ $place }) no toma ningún margen, pues los márgenes miden { $wide }.
sewing_trouble-understitched_wide_do = Cosa más cerca de la costura, a unos 2 mm.
sewing_trouble-button_on_hole = el botón se cose en { $place }, donde hay un ojal.
sewing_trouble-button_on_hole_do = Nombre el lugar del botón, en la capa de debajo.
sewing_trouble-folded_otherwise = se doblan { $allowance } hacia dentro ({ $edge }) y se añadieron { $added }.
sewing_trouble-folded_otherwise_do = Doble lo que se añadió, o añada lo que se dobla.
sewing_trouble-pockets_and_places = { $number ->
    [one] se cose un bolsillo
   *[other] se cosen { $number } bolsillos
} y { $places ->
    [one] se nombra un lugar.
   *[other] se nombran { $places } lugares.
}
sewing_trouble-pockets_and_places_do = Nombre un lugar para cada bolsillo: una marca de una pieza simétrica, sin izquierda ni derecha, vale para las dos mitades.
sewing_trouble-loop_over_opening = se cose sobre una abertura ({ $place }) y la cierra.
sewing_trouble-loop_over_opening_do = Colócala junto a la abertura o en el otro lado.
sewing_trouble-facing_apart = { $place } y { $other } se rematan por separado, antes de unir las vistas.
sewing_trouble-facing_apart_do = Si se unen antes, los extremos de la costura quedan bajo el remate; también puede quedarse así.
sewing_trouble-try_on_refused = uno de sus dos trazados no se puede dibujar: { $why }
sewing_trouble-try_on_refused_do = Cambie los valores de la prueba o los de la lección.
sewing_trouble-tried_on_nothing = en esta prueba no cambia nada del trazado.
sewing_trouble-tried_on_nothing_do = Nombre el valor que se cambió con su medida de antes y de después, o quítelo.
sewing_trouble-tried_on_elsewhere = en esta prueba no cambia nada: la lección está en otros valores que aquellos con los que se hizo.
sewing_trouble-tried_on_elsewhere_do = Ponga el valor de antes o el de después para ver qué se cambió.
sewing_trouble-spot_at = junto a «{ $edge }»
sewing_trouble-spot_from = a { $far } de «{ $edge }»
sewing_trouble-cloth_beyond = la nueva línea de costura ({ $edge }) queda { $amount } más allá del borde de la tela, { $spot }.
sewing_trouble-cloth_beyond_do = Corte este borde con tela de más para la prueba, allow_to_fit(...), saque menos, o corte la pieza de nuevo.
sewing_trouble-cloth_narrow = por fuera de la nueva línea de costura ({ $edge }) queda solo { $left } de tela, { $spot }; su costura necesita { $need }.
sewing_trouble-cloth_narrow_do = Corte este borde con tela de más para la prueba, allow_to_fit(...), o saque menos.
sewing_trouble-cloth_narrow_plain = de los { $need } de margen queda solo { $left } por fuera de la nueva línea de costura ({ $edge }), { $spot }.
sewing_trouble-cloth_narrow_plain_do = Una costura sencilla se puede coser con eso; remate los bordes antes de que se deshilachen.
sewing_trouble-strip_cut_short = esta tira está cortada { $amount } más pequeña de lo que debe ser desde ahora: { $strip }.
sewing_trouble-strip_cut_short_do = Córtela más grande desde el principio, o de nuevo.
sewing_trouble-old_row_left_in = el pespunte de este borde se deja en su sitio, hasta { $amount } por fuera de la nueva línea: { $edge }.
sewing_trouble-old_row_left_out = el pespunte de este borde se deja en su sitio, hasta { $amount } por dentro de la nueva línea, donde se ve y tira: { $edge }.
sewing_trouble-old_row_left_do = Quite este borde de leave=..., para que se descosa.
sewing_trouble-no_extra_to_trim = aquí no hay tela de más para la prueba: { $place }.
sewing_trouble-no_extra_to_trim_do = Désela en un paso de trazado, allow_to_fit(...), o no lo nombre aquí.
sewing_trouble-trimmed_to_fit_twice = la tela de más ya está recortada aquí: { $place }.
sewing_trouble-trimmed_to_fit_late = la tela de más ya está encerrada o doblada, donde no llegan las tijeras: { $place }.
sewing_trouble-trimmed_to_fit_late_do = Recórtela antes.
sewing_trouble-part_of_edge = { $place } es solo un tramo, y aquí se cose el borde entero.
sewing_trouble-part_of_edge_do = Nombre el borde entero.
