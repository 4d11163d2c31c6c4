# Lo que va en las páginas del patrón, los pliegos de copistería y la hoja del proyector, en los archivos de dibujo, y lo que
# se dice mientras se hacen. $title es el título de la lección. Las tallas, como «W4», son nombres.

# ---- papeles

paper-name_a4 = A4
paper-name_a3 = A3
paper-name_a0 = A0
paper-name_letter = Carta
paper-name_tabloid = Tabloide
paper-name_a4_or_letter = A4 o Carta
paper-name_roll_36in = rollo de 36 pulg.
paper-name_roll_914mm = rollo de 914 mm

# ---- encabezados y leyendas, separados por un punto medio

paper-edition = edición { $edition }
paper-document = { $title }, { $edition }
paper-document_pages = { $title }, { $edition }, páginas en { $paper }
paper-document_projector = { $title }, { $edition }, para proyector
# La línea bajo el título de la primera página.
paper-about_upright =
    { $count ->
        [one] páginas del patrón en { $paper }, en vertical · sigue { $count } página
       *[other] páginas del patrón en { $paper }, en vertical · siguen { $count } páginas
    }
paper-about_sideways =
    { $count ->
        [one] páginas del patrón en { $paper }, apaisado · sigue { $count } página
       *[other] páginas del patrón en { $paper }, apaisado · siguen { $count } páginas
    }
paper-page_of = página { $page } de { $pages }
paper-sheet_of = hoja { $page } de { $pages }
# $pieces es paper-pieces.
paper-on_sheets =
    { $count ->
        [one] { $pieces } en { $count } hoja
       *[other] { $pieces } en { $count } hojas
    }
paper-on_one_sheet = { $pieces } en una hoja
paper-pieces =
    { $count ->
        [one] { $count } pieza de papel
       *[other] { $count } piezas de papel
    }
paper-place = fila { $row }, columna { $column }
# En la zona gris de una página: el nombre de la página que se pega ahí, como 2B.
paper-glue = pegue aquí { $page }

# ---- la primera página

paper-print = Imprimir
paper-print_first = Imprima primero esta página, al 100 % (tamaño real), sin escalar y sin ajustar a la página.
paper-print_first_common = Imprima primero esta página, al 100 % (tamaño real), sin escalar y sin ajustar a la página. Imprima en A4 o en Carta, centrado en la hoja.
paper-print_measure = Mida un cuadrado antes de cortar: el métrico mide { $metric } de lado y el otro { $inch } de lado.
paper-print_others = Después imprima las demás páginas con los mismos ajustes.
paper-join = Unir
paper-join_plan = Ordene las páginas como en el plano de páginas. Las filas llevan números; las columnas, letras.
paper-join_trim = Corte cada página por sus líneas de recorte discontinuas (✂), a la izquierda y arriba. Las páginas que ahí no tienen esa línea se dejan como están.
paper-join_trim_all = Corte cada página por sus líneas de recorte discontinuas (✂), en todos los lados que la tengan.
paper-join_glue = Pegue la página cortada sobre la zona gris de la página anterior, con pegamento o cinta. Junte las mitades con el mismo número: el círculo debe cerrarse y sus diagonales deben cruzarse en el centro.
paper-join_tape = Ponga los bordes cortados uno contra otro, sin montarlos, y péguelos con cinta. Junte las mitades con el mismo número: el círculo debe cerrarse y sus diagonales deben cruzarse en el centro.
paper-join_rows = Una primero las páginas de cada fila y después fila con fila.
paper-cut = Cortar
paper-cut_line = Corte las piezas por la línea continua gruesa.
paper-cut_blades = Las cuchillas cortan. Corte apartándose de los dedos y de usted, cierre el cúter rotatorio cada vez que lo deje, úselo sobre una base de corte y mantenga cuchillas y alfileres fuera del alcance de los niños. Van por delante las instrucciones del fabricante y las normas de su taller.
paper-practise = Practicar
paper-practise_smaller = Estas páginas son para practicar el trazado en la mesa. Todo está dibujado más pequeño, salvo las palabras: nada de lo que se corte de ellas le queda a un cuerpo.
paper-practise_blades = Mantenga cuchillas y alfileres fuera del alcance de los niños. Van por delante las normas de su aula.

# ---- el plano de páginas

paper-plan = Plano de páginas
paper-plan_pages =
    { $count ->
        [one] { $count } página
       *[other] { $count } páginas
    }
paper-plan_rows =
    { $count ->
        [one] { $count } fila
       *[other] { $count } filas
    }
paper-plan_columns =
    { $count ->
        [one] { $count } columna
       *[other] { $count } columnas
    }
