# Lo que se está haciendo al construir, dicho en la terminal.

building-running = { $notebook } se ejecuta desde el principio
building-cell = Celda de código { $number } («{ $title }»)
building-proving = Se comprueban el patrón y el orden de costura
building-lays = Las piezas se colocan sobre la tela
building-pages = Se colocan las páginas del patrón
building-form = Se escribe el cuadernillo ({ $form })
building-screen = Se escribe el cuadernillo (pantalla)
building-setting = Se compone el cuadernillo ({ $form })

# Se dice lo primero, antes de ejecutar el código de la lección.
building-code = Ahora se ejecuta el código del archivo de la lección.
building-left_out = No incluido en el cuadernillo: { $what }
building-failed = La comprobación ha fallado: el cuadernillo lo dice en la portada. No corte con estas páginas.
building-earlier = De antes, no hecho de nuevo: { $files }
