# Frases para la costura simple, la costura francesa y el planchado.

plain_seam-sew = Cosa a { $allowance } del borde.
plain_seam-sew_with_opening = Cosa a { $allowance } del borde, pero deje { $size } sin coser en { $edge }, { $stretch }. Remate con puntadas de retroceso a los dos lados de la abertura.
plain_seam-sew_to_marks = Cosa a { $allowance } del borde, pero deje sin coser el tramo entre las marcas ({ $mark }): { $size }, { $stretch }. Remate con puntadas de retroceso a los dos lados de la abertura.
plain_seam-sew_open_start = Cosa a { $allowance } del borde, pero deje sin coser { $size } al comienzo de { $edge }. Remate con puntadas de retroceso donde termina la abertura.
plain_seam-sew_open_end = Cosa a { $allowance } del borde, pero deje sin coser { $size } al final de { $edge }. Remate con puntadas de retroceso donde empieza la abertura.
plain_seam-sew_line_to_line = Cosa a { $allowance } del borde, pero empiece y termine donde se cruzan las líneas de costura de los bordes vecinos, no en el canto. Remate ahí con puntadas de retroceso.
plain_seam-finish = Remate los cantos de los márgenes con { $finish }.
plain_seam-finish_together = Remate juntos los dos márgenes con { $finish }.
plain_seam-bound = Doble { $strip } sobre el canto de cada margen y cosa la tira muy cerca de su borde, a través de todas sus capas.
plain_seam-bound_bought = Doble el bies sobre el canto de cada margen y cósalo muy cerca de su borde, a través de todas sus capas.
plain_seam-bound_together = Junte los dos márgenes, doble { $strip } sobre los dos cantos y cosa la tira muy cerca de su borde, a través de todas las capas.
plain_seam-bound_together_bought = Junte los dos márgenes, doble el bies sobre los dos cantos y cósalo muy cerca de su borde, a través de todas las capas.
plain_seam-why_open = Abierta con la plancha, la costura queda lo más plana posible: en ningún sitio hay más de dos capas una sobre otra.
plain_seam-why_one_side = Planchada hacia un lado, la costura es más resistente y los dos márgenes se pueden rematar o pespuntear como uno solo.
plain_seam-why_later = La plancha viene después, porque a la costura siguiente se llega mejor mientras los márgenes siguen levantados.
plain_seam-why_line_to_line = Si no se cosen, los extremos de los márgenes pueden ir hacia un lado o hacia otro cuando la costura siguiente llegue a esta en la esquina.
plain_seam-opening_edges = A lo largo de la abertura planche también los márgenes hacia atrás, doble sus cantos hacia dentro y cósalos.
plain_seam-gap_edges = A lo largo del hueco planche también los márgenes hacia atrás; quedan sin rematar hasta que el hueco se cierra a mano.

french_seam-first = Cosa a { $first } del canto.
french_seam-trim = Recorte los hilos que se hayan deshilachado.
french_seam-trim_narrow = Recorte los dos márgenes a algo menos de { $second }, para que después no asome ningún canto.
french_seam-trim_sliver = Recorte una tirita de los dos márgenes, para que sean más estrechos que la segunda costura y después no asome ningún canto.
french_seam-trim_to = Recorte los dos márgenes a { $trim }.
french_seam-turn = Vuelva las piezas derecho con derecho y marque bien la raya por la costura.
french_seam-second = Cosa a { $second } de la raya: los cantos quedan encerrados.
french_seam-takes = Las dos costuras juntas ocupan el margen de costura de { $total }.
french_seam-why = La costura francesa encierra sus cantos y va bien en telas finas que se deshilachan o transparentan. En telas gruesas abulta demasiado.
french_seam-why_wrong_sides = La primera costura, revés con revés, parece un error: al volver las piezas todo queda bien y los cantos se esconden dentro.

press-open = Abra la costura con la plancha, primero por el revés y después con suavidad por el derecho, con un paño de planchar: { $edge }.
press-one_side = Planche la costura hacia un lado: { $edge }.
press-towards = Planche la costura hacia la pieza «{ $piece }»: { $edge }.
press-edge = Haga rodar la costura hasta el mismo borde y planche: { $edge }.
press-why = Planche cada costura antes de que otra la cruce: después la plancha ya no llega.
