# Frases para dobladillos con vista.

faced_hem-pin = Sujete con alfileres { EL($facing) } sobre { EL($edge) }, derecho con derecho.
faced_hem-sew = Cosa a { $allowance } del borde en una sola costura.
faced_hem-grade = Recorte el margen de la vista más estrecho que el de la prenda.
faced_hem-press = Planche los márgenes hacia la vista; después doble la vista hacia el interior y planche, con la costura apenas por dentro del doblez.
faced_hem-turn_free = Doble { $turn } hacia el revés en el borde libre de la vista y planche.
faced_hem-finish_free = { START($finish) } el borde libre de la vista.
faced_hem-free_done = El borde libre de la vista ya está rematado.
faced_hem-hand = Cósala a mano con puntadas invisibles flojas.
faced_hem-machine = Cósala a máquina muy cerca de su borde libre.
faced_hem-why = Donde el borde es demasiado curvo, o la tela demasiado corta o gruesa para doblar el dobladillo, queda plana una vista con su misma forma.
