# El cuadernillo: sus títulos, tablas y palabras fijas.

# { $title } es el título de la lección.
booklet-title = { $title } – cuadernillo de instrucciones
booklet-kind = Cuadernillo de instrucciones
booklet-cover = Portada
booklet-contents = En este cuadernillo
booklet-about = Sobre este diseño
booklet-begin = Antes de empezar
booklet-take_care = Tenga cuidado
booklet-how_to_read = Cómo leer las imágenes
booklet-measure = Tomar las medidas
booklet-sizes = Elegir la talla
booklet-finished = Medidas de la prenda acabada
booklet-cloth_and_notions = Tela y mercería
booklet-lays = Planos de corte
booklet-pieces = Piezas
booklet-printing = Imprimir y unir el patrón
booklet-drafting = Trazado
booklet-sewing = Costura
booklet-to_finish = Para terminar
booklet-worksheet = Hoja para trazar a mano
booklet-fitting = Lo que cambiaron las pruebas
booklet-variations = Variaciones
booklet-terms = Palabras usadas aquí
booklet-index = Dónde se usa cada medida
booklet-left_out = Omitido

# Un paso numerado al que se remite. En papel puede seguir «, página 9».
# En el índice.
booklet-see_step = paso { $number }
# Dentro de una frase de la lección, que pone ella misma el artículo: «en el paso 9», «vuelva al paso 9».
booklet-in_step = paso { $number }
# Sigue a una remisión en papel: el número de página va justo detrás. Conserve el espacio final.
booklet-comma_page = , página{"\u00A0"}
booklet-stage = { $number } de { $count }
booklet-rest_pictured = lo demás, como se mostró antes
booklet-video_at = Vídeo en { $clock }
booklet-video = El vídeo de este cuadernillo: { $address }

## Portada

booklet-drafted_for = Trazado para
booklet-lengths_in = Longitudes en
booklet-cm_first = centímetros y después pulgadas
booklet-inch_first = pulgadas y después centímetros
booklet-cm_only = centímetros
booklet-inch_only = pulgadas
booklet-edition = Edición
booklet-for_whom = Para quién
booklet-front_view = Delantero
booklet-proof_failed = Comprobación no superada
booklet-do_not_cut = No corte con este patrón. La comprobación ha encontrado:
booklet-more_findings =
    { $count ->
        [one] Y uno más: vea findings.json.
       *[other] Y { $count } más: vea findings.json.
    }

## Antes de empezar

booklet-how_to_use = Lea un paso entero antes de trazar o cortar. Trace primero en papel, pruebe la prenda en una tela barata y solo entonces corte la buena.
booklet-how_to_use_pages = Puede trazar el patrón usted, paso a paso, o imprimir las páginas del patrón y empezar por la costura.
booklet-reading_inks = Las líneas gruesas de color son nuevas en ese paso; las grises finas ya estaban; las pálidas discontinuas se quitan.
booklet-reading_units = Las longitudes van en los dos sistemas. Trabaje con uno solo de principio a fin.
# The system the author thinks in, where the booklet is read in the other.
booklet-reading_own_cm = Este patrón está trazado en centímetros; las pulgadas se han convertido y redondeado a las marcas de una regla.
booklet-reading_own_inch = Este patrón está trazado en pulgadas; los centímetros se han convertido y redondeado a las marcas de una regla.
booklet-reading_cloths = Las telas se dibujan con un tono y una trama, como en la leyenda de abajo.
booklet-reading_ticks = Marque un paso cuando esté hecho; este dispositivo lo recuerda.

## Medir

booklet-measure_intro = Mida sobre la ropa interior o una camiseta fina. Póngase como se pone siempre, respire con calma y, si puede, deje que otra persona sujete la cinta: pegada al cuerpo, nunca apretada.
booklet-measure_waist = Ate primero una cinta estrecha alrededor de la cintura; varias medidas empiezan o terminan en ella.

## Tallas y medidas

