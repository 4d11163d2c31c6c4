# Cómo se nombra un cuerpo en piezas y páginas.

body-size = talla { $name }
body-one_size = talla única
