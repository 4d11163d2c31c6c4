# El lienzo: el trazado en la pantalla, con tiradores para arrastrar.

canvas-title = El trazado de { $lesson }
canvas-help = Arrastre un tirador para cambiar su valor. Arrastre el papel para moverlo; después de hacer clic en él, la rueda acerca y aleja. El tabulador va de tirador a línea; las flechas mueven un tirador, con Mayús diez pasos; más, menos y 0 acercan, alejan o encajan la vista.
canvas-show = Mostrar
canvas-whole = El trazado
# $number: qué paso es; $title: el título del paso.
canvas-step = Paso { $number }: { $title }
canvas-nearer = Acercar
canvas-farther = Alejar
canvas-fit = Encajar
canvas-undo = Deshacer
canvas-redo = Rehacer
canvas-layers = Capas
canvas-layer_grid = Cuadrícula
canvas-layer_body = Contorno del cuerpo
canvas-layer_block = Patrón base de partida
canvas-layer_ghost = Paso anterior
canvas-layer_stitch = Líneas de costura
canvas-layer_cut = Líneas de corte
canvas-layer_dims = Cotas
canvas-grid_cm = Cuadrícula: 1 cm, gruesa cada 10 cm
canvas-grid_cm_far = Cuadrícula: 10 cm, gruesa cada metro
canvas-grid_inch = Cuadrícula: 1 pulg., gruesa cada 12 pulg.
canvas-grid_inch_far = Cuadrícula: 12 pulg., gruesa cada 36 pulg.
# $edge: el borde como se dice; $piece: el título de la pieza; $length: en los dos sistemas.
canvas-edge = { $edge }, { $piece }: { $length }.
# $shut: su largo con pinzas, pliegues y alforzas cerrados.
canvas-edge_shut = { $edge }, { $piece }: { $length }; { $shut } con todo cerrado.
# $edges: bordes con sus piezas, como «costura lateral de espalda».
canvas-sewn_to = Se cose a { $edges }.
canvas-hemmed = Lleva dobladillo.
canvas-faced = Lleva vista.
canvas-finished = Lleva remate.
canvas-on_fold = Al doblez.
canvas-not_sewn = No se cose a nada.
canvas-point = { $point }, { $piece }
# $parameter: cómo se llama; $value: su valor en los dos sistemas; $why: la razón que da la lección.
canvas-handle = { $parameter }: { $value }
canvas-handle_why = { $parameter }: { $value } ({ $why })
canvas-measure = { $name } { $value }
# $measure: un contorno, como «contorno de cintura».
canvas-quarter = un cuarto de { $measure } { $length }
canvas-silent = El núcleo (kernel) no responde. Si se ha parado, reinícielo y ejecute todas las celdas.