booklet-size = Talla
booklet-body_measurements = Medidas del cuerpo
booklet-cm_above = Centímetros arriba, pulgadas abajo.
booklet-inch_above = Pulgadas arriba, centímetros abajo.
booklet-cm_alone = Todo en centímetros.
booklet-inch_alone = Todo en pulgadas.
# { $order } es una de las dos frases anteriores.
booklet-drafted_for_size = { $order } Este cuadernillo está trazado para la talla { $size }.
booklet-drafted_for_body = { $order } Este cuadernillo está trazado para las medidas de { $name }, que figuran abajo.
booklet-not_in_sizes = { $order } Con estas elecciones no se puede trazar en { $sizes }.
booklet-estimated = estimada
booklet-measured = medida
booklet-estimated_value = { $value }, estimada
booklet-estimated_note = Estimadas a partir de la talla más próxima, no medidas: { $names }. Mídalas antes de cortar.
booklet-not_in_figure = (No aparece en la figura.)
booklet-measurements_of = Medidas de { $name }
booklet-measurement = Medida
booklet-value = Valor
booklet-garment = Prenda
booklet-finished_value = Acabada
booklet-back_view = Espalda
booklet-on_body = Sobre el cuerpo para el que está trazado ({ $body }), por delante y por detrás a la misma escala, con las medidas de la prenda acabada.
booklet-on_body_to_scale = En uso, por delante y por detrás a la misma escala.
booklet-laid_flat_front = En plano, vista por delante. Una medida de contorno sigue por el otro lado.
booklet-laid_flat_back = En plano, vista por detrás. Una medida de contorno sigue por el otro lado.
booklet-ease = Holgura
booklet-goes_over = Sobre
booklet-body_value = Cuerpo
booklet-ease_value = Holgura
booklet-fit_close = La prenda debe quedar ceñida.
booklet-fit_easy = La prenda debe quedar cómoda.
booklet-fit_loose = La prenda debe quedar amplia.
booklet-ease_note = La holgura es lo que la prenda mide de más que el cuerpo sobre el que va: espacio para moverse y línea del diseño.
booklet-choices = Elecciones de este trazado
booklet-choice = Medida
booklet-here = Aquí
booklet-range = Intervalo
booklet-why = Por qué
booklet-from_to = de { $least } a { $most }

## Tela, mercería, corte

booklet-fibre = Fibra
booklet-weight = Peso
booklet-drape = Caída
booklet-avoid = Mejor no
booklet-prewash = Antes de cortar
booklet-cloth = Tela
booklet-width = Ancho
booklet-to_buy = Largo que comprar
booklet-laid = Colocación
booklet-laid_lengthwise = doblada a lo largo
booklet-laid_flat = abierta en plano
booklet-laid_part = doblada en parte
booklet-laid_either = { $folded } o { $flat }
booklet-cloth_to_buy = Tela que comprar
booklet-cloth_main = Tela principal
booklet-cloth_lining = Forro
booklet-cloth_interfacing = Entretela
booklet-too_narrow = demasiado estrecha
booklet-lengths_by_size = Tela que comprar para cada talla
# Una fila de esa tabla: qué tela, de qué ancho.
booklet-cloth_wide = { $cloth }, { $width }
booklet-notions = Mercería
booklet-tools = Útiles
booklet-lays_intro = Marque con tiza alrededor de las piezas y compruebe cada hilo con el orillo antes de cortar. Lo que se corta de la tela abierta va al final.

## Piezas

booklet-no = N.º
booklet-piece = Pieza
booklet-to_cut = Corte
booklet-cut_list = Lista de corte
booklet-strip = Tira
booklet-strips = Tiras
booklet-strip_size = Largo × ancho de corte
# Cuántas capas de qué tela se cortan: { $cloth } es una de estas tres.
booklet-of_main = tela principal
booklet-of_lining = forro
booklet-of_interfacing = entretela
booklet-cut = Cortar { $count } de { $cloth }
booklet-cut_interfaced = Cortar { $count } de { $cloth } y { $interfacing } de entretela
booklet-cut_fold = Cortar { $count } de { $cloth }, con { EL($edge) } al doblez
booklet-cut_fold_interfaced = Cortar { $count } de { $cloth } y { $interfacing } de entretela, con { EL($edge) } al doblez
booklet-cut_pair = Cortar { $count } de { $cloth }, en espejo
booklet-cut_pair_interfaced = Cortar { $count } de { $cloth } y { $interfacing } de entretela, en espejo
booklet-cut_pairs = Cortar { $count } de { $cloth }, por pares en espejo
booklet-cut_pairs_interfaced = Cortar { $count } de { $cloth } y { $interfacing } de entretela, por pares en espejo
booklet-cut_face_up =
    { $count ->
        [one] Corte 1 de { $cloth }, en tela abierta, con el derecho hacia arriba
       *[other] Corte { $count } de { $cloth }, una a una en tela abierta, con el derecho hacia arriba
    }
booklet-cut_face_up_interfaced =
    { $count ->
        [one] Corte 1 de { $cloth } y { $interfacing } de entretela, en tela abierta, con el derecho hacia arriba
       *[other] Corte { $count } de { $cloth } y { $interfacing } de entretela, una a una en tela abierta, con el derecho hacia arriba
    }
