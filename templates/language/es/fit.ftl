# ---- fit changes: what they are called

fit-lengthen_above_waist = Alargar por encima de la cintura
fit-lengthen_below_waist = Alargar por debajo de la cintura
fit-lengthen_above_hip = Alargar por encima de la cadera
fit-lengthen_above_hem = Alargar por encima del bajo
fit-lengthen_above_knee = Alargar por encima de la rodilla
fit-lengthen_below_knee = Alargar por debajo de la rodilla
fit-lengthen_above_elbow = Alargar por encima del codo
fit-lengthen_below_elbow = Alargar por debajo del codo
fit-shorten_above_waist = Acortar por encima de la cintura
fit-shorten_below_waist = Acortar por debajo de la cintura
fit-shorten_above_hip = Acortar por encima de la cadera
fit-shorten_above_hem = Acortar por encima del bajo
fit-shorten_above_knee = Acortar por encima de la rodilla
fit-shorten_below_knee = Acortar por debajo de la rodilla
fit-shorten_above_elbow = Acortar por encima del codo
fit-shorten_below_elbow = Acortar por debajo del codo
fit-long_rise = Tiro largo
fit-short_rise = Tiro corto
fit-full_bust = Busto grande
fit-small_bust = Busto pequeño
fit-full_seat = Nalga prominente
fit-flat_seat = Nalga plana
fit-sway_back = Espalda hundida en la cintura
fit-round_back = Espalda redonda
fit-broad_shoulder = Hombro ancho
fit-narrow_shoulder = Hombro estrecho
fit-sloping_shoulder = Hombro caído
fit-square_shoulder = Hombro recto
fit-forward_shoulder = Hombro adelantado
fit-full_upper_arm = Brazo grueso
fit-let_out_sides = Ensanchar los costados
fit-take_in_sides = Entallar los costados
fit-lower_underarm = Bajar la sisa
fit-raise_underarm = Subir la sisa

# ---- how each is done by hand, $amount being how much

