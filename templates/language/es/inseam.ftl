# Frases para el bolsillo en la costura.

pocket_bag-pin = Prenda con alfileres { $bag } sobre { $garment }, derecho con derecho, en las marcas del bolsillo: { $edge }.
pocket_bag-sew = Cosa a { $allowance } del borde, de marca a marca, y asegure con puntadas atrás en las dos.
pocket_bag-finish = Remate juntos los cantos con { $finish }.
pocket_bag-press = Doble el saco hacia fuera, apartándolo de la prenda, y planche los márgenes hacia el saco.
pocket_bag-why = Planchado y cosido hacia fuera de la prenda, el saco rueda hacia dentro y no se ve en la boca.

pocket_seam-sew = Cosa a { $allowance } del borde hasta la marca superior del bolsillo, { $from }; deje la aguja clavada.
pocket_seam-round = Gire y cosa alrededor de { $bags }, a { $bag_allowance } de su borde, hasta la marca inferior. La boca queda abierta en { $size }.
pocket_seam-on = Gire otra vez y siga la costura hasta el final.
pocket_seam-finish = Remate los cantos de la costura y de los sacos con { $finish }.
pocket_seam-clip = Dé un corte en el margen de atrás a los dos lados de la boca, para poder planchar la costura.
pocket_seam-press = Planche el bolsillo hacia el delantero.
pocket_seam-why = Cosidos en una sola costura con un giro en cada marca, la costura y el saco no tienen punto débil donde se encuentran; la boca queda en la línea de la costura.