booklet-cut_continuous = Cortar { $count } de { $cloth }, una tras otra de una tira al bies continua
booklet-cut_joined = Cortar { $count } de { $cloth }, { $lengths } para cada tira
booklet-cut_in_two = { $said }, la entretela en dos largos que se solapan { $overlap }
booklet-length_by_width = { $length } × { $width }
booklet-wide = { $width } de ancho
booklet-without_paper = Piezas sin papel
booklet-without_paper_note = Estas piezas son rectángulos: márquelas con tiza directamente sobre la tela, el largo al hilo, y compruebe que las dos diagonales sean iguales. Los márgenes de costura están incluidos; todas las distancias se miden desde el borde cortado.
booklet-without_paper_marks = Bordes y marcas
booklet-strips_note = Las tiras no tienen pieza de papel: márquelas con tiza directamente sobre la tela, al hilo. Los márgenes de costura están incluidos.
booklet-strips_note_mixed = Las tiras no tienen pieza de papel: márquelas con tiza directamente sobre la tela, en la dirección que se indica en cada una. Los márgenes de costura están incluidos.
booklet-strip_crosswise = a lo ancho de la tela
booklet-strip_bias = al bies
booklet-strip_square = en una tira continua, de un cuadrado de { $square } cosido en tubo con costuras de { $seams }
booklet-strip_pieced_straight =
    { $joins ->
        [one] la tira se une con una costura recta, con { $seams } a cada lado
       *[other] la tira se une con { $joins } costuras rectas, con { $seams } a cada lado
    }
booklet-strip_pieced_straight_each =
    { $joins ->
        [one] cada tira se une con una costura recta, con { $seams } a cada lado
       *[other] cada tira se une con { $joins } costuras rectas, con { $seams } a cada lado
    }
booklet-strip_pieced_diagonal =
    { $joins ->
        [one] la tira se une con una costura en diagonal, con { $seams } a cada lado
       *[other] la tira se une con { $joins } costuras en diagonal, con { $seams } a cada lado
    }
booklet-strip_pieced_diagonal_each =
    { $joins ->
        [one] cada tira se une con una costura en diagonal, con { $seams } a cada lado
       *[other] cada tira se une con { $joins } costuras en diagonal, con { $seams } a cada lado
    }

## Imprimir

booklet-printing_alone = Imprima sola la primera página del patrón, al 100 % o a «tamaño real». Desactive «ajustar a la página» y «reducir».
booklet-printing_squares = Mida sus cuadrados de prueba: uno mide 100 mm (10 cm) de lado; el otro, 4 pulg. Si alguno no coincide, busque el ajuste de escala de su impresora antes de seguir.
booklet-printing_rest = Imprima el resto. El plano de la primera página muestra dónde va cada una: por filas y columnas.
booklet-printing_join = Corte cada página por su línea de recorte solo en dos lados, póngala sobre la vecina de modo que coincidan las marcas de unión y péguela con cinta.
booklet-printing_check = Compruebe una medida larga en el patrón unido con este cuadernillo antes de cortar la tela.

## Hoja de trazado

# El comienzo de una fila de distancias a lo largo de una recta que empieza en el punto { $start }.
booklet-along = Desde { $start }
# La fila de debajo: cuánto se aparta la curva de la recta a cada una de esas distancias.
booklet-off = Fuera de la recta


## Pruebas

booklet-fitting_intro = Cada cambio se hizo después de probar la prenda. La línea discontinua es el trazado anterior; la gruesa, el trazado como está ahora.
booklet-fitting_on = { $title }, { $date }

## Índice y derechos

booklet-index_intro = Medidas por orden alfabético, con los pasos que las usan.
booklet-licence = Licencia
booklet-made_with = Trazado, comprobado y compuesto a partir de un solo archivo de lección. Todas sus imágenes y números siguen el trazado.
booklet-place = { $across }, { $above }
booklet-named_place = { $name }: { $across }, { $above }
booklet-named_place_at_origin = { $name }: en O
booklet-how_to_use_plain = Lea un paso entero antes de dibujar o cortar. Trace primero en papel, cósalo una vez en tela barata y corte solo entonces la tela buena.

# Remisiones entre una prueba en la costura y el capítulo de las pruebas; en papel sigue la página.
booklet-see_fitting = Lo que cambió esta prueba
booklet-tried_on_in = Se prueba en el paso { $number }
booklet-stretch = Elasticidad
booklet-stretch_across = Doble la tela a lo ancho, lejos del borde, y ponga { $relaxed } del doblez, sin tensar, sobre la escala de abajo. Estirado con suavidad, debe llegar a { $stretched } ({ $share }) y recuperar su largo.
booklet-stretch_along = Al hilo, la tela se estira un { $share }.
booklet-stretch_sewing = Costuras elásticas
booklet-stretch_seams = Cosa con aguja de punta de bola, que separa las mallas, y con zigzag estrecho, puntada elástica u overlock; los dobladillos, con aguja doble o zigzag. Una costura recta se rompe al estirarla. Sujete los hombros con cinta y no tire de la tela al coser.
booklet-stretch_gauge = Escala de elasticidad
booklet-stretch_relaxed = sin tensar, { $length }
booklet-stretch_reach = al menos { $length }
booklet-stretch_here = sujete aquí
booklet-stretch_gauge_note = Vale a cualquier tamaño de impresión: solo importa la proporción de los dos largos.
booklet-stretch_gauge_alt = Una barra con tres marcas: en la primera se sujeta el doblez, hasta la segunda llega sin tensar y estirado debe alcanzar la tercera.
booklet-needle = Aguja y puntada
booklet-needle_for = Aguja { $needle }, puntada de { $stitch } mm. Pruebe las dos en dos capas de un retal.
booklet-fine_seams = Una tela tan fina pide costuras estrechas, a { $near } o { $far } del borde o del doblez.

