# Frases para el borde libre de una vista.

finish_facing-overcast = { START($finish) } { EL($edge) }.
finish_facing-guide = Haga una costura guía a { $turn } del borde { DEL($edge) }. En las curvas, dé piquetes hasta ella.
finish_facing-fold = Planche el borde hacia el revés por la costura guía.
finish_facing-sew = Pespuntee al filo por el doblez, pespunteando solo el borde doblado.
finish_facing-why = El borde libre de una vista queda plano por dentro y solo se remata para que no se deshilache: un doblez se marcaría por fuera.
finish_facing-why_turned = En telas finas un borde doblado queda limpio; la costura guía es una línea por donde doblar y evita que la curva se dé de sí.
