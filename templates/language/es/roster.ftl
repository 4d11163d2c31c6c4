# Un juego para cada fila de una tabla de cuerpos.
roster-label = N.º { $number }
roster-heading = { $title }: los juegos
roster-sum = { $count ->
    [one] Una fila,
   *[other] { $count } filas,
  } { $ready ->
    [0] ninguna lista para imprimir.
    [one] una lista para imprimir.
   *[other] { $ready } listas para imprimir.
  }
roster-as_table = Lo mismo como tabla
roster-print_note = Imprima las páginas del patrón sin escalar y mida el cuadrado de prueba de la primera página antes de cortar.
roster-ignored = Columnas no usadas: { $columns }.
roster-kept = { $count ->
    [one] Ya hay un juego, que se conserva.
   *[other] Ya hay { $count } juegos, que se conservan.
  }
roster-left_seconds = falta menos de un minuto
roster-left_minutes = faltan unos { $minutes } min
roster-left_hours = faltan unas { $hours } h { $minutes } min
roster-ready = Listo para imprimir
roster-failed = No supera la comprobación: no corte
roster-none = Sin juego
roster-number = número
roster-line = fila de la tabla
roster-state = estado
roster-folder = carpeta
roster-cloth = Tela que comprar
roster-fit = Ajustes respecto a la tabla de tallas
roster-fit_note = Las páginas están trazadas con las medidas de cada persona. Los ajustes dicen lo que necesitaría un patrón en una talla de la tabla.
roster-doubts = Medidas que conviene revisar
roster-found = Lo que halló la comprobación
roster-estimated = Medidas estimadas
roster-finished = Medidas acabadas
roster-trouble = Por qué no hay juego
