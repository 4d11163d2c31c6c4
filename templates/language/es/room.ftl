# Una clase en un aula (kit/room). Lo que va entre llaves en room_page y room_board lo pone la propia página.

# ---- la puerta ----
room-code_often = Demasiados códigos erróneos desde este dispositivo. Espera un minuto y mira el código otra vez.
room-device_full =
    { $count ->
        [one] Ya hay alguien de la clase en este dispositivo. Sigue en la ventana abierta.
       *[other] Ya hay { $count } alumnos en este dispositivo. Sigue en una ventana abierta.
    }
room-teacher_ask = Esta es la pizarra del profesor. Escribe el código del profesor; está donde se abrió la clase.
room-teacher_wrong = Ese no es el código del profesor. Es distinto del código de la clase.

# ---- la página del alumno ----
room_page-class = En clase
room_page-name = Nombre (si quieres)
room_page-hand_up = Levantar la mano
room_page-hand_down = Bajar la mano
room_page-may_look = Mi profesor puede mirar mi patrón y mostrar su contorno a la clase sin mi nombre
room_page-private_own = Tus valores y medidas se quedan en este dispositivo. Tu profesor ve en qué paso estás, qué encontró la comprobación y qué ejercicios están resueltos; nada más, salvo que lo permitas o pidas hojas.
room_page-private_room = El equipo de tu profesor calcula la lección para esta página. No guarda tus valores ni tus medidas. Tu profesor ve en qué paso estás, qué encontró la comprobación y qué ejercicios están resueltos.
room_page-follow_on = Vas junto con tu profesor.
room_page-follow_off = Tu profesor guía a la clase por los pasos.
room_page-let_go = Seguir por mi cuenta
room_page-go_along = Ir junto
room_page-sent_step = Tu profesor envió a todos a este paso.
room_page-sent_values = Tu profesor puso valores para todos.
room_page-sent_preset = Tu profesor puso «{ $title }» para todos.
room_page-take_back = Volver a lo mío
room_page-keep = Conservar
room_page-queue = En espera. Antes de ti: { $place }
room_page-booklet_follows = El cuaderno viene después.
room_page-refused_often = Acabas de pedir hojas varias veces. Espera unos minutos.
room_page-refused_disk = En el equipo de tu profesor no queda sitio para más hojas. Díselo a tu profesor.
room_page-refused_large = Estas hojas ocupan más de lo que puede ocupar un alumno. Revisa los valores.
room_page-lost = Sin conexión con la clase. Nuevo intento …
room_page-gone = Tu sitio en esta clase está libre otra vez. Carga la página para volver.
room_page-busy = La clase está ocupada, o esto no llegó a terminar. Espera un momento y muévelo otra vez.
room_page-too_large = Es más de lo que se puede enviar de una vez.

# ---- la pizarra ----
room_board-board = Pizarra del profesor
room_board-join = Entrar en la clase
room_board-code = Código de la clase
room_board-large = Mostrar en grande
room_board-close = Cerrar
room_board-name = Nombre
room_board-people = Quién está
room_board-count = { $count } de { $number }
room_board-nobody = Todavía nadie.
room_board-student = Sitio { $number }
room_board-away = ausente
room_board-step = Paso
room_board-place = { $number } de { $count }
room_board-exercises = Ejercicios
room_board-solved = resuelto
room_board-open = todavía no
room_board-found = Comprobación
room_board-found_none = nada que señalar
room_board-found_errors = por corregir: { $count }
room_board-found_warnings = por revisar: { $count }
room_board-hand = Mano
room_board-hand_seen = Mano levantada: vista
room_board-look = Mirar
room_board-look_not = no lo ha permitido
room_board-looked_none = El patrón no se mostró: la página está ausente o ya no se permite.
room_board-free = Dejar libre este sitio
room_board-worked_here = calculado por este equipo
room_board-stage = Guiar a la clase
room_board-back = Atrás
room_board-on = Siguiente
room_board-play = Reproducir
room_board-pause = Pausa
room_board-send_step = Enviar a todos a este paso
room_board-follow = Venid conmigo
room_board-unfollow = Dejarlos ir
room_board-value = Valor
room_board-send_value = Enviar este valor a todos
room_board-preset = Ajuste
room_board-send_preset = Enviar este ajuste a todos
room_board-sent = Enviado a { $count }.
room_board-over = Todos los patrones superpuestos
room_board-over_none = Nadie permite aún que se muestre su patrón.
room_board-over_count = Patrones mostrados: { $count }
room_board-again = Otra vez
room_board-lost = Sin conexión con la clase. Nuevo intento …
room_board-no_picture = Este paso no tiene imagen.
