# El cuadernillo como página web (teléfono, tableta) y como libro electrónico: botones, avance, contenido.

# El botón que abre la lista de contenido y el título de esa lista.
screen-contents = Contenido
# En la lista de lugares de un libro electrónico: dónde empieza el texto.
screen-start = Comienzo del cuadernillo
# Para quien elige libros por lo que ofrecen: se muestra en tiendas y bibliotecas.
screen-access = Cada imagen tiene un texto que dice lo que muestra. Títulos, listas y tablas están marcados como tales, y la lista de contenido lleva a cada paso.
screen-close = Cerrar
# El nombre del botón de una imagen. { $picture } es lo que muestra la imagen.
screen-enlarge = Ampliar: { $picture }
# El nombre del botón de una imagen que no tiene texto propio.
screen-enlarge_plain = Ampliar la imagen
screen-larger = Más grande
screen-smaller = Más pequeño
# Vuelve a mostrar la imagen entera.
screen-whole = Imagen entera
# El nombre de la ventana en la que se amplía una imagen.
screen-picture = Imagen
# Junto a la casilla que se marca cuando un paso está hecho. { $step } es el título del paso.
screen-done = Hecho
screen-done_step = Hecho: { $step }
# Cuántos pasos están marcados. { $done } y { $total } son números enteros.
screen-progress = { $done } de { $total } pasos hechos
# Quita la marca de todos los pasos.
screen-again = Desmarcar todos los pasos
# Se pregunta antes de desmarcarlos.
screen-again_ask = ¿Desmarcar todos los pasos?
screen-again_yes = Desmarcar todos
screen-again_no = Conservarlos
screen-one = Paso a paso
screen-before = Paso anterior
screen-next = Paso siguiente
screen-all = Todo el cuadernillo
# Se dice debajo de los pasos cuando el navegador no deja recordar las marcas.
screen-forgets = Este navegador no guarda sus marcas: duran hasta que cierre la página.
# La última línea después de hacer un cuadernillo plegado.
screen-fold = Imprima los pliegos del cuadernillo a tamaño real por las dos caras, volteando por el lado corto; después doble el montón por la mitad y grápelo en el doblez.
