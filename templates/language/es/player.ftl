# El reproductor de pasos: recorrer los pasos delante de una cámara.

# $lesson: el título de la lección.
player-title = Pasos de { $lesson }
player-help = Flechas derecha e izquierda: siguiente y anterior. Espacio: reproducir o pausar. Inicio y Fin: primero y último. F: ventana completa.
player-step_draft = Paso de trazado { $number }
player-step_sew = Paso de costura { $number }
# Qué imagen de un paso es.
player-part = Imagen { $number } de { $count }
# Dónde se está en toda la lección, contado en imágenes.
player-place = { $number } de { $count }
player-first = Primer paso
player-back = Anterior
player-play = Reproducir
player-pause = Pausa
player-next = Siguiente
player-last = Último paso
player-again = Dibujar otra vez
player-speed = Velocidad
player-ground = Fondo
player-ground_paper = Papel
player-ground_white = Blanco liso
player-ground_green = Verde liso
player-ground_blue = Azul liso
player-show_words = Texto
player-full = Ventana completa
player-leave = Salir de la ventana completa
player-silent = No hay respuesta. Espere un momento, o reinicie el núcleo (kernel) y ejecute todas las celdas.
player-empty = Esta lección no tiene pasos todavía.
player-no_picture = A este paso no le corresponde ninguna imagen.
# El reloj: cuenta desde que arranca la cámara y anota cuándo se muestra cada paso.
player-clock = Reloj
player-clock_start = Poner en marcha el reloj
player-clock_stop = Parar el reloj
player-clock_help = Póngalo en marcha a la vez que la cámara. Se anota cada paso que se muestra durante dos segundos.
player-marks = Marcas de tiempo
player-marks_none = Todavía no se ha anotado ningún paso.
player-mark_step = Paso
player-mark_time = Tiempo
# $step: el título del paso. El nombre del campo en el que se puede corregir su tiempo.
player-mark_of = Tiempo de { $step }
player-chapters = Capítulos
player-copy = Copiar
player-copied = Copiado.
# $file: un nombre de archivo.
player-chapters_in = Guardado en { $file }.
player-export = Imágenes y clips
player-export_kind = Tipo
player-export_mp4 = Vídeo (MP4)
player-export_gif = Imagen animada (GIF)
player-export_png = Imagen, fondo transparente (PNG)
player-export_svg = Dibujo (SVG)
player-export_which = Pasos
player-export_this = Este paso
player-export_all = Todos los pasos
player-export_size = Tamaño
player-export_seconds = Segundos por imagen
player-export_go = Exportar
player-export_cancel = Cancelar
# $percent: cuánto está hecho, de 0 a 100; $file: el nombre del archivo que se escribe.
player-export_doing = { $percent } % hecho: { $file }
# $count: cuántos archivos se escribieron; $folder: la carpeta en la que están.
player-export_done =
    { $count ->
        [one] Hay { $count } archivo en la carpeta { $folder }.
       *[other] Hay { $count } archivos en la carpeta { $folder }.
    }
player-export_cancelled =
    { $count ->
        [0] Cancelado; no se escribió ningún archivo.
        [one] Cancelado; hay { $count } archivo terminado en la carpeta { $folder }.
       *[other] Cancelado; hay { $count } archivos terminados en la carpeta { $folder }.
    }
player-film_missing = No se puede escribir la película: no está instalado lo que escribe películas MP4.
# $command: what to type, never translated.
player-film_install = Elija una imagen en movimiento (GIF) o imágenes, o instálelo: escriba en una celda { $command }, ejecútela y exporte otra vez.
player-clock_brief = Contar los pasos mostrados brevemente
player-clock_brief_help = Un paso cuenta enseguida, por poco que se muestre.
player-export_film = Subtítulos y lista de planos (VTT, HTML)
player-export_sentence = Frase debajo de la imagen
# La lista de planos de una película: qué se muestra y qué hay que tener a mano. $lesson: el título de la lección.
player-shots = Lista de planos: { $lesson }
player-shots_step = Plano
player-shots_picture = Imagen
player-shots_ready = Tener a mano
player-shots_pieces = Piezas
player-shots_pencil = lápiz y goma
player-shots_ruler = regla larga
player-shots_set_square = escuadra
player-shots_curve = regla curva
player-shots_compasses = compás
player-shots_lasts = Las palabras duran unos { $seconds } s.
player-shots_short = Se muestra { $shown } s y las palabras duran unos { $seconds } s: deje el paso más tiempo, o los subtítulos pasan demasiado rápido para leerlos.
player-film_untimed = Los capítulos y los subtítulos se escriben en cuanto un paso tiene un tiempo.
