# La hoja para trazar a mano: cada paso en números, para regla, escuadra y papel.
# Los puntos llevan letras (A, B, ...). Las longitudes van en un solo sistema.

# La primera parte: el patrón base del que parte la lección.
worksheet-start = El patrón base de partida
worksheet-how = Los puntos se miden desde O, donde se cruzan dos líneas a escuadra: primero a lo largo de la línea horizontal, después a escuadra con ella. Las curvas se trazan a partir de la recta entre dos puntos: lleve las distancias sobre la recta, marque a escuadra con ella las separaciones y dibuje una curva continua por las marcas.
worksheet-alike = { $pieces }: todas iguales
worksheet-origin = Trace en el papel una línea vertical y una línea horizontal a escuadra con ella. Se cruzan en O.
# $line nombra una línea del trazado que cae sobre ella.
worksheet-upright = La línea vertical es { EL($line) }.
worksheet-level = La línea horizontal es { EL($line) }.

# Dónde está un punto: celdas de una tabla.
worksheet-right = { $length } a la derecha
worksheet-left = { $length } a la izquierda
worksheet-up = { $length } hacia arriba
worksheet-down = { $length } hacia abajo
worksheet-on_upright = en la línea vertical
worksheet-on_level = en la línea horizontal
worksheet-at_origin = en O
worksheet-point = { $letter }: { $across }, { $above }.
# $name es el nombre propio del punto.
worksheet-named_point = { $letter }, { $name }: { $across }, { $above }.
worksheet-point_at_origin = { $letter }: en O.
worksheet-named_point_at_origin = { $letter }, { $name }: en O.

# Líneas. $edge es el nombre de una línea; $start y $end, letras de puntos.
worksheet-rule = { $edge }: trace con la regla { $length } de { $start } a { $end }.
worksheet-curve = { $edge }: dibuje una curva de { $start } a { $end }. La recta entre los dos mide { $chord } de largo.
# A qué lado de la recta, vista desde su primer punto hacia el segundo.
worksheet-off_left = { $length } a la izquierda
worksheet-off_right = { $length } a la derecha
worksheet-off_none = en la recta
worksheet-offset = { $along } desde { $start }: { $off }.
worksheet-leaves = Salga de { $start } apuntando a un lugar { $along } más adelante y después { $off }.
worksheet-leaves_straight = Salga de { $start } siguiendo la recta.
# $along se mide hacia atrás desde $end.
worksheet-arrives = Llegue a { $end } desde un lugar { $along } antes y después { $off }.
worksheet-arrives_straight = Llegue a { $end } siguiendo la recta.
worksheet-trim = { $edge }: de la línea trazada antes conserve solo lo que va de { $start } a { $end }.
# $line es una línea de la pieza $piece.
worksheet-trace = { $edge }: calque { EL($line) } { DEL($piece) }, de { $start } a { $end }.
worksheet-rub_out = Borre { EL($lines) }.

# Lo que se marca en las líneas.
worksheet-notch =
    { $kind ->
        [double] { $edge }: un piquete doble a { $length } de { $start }, medido por la línea.
       *[single] { $edge }: un piquete a { $length } de { $start }, medido por la línea.
    }
worksheet-opening = { $edge }: marque { EL($mark) } de { $low } a { $high }, medido por la línea desde { $start }.
worksheet-mark_on_edge = { $edge }: marque { EL($mark) } a { $length } de { $start }, medido por la línea.
worksheet-allow = Añada { $width } de margen de costura por fuera { DEL($lines) }.
worksheet-grain = hilo
worksheet-strip = { $title }: corte { $count ->
        [one] { $count } tira
       *[other] { $count } tiras
    } de { $length } de largo y { $width } de ancho.

# La imagen.
worksheet-title = { $piece }, para trazar a mano
worksheet-alt = { $piece }: sus puntos con letras, las rectas a partir de las cuales se trazan las curvas, y las separaciones. { $words }

# Puntos y líneas de los patrones base del programa, donde la lección no tiene palabras propias.
worksheet-name-back_cap = copa de la manga, espalda
worksheet-name-front_cap = copa de la manga, delantero
worksheet-name-bust_line = línea de pecho
worksheet-name-elbow_line = línea de codo
worksheet-name-hip_line = línea de cadera
worksheet-name-knee_line = línea de rodilla
worksheet-name-sleeve_centre = centro de la manga
worksheet-name-thigh_line = línea de muslo
worksheet-name-upper_arm_line = línea de brazo
worksheet-name-waist_line = línea de cintura
worksheet-name-back_crossing = cruce de la espalda
worksheet-name-back_hollow = hueco de la espalda
worksheet-name-back_swell = saliente de la espalda
worksheet-name-back_underarm_point = punto de axila de la espalda
worksheet-name-back_wrist = muñeca, espalda
worksheet-name-bust_point = punto de pecho
worksheet-name-cap_top = punto más alto de la copa
worksheet-name-centre_hem = bajo en el centro
worksheet-name-centre_hip = cadera en el centro
worksheet-name-centre_neck = escote en el centro
worksheet-name-centre_waist = cintura en el centro
worksheet-name-crotch_point = punto de tiro
worksheet-name-front_crossing = cruce del delantero
worksheet-name-front_hollow = hueco del delantero
worksheet-name-front_swell = saliente del delantero
worksheet-name-front_underarm_point = punto de axila del delantero
worksheet-name-front_wrist = muñeca, delantero
worksheet-name-neck_point = punto de cuello
worksheet-name-shoulder_tip = extremo del hombro
worksheet-name-side_hem = bajo en el costado
worksheet-name-side_hip = cadera en el costado
worksheet-name-side_waist = cintura en el costado
worksheet-name-underarm_point = punto de axila

# Tela de más por fuera del margen, que se recorta después de la prueba.
worksheet-allow_extra = Dé { $width } más por fuera { DEL($lines) } para la prueba.
