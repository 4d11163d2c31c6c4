# Frases para dobladillos a mano, invisibles y enrollados.

blind_hem-baste = Hilvane el dobladillo cerca de su doblez, para que no se mueva.
blind_hem-hand = Doble un poco hacia atrás el borde de arriba del dobladillo y cosa de derecha a izquierda con puntadas flojas: una en el dobladillo y la siguiente en un solo hilo de la prenda.
blind_hem-machine = Doble la prenda hacia atrás, de modo que el borde de arriba del dobladillo asome un poco, y cosa con la puntada invisible de la máquina: las puntadas rectas caen en el dobladillo y solo la punta de cada zigzag toma el doblez.
blind_hem-press = Quite el hilván y planche solo el doblez, para que el borde de arriba no se marque por el derecho.
blind_hem-why = Las puntadas escondidas entre el dobladillo y la prenda no se ven y, si quedan algo flojas, no tiran.

wide_hem-ease = Pase un hilo de embeber muy cerca del borde sin rematar { DEL($edge) }: una vez doblado, el borde mide { $surplus } más que el lugar donde se va a coser.
wide_hem-tape = Coloque la cinta para dobladillo sobre el derecho del borde, con la mitad de su ancho por fuera, y cósala muy cerca de su orilla.
wide_hem-tape_eased = Recoja el borde { $surplus }, coloque la cinta para dobladillo sobre su derecho, con la mitad de su ancho por fuera, y cósala muy cerca de su orilla.
wide_hem-draw = Tire de la costura de embebido hasta que el dobladillo quede plano sobre la prenda y encoja la amplitud con vapor.
wide_hem-hand = Cosa a mano el borde de arriba con puntadas invisibles flojas.
wide_hem-machine = Cosa el borde de arriba con la puntada invisible de la máquina.
wide_hem-press = Planche solo el doblez, para que el borde de arriba no se marque por el derecho.
wide_hem-why = Un dobladillo ancho da peso a la prenda para que caiga bien y deja tela para alargarla más adelante.

rolled_hem-stay = Haga una costura fina a { $row } del borde { DEL($edge) }.
rolled_hem-trim = Recorte muy cerca de la costura fina, poco a poco.
rolled_hem-roll = Con el pulgar y el índice humedecidos, enrolle el borde hacia el revés por encima de la costura, hasta que ambos desaparezcan; ocupa { $first } en total.
rolled_hem-slip = Cosa a mano el borde enrollado con puntada escondida: por dentro del borde y después por un hilo de la tela.
rolled_hem-why = El borde enrollado es el dobladillo más fino para telas transparentes: apenas es más ancho que el grueso de un hilo.
