# Lo que se está haciendo al construir, dicho en la terminal.

building-running = { $notebook } se ejecuta desde el principio
building-cell = Celda de código { $number } («{ $title }»)
building-proving = Se comprueban el patrón y el orden de costura
building-lays = Las piezas se colocan sobre la tela
building-pages = Se colocan las páginas del patrón
building-form = Se escribe el cuadernillo ({ $form })
building-screen = Se escribe el cuadernillo (pantalla)
building-setting = Se compone el cuadernillo ({ $form })
