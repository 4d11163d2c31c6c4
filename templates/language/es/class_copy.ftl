# La copia de clase: ejercicios con sus metas y las páginas de quien aprende.
# $what es un lugar como «Delantero: costura de debajo del brazo»; las longitudes llevan su unidad, en los dos sistemas.

class_copy-edge = { $piece }: { $edge }

class_copy-grows = { $what } – tiene que alargarse { $by }.
class_copy-grows_met = { $what } – { $change } más, como se pedía.
class_copy-grows_none = { $what } – todavía igual; por alargar: { $missing }.
class_copy-grows_short = { $what } – { $change } más por ahora; por alargar: { $missing }.
class_copy-grows_over = { $what } – { $change } más: { $over } de sobra.
class_copy-grows_wrong = { $what } – ahora mide { $change } menos; tiene que alargarse { $by }.

class_copy-shrinks = { $what } – tiene que acortarse { $by }.
class_copy-shrinks_met = { $what } – { $change } menos, como se pedía.
class_copy-shrinks_none = { $what } – todavía igual; por acortar: { $missing }.
class_copy-shrinks_short = { $what } – { $change } menos por ahora; por acortar: { $missing }.
class_copy-shrinks_over = { $what } – { $change } menos: { $over } de sobra.
class_copy-shrinks_wrong = { $what } – ahora mide { $change } más; tiene que acortarse { $by }.

class_copy-keeps = { $what } – tiene que quedarse como está.
class_copy-keeps_met = { $what } – como estaba.
class_copy-keeps_longer = { $what } – { $by } más; tiene que quedarse como estaba.
class_copy-keeps_shorter = { $what } – { $by } menos; tiene que quedarse como estaba.
class_copy-keeps_moved = { $what } – se ha movido { $by }; tiene que quedarse donde estaba.

class_copy-is_length = { $what } – tiene que medir { $length }.
class_copy-at_least = { $what } – tiene que medir { $length } o más.
class_copy-at_most = { $what } – tiene que medir { $length } o menos.
class_copy-length_met = { $what } – { $length }, como se pedía.
class_copy-too_short = { $what } – { $length }: { $missing } de menos.
class_copy-too_long = { $what } – { $length }: { $over } de más.

# $way es cómo se mueve un punto: «2 cm (3/4 pulg.) hacia arriba», o dos sentidos unidos.
class_copy-moves = { $what } – tiene que moverse { $way }.
class_copy-moves_met = { $what } – se ha movido { $way }, como se pedía.
class_copy-moves_short = { $what } – todavía tiene que moverse { $way }.
class_copy-up = { $by } hacia arriba
class_copy-down = { $by } hacia abajo
class_copy-out = { $by } hacia fuera
class_copy-in = { $by } hacia dentro

class_copy-sound = La comprobación no encuentra nada mal.
class_copy-sound_met = La comprobación no encuentra nada mal.
# $first es el primer hallazgo, una frase.
class_copy-sound_not =
    { $count ->
        [one] La comprobación encuentra algo que mirar. { $first }
       *[other] La comprobación encuentra { $count } cosas que mirar. { $first }
    }

# El ejercicio en la pantalla.
class_copy-exercise = Ejercicio: { $title }
class_copy-done = Muy bien: { $title } está resuelto.
class_copy-start = Empezar con los valores de la lección
class_copy-start_tooltip = Restablece todos los valores; las metas se miden desde el trazado de la propia lección
class_copy-hint =
    { $left ->
        [one] Mostrar una pista (queda una)
       *[other] Mostrar una pista (quedan { $left })
    }
class_copy-no_hint = No hay más pistas
class_copy-hint_tooltip = Las pistas salen de una en una
class_copy-goal_met = hecho
class_copy-goal_open = todavía no
class_copy-answer = Mostrar la solución
# $value lleva su unidad.
class_copy-answer_line = { $name }: { $value }
class_copy-waiting = Con estos valores todavía no se puede dibujar el trazado.

# La página de la copia de clase.
class_copy-title = { $title } – versión para el aula
class_copy-welcome = Mueva los deslizadores: la imagen, los números y la comprobación los siguen. Escriba sus propias medidas, haga los ejercicios e imprima el patrón en su talla. Sus valores se guardan solo para usted.
class_copy-values = Valores
class_copy-body = Sus propias medidas
class_copy-exercises = Ejercicios
class_copy-print = Su patrón

# Las páginas de quien aprende.
class_copy-print_mine = Imprimir mi talla
class_copy-print_tooltip = Hace su cuadernillo y las páginas de su patrón, en su talla y con sus valores
class_copy-paper = Papel
class_copy-booklet_too = Con el cuadernillo
class_copy-cancel = Cancelar
class_copy-print_run = Trazando la lección en su talla…
class_copy-print_prove = Comprobando el patrón…
class_copy-print_booklet = Componiendo el cuadernillo…
class_copy-print_pages = Colocando las páginas del patrón…
class_copy-print_cancelled = Cancelado. Lo que se hizo antes sigue ahí.
class_copy-print_failed = No ha funcionado: { $why }
class_copy-print_kept = Los archivos de abajo son de antes.
class_copy-print_lost = Se ha parado sin decir por qué. Inténtelo otra vez.
# $who es la talla o el nombre del cuerpo; $when, una hora como 14:05.
class_copy-print_done = Hecho para { $who } a las { $when }.
class_copy-print_unsound = La comprobación ha encontrado algo que corregir: no corte todavía con estas páginas.
class_copy-file_booklet = Cuadernillo
class_copy-file_pages = Páginas del patrón, { $paper }

# La entrada de una clase servida a un aula.
class_copy-room = Clase de patronaje
class_copy-code = Código de la clase
class_copy-code_enter = Entrar
class_copy-code_ask = Escriba el código que su docente ha puesto en la pizarra.
class_copy-code_wrong = Ese no es el código de esta clase. Mire otra vez: no lleva las letras o, i, l ni las cifras 0 y 1.
class_copy-room_full =
    { $count ->
        [one] Hay sitio para una persona y ya hay alguien aquí. Inténtelo otra vez cuando quede libre.
       *[other] Hay sitio para { $count } personas y ya están todas aquí. Inténtelo otra vez cuando alguien se haya ido.
    }

# ---- rechazos para quien aprende ----
class_copy-lesson_gone = la lección «{ $path }» no está.
class_copy-lesson_gone_do = Deje junto a la copia de clase la carpeta que venía con ella.
class_copy-no_lesson = no es una lección que se pueda mostrar.
class_copy-no_lesson_do = Vuelva a hacer la copia de clase.
