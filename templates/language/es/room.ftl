# Una clase en un aula (kit/room). Lo que va entre llaves en room_page y room_board lo pone la propia página.

# ---- la puerta ----
room-code_often = Demasiados códigos erróneos desde este dispositivo. Espere un minuto y mire el código otra vez.
room-device_full =
    { $count ->
        [one] Ya hay alguien de la clase en este dispositivo. Siga en la ventana abierta.
       *[other] Ya hay { $count } personas de la clase en este dispositivo. Siga en una ventana abierta.
    }
room-teacher_ask = Esta es la pizarra del docente. Escriba el código del docente; se muestra donde se abrió la clase.
room-teacher_wrong = Ese no es el código del docente. Es distinto del código de la clase.

# ---- la página del alumno ----
room_page-class = En clase
room_page-name = Nombre (si quiere)
room_page-hand_up = Levantar la mano
room_page-hand_down = Bajar la mano
room_page-may_look = Mi docente puede mirar mi patrón y mostrar su contorno a la clase sin mi nombre
room_page-private_own = Sus valores y medidas se quedan en este dispositivo. Su docente ve en qué paso está usted, qué encontró la comprobación y qué ejercicios están resueltos; nada más, salvo que usted lo permita o pida páginas.
room_page-private_room = El equipo de su docente calcula la lección para esta página. No guarda sus valores ni sus medidas. Su docente ve en qué paso está usted, qué encontró la comprobación y qué ejercicios están resueltos.
room_page-follow_on = Va siguiendo a su docente.
room_page-follow_off = Su docente guía a la clase por los pasos.
room_page-let_go = Seguir por mi cuenta
room_page-go_along = Seguir al docente
room_page-sent_step = Su docente ha enviado a todos a este paso.
room_page-sent_values = Su docente ha puesto valores para todos.
room_page-sent_preset = Su docente ha puesto «{ $title }» para todos.
room_page-take_back = Volver a los míos
room_page-keep = Conservar
room_page-queue = En espera. Antes de usted: { $place }
room_page-booklet_follows = El cuadernillo viene después.
room_page-refused_often = Acaba de pedir páginas varias veces. Espere unos minutos.
room_page-refused_disk = En el equipo de su docente no queda sitio para más páginas. Dígaselo a su docente.
room_page-refused_large = Estas páginas ocupan más de lo permitido. Revise los valores.
room_page-lost = Sin conexión con la clase. Nuevo intento…
room_page-gone = Su sitio en esta clase ha quedado libre. Vuelva a cargar la página para regresar.
room_page-busy = La clase tiene mucho que hacer ahora. Su trazado llega enseguida.
room_page-too_large = Es más de lo que se puede enviar de una vez.

# ---- la pizarra ----
room_board-board = Pizarra del docente
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
room_board-looked_none = El patrón no se mostró: la página está cerrada o ya no se permite.
room_board-free = Dejar libre este sitio
room_board-worked_here = calculado por este equipo
room_board-stage = Guiar a la clase
room_board-back = Atrás
room_board-on = Siguiente
room_board-play = Reproducir
room_board-pause = Pausa
room_board-send_step = Enviar a todos a este paso
room_board-follow = Síganme
room_board-unfollow = Dejarlos ir
room_board-value = Valor
room_board-send_value = Enviar este valor a todos
room_board-preset = Ajuste
room_board-send_preset = Enviar este ajuste a todos
room_board-sent = Enviado a { $count }.
room_board-over = Todos los patrones superpuestos
room_board-over_none = Nadie permite aún que se muestre su patrón.
room_board-over_count = Patrones mostrados: { $count }
room_board-lost = Sin conexión con la clase. Nuevo intento…
room_board-no_picture = Este paso no tiene imagen.
