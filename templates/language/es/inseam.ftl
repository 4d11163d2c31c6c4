# Frases para el bolsillo en la costura.

pocket_bag-pin = Sujete con alfileres { EL($bag) } sobre { EL($garment) }, derecho con derecho, en las marcas del bolsillo { DEL($edge) }.
pocket_bag-sew = Cosa a { $allowance } del borde, de marca a marca, y remate con puntadas de retroceso en las dos.
pocket_bag-finish = { START($finish) } los bordes juntos.
pocket_bag-press = Doble la bolsa hacia fuera, apartándola de la prenda, y planche los márgenes hacia la bolsa.
pocket_bag-why = Planchada y cosida hacia fuera de la prenda, la bolsa rueda hacia dentro y no se ve en la boca.

pocket_seam-sew = Cosa a { $allowance } del borde hasta la marca superior del bolsillo, { $from }; deje la aguja clavada.
pocket_seam-round = Gire y cosa alrededor { DEL($bags) }, a { $bag_allowance } del borde, hasta la marca inferior. La boca queda abierta en { $size }.
pocket_seam-on = Gire otra vez y siga la costura hasta el final.
pocket_seam-finish = { START($finish) } los bordes de la costura y de las bolsas.
pocket_seam-clip = Dé un corte en el margen de atrás a los dos lados de la boca, para poder planchar la costura.
pocket_seam-press = Planche el bolsillo hacia el delantero.
pocket_seam-why = Cosidos en una sola costura con un giro en cada marca, la costura y la bolsa no tienen punto débil donde se encuentran; la boca queda en la línea de la costura.