# $pages, $rows y $columns son los tres mensajes de arriba.
paper-plan_grid = { $pages }, { $rows } por { $columns }
# $plan es paper-plan_grid.
paper-plan_patches = { $plan }, en { $patches } grupos
paper-plan_single = { $plan }, ninguna se une
# $plan es uno de los tres mensajes de arriba.
paper-plan_blank =
    { $count ->
        [one] { $plan }; se omite { $count } página en blanco
       *[other] { $plan }; se omiten { $count } páginas en blanco
    }

# ---- cuadrados de prueba y regla de la impresora

paper-square = cuadrado de prueba: mídalo antes de cortar
paper-square_small = Este cuadrado representa { $stands_for } y mide { $side } de lado.
paper-class_half = escala 1:2: no sirve para cortar tela
paper-class_quarter = escala 1:4: no sirve para cortar tela
paper-gauge_short = Control de la impresora, lado corto del papel
paper-gauge_long = Control de la impresora, lado largo del papel
paper-gauge_sheet_width = Control de la impresora, a lo ancho de la hoja
paper-gauge_sheet_height = Control de la impresora, a lo alto de la hoja
paper-gauge_sheet_short = Control de la impresora, el lado corto del papel
paper-gauge_sheet_long = Control de la impresora, el lado largo del papel
# Estos dos siguen a una fila de números, que son tantos por ciento.
paper-gauge_metric = %, en los 100 mm de la regla
paper-gauge_inch = %, en las 4 pulg. de la regla
paper-gauge_zero = Ponga el cero de la regla en la línea de este extremo.
paper-gauge_how = ¿Ha salido pequeño o grande? Si una barra de control mide 97 mm, su impresora ha impreso al 97 %: busque primero un ajuste de escala. Si la impresora no obedece, se corrige con páginas hechas para ella: pida a quien hizo el patrón páginas para el 97 %, o para el 97 % en el lado corto del papel y el 98,5 % en el largo, según indiquen las barras.
paper-gauge_corrected = Estas páginas están hechas para una impresora que imprime al { $scale } %. En ella el cuadrado de prueba es exacto y el control indica lo que se corrigió. En cualquier otra impresora salen mal.
paper-gauge_corrected_two = Estas páginas están hechas para una impresora que imprime al { $short } % en el lado corto del papel y al { $long } % en el largo. En ella el cuadrado de prueba es exacto y el control indica lo que se corrigió. En cualquier otra impresora salen mal.

# ---- el encabezado de un pliego de copistería

paper-head_print = Imprima al 100 %, en papel al menos tan ancho como este pliego, sin escalar y sin ajustar a la página.
paper-head_measure = Mida los cuadrados antes de cortar: { $metric } y { $inch } de lado.
paper-head_blades = Las cuchillas cortan: corte apartándose de usted y mantenga cuchillas y alfileres fuera del alcance de los niños.

# ---- páginas con varias tallas

# Una serie de tallas, como W1 a W4, y varias de ellas unidas con «y».
paper-sizes_run = { $first } a { $last }
paper-sizes_alike = { $sizes }, todas iguales
paper-sizes_hint = La página { $page } dice cómo encontrar su talla y qué páginas necesita.
paper-sizes_find = Encuentre su talla
paper-sizes_hold = Estas páginas contienen las tallas { $sizes } de { $title }, unas sobre otras.
paper-sizes_count = Cuente las marcas entre dos trazos largos: un punto vale uno; un trazo corto, cinco. Las tallas pares son más gruesas que las impares.
paper-sizes_shared = Una línea continua es común: pertenece a todas las tallas cuya línea entra en ella. El nombre de la talla aparece de trecho en trecho en su línea; coloree la suya antes de cortar.
paper-sizes_bunch = Donde las líneas van demasiado juntas para llevar nombre, al lado se indica su orden: un trazo fino las cruza desde la primera talla nombrada, junto al texto, hasta la última.
paper-sizes_layers = En un programa que muestre capas, apague las tallas que no necesite; la línea de costura de cada talla es una capa aparte, apagada hasta que la encienda.
paper-sizes_allowances = Los márgenes de costura están incluidos; su ancho figura a lo largo de los bordes.
paper-sizes_print = Imprima solo las páginas indicadas para su talla; la primera lleva el cuadrado de prueba.
paper-sizes_head_size = Talla
paper-sizes_head_line = Su línea de corte
paper-sizes_head_pages = Imprima estas páginas
paper-sizes_plan = Páginas para { $sizes }
paper-sizes_all = todas
paper-sizes_all_line = común a varias tallas
paper-strips = Se cortan sin pieza de papel
paper-strip_every = { $strip }: { $length } por { $width } en todas las tallas.
# $sizes se compone de paper-strip_size, separados por punto y coma.
paper-strip_sizes = { $strip }: { $sizes }.
paper-strip_size = { $sizes } { $length } por { $width }
# Nombres de capas, como los muestra el programa del lector.
paper-layers = Tallas
paper-layer_stitch = { $size } línea de costura

