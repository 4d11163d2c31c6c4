# Frases para bolsillos de parche.

pocket_hem-turn = Doble { EL($edge) } { $first } hacia el revés y planche.
pocket_hem-fold = Dóblelo { $second } hacia el derecho por la línea de dobladillo; dobladillo total: { $total }.
pocket_hem-ends = Cosa de lado a lado los dos extremos del dobladillo, a { $ends } de los bordes laterales. Recorte las esquinas.
pocket_hem-out = Vuelva el dobladillo hacia el revés, empuje las esquinas hacia fuera y planche.
pocket_hem-sew = Cosa el dobladillo cerca de su doblez interior.
pocket_hem-why = Cosidos primero por el derecho y vueltos después, los extremos del dobladillo quedan dentro y no asoman por las esquinas.

fold_pocket-prepare_curved = Haga una hilera de puntadas largas dentro del margen en cada esquina redondeada { DEL($pocket) }.
fold_pocket-prepare_mitred = En cada esquina inferior, doble { EL($pocket) } en diagonal, derecho con derecho, y cosa a escuadra con el doblez, desde la esquina de las líneas de costura hasta el borde. Recorte a unos milímetros y vuelva la esquina del derecho.
fold_pocket-press = Planche { $allowance } hacia el revés en { EL($edge) } { DEL($pocket) }.
fold_pocket-square = En las esquinas inferiores, planche primero el bajo hacia arriba y después los lados por encima, con cada esquina recortada un poco por dentro del doblez.
fold_pocket-mitred = Las esquinas quedan planas, cada una con una costura desde la punta.
fold_pocket-curved = Frunza las puntadas largas sobre una cartulina cortada con la forma de la esquina acabada, planche los frunces y saque la cartulina.
fold_pocket-why_square = Los dobleces se cruzan en la esquina; la poca tela que se recorta la mantiene plana.
fold_pocket-why_mitred = El inglete no tiene doblez doble: es lo más plano en telas gruesas y no se sale al coserlo.
fold_pocket-why_curved = Fruncidas sobre una cartulina, las dos esquinas salen iguales y sin picos.

patch_pocket-pin = Coloque { EL($pocket) } con el derecho hacia arriba sobre el derecho de la tela, en { EL($place) }, y sujete con alfileres o hilvane. Meta una mano por debajo: no debe quedar tirante.
patch_pocket-sew = Pespuntee a { $distance } de los bordes doblados: baje por un lado, siga por el bajo y suba por el otro. Deje abierta la boca.
patch_pocket-secure = En los dos extremos de la boca, haga puntadas de retroceso o cosa un triángulo pequeño.
patch_pocket-why = La mano en el bolsillo tira de los dos extremos de la boca; ahí es donde se rasga, y por eso se cosen dos veces.
