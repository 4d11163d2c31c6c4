# Frases para tapetas de abertura.

bound_placket-mark = Marque { EL($slit) } por el revés, con su final, { $long } de largo. No corte todavía.
bound_placket-reinforce = Con puntadas cortas cosa alrededor: desde { EL($edge) }, a { $allowance } de la línea, en sesgo hasta su final, una puntada de lado a lado en el final y de vuelta hasta { $allowance } por el otro lado.
bound_placket-cut = Corte por la línea con la punta de unas tijeras pequeñas, hasta la puntada transversal del final y sin cortarla.
bound_placket-open = Abra el corte hasta que forme una línea recta. Sujete el derecho { DEL($strip) } sobre su revés: los bordes a la par en los dos extremos y, en el final del corte, la prenda retirada hasta que la fila de refuerzo quede sobre la línea de costura de la tira. Cosa a { $allowance } del borde de la tira, justo por fuera de la fila de refuerzo, con la prenda encima y apartando los pliegues en el final.
bound_placket-cover = Planche la tira en dirección contraria a la prenda. Meta { $allowance } de su borde libre, dóblela de modo que tape justo las puntadas por el derecho y pespuntee al filo: la tapeta queda de { $wide } de ancho.
bound_placket-slant = Doble la tapeta derecho con derecho y cosa su doblez superior en diagonal, solo a través de la tira.
bound_placket-lie = Planche hacia dentro el lado que va a montar, en una manga el que queda hacia delante, y deje que el otro sobresalga por debajo; hilvane los dos en { EL($edge) }.
bound_placket-why = Cosido alrededor antes de cortarlo, el final del corte no puede desgarrarse al ponerlo recto ni con el uso.
bound_placket-why_row = La costura en diagonal mantiene dentro el doblez de la tira, que si no se saldría en el final del corte.
