# Frases para cremalleras.

lapped_zip-press = Planche { EL($over) } hacia el revés por la línea de costura, { $allowance } de ancho. Enfrente, planche { EL($under) } hacia el revés un poco por fuera de la línea de costura.
lapped_zip-under = Coloque el doblez { DEL($under) } muy cerca de los dientes de la cremallera cerrada, de { $length } de largo, con el cursor { $top } por debajo de la línea de costura de arriba, y sujete con alfileres.
lapped_zip-under_flush = Coloque el doblez { DEL($under) } muy cerca de los dientes de la cremallera cerrada, de { $length } de largo, con el cursor en la línea de costura de arriba, y sujete con alfileres.
lapped_zip-stitch_under = Con el prensatelas para cremalleras, pespuntee al filo el doblez { DEL($under) } sobre la cinta.
lapped_zip-lay = Coloque { EL($over) } sobre la cremallera, con el doblez en la línea de costura del otro lado, de modo que los dientes queden cubiertos; sujete con alfileres o hilvane.
lapped_zip-stitch_over = Pespuntee por el derecho a { $lap } del doblez: de lado a lado por debajo del final de la cremallera, gire y suba hasta arriba. Abra la cremallera para pasar el cursor.
lapped_zip-why = La solapa tapa los dientes; el doblez de abajo queda un poco más afuera, para que la solapa lo cubra también cuando la cremallera tira.

centred_zip-baste = Sujete con alfileres { EL($over) } sobre { EL($under) }, derecho con derecho, e hilvane la abertura cerrada a { $allowance } del borde.
centred_zip-press = Abra la costura con la plancha.
centred_zip-lay = Coloque la cremallera cerrada, de { $length } de largo, boca abajo sobre los márgenes, con los dientes sobre la costura hilvanada y el cursor { $top } por debajo de la línea de costura de arriba; prenda las cintas con alfileres o hilvánelas.
centred_zip-lay_flush = Coloque la cremallera cerrada, de { $length } de largo, boca abajo sobre los márgenes, con los dientes sobre la costura hilvanada y el cursor en la línea de costura de arriba; prenda las cintas con alfileres o hilvánelas.
centred_zip-stitch = Pespuntee por el derecho, con el prensatelas para cremalleras, a { $lap } de la costura: baje por un lado, cruce por debajo del final de la cremallera y suba por el otro. Abra la cremallera para pasar el cursor.
centred_zip-open = Quite el hilván: los dos dobleces se juntan sobre los dientes.
centred_zip-why = Hilvanados antes, los dos dobleces quedan exactamente borde con borde sobre los dientes mientras se cose la cremallera.
