# Una lección que vive en el navegador de quien la lee (kit/page). $number y $count cuentan pasos; lo que aquí va entre
# llaves lo pone la propia página.

# Mientras se abre.
page-opening = Preparando …
page-opening_first = La primera visita carga unos { $size } MB. Después, la lección se abre sin internet.
page-cannot_run = Este navegador no puede ejecutar la lección. Una versión más reciente de Firefox, Chrome, Edge o Safari sí puede.
page-not_loaded = Una parte de la lección no se pudo cargar. Compruebe la conexión y vuelva a cargar la página.
page-needs_scripts = Esta página necesita JavaScript.
page-kept = La lección está guardada en este dispositivo y se abre sin internet.
page-newer = Hay una edición más reciente de esta lección.
page-newer_take = Cargarla
page-edition = Edición { $edition }

# Pasos e imagen.
page-steps = Pasos
page-drafting = Trazado
page-sewing = Costura
page-back = Atrás
page-on = Siguiente
page-place = Paso { $number } de { $count }
page-measures = Medidas de esta imagen
page-no_picture = Este paso no tiene imagen.
page-larger = Ampliar
page-smaller = Ajustar a la pantalla
page-picture = Imagen
page-stale = La imagen muestra el último trazado que se pudo dibujar.
page-stopped = Esto no terminaba y se ha detenido. El último cambio se ha deshecho.

# Lo que se puede ajustar.
page-values = Valores
page-reset = Valores de la lección
page-less = Menos: { $name }
page-more = Más: { $name }
page-body = Cuerpo
page-size = Talla
page-own_body = Mis propias medidas
page-private = Lo que escriba se queda en este dispositivo.
page-name = Nombre
page-all_measures = Mostrar todas las medidas
page-use_body = Trazar con estas medidas
page-body_used = La lección está ahora trazada para { $name }.
page-save_body = Guardar en un archivo
page-load_body = Cargar un archivo
page-body_file = mis-medidas.toml
page-language = Idioma
page-units = Unidades
page-cm = cm
page-inch = pulgadas
page-language_en = English
page-language_de = Deutsch
page-language_fr = Français
page-language_es = Español

# Lo que se dice.
page-check = Comprobación
page-checking = Comprobando …
page-mend = ¿Cómo se arregla?
page-mending = Buscando cómo arreglarlo …
page-finished = Medidas terminadas
page-cloth = Tela que comprar
page-cloth_note = Para la talla { $size } con los valores con los que se hizo esta página.
page-cloth_nearest = Para la talla { $size }, la más cercana a sus medidas, con los valores con los que se hizo esta página.
page-exercises = Ejercicios
page-hint = Mostrar una pista
page-no_hint = No hay más pistas
page-about = Acerca de esta página
page-left_out = Esta página no imprime el patrón ni distribuye la tela. Con su archivo de medidas, quien enseña puede imprimir su talla.
page-notices = Avisos y licencias

# The reader's own pattern pages, where the page can write them. $size are megabytes, $name is a file.
page-pages = Mis páginas del patrón
page-pages_how = Páginas del patrón para la talla, las medidas y los valores elegidos en esta página, en un PDF para imprimir. La primera vez se cargan unos { $size } MB más.
page-pages_paper = Papel
page-pages_make = Hacer mis páginas
page-pages_stop = Detener
page-pages_loading = Se carga lo que escribe las páginas …
page-pages_laying = Se distribuyen las piezas y se escriben las páginas. Puede tardar unos minutos …
page-pages_stopped = Se detuvo. No se hizo ninguna página.
page-pages_done = Sus páginas están listas. Imprímalas sin ajustar la escala y mida el cuadrado de prueba antes de cortar.
page-pages_save = Guardar { $name }
page-pages_not_here = No se pudo cargar lo que escribe las páginas. Compruebe la conexión e inténtelo de nuevo, o envíe su archivo de medidas a quien enseña, que puede imprimir su talla.
page-pages_left_out = Esta página no distribuye la tela.

# Lo que la lección no admite. $name y $value son lo que se le envió.
page-not_asked = la página ha pedido algo que esta lección no conoce.
page-again_do = Vuelva a cargar la página.
page-no_units = { $units } no son unidades.
page-no_values = los valores no se pueden leer.
page-no_body = el cuerpo no se puede leer.
page-no_number = { $value } no es un valor de { $name }.
page-no_slider = esta lección no tiene ningún valor llamado { $name }.
page-no_measure = no hay ninguna medida llamada { $name }.
page-no_steps = esta lección aún no tiene pasos.
page-length_do = Escriba una longitud como 94 cm o 37 in.
page-kit_wrong = Ha fallado algo de la lección ({ $kind }: { $what }). Devuelva el último valor que cambió.

# El cuadernillo junto a la página.
page-booklet_link = El cuadernillo, con sus medidas
page-booklet_mine = Este cuadernillo con sus propias medidas
page-booklet_how = Escriba sus medidas una vez y los pasos, las imágenes, las longitudes y las tablas de este cuadernillo se trazan para usted. Lo que escriba no sale de su dispositivo.
page-booklet_how_plain = Los pasos, las imágenes y las longitudes de este cuadernillo siguen los valores puestos en la página de la lección.
page-booklet_open = Usar mis medidas
page-booklet_back = Volver al cuadernillo impreso
page-booklet_page = La página de la lección, con sus valores
page-booklet_type = Elija una talla o escriba sus medidas abajo.
page-booklet_drawing = Se traza para { $name }: paso { $number } de { $count } …
page-booklet_done = Todo en este cuadernillo vale ahora para { $name }, salvo donde se indica otra cosa.
page-booklet_done_values = Todo en este cuadernillo vale ahora para { $name } y los valores puestos en la página de la lección, salvo donde se indica otra cosa.
page-booklet_stands = El cuadernillo sigue valiendo para { $name }.
page-booklet_wrong = Este trazado no pasa la comprobación. No corte según él:
page-booklet_no_lays = Los planes de corte faltan aquí: eran de la talla { $size }. Coloque sus propias piezas antes de comprar la tela.
page-booklet_no_sheet = El trazado a mano con números falta aquí: los números eran de la talla { $size }. Los pasos de arriba valen para usted.
page-booklet_no_pages = Las páginas impresas del patrón no siguen: son de una talla. Guarde sus medidas en un archivo y envíelo a quien le dio esta lección.
page-booklet_drawn_for = Las imágenes de esta parte están dibujadas en la talla { $size }.
page-booklet_differs = Con sus medidas, este paso se cose de otra manera que en la talla { $size }, que es la que aparece aquí. Véalo en la página de la lección.
