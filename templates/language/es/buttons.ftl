# Frases para ojales y botones.

buttonholes-try = Haga primero un ojal de prueba en un retal con las mismas capas y pruebe en él el botón.
buttonholes-work = Marque y haga { EL($places) } a través de todas las capas, de { $length } de largo.
buttonholes-cut = Ponga un alfiler atravesado en cada extremo y abra el ojal con el descosedor, desde el centro hacia fuera.
buttonholes-why = Un ojal es tan largo como el ancho y el grueso de su botón juntos: para un botón plano, unos { $thick } más de lo que mide de lado a lado. Necesita entretela; si no, se da de sí.

buttons-find = Cierre la prenda, clave un alfiler por cada ojal cerca de su extremo y marque dónde sale.
buttons-sew = Cosa { $count } botones de { $size } de ancho con hilo doble en las marcas { DEL($places) }.
buttons-one = Cosa un botón de { $size } de ancho con hilo doble en la marca { DEL($places) }.
buttons-shank = Mientras cose, ponga un alfiler debajo del hilo; sáquelo y enrolle el hilo bajo el botón: queda un pie corto.
buttons-why = El pie deja sitio a la capa que se abrocha encima.
