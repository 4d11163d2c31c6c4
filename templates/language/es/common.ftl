# Frases comunes, textos alternativos de las imágenes y las palabras pequeñas con que se forman.
# Los nombres se dan sin artículo; EL, DEL y AL se lo ponen: «el bajo del delantero izquierdo».

language-name = Español

phrase-minutes = { $count ->
        [one] { $count } minuto
       *[other] unos { $count } minutos
    }

phrase-edge_on_side = { SIDE($edge, $side) }
phrase-piece = { $piece }
phrase-piece_on_side = { SIDE($piece, $side) }
phrase-place = { $edge } { DEL($piece) }
phrase-place_on_side = { $edge } { DEL(SIDE($piece, $side)) }
phrase-numbered_row = { $name } { $first } a { $last }
phrase-on_both_halves = { $place }, a izquierda y derecha
phrase-run = { $edge } { DEL($piece) }
phrase-run_on_side = { $edge } { DEL(SIDE($piece, $side)) }
phrase-row = { $first } con { EL($last) }
# El español escribe los nombres con minúscula dentro de la frase.
phrase-title = { $small }
# «e» ante el sonido i: «frente e hilo».
phrase-two =
    { $sound ->
        [i] { $first } e { $last }
       *[other] { $first } y { $last }
    }
phrase-more = { $first }, { $last }
phrase-then = { $first } { $then }
phrase-parted = { $first }; { $last }
phrase-two_places = { $first }, así como { $last }
phrase-more_places = { $first }, { $last }

# Una parte de un borde, de un lugar a otro: «costura lateral desde abertura hasta bajo»; y los lugares.
phrase-part = { $place } { $stretch }
phrase-stretch = desde { EL($start) } hasta { EL($end) }
phrase-stretch_below = de { $start } a { $end } por debajo { DEL($edge) }
phrase-stretch_above = de { $start } a { $end } por encima { DEL($edge) }
phrase-stretch_from = de { $start } a { $end }, medidos desde { EL($edge) }
phrase-stretch_along = de { $start } a { $end } a contar desde su comienzo
phrase-spot_below = a { $size } por debajo { DEL($edge) }
phrase-spot_above = a { $size } por encima { DEL($edge) }
phrase-spot_from = a { $size } { DEL($edge) }
phrase-spot_along = a { $size } de su comienzo
phrase-spot_edge = junto { AL($edge) }
phrase-spot_mark = en { EL($mark) }
phrase-spots_below = a { $first } y a { $second } por debajo { DEL($edge) }
phrase-spots_above = a { $first } y a { $second } por encima { DEL($edge) }
phrase-spots_from = a { $first } y a { $second } { DEL($edge) }
phrase-spots_along = a { $first } y a { $second } de su comienzo
phrase-at_mark = { $mark }
phrase-at_mark_upper = la marca superior { DEL($mark) }
phrase-at_mark_lower = la marca inferior { DEL($mark) }
phrase-at_mark_toward = la marca { DEL($mark) } del lado { DEL($edge) }
phrase-at_notch = el piquete
phrase-at_notch_double = el piquete doble
phrase-at_notch_number = el piquete { $number } a contar desde { EL($edge) }
phrase-at_edge = { $edge }
phrase-at_start = su comienzo
phrase-at_end = su final
phrase-at_below = { $size } por debajo { DEL($edge) }
phrase-at_above = { $size } por encima { DEL($edge) }
phrase-at_from = { $size } desde { EL($edge) }
phrase-at_along = { $size } a contar desde su comienzo

word-left = izquierda
word-right = derecha
word-face-right = con el derecho hacia arriba
word-face-wrong = con el revés hacia arriba
word-interfacing-right = con el adhesivo hacia abajo
word-interfacing-wrong = con el adhesivo hacia arriba
word-finish-zigzag = remate en zigzag
word-finish-overlock = sobrehíle con la remalladora
word-finish-pinked = recorte con tijeras dentadas
word-tube-casing = jareta
word-tube-channel = jareta
word-stuff-interfacing = entretela
word-thing-zip = cremallera
word-thing-zip_tape = cinta de una cremallera abierta
word-thing-button = botón
word-thing-buttonhole = ojal
word-thing-hook = gancho
word-thing-bar = presilla de gancho
word-thing-eye = anilla de gancho
word-thing-snap = mitad macho de un broche a presión
word-thing-socket = mitad hembra de un broche a presión
word-thing-eyelet = ojete
word-thing-cut = línea por la que se corta
word-thing-tower = tapeta con punta
word-thing-elastic = tramo de elástico
word-thing-cord = cordón
word-thing-threaded = pasacintas con el extremo que va dentro de la jareta
word-thing-binding = tira para ribetear
word-thing-clips = hilera de cortes en el margen
word-thing-caught = extremo de una tira sujeto entre las capas
word-thing-tie = cinta que sale
word-thing-gap = abertura para volver, mantenida abierta
word-thing-wedges = hilera de cuñas recortadas en el margen
word-close = ceñido
word-easy = cómodo
word-loose = amplio

