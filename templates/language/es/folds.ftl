# Frases para pinzas, pliegues y alforzas.

dart-spared = Esta figura no necesita pinza en { EL($pieces) }. Pase al paso siguiente.
dart-fold = Doble cada pinza { DEL($pieces) } por su línea central, derecho con derecho, de modo que coincidan sus dos líneas de costura, y sujete con alfileres.
dart-fold_one = Doble la pinza { DEL($pieces) } por su línea central, derecho con derecho, de modo que coincidan sus dos líneas de costura, y sujete con alfileres.
dart-sew = Cosa { EL($dart) } desde { EL($edge) } hasta su punta, { $depth } de largo: empieza a { $intake } del doblez y las últimas puntadas corren por el mismo filo del doblez.
dart-tie = No haga puntadas de retroceso en la punta: deje los hilos largos y anúdelos.
dart-press = Planche la pinza plana tal como se cosió y después hacia { EL($toward) }, sobre una almohadilla redondeada, para que no se marque ningún doblez más allá de la punta.
dart-press_of = Planche las pinzas { DEL($edge) } planas tal como se cosieron y después hacia { EL($toward) }, sobre una almohadilla redondeada, para que no se marque ningún doblez más allá de la punta.
dart-why = Una pinza da volumen a la tela plana: lo que recoge en el borde es lo que el cuerpo tiene de menos ahí.
dart-why_point = Al salir por el filo del doblez, la costura acaba en nada y no se hace un hoyuelo en la punta.

pleat-fold = Por el derecho { DEL($pieces) }, doble { EL($pleat) } por su línea de doblez; recoge { $intake }.
pleat-lay = Junte las dos líneas, tienda el pliegue hacia { EL($toward) } y sujete con alfileres.
pleat-baste = Hilvane el pliegue de lado a lado dentro del margen { DEL($edge) }.
pleat-baste_both = Hilvane el pliegue de lado a lado dentro de los márgenes { DEL($edge) } y { DEL($far) }.
pleat-press = Planche el doblez con suavidad, con un paño, hasta donde deba quedar marcado.
pleat-why = Hilvanado en su sitio, el pliegue no se mueve mientras se cose la costura que lo sujeta.

tuck-fold = Doble { EL($pleat) } { DEL($pieces) } por el centro, revés con revés, de modo que coincidan sus dos líneas, y sujete con alfileres.
tuck-sew = Cosa por la línea, a { $half } del doblez.
tuck-sew_part = Cosa por la línea, a { $half } del doblez, un tramo de { $sewn } desde { EL($edge) }. Pase los hilos al revés y anúdelos.
tuck-press = Planche la alforza hacia { EL($toward) }.
tuck-why = Una alforza recoge la tela hasta donde va cosida y la suelta por debajo.
