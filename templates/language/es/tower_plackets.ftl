# Frases para tapetas de manga de camisa.

tower_placket-mark = Marque { EL($slit) } por el revés, con su final, { $long } de largo. No corte todavía. Planche hacia dentro { $allowance } en { EL($around) }, doble después la tapeta por la mitad a lo largo, revés con revés, y planche.
tower_placket-reinforce = Con puntadas cortas cosa un rectángulo estrecho alrededor del corte: desde { EL($edge) }, a { $half } de la línea, hasta su final, de lado a lado en recto y de vuelta a { $half } por el otro lado.
tower_placket-under = Sujete el derecho { DEL($strip) } sobre el revés, en el lado del corte que quedará debajo, y cosa a { $allowance } del borde de la tira, sobre la línea del rectángulo, hasta su esquina.
tower_placket-cut = Corte por el centro del rectángulo con unas tijeras pequeñas hasta { $before } antes de su final y después en sesgo hasta las dos esquinas, hasta las puntadas y sin cortarlas: en el final queda un triángulo pequeño.
tower_placket-pin = Planche la tira hacia el derecho, meta { $allowance } de su borde libre de modo que tape justo las puntadas y pespuntee al filo hasta el final del corte: queda de { $wide } de ancho.
tower_placket-sew = Sujete con alfileres el derecho { DEL($tower) } sobre el revés, en el otro lado del corte, y cosa a { $allowance } del borde hasta la esquina del rectángulo.
tower_placket-lay = Pase la tapeta por el corte al derecho y dóblela por su doblez: queda sobre la tira y su borde planchado tapa las puntadas. Ponga el triángulo hacia arriba por debajo y sujete con alfileres.
tower_placket-across = Pespuntee la tapeta al filo desde abajo por el lado planchado, alrededor de la punta y de lado a lado en el final del corte, por el triángulo y la tira; por debajo, deje libre su doblez.
tower_placket-why = El pespunte transversal sujeta el triángulo, la tira y la tapeta justo donde el corte se desgarraría; cortado hasta las esquinas, la tapeta se vuelve lisa.
