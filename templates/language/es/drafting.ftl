# Rechazos de curvas y arcos que no se pueden trazar. $line y $other son nombres de líneas, $way uno de los word-way_...; las
# medidas llevan su unidad, los ángulos van en grados.
word-way_up = hacia arriba
word-way_down = hacia abajo
word-way_out = hacia fuera, al costado
word-way_in = hacia dentro, al centro

drafting-neither_side = en la línea «{ $line }» una curva no puede salir ni llegar { $toward }.
drafting-neither_side_do = Ahí va { $one } o { $other }: indique una de las dos.
drafting-turns_back = la curva saldría { $way } y volvería atrás: en un extremo se aparta { $off }° de la recta hacia el otro, y el máximo es { $most }°.
drafting-turns_back_do = Mueva los extremos para que se llegue a cada uno con menos giro, haga que salga hacia el otro lado con toward=, o trace una parte de círculo con arc.
drafting-doubles_back = la curva desde el final de la línea «{ $line }» hasta la línea «{ $other }», que sale { $way }, volvería sobre sí misma.
drafting-doubles_back_do = Mueva el punto donde se une a «{ $other }», acorte «{ $line }» o diga con toward= en qué dirección sale.
drafting-arc_angle = un arco no puede recorrer { $angle }°.
drafting-arc_angle_do = Dé un ángulo mayor que cero, como mucho una vuelta entera de 360°; entre dos puntos, menos.
drafting-arc_length = un arco de { $length } no cabe en un círculo que mide { $most } de contorno.
drafting-arc_length_do = Dé una longitud mayor que cero y no más larga que el círculo, o un radio mayor.
drafting-arc_radius = un arco necesita un radio mayor que cero, y este es { $radius }.
drafting-arc_radius_do = Revise la medida de la que sale el radio.
drafting-arc_misses = el compás abierto a { $radius } no llega al otro extremo: está a { $far } del centro.
drafting-arc_misses_do = Mueva el extremo o el centro, o diga con angle= o length= hasta dónde llega el arco.
drafting-arc_no_way = un arco entre dos puntos necesita dos puntos distintos.
drafting-arc_no_way_do = Mueva uno de ellos o diga dónde está el centro.
drafting-arc_in_line = los tres puntos están en una recta, o dos de ellos en el mismo lugar.
drafting-arc_in_line_do = Aparte el del medio.
drafting-arc_short = un radio de { $radius } es demasiado pequeño para abarcar { $chord }.
drafting-arc_short_do = Tome { $least } o más, o acerque los extremos.

# $run y $edge son bordes, $piece el título de una pieza.
drafting-facing_end = una vista de { $depth } de ancho no cabe en un extremo: allí el borde «{ $edge }» de la pieza «{ $piece }», de { $long } de largo, está a { $angle }° del borde «{ $run }», y el borde exterior de la vista nunca lo encuentra.
drafting-facing_end_do = Haga la vista más estrecha, llévela también a lo largo de «{ $edge }» o trace los dos bordes más cerca del ángulo recto.
