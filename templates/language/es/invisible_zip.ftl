# Frases para cremalleras invisibles.

invisible_zip-coil = Abra la cremallera invisible, de { $length } de largo, y con la plancha tibia planche las dos espirales por el revés para que se separen de la cinta. Si la tela se deshilacha, remate ahora los bordes de la abertura.
invisible_zip-lay_first = Coloque la cremallera abierta boca abajo sobre el derecho { DEL($under) }: la espiral en la línea de costura, a { $allowance } del borde, la cinta hacia el borde cortado, el tope de arriba { $top } por debajo de la línea de costura de arriba; sujete con alfileres o hilvane.
invisible_zip-stitch_first = Con el prensatelas para cremalleras invisibles, o uno para cremalleras que mantenga la espiral desenrollada, pespuntee muy cerca de la espiral desde arriba hasta el final de la abertura, por encima del cursor, y remate.
invisible_zip-lay_second = Coloque la otra cinta boca abajo sobre { EL($over) } de la misma manera, sin torcerla y con los extremos a la par, y cósala desde arriba hasta la misma altura.
invisible_zip-close = Cierre la cremallera: no debe verse la cinta y los dos lados deben quedar a la par arriba. Después haga la costura de abajo con el prensatelas para cremalleras, desde las últimas puntadas y junto a ellas, apartando el final de la cremallera.
invisible_zip-ends = Sujete a mano los extremos sueltos de las dos cintas a los márgenes cuando esté hecha la costura de abajo.
invisible_zip-why = Separada de la cinta, la espiral deja que la aguja pase justo a su lado y la tela se cierra encima; si se cose demasiado lejos se ve la cinta, y si se cose dentro de la espiral la cremallera se atasca.
invisible_zip-why_seam = Cada lado se cose a su cinta en plano; la costura de abajo va al final porque puede llevarse hasta las últimas puntadas, mientras que el prensatelas no puede pasar el cursor para encontrar una costura ya hecha.