# ---- la hoja del proyector

paper-projector_about = { $edition } · para proyector, 1:1 · hilo de izquierda a derecha
paper-projector_measure = mida cada lado en la mesa

# ---- el archivo SVG: nombres de grupos

paper-svg_about = Una unidad de usuario es un milímetro. Un grupo por talla y uno por lo que las tallas comparten, dentro un grupo por pieza y dentro un grupo por clase de línea.
paper-svg_size = Talla { $size }
paper-svg_all_sizes = Todas las tallas
paper-svg_shared = Común a { $sizes }
paper-svg_text = Texto
paper-svg_square = Cuadrado de prueba, 100 mm
paper-svg_measure = 100 mm: mida este cuadrado
paper-svg_cut_line = { $piece }: línea de corte
paper-svg_stitch_line = { $piece }: línea de costura
paper-svg_fold = { $piece }: doblez
paper-svg_grainline = { $piece }: hilo
paper-svg_notches = { $piece }: piquetes
paper-svg_marks = { $piece }: marcas
paper-svg_names = { $piece }: nombres

# ---- lo que se dice mientras se hacen las páginas

paper-doing_pages = Colocando las piezas en páginas
paper-doing_sheet = Colocando las piezas en un pliego
paper-doing_writing = Escribiendo las páginas
paper-doing_size = Talla { $size }
paper-doing_projector = Preparando la hoja del proyector
paper-doing_nested = Preparando las páginas en { $paper } de { $sizes }
# $amount es uno de los mensajes de abajo.
paper-doing_paper = { $paper }: { $amount }
paper-amount_roll = { $length }
paper-amount_pages =
    { $count ->
        [one] { $count } página
       *[other] { $count } páginas
    }
paper-amount_sheets =
    { $count ->
        [one] { $count } hoja
       *[other] { $count } hojas
    }
# $amount es paper-amount_pages o paper-amount_sheets.
paper-amount_blank = { $amount }; en blanco y omitidas: { $blank }

# ---- lo que no se puede imprimir ----
paper-margins_eat = dentro de los márgenes quedan { $width } x { $height } mm, demasiado poco para los cuadros de prueba y las reglas.
paper-margins_eat_do = Elija un papel mayor o márgenes menores; deben quedar { $least } mm en cada sentido.
paper-paper_place = papel { $paper }
paper-no_sizes = no se ha elegido ninguna talla.
paper-no_sizes_do = Nombre algunas, como --sizes W3,W4, o all.
paper-size_twice = la talla { $size } está elegida dos veces.
paper-size_twice_do = Nombre cada talla una vez.
paper-no_pieces = este patrón no tiene piezas, así que no hay nada que imprimir.
paper-no_pieces_do = Ejecute los pasos de trazado que hacen las piezas.
paper-no_class_scale = varias tallas superpuestas no se leen a escala reducida.
paper-no_class_scale_do = Imprima una sola talla a esa escala o suprima --scale.
paper-roll_long = las piezas necesitan { $length } m de { $roll }, más de lo que cabe en una página de PDF.
paper-roll_long_do = Elija un papel más ancho u hojas como A0; se pueden escribir como mucho { $most } m.
paper-no_such = no hay ningún papel «{ $paper }».
paper-no_such_do = { $near } Un formato propio se escribe como 300x500mm o 13x19in.
paper-size_no_unit = el formato de papel «{ $paper }» no tiene unidad.
paper-size_two_units = el formato de papel «{ $paper }» mezcla dos unidades.
paper-size_do = Escriba { $first }x{ $second }mm, o cm o in.
paper-too_small = un papel de { $paper } es demasiado pequeño: en la primera página deben caber un cuadro de prueba de 100 mm y una regla.
paper-too_small_do = Elija al menos { $width } x { $height } mm.
paper-too_long = un papel de { $paper } es más largo de lo que puede ser una página de PDF.
paper-too_long_do = Elija como mucho { $most } m (200 in).
paper-margin_overlap = con un margen de { $margin } mm y un solape de { $overlap } mm queda demasiado poca página para el patrón.
paper-margin_overlap_do = Dé un margen o un solape menor.
paper-margin_small = un margen de página de { $margin } mm es menor de lo que imprime la mayoría de impresoras.
paper-margin_small_do = Dé al menos 5 mm.
paper-projector_long = la hoja mediría { $size } de largo, más de lo que puede ser una página de PDF.
paper-projector_long_do = Quede por debajo de { $most } m.
paper-projector_narrow = las piezas no caben en una hoja de { $width } por { $height }; debe tener al menos { $least } de ancho.
paper-projector_low = las piezas no caben en una hoja de { $width } por { $height }; debe tener al menos { $least } de alto.
paper-projector_small_do = Dé una hoja mayor, o ninguna para que se ajuste.
paper-not_a_sheet = «{ $text }» no es un tamaño de hoja.
paper-not_a_sheet_do = Escriba 1500x900mm o 60x40in, o nada.
paper-no_file_kind = no hay archivos del tipo «{ $kind }».
paper-not_a_margin = «{ $text }» no es un margen.
paper-not_a_margin_do = Escriba 8mm, o 6mm,15mm para los lados y para arriba y abajo.
paper-not_a_printer_scale = «{ $text }» no dice a qué tamaño imprime la impresora.
paper-not_a_printer_scale_do = Lea la regla de la primera página y escriba 97%, o 97%,98.5% para el lado corto y el largo del papel.
paper-not_a_scale = «{ $text }» no es una escala para la clase.
paper-scale_do = Elija 1, 1/2 o 1/4.
paper-none_named = no se nombra ningún papel.
paper-none_named_do = Nombre uno, como --paper a4.
paper-printer_off = una impresora que imprime al { $share } está demasiado lejos de la escala real para corregirla.
paper-printer_off_do = Busque un ajuste como «ajustar a la página» y desactívelo; mida después otra vez la regla.
paper-no_pattern = la lección se ejecutó, pero no dio ningún patrón.
paper-no_pattern_do = Pida que vuelvan a hacer la copia de clase.
paper-no_name = este archivo todavía no tiene nombre.
paper-no_name_do = Guárdelo y pulse de nuevo el botón.

