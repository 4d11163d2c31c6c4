# Frases para pinzas de dos puntas.

double_dart-fold = Marque con hilo o tiza las dos puntas y el lugar más ancho de cada pinza { DEL($places) }. Doble la pinza derecho con derecho por la línea de punta a punta, de modo que coincidan sus dos líneas de costura, y sujete con alfileres.
double_dart-sew = Cosa { EL($dart) } en dos partes: desde el lugar más ancho, a { $half } del doblez, hacia abajo hasta la punta inferior, { $down } de largo; después dé la vuelta a la labor, monte { $over } sobre las primeras puntadas y vaya del lugar más ancho hacia arriba hasta la punta superior, { $up } de largo. Las últimas puntadas de cada parte corren por el mismo filo del doblez.
double_dart-tie = No haga puntadas de retroceso en las puntas: deje los hilos largos y anúdelos.
double_dart-clip = Dé un corte al doblez en el lugar más ancho, hasta { $left } de la costura, para que pueda abrirse.
double_dart-press_centre = Planche las pinzas planas tal como se cosieron y después hacia el centro, sobre una almohadilla redondeada, desde el lugar más ancho hacia cada punta y no más allá.
double_dart-press_side = Planche las pinzas planas tal como se cosieron y después hacia el costado, sobre una almohadilla redondeada, desde el lugar más ancho hacia cada punta y no más allá.
double_dart-why = Del centro hacia fuera, las dos partes acaban en nada en una punta y ahí termina lo que se haya corrido; el corte deja que el doblez, más corto que la línea sobre la que se tiende, se abra en el hueco de la cintura.
