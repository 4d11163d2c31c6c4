# Lo que la tela pide al colocar las piezas.

cloth-nap = Coloque todas las piezas con la parte de arriba en el mismo sentido: no se gira ninguna, ni aquí ni al cortar.
cloth-print = Coloque todas las piezas con la parte de arriba en el mismo sentido: no se gira ninguna, ni aquí ni al cortar. Haga coincidir el estampado en las costuras; para ello compre una repetición del dibujo más por cada fila de piezas.
