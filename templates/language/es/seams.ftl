# Frases para la costura simple, la costura francesa y el planchado.

plain_seam-sew = Cosa a { $allowance } del borde.
plain_seam-sew_with_opening = Cosa a { $allowance } del borde, pero deje { $size } { DEL($edge) } sin coser, { $stretch }. Remate con puntadas de retroceso a los dos lados de la abertura.
plain_seam-sew_to_marks = Cosa a { $allowance } del borde, pero deje sin coser { EL($mark) } entre las marcas: { $size }, { $stretch }. Remate con puntadas de retroceso a los dos lados de la abertura.
plain_seam-sew_open_start = Cosa a { $allowance } del borde, pero deje sin coser { $size } al comienzo { DEL($edge) }. Remate con puntadas de retroceso donde termina la abertura.
plain_seam-sew_open_end = Cosa a { $allowance } del borde, pero deje sin coser { $size } al final { DEL($edge) }. Remate con puntadas de retroceso donde empieza la abertura.
plain_seam-sew_line_to_line = Cosa a { $allowance } del borde, pero empiece y termine donde se cruzan las líneas de costura de los bordes vecinos, no en el borde. Remate ahí con puntadas de retroceso.
plain_seam-finish = { START($finish) } los bordes de los márgenes.
plain_seam-finish_together = { START($finish) } los dos márgenes juntos.
plain_seam-bound = Doble { EL($strip) } sobre el borde de cada margen y cosa muy cerca de la orilla, a través de todas las capas.
plain_seam-bound_bought = Doble el bies sobre el borde de cada margen y cósalo muy cerca de su borde, a través de todas sus capas.
plain_seam-bound_together = Junte los dos márgenes, doble { EL($strip) } sobre los dos bordes y cosa muy cerca de la orilla, a través de todas las capas.
plain_seam-bound_together_bought = Junte los dos márgenes, doble el bies sobre los dos bordes y cósalo muy cerca de su borde, a través de todas las capas.
plain_seam-why_open = Abierta con la plancha, la costura queda lo más plana posible: en ningún sitio hay más de dos capas una sobre otra.
plain_seam-why_one_side = Planchada hacia un lado, la costura es más resistente y los dos márgenes se pueden rematar o pespuntear como uno solo.
plain_seam-why_later = La plancha viene después, porque a la costura siguiente se llega mejor mientras los márgenes siguen levantados.
plain_seam-why_line_to_line = Si no se cosen, los extremos de los márgenes pueden ir hacia un lado o hacia otro cuando la costura siguiente llegue a esta en la esquina.
plain_seam-opening_edges = A lo largo de la abertura planche también los márgenes hacia atrás, doble sus bordes hacia dentro y cósalos.
plain_seam-gap_edges = A lo largo del hueco planche también los márgenes hacia atrás; quedan sin rematar hasta que el hueco se cierra a mano.

french_seam-first = Cosa a { $first } del borde.
french_seam-trim = Recorte los hilos que se hayan deshilachado.
french_seam-trim_narrow = Recorte los dos márgenes a algo menos de { $second }, para que después no asome ningún borde.
french_seam-trim_sliver = Recorte una tirita de los dos márgenes, para que sean más estrechos que la segunda costura y después no asome ningún borde.
french_seam-trim_to = Recorte los dos márgenes a { $trim }.
french_seam-turn = Dé la vuelta a las piezas, derecho con derecho, y planche el doblez justo por la costura.
french_seam-second = Cosa a { $second } del doblez: los bordes quedan encerrados.
french_seam-takes = Las dos costuras juntas ocupan el margen de costura de { $total }.
french_seam-why = La costura francesa encierra sus bordes y va bien en telas finas que se deshilachan o transparentan. En telas gruesas abulta demasiado.
french_seam-why_wrong_sides = La primera costura, revés con revés, parece un error: al volver las piezas todo queda bien y los bordes se esconden dentro.

press-open = Abra con la plancha { EL($edge) }, primero por el revés y después con suavidad por el derecho, con un paño de planchar.
press-one_side = Planche hacia un mismo lado los márgenes { DEL($edge) }.
press-towards = Planche los márgenes { DEL($edge) } hacia { EL($piece) }.
press-edge = Haga rodar { EL($edge) } hasta el mismo borde y planche.
press-why = Planche cada costura antes de que otra la cruce: después la plancha ya no llega.
