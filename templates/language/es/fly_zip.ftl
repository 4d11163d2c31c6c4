# Frases para braguetas con cremallera.

fly_zip-face = Sujete con alfileres { EL($facing) } sobre { EL($over) }, derecho con derecho, y cosa a { $allowance } del borde hasta el final de la abertura. Recorte el margen a la mitad, plánchelo hacia la vista y pespuntéelo sobre ella; doble la vista hacia dentro y planche.
fly_zip-press = Planche { EL($under) } hacia el revés, { $out } por fuera de su línea de costura.
fly_zip-under = Coloque el doblez { DEL($under) } muy cerca de los dientes de la cremallera cerrada, de { $length } de largo y boca arriba, con el cursor { $top } por debajo de la línea de costura de arriba y el tope de abajo por encima del final de la abertura, y sujete con alfileres.
fly_zip-under_flush = Coloque el doblez { DEL($under) } muy cerca de los dientes de la cremallera cerrada, de { $length } de largo y boca arriba, con el cursor en la línea de costura de arriba y el tope de abajo por encima del final de la abertura, y sujete con alfileres.
fly_zip-shield = Sujete con alfileres { EL($shield) } por debajo, con el borde cortado a la par del de la cinta.
fly_zip-stitch_under = Con el prensatelas para cremalleras, pespuntee al filo el doblez { DEL($under) } sobre la cinta, por todo lo que hay debajo.
fly_zip-close = Monte { EL($over) } sobre la cremallera tal como se lleva, con el borde en la línea de costura del otro lado, y sujete o hilvane la abertura cerrada.
fly_zip-away = Dé la vuelta a la labor y aparte la contrabragueta.
fly_zip-tape = Por dentro, coloque la cinta libre sobre la vista y cósala solo a la vista, en dos filas: una junto a los dientes y otra en su orilla.
fly_zip-curve = Por el derecho, marque la curva con tiza a { $lap } del borde, redondeada hasta la costura al final de la abertura. Pespuntéela de arriba abajo a través del delantero y la vista, pasando junto al tope de abajo de la cremallera y nunca por encima.
fly_zip-bar = Haga una presilla de refuerzo al pie de la curva y quite después alfileres e hilván.
fly_zip-bar_shield = Vuelva a colocar la contrabragueta y sujete su extremo inferior por dentro con una segunda presilla.
fly_zip-why = La curva sujeta la vista, no la cremallera: esta cuelga de la vista, queda lisa y puede cambiarse.
fly_zip-why_tape = Cerrada antes tal como se lleva, la cinta libre cae por sí sola en su sitio; medida aparte, la solapa se abre o tira.
