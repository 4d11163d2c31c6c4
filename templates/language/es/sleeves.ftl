# Frases para montar mangas.

set_in_sleeve-place = Ponga la prenda del revés y { EL($sleeve) } del derecho, y meta la manga en la sisa, derecho con derecho. Compruebe que no se confundan la izquierda y la derecha.
set_in_sleeve-pin = Sujete con alfileres la copa sobre { EL($edge) }, por el lado de la manga: la costura de la manga sobre la costura lateral y el punto más alto de la copa en la costura del hombro.
set_in_sleeve-pin_notched = Sujete con alfileres la copa sobre { EL($edge) }, por el lado de la manga: la costura de la manga sobre la costura lateral, el punto más alto de la copa en la costura del hombro y piquete con piquete.
set_in_sleeve-ease = Tire de la costura de embebido hasta que la copa encaje: se reparte { $ease } de amplitud por la parte de arriba y nada bajo el brazo. En la línea de costura no debe verse ningún frunce.
set_in_sleeve-sew = Cosa a { $allowance } del borde con la manga hacia arriba, empezando bajo el brazo, y cosa dos veces la parte de debajo del brazo.
set_in_sleeve-trim = Recorte a la mitad los dos márgenes de la parte de debajo del brazo.
set_in_sleeve-finish = { START($finish) } los bordes juntos.
set_in_sleeve-press = Planche los márgenes de la copa hacia la manga; no aplaste la costura por el derecho.
set_in_sleeve-press_open = Abra la costura con la plancha sobre la copa, en una almohadilla de sastre; donde termina la parte abierta, dé un corte en ambos márgenes para que bajo el brazo queden juntos y de pie.
set_in_sleeve-press_garment = Planche los márgenes de la copa hacia la prenda; no aplaste la costura por el derecho.
set_in_sleeve-finish_apart = { START($finish) } los bordes por separado.
set_in_sleeve-why = La copa es más larga que la sisa porque tiene que redondearse sobre el hombro. Si antes se recoge con puntadas largas, la amplitud no se escurre hacia un lado.