# Cómo se llama un borde para el que la lección no tiene palabras propias.

edge-outer = borde exterior
edge-inner = borde interior
edge-wrist = borde de la muñeca
edge-side = costura lateral
edge-neck = escote
edge-shoulder = costura del hombro
edge-opening = bocamanga
edge-centre = línea central
edge-hem = bajo
edge-waist = cintura
edge-hip = cadera
edge-armhole = sisa
edge-inseam = entrepierna
edge-outseam = costura exterior de la pierna
edge-cap = copa de la manga
edge-overarm = costura de manga
edge-underarm = costura de debajo del brazo
edge-front_underarm = costura delantera de debajo del brazo
edge-back_underarm = costura trasera de debajo del brazo
edge-centre_front = centro del delantero
edge-centre_back = centro de la espalda
edge-front_side = costura lateral delantera
edge-back_side = costura lateral trasera
edge-left_side = costura lateral izquierda
edge-right_side = costura lateral derecha
edge-top = borde superior
edge-bottom = borde inferior
edge-mouth = boca
edge-near_end = extremo cercano
edge-far_end = extremo lejano
edge-front_end = extremo delantero
edge-back_end = extremo trasero
edge-button_end = extremo del botón

common-both_sides = Trabaje igual el lado izquierdo y el derecho.
common-both_sides_open_left = Déjelo abierto solo en el lado izquierdo; cosa el derecho del mismo modo, pero de un extremo a otro.
common-both_sides_open_right = Déjelo abierto solo en el lado derecho; cosa el izquierdo del mismo modo, pero de un extremo a otro.
common-pin_right = Sujete con alfileres { EL($a) } sobre { EL($b) }, derecho con derecho, a lo largo { DEL($edge) }.
common-pin_wrong = Sujete con alfileres { EL($a) } sobre { EL($b) }, revés con revés, a lo largo { DEL($edge) }.
common-pin_right_same_piece = Sujete con alfileres la mitad izquierda sobre la derecha, derecho con derecho, a lo largo { DEL($edge) }.
common-pin_wrong_same_piece = Sujete con alfileres la mitad izquierda sobre la derecha, revés con revés, a lo largo { DEL($edge) }.
common-pin_right_run_on_run = Sujete con alfileres { EL($a) } sobre { EL($b) }, derecho con derecho.
common-pin_wrong_run_on_run = Sujete con alfileres { EL($a) } sobre { EL($b) }, revés con revés.
common-match_notches = Haga coincidir los piquetes.
common-match_seams = Haga coincidir las costuras.
common-match_seams_and_notches = Haga coincidir las costuras y los piquetes.
common-ease = Uno de los bordes es a propósito { $ease } más largo: embeba esa diferencia por igual y sujete con alfileres.
common-press_open = Abra la costura con la plancha.
common-press_one_side = Planche los dos márgenes hacia un mismo lado.
common-press_later = No la planche todavía.
common-press_towards = Planche los márgenes hacia { EL($piece) }.

alt-bottom = { EL($piece) }: { $face }.
alt-together = { EL($piece) }: encima, { $face }, borde con borde por { EL($edge) }.
alt-open = { EL($piece) }: al lado, tras abrir por { EL($edge) }, { $face }.
alt-flat = { EL($piece) }: encima, en plano, { $face }.
alt-turned = El borde está doblado { $depth } en { EL($edge) }.
alt-row = Una costura nueva corre por { EL($edge) }.
alt-row_inside = Una costura nueva corre { $inset } por dentro { DEL($edge) }.
alt-row_outside = Una costura nueva corre por el margen { DEL($edge) }, { $inset } por fuera de la línea de costura.
alt-old_row = Se ve la costura anterior en { EL($edge) }.
alt-gap = Deja una abertura de { $gap }.
alt-strip = Se muestra { EL($strip) }.
alt-pinned = Hay alfileres puestos en { EL($edge) }.
alt-folded = { EL($piece) } se dobla por una línea.
alt-thing = En su lugar se muestra: { $thing }.
alt-things = En sus lugares se muestran { $count } unidades: { $thing }.
alt-row_line = Una costura nueva sigue la línea marcada.
alt-row_baste = Un hilván de puntadas largas corre por { EL($edge) }.
alt-row_gather = Unas hileras de puntadas largas para fruncir corren por { EL($edge) }.
alt-row_box = Hay un rectángulo cosido con una cruz en { EL($edge) }.
alt-row_hand = Unas puntadas a mano corren por { EL($edge) }.
alt-section = Un corte transversal muestra cómo quedan las capas.
alt-draft = Trazado: { $pieces }.
alt-draft_strips = Tiras por cortar: { $strips }.
alt-draft_new = Líneas nuevas: { $lines }.
alt-draft_removed = Líneas quitadas o vueltas a trazar: { $lines }.
alt-draft_points = Puntos nuevos: { $points }.
alt-draft_measures = Medidas: { $measures }.
alt-draft_measure = { $name } { $value }
