# Planos de corte y cuánta tela comprar.

lay-yardage_note = Cada largo es el de un plano de corte calculado con los contornos reales de las piezas, todas al hilo y separadas { $apart }, redondeado como se vende la tela.
# $share es un tanto por ciento.
lay-yardage_shrinkage = Incluye el { $share } del largo que la tela pierde al lavarla; lávela y plánchela antes de cortar.
lay-yardage_unwashed = No se añade nada por encogimiento; compre más de una tela que encoja y lávela antes de cortar.
lay-may_fold = { $sign } Este largo alcanza también con la tela doblada.
lay-falls = La talla { $smaller } lleva más que la { $larger }: sus piezas se colocaron otras tantas veces, pero no encajan tan bien.
lay-interfacing_pieced = La entretela de estas piezas se corta en dos largos que se solapan { $overlap }: { $pieces }. En un solo largo lleva tanto como mide la pieza.

# La imagen. $width y $length son longitudes.
lay-title = Plano de corte
lay-heading_main = Tela principal de { $width } de ancho y { $length } de largo
lay-heading_lining = Forro de { $width } de ancho y { $length } de largo
lay-heading_interfacing = Entretela de { $width } de ancho y { $length } de largo
# Encima de cada parte de la tela. $length es el largo de esa parte.
lay-flat_cloth = Abierta en plano, con el derecho hacia arriba. Corte una sola capa.
lay-flat_interfacing = Abierta en plano; el adhesivo, si lo lleva, hacia abajo. Corte una sola capa.
lay-folded_cloth = Doblada a lo largo, derecho con derecho. Corte las dos capas.
lay-folded_interfacing = Doblada a lo largo. Corte las dos capas.
lay-opened_cloth = El resto, { $length } de largo, abierto en plano, con el derecho hacia arriba. Corte una sola capa.
lay-opened_interfacing = El resto, { $length } de largo, abierto en plano; el adhesivo, si lo lleva, hacia abajo. Corte una sola capa.
# Debajo de la imagen.
lay-dashed = Contorno discontinuo: aquí el papel va vuelto, con lo impreso hacia abajo; una mitad se vuelve sobre su línea de doblez.
# A lo largo de los bordes de la tela.
lay-fold = doblez
lay-selvedge = orillo
lay-selvedges = los dos orillos
lay-grain = hilo de urdimbre
lay-grain_nap = arriba hacia aquí
# $half es la mitad del ancho de la tela.
lay-half_width = mitad: { $half }
# En una pieza.
lay-piece_title = { $number } { $title }
lay-turned_over = vuelta
# $count tiras, una al lado de otra.
lay-strips = { $count ->
    [one] { $count } tira
   *[other] { $count } tiras
}
# Lo que oye quien no ve la imagen. $heading es uno de los títulos de arriba.
lay-alt = Plano de corte. { $heading }.
lay-alt_flat = La tela está abierta en plano, una sola capa con el derecho hacia arriba.
lay-alt_lengthwise = La tela está doblada a lo largo, orillo con orillo.
lay-alt_part = La tela está doblada a lo largo en la primera parte y abierta en plano más allá.
lay-alt_piece = { $count ->
    [one] La pieza { $number }, { $title }, se coloca una vez.
   *[other] La pieza { $number }, { $title }, se coloca para cortar { $count }.
}
lay-alt_fold = La pieza { $number }, { $title }, va al doblez.
lay-alt_over = { $count ->
    [one] Una pieza de papel va vuelta.
   *[other] { $count } piezas de papel van vueltas.
}
lay-alt_half = { $count ->
    [one] El papel de una pieza es una mitad y se vuelve sobre su línea de doblez para la otra.
   *[other] El papel de { $count } piezas es una mitad y se vuelve sobre su línea de doblez para la otra.
}