# ---- piezas que se cortan por sus medidas, sin papel

paper-measures_fold = la mitad, tal como queda sobre el doblez; en el doblez: { $edge }
# Los nombres de los bordes van solos: un título y aquello a lo que se refiere.
paper-measures_along = A lo largo: { $edges }
paper-measures_top = Hacia la parte alta de la tela: { $edge }
paper-measures_allowance = Margen de costura incluido: { $width } en todo el contorno
paper-measures_allowances = Márgenes de costura incluidos: { $edges }
paper-measures_edge = { $edge } { $width }
paper-measures_notch =
    { $count ->
        [one] Piquete sencillo ({ $edge }): a { $at } del borde cortado ({ $start })
       *[other] Piquetes sencillos ({ $edge }): a { $at } del borde cortado ({ $start })
    }
paper-measures_double =
    { $count ->
        [one] Piquete doble ({ $edge }), su centro: a { $at } del borde cortado ({ $start })
       *[other] Piquetes dobles ({ $edge }), sus centros: a { $at } del borde cortado ({ $start })
    }
paper-measures_line = Línea ({ $mark }): a { $at } del borde cortado ({ $start }) y paralela a él
paper-measures_point = Marca ({ $mark }): a { $at } del borde cortado ({ $start }) y a { $up } del borde cortado ({ $edge })
paper-measures_slit = Línea ({ $mark }): de { $at } a { $to }, medidos desde el borde cortado ({ $start }), a { $up } del borde cortado ({ $edge })
paper-measures_opening = Abertura ({ $edge }; { $mark }): de { $at } a { $to }, medidos desde el borde cortado ({ $start })
paper-by_measures = Estas piezas no necesitan papel: márquelas con tiza directamente sobre la tela, el largo al hilo, con los márgenes de costura incluidos. Lo que hay que marcar en ellas está en el cuaderno. { $pieces }
paper-by_measures_sizes = Estas piezas no necesitan papel; sus medidas están en la página de las tallas, y lo que hay que marcar, en el cuadernillo de su talla: { $pieces }.
paper-by_measures_one = { $piece }: { $size }
paper-by_measures_also = { $about } · sin papel: { $pieces }
paper-about_no_pages = patrón en { $paper } · no siguen páginas: todas las piezas se cortan por sus medidas
paper-no_such_piece = no hay ninguna pieza «{ $name }» en este patrón.
paper-needs_paper = la pieza «{ $piece }» no se puede cortar solo por sus medidas: con los márgenes no es un rectángulo al hilo, o tiene una pinza, un pliegue o una marca que las medidas no sitúan.
paper-needs_paper_do = Imprímala en papel: quite su nombre de no_paper.
