# Lo que el propio trazado dice del manejo de la tela.
handling-stretches = La tela cede donde va cortada al sesgo: { $place }. Déjala plana sobre la mesa y no tires; prende primero los extremos, luego los piquetes y las costuras, después lo demás.
handling-curved = Antes de prender, da piquetes en el margen casi hasta la línea de costura, cada 1 o 2 cm ({ $hollow }), para que se abra y siga el otro borde ({ $other }). Cose con la capa de los piquetes arriba.