fit-lengthen_text = Corte todas las piezas que aquí se cosen juntas por su línea de alargar y separe las dos partes { $amount }. El hilo sigue en una sola línea. Trace el doblez y las costuras rectas con regla de extremo a extremo, y las curvas con suavidad sobre el hueco.
fit-shorten_text = Doble un pliegue a lo ancho de todas las piezas que aquí se cosen juntas, por su línea de acortar, que recoja en total { $amount }. El hilo sigue en una sola línea. Trace el doblez y las costuras rectas con regla de extremo a extremo, y las curvas con suavidad sobre el pliegue.
fit-long_rise_text = Corte delantero y trasero a lo ancho entre cintura y cadera, por su línea de alargar, y separe las dos partes { $amount }. Trace con suavidad la costura de tiro y el costado sobre el hueco.
fit-short_rise_text = Doble un pliegue a lo ancho de delantero y trasero entre cintura y cadera, por su línea de acortar, que recoja { $amount }. Trace con suavidad la costura de tiro y el costado sobre el pliegue.
fit-full_bust_text = Corte el delantero desde el borde inferior hasta el punto de busto y siga hasta la sisa (hasta la mitad del hombro si no hay pinza de busto). Allí no corte del todo: es el eje. Si hay pinza de busto, córtela hasta el punto de busto. Abra el corte en el punto de busto la mitad de { $amount } y manténgalo igual de ancho por debajo; la pinza de busto se ensancha sola. Corte el centro a lo ancho debajo del busto y bájelo hasta que los bordes inferiores queden a nivel. Trace de nuevo las pinzas hacia el punto de busto.
fit-small_bust_text = Corte el delantero desde el borde inferior hasta el punto de busto y siga hasta la sisa (hasta la mitad del hombro si no hay pinza de busto), y la pinza de busto si la hay. Monte el corte en el punto de busto la mitad de { $amount }, igual por debajo; la pinza de busto se estrecha sola. Corte el centro a lo ancho debajo del busto y móntelo hasta que los bordes inferiores queden a nivel. Trace de nuevo las pinzas hacia el punto de busto.
fit-full_seat_text = Corte el trasero desde el centro hasta el costado, por encima de la parte más saliente, y ábralo { $amount } en el centro; el costado es el eje. Trace el centro con suavidad o, en el doblez, recto; lo que gana la cintura va a la pinza más cercana al centro.
fit-flat_seat_text = Doble una cuña en el trasero, por encima de la parte más saliente: { $amount } en el centro, nada en el costado. Trace el centro con suavidad o, en el doblez, recto; lo que pierde la cintura sale de la pinza más cercana al centro.
fit-sway_back_text = Quite { $amount } en la espalda, en el centro de la cintura, hasta nada en el costado: trace allí el borde de la cintura hacia dentro de la pieza o, si la pieza sigue por debajo, doble la cuña; el centro queda recto. Las pinzas conservan su ancho.
fit-round_back_text = Corte la espalda desde el centro hasta la sisa, entre los omóplatos, y ábrala { $amount } en el centro; la sisa es el eje. Trace el centro recto hacia arriba. Lo que gana el escote se recoge en una pinza de escote o se embebe.
fit-broad_shoulder_text = En delantero y espalda por igual, corte desde el hombro hasta la sisa y abra el corte { $amount } en el hombro; la sisa es el eje y conserva su largo. Trace el hombro recto desde el cuello hasta la nueva punta.
fit-narrow_shoulder_text = En delantero y espalda por igual, corte desde el hombro hasta la sisa y monte un lado del corte { $amount } sobre el otro en el hombro; la sisa es el eje y conserva su largo. Trace el hombro recto desde el cuello hasta la nueva punta.
fit-sloping_shoulder_text = En delantero y espalda por igual, baje { $amount } la sisa tal como es y trace el hombro desde el cuello hasta la nueva punta. El punto bajo de la sisa baja lo mismo.
fit-sloping_shoulder_sleeve = La manga sigue encajando.
fit-square_shoulder_text = En delantero y espalda por igual, suba { $amount } la sisa tal como es y trace el hombro desde el cuello hasta la nueva punta. El punto bajo de la sisa sube lo mismo.
fit-square_shoulder_sleeve = La manga sigue encajando.
fit-forward_shoulder_text = Quite { $amount } al delantero en la punta del hombro, hasta nada en el cuello, y añada lo mismo a la espalda.
fit-forward_shoulder_sleeve = En la manga, adelante otro tanto la marca de la costura del hombro.
fit-full_upper_arm_text = Corte la manga a lo largo por el centro y a lo ancho por el brazo. Ábrala { $amount } en total en el brazo; el puño, lo alto de la copa y los dos puntos de sisa son ejes. Copa, costuras de manga y puño conservan su largo; la copa queda más baja.
fit-let_out_sides_text = Trace los costados de delantero y espalda más afuera, cada uno un cuarto de { $amount }, en todo su largo.
fit-let_out_sides_sleeve = Ensanche la manga en sus costuras hasta que la copa vuelva a encajar en la sisa.
fit-take_in_sides_text = Trace los costados de delantero y espalda más adentro, cada uno un cuarto de { $amount }, en todo su largo.
fit-take_in_sides_sleeve = Estreche la manga en sus costuras hasta que la copa vuelva a encajar en la sisa.
fit-lower_underarm_text = Baje { $amount } la marca del punto bajo de la sisa en los costados de delantero y espalda y trace la sisa hasta él.
fit-lower_underarm_sleeve = Baje los puntos de sisa de la manga por sus costuras hasta que la copa vuelva a encajar.
fit-raise_underarm_text = Suba { $amount } la marca del punto bajo de la sisa en los costados de delantero y espalda y trace la sisa hasta él.
fit-raise_underarm_sleeve = Suba los puntos de sisa de la manga por sus costuras hasta que la copa vuelva a encajar; si la copa es baja, llévelos también hacia dentro.

# ---- and what stands beside them

fit-the_difference = lo que haga falta
fit-part_1 = { $name }
fit-part_2 = { $name }, la mitad en cada lado
fit-part_4 = { $name }, un cuarto en cada costura
fit-lacking = { $piece } no tiene los bordes y líneas que pide este arreglo.
fit-lacking_do = Elija otro arreglo o póngalo después del paso que los trace.
fit-too_short = { $piece } no se puede acortar ahí { $amount }.
fit-too_much = { $amount } es demasiado para { $piece }.
fit-dart = { $dart } ({ $piece }) no puede recoger tanto.
fit-bust_far = el delantero no se puede cambiar { $amount } en el busto.
fit-arm_far = la manga no se puede ensanchar { $amount } en el brazo.
fit-no_piece = no hay delantero ni espalda a los que hacer este arreglo.
fit-no_level = ninguna pieza tiene los dos niveles del cuerpo entre los que se cortaría.
fit-too_far = aquí no llega más allá de { $most }; lo pedido es { $amount }.
fit-too_far_do = Ponga { $most } o menos y ajuste el resto en la prueba.
fit-no_sleeve = no hay manga montada.

fit-picture = { $title }: { $pieces }, antes y después.
