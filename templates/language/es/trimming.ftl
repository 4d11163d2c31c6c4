# Frases para recortar, dar cortes y escalonar márgenes.

clip-cut = Dé cortes en los márgenes de { $edge } más o menos cada { $spacing }, más juntos en una curva cerrada, con la punta de las tijeras y casi hasta las puntadas.
clip-why = En una curva hacia dentro el canto es más corto que la costura: los cortes lo dejan abrirse al volverlo.

notch_curve-cut = Recorte pequeñas cuñas en los márgenes de { $edge }, casi hasta las puntadas, más juntas donde la curva es más cerrada.
notch_curve-why = En una curva hacia fuera el canto es más largo que la costura: sin esas cuñas queda plano al volverlo.

trim-cut = Recorte los márgenes de { $edge } a { $to }.
trim-why = Si se quita tela donde quedaría doblada, el borde resulta fino.

grade-cut = Escalone los márgenes de { $edge }: recorte este a { $to } y deje { $wider } de ancho en el que queda más cerca del exterior.
grade-why = Los márgenes que acaban a distinto ancho hacen una rampa en vez de un relieve, y el más ancho esconde el más estrecho.

tack_down-sew = Sujete { $edge } a los márgenes de { $seam } con unas puntadas a mano que no traspasen al derecho.
tack_down-why = Sujeta solo en las costuras, la vista se queda dentro sin ninguna costura a la vista.