booklet-marking = Cortar y marcar
booklet-allowances_line = Los márgenes de costura están incluidos en las piezas: { $seams }.
booklet-allowances_line_hems = Los márgenes están incluidos en las piezas: costuras { $seams }; dobladillos { $hems }.
booklet-marking_cut_out = Corte cada pieza por su línea exterior, con las tijeras apoyadas en la mesa. Deje el papel hasta que todo esté marcado.
booklet-marking_notch = Dé en cada piquete un corte de { $deep } como máximo, en ángulo recto con el borde; un piquete doble son dos cortes.
booklet-marking_mark = Pase todas las marcas al revés con jaboncillo o con un hilo a través de las dos capas; pruebe antes el jaboncillo en un retal.
booklet-marking_interface = Corte la entretela con las mismas piezas y déjela junto a ellas, para que nada se pegue en la pieza equivocada.
booklet-marking_table = Qué se marca en cada pieza
booklet-notches = Piquetes
booklet-marks = Marcas
booklet-marks_on_one = { $half }: { $marks }
booklet-interfacing = Entretela
booklet-notches_on =
    { $kind ->
        [double] { $edge }: { $count } { $count ->
            [one] doble
           *[other] dobles
        }
       *[single] { $edge }: { $count }
    }
booklet-is_interfacing = es entretela
booklet-interfaced_layers =
    { $count ->
        [one] 1 capa
       *[other] { $count } capas
    }
booklet-time_in_all = La costura lleva en total { $time }, sin contar el corte ni las pruebas.

booklet-care = Cuidados
booklet-care_wash = Lave y planche la prenda como lavó y planchó la tela antes de cortarla; lo que indique la tienda o la etiqueta de la tela tiene prioridad.
booklet-care_shut = Cierre los cierres antes de lavarla.
booklet-care_fused = Donde haya entretela termoadhesiva, planche a través de un paño y con no más calor del que la entretela soporta.
booklet-care_stretch = Séquela extendida, para que su propio peso no la alargue.
booklet-choose_bust_girth = Elija la talla por su contorno de busto: es la medida más difícil de cambiar una vez cortada la tela.
booklet-choose_waist_girth = Elija la talla por su contorno de cintura.
booklet-choose_hip_girth = Elija la talla por su contorno de cadera.
booklet-choose_between = Entre dos tallas, compare las medidas acabadas debajo de la tabla: la mayor da más holgura, la menor queda más ceñida.
booklet-live_at = Esta lección también está en la red. Allí los pasos, las imágenes y las longitudes siguen sus propias medidas, que no salen de su dispositivo.
booklet-live_at_sized = Esta lección también está en la red. Allí los pasos, las imágenes y las longitudes siguen sus propias medidas, que no salen de su dispositivo; se abre en la talla { $size }, la de los dibujos de este cuadernillo.
booklet-live_at_plain = Esta lección también está en la red. Allí las imágenes y las longitudes siguen los valores que se elijan.
booklet-live_code = Código que lleva a { $address }
booklet-choose_over_both = Si su contorno de cintura o de cadera corresponde a otra talla, conserve la del busto hasta la sisa y pase a la otra por la costura lateral, con una curva suave entre los dos niveles. Haga lo mismo en cada pieza que se une allí.
booklet-choose_over_waist_girth = Si su contorno de cintura corresponde a otra talla, conserve la del busto hasta la sisa y pase a la otra por la costura lateral, con una curva suave entre los dos niveles. Haga lo mismo en cada pieza que se une allí.
booklet-choose_over_hip_girth = Si su contorno de cadera corresponde a otra talla, pase a ella por la costura lateral, con una curva suave entre los dos niveles. Haga lo mismo en cada pieza que se une allí.

booklet-fit_changes = Arreglos sobre el papel
booklet-fit_changes_intro = Arregle el papel antes de cortar la tela. Cuánto, lo dice la diferencia entre su medida y la de la talla elegida. Arregle las vistas, los forros y las entretelas igual que la pieza sobre la que van; después ponga uno sobre otro los bordes que se cosen juntos y compruebe que miden lo mismo. Cosa primero una prueba en tela barata. De trazos: como era; grueso: como queda; la flecha señala el lugar que se mueve.
