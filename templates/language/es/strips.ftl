# Frases para tiras.

fold_strip-half = Doble { EL($strip) } a lo largo por el centro, revés con revés, planche y vuelva a abrir.
fold_strip-ends = Doble { $ends } hacia dentro en los extremos que queden a la vista y planche.
fold_strip-quarter = Lleve los dos bordes largos hasta el doblez central y vuelva a doblar por el doblez central: ancho acabado { $width }.
fold_strip-sew = Pespuntee a { $edgestitch } de los dos bordes largos.
fold_strip-sew_one = Pespuntee a { $edgestitch } del borde largo abierto, donde se juntan los dos dobleces.
fold_strip-count = Haga { $count } iguales.

turn_strip-fold = Doble { EL($strip) } a lo largo, derecho con derecho, y sujete con alfileres.
turn_strip-sew = Cosa a { $allowance } de los bordes largos.
turn_strip-slant = En un extremo siga cosiendo en diagonal, de modo que el doblez quede { $slant } más largo que el borde cosido. El otro extremo queda abierto para volver la tira.
turn_strip-slant_trim = Recorte el margen de la diagonal y corte las esquinas.
turn_strip-turn = Vuelva del derecho y planche: mide { $width } de ancho.
turn_strip-ends = Meta { $ends } hacia dentro en cada extremo corto que vaya a verse y ciérrelo con una costura.
turn_strip-stitch_one = Pespuntee a { $edgestitch } del borde cosido.
turn_strip-stitch_both = Pespuntee a { $edgestitch } de ambos bordes largos.
turn_strip-count = Haga { $count } iguales.

hem_strip-turn = Doble dos veces { $turn } hacia el revés los dos bordes largos { DEL($strip) } y planche: ancho acabado { $width }.
hem_strip-sew = Cosa junto a los dobleces interiores.
hem_strip-ends_both = Doble igual los dos extremos cortos, con las esquinas planas, y cosa de lado a lado.
hem_strip-ends_one = Doble igual un extremo corto, con las esquinas planas, y cosa de lado a lado; el otro queda sin rematar hasta que lo sujete una costura.
hem_strip-count = Haga { $count } iguales.
hem_strip-why = En tela fina una sola capa da un nudo suave; doblado dos veces, su borde no se deshilacha.

attach_strip-stitched_on-place_start = Coloque por el revés el extremo { DEL($strip) } sobre { EL($run) }, montado { $lap }, { $at }.
attach_strip-stitched_on-place_end = Coloque por el revés el extremo { DEL($strip) } sobre { EL($run) }, montado { $lap }, { $at }.
attach_strip-stitched_on-place_along = Coloque por el revés el extremo { DEL($strip) } sobre { EL($run) }, montado { $lap }, { $at }.
attach_strip-stitched_on-place_mark = Coloque por el revés el extremo { DEL($strip) } sobre { EL($run) }, montado { $lap }, en la marca { DEL($mark) }.
attach_strip-stitched_on-sew = Cósalo en un recuadro pequeño con una cruz.

attach_strip-caught-place_start = Coloque { EL($strip) } por el derecho sobre { EL($run) }, { $at }, borde con borde.
attach_strip-caught-place_end = Coloque { EL($strip) } por el derecho sobre { EL($run) }, { $at }, borde con borde.
attach_strip-caught-place_along = Coloque { EL($strip) } por el derecho sobre { EL($run) }, { $at }, borde con borde.
attach_strip-caught-place_mark = Coloque { EL($strip) } por el derecho sobre { EL($run) }, en la marca { DEL($mark) }, borde con borde.
attach_strip-caught-sew = Hilvane dentro del margen; la sujetará la costura siguiente. Mantenga apartado el extremo suelto.
attach_strip-caught-sew_edge = Hilvane a { $row } del borde; la sujetará la costura siguiente. Mantenga apartado el extremo suelto.
