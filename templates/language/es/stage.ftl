# El escenario (kit/live/stage.py): controles, dibujo y pasos en un solo lugar.
stage-title = Escenario de { $lesson }
stage-views = Las vistas de la lección
stage-panel = Controles
stage-canvas = Arrastrar
stage-player = Paso a paso
stage-large = Mostrar en grande
stage-leave = Salir
stage-help = 1, 2 y 3 cambian la vista; Esc sale.
# El paso que se ve. $step: «Paso de trazado 2»; $title: su título.
stage-at = { $step }: { $title }
