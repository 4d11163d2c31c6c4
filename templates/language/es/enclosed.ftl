# Frases para costuras que encierran sus cantos.

mock_french_seam-sew = Cosa a { $allowance } del borde.
mock_french_seam-turn = Doble { $turn } el borde de cada margen hacia el otro y planche, de modo que los dos dobleces queden uno sobre otro.
mock_french_seam-stitch = Cosa juntos los dobleces, muy cerca de su borde.
mock_french_seam-why = Por dentro parece una costura francesa, pero se cose sobre la línea de costura como una costura simple, así que también sirve para curvas.

flat_felled_seam-sew = Cosa a { $allowance } del borde y planche los márgenes hacia { EL($under) }, con el { DEL($lapping) } encima.
flat_felled_seam-trim = Recorte a { $trim } solo el margen de abajo, el { DEL($under) }.
flat_felled_seam-trim_same_piece = Recorte solo el margen de la mitad { $under_side }, el de abajo, a { $trim }.
flat_felled_seam-fold = Doble el borde del margen { DEL($lapping) } alrededor del recortado, de modo que mida { $width } de ancho, y planche.
flat_felled_seam-fold_same_piece = Doble el borde del margen de la mitad { $lapping_side } alrededor del recortado, de modo que mida { $width } de ancho, y planche.
flat_felled_seam-lay = Tienda el doblez plano sobre { EL($under) }, de modo que no se vea ningún borde, y sujete con alfileres.
flat_felled_seam-lay_same_piece = Tienda el doblez plano sobre la mitad { $under_side }, de modo que no se vea ningún borde, y sujete con alfileres.
flat_felled_seam-stitch = Pespuntéelo a { $row } del doblez, a través de todas las capas.
flat_felled_seam-why = La costura sobrecargada queda lisa, no enseña ningún borde por ninguno de los dos lados y la sujetan dos costuras: es la más resistente para ropa de trabajo y camisas.
flat_felled_seam-why_trim = Se recorta un margen para que el otro se doble a su alrededor sin hacer relieve.

lapped_seam-turn = Doble { EL($edge) } { $allowance } hacia el revés, hasta la línea de costura, y planche.
lapped_seam-lay = Coloque el doblez sobre el derecho { DEL($other) }, por su línea de costura, y sujete con alfileres.
lapped_seam-lay_raw = Coloque { EL($edge) } sobre el derecho { DEL($other) }, de modo que coincidan las dos líneas de costura, y sujete con alfileres.
lapped_seam-stitch = Pespuntee a { $row } del doblez, a través de todas las capas.
lapped_seam-stitch_raw = Pespuntee a { $row } del borde de arriba y después a la misma distancia del de abajo.
lapped_seam-finish = Por dentro, { $finish } los bordes.
lapped_seam-why = La costura montada se cose por el derecho, así que se ve con exactitud dónde quedan esquinas y curvas.
