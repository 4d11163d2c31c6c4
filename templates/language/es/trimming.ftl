# Frases para recortar, dar cortes y escalonar márgenes.

clip-cut = Dé piquetes en los márgenes { DEL($edge) } más o menos cada { $spacing }, con la punta de las tijeras y casi hasta las puntadas.
clip-cut_curve = Dé piquetes en los márgenes { DEL($edge) } con la punta de las tijeras, casi hasta las puntadas, más o menos cada { $spacing } donde la curva es más cerrada.
clip-why = En una curva hacia dentro el borde es más corto que la costura: los cortes lo dejan abrirse al volverlo.

notch_curve-cut = Recorte pequeñas cuñas en los márgenes { DEL($edge) } más o menos cada { $spacing }, casi hasta las puntadas.
notch_curve-cut_curve = Recorte pequeñas cuñas en los márgenes { DEL($edge) }, casi hasta las puntadas, más o menos cada { $spacing } donde la curva es más cerrada.
notch_curve-why = En una curva hacia fuera el borde es más largo que la costura: sin esas cuñas queda plano al volverlo.

clip_first-cut = Dé piquetes en el margen { DEL($edge) } con la punta de las tijeras, hasta la costura de refuerzo pero sin cortarla, más o menos cada { $spacing } donde la curva es más cerrada.
clip_first-cut_to_fit = Dé piquetes en el margen { DEL($edge) } con la punta de las tijeras, casi hasta la línea de costura, más o menos cada { $spacing } donde la curva { DEL($fit) } es más cerrada.
clip_first-why = Con los cortes hechos antes, el borde se abre a lo largo del otro y los dos se prenden y se cosen sin pliegues.

trim-cut = Recorte los márgenes { DEL($edge) } a { $to }.
trim-cut_half = Recorte los márgenes { DEL($edge) } a la mitad, a { $to }.
trim-why = Si se quita tela donde quedaría doblada, el borde resulta fino.

grade-cut = Escalone los márgenes { DEL($edge) }: recorte este a { $to } y deje { $wider } de ancho en el que queda más cerca del exterior.
grade-why = Los márgenes que acaban a distinto ancho hacen una rampa en vez de un relieve, y el más ancho esconde el más estrecho.

trim_strip-sides = Recorte a { $to } los márgenes de la costura larga { DEL($strip) }.
trim_strip-sides_half = Recorte a la mitad, a { $to }, los márgenes de la costura larga { DEL($strip) }.
trim_strip-ends = Recorte a { $to } los márgenes del extremo cosido { DEL($strip) } y corte las esquinas en diagonal.
trim_strip-ends_half = Recorte a la mitad, a { $to }, los márgenes del extremo cosido { DEL($strip) } y corte las esquinas en diagonal.
grade_strip-sides = Escalone los márgenes de la costura larga { DEL($strip) }: recorte uno a { $to } y deje el otro de { $wider }.
grade_strip-sides_on = Escalone los márgenes de la costura que sujeta { EL($strip) }: recorte el de la tira a { $to } y deje el de la prenda de { $wider }.
grade_strip-ends = Escalone los márgenes del extremo cosido { DEL($strip) }: recorte uno a { $to } y deje el otro de { $wider }. Corte las esquinas en diagonal.

tack_down-sew = Sujete { EL($edge) } a los márgenes { DEL($seam) } con unas puntadas a mano que no traspasen al derecho.
tack_down-why = Sujeta solo en las costuras, la vista se queda dentro sin ninguna costura a la vista.
