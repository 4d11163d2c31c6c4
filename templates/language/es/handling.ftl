# Lo que el propio trazado dice del manejo de la tela.
handling-stretches = La tela cede donde va cortada al bies, aquí en { EL($place) }. Déjela plana sobre la mesa y no tire; sujete primero los extremos, luego los piquetes y las costuras, después lo demás.
handling-curved = Antes de sujetar con alfileres, dé piquetes en el margen { DEL($hollow) } casi hasta la línea de costura, cada { $near } o { $far }, para que se abra a lo largo { DEL($other) }. Cosa con la capa de los piquetes arriba.
