# Frases para entretelas y vistas.

fuse-lay = Coloque la entretela, con el adhesivo hacia abajo, sobre el revés { DEL($pieces) }.
fuse-press = Cubra con un paño de planchar y apoye la plancha, levantándola de un sitio a otro sin arrastrarla. Deje enfriar en plano.
fuse-why = La entretela evita que un borde se dé de sí y da firmeza a botones, pretinas y cuellos. Se termofija lo primero, porque una pieza plana se pega sin arrugas.

face_with_interfacing-lay = Coloque la entretela sobre el derecho { DEL($pieces) }, con el adhesivo hacia arriba, y sujete con alfileres a lo largo { DEL($edge) }.
face_with_interfacing-sew = Cosa a { $allowance } { DEL($edge) }.
face_with_interfacing-clip = Donde el borde hace curva, dé cortes en los márgenes casi hasta las puntadas.
face_with_interfacing-turn = Vuelva la entretela hacia el revés, de modo que el adhesivo toque la tela, y marque el borde con los dedos. Todavía sin plancha.
face_with_interfacing-fuse = Alise las dos capas, cubra con un paño de planchar y termofije. Con esto { GENDER($edge) ->
    [f] queda rematada
    [fp] quedan rematadas
    [mp] quedan rematados
   *[m] queda rematado
    } { EL($edge) }.
face_with_interfacing-why = La costura encierra los dos bordes y el termofijado se deja para el final, porque la plancha antes de volver pegaría las caras equivocadas.

attach_facing-pin = Sujete con alfileres { EL($facing) } { AL($edge) }, derecho con derecho.
attach_facing-sew = Cosa a { $allowance } del borde, en todo su largo.
attach_facing-grade = Escalone los márgenes: recorte más estrecho el de la vista.
attach_facing-clip = Dé cortes en las curvas casi hasta las puntadas y recorte las esquinas.
attach_facing-turn_only = Doble la vista hacia el interior.
attach_facing-turn = Doble la vista hacia el interior y planche, con la costura justo en el borde.
attach_facing-why = Las capas recortadas a distinto ancho no hacen relieve; los cortes dejan que un margen curvo quede plano una vez vuelto.

understitch-press = Abra { EL($facing) } y planche los márgenes hacia ese lado.
understitch-sew = Haga el bajopespunte sobre { EL($facing) }, a { $distance } de la costura, solo por esa capa y los márgenes.
understitch-roll = Doble otra vez { EL($facing) } hacia dentro y planche: la costura se esconde sola.
understitch-why = El bajopespunte lleva la costura un poco hacia dentro, para que la vista no se salga ni se vea.
