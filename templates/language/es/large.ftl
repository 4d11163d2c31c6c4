# Una lección mostrada en grande (kit/live/large.py): ante la clase o la cámara. Se lee de lejos, así que es breve.
large-open = Mostrar en grande
large-leave = Salir
large-back = Atrás
large-next = Siguiente
large-look = Fondo
large-sliders = Deslizadores
large-help = Re Pág y Av Pág recorren los pasos, B cambia el fondo, H oculta los deslizadores, Esc sale.
large-look_light = Claro
large-look_dark = Oscuro
large-look_green = Verde
large-look_blue = Azul
