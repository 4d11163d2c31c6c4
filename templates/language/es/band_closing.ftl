# Frases para cerrar una banda sobre su costura.

close_band-turn = Doble { $allowance } hacia dentro en { $edge } y planche.
close_band-pin = Coloque el doblez sobre la costura, apenas más allá de las puntadas, y prenda con alfileres o hilvane.
close_band-edgestitch = Pespuntee al filo por el derecho a través de todas las capas, de modo que por debajo quede cogido el doblez.
close_band-groove = Cosa por el derecho en el surco de la costura, de modo que por debajo quede cogido el doblez.
close_band-hand = Cosa a mano el doblez a las puntadas, con puntada escondida.
close_band-why = Si el doblez sobrepasa apenas la costura, la costura hecha desde el otro lado lo coge con seguridad.
