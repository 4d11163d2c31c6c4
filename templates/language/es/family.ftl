# Dos ediciones, tallas o ajustes de una lección, uno al lado del otro, y lo que cambió una edición.

family-title = { $title }: { $before } junto a { $after }
family-errata = { $title }: cambios de la edición { $after }
family-errata_lead = Para quien tiene la edición { $before }: esto es todo lo que cambia. Corríjalo a mano en su cuadernillo o imprima el nuevo.
family-nothing = No hay ninguna diferencia que se pueda notar.
family-edition = edición { $edition }
family-edition_dated = edición { $edition } ({ $date })
family-as_it_stands = tal como está
family-with = con { $values }
family-as_cut = como se cortó al principio
family-corrected = como se corrigió
family-first = el primero
family-second = el segundo
family-measures = Medidas
family-pieces = Piezas
family-drafting = Trazado
family-sewing = Costura
family-notions = Mercería
family-measure = medida
family-difference = diferencia
family-of_edge = { $name }, largo sobre la línea de costura
family-of_allowance = { $name }, margen de costura
family-of_extra = { $name }, tela de más para la prueba
family-of_notch = { $name }, piquete: desde el principio del borde
family-of_strip_length = { $name }, largo de corte
family-of_strip_width = { $name }, ancho de corte
family-of_cut = { $name }, cuántas se cortan
family-of_cloth = { $cloth }, de { $width } de ancho, para comprar
family-step_new = Nuevo: { $title }
family-step_gone = Suprimido: { $title }
family-was = Antes:
family-now = Ahora:
family-picture = { $piece }: { $before } en línea de trazos, { $after } en línea continua
family-picture_alt = { $piece }, { $before } en línea de trazos y { $after } encima; lo que cambia va en línea gruesa. { $words }
family-no_such_place = ninguna pieza de los dos tiene un lugar «{ $place }».
family-edition_missing = no existe el archivo «{ $file }».
family-edition_missing_do = Indique el archivo pattern.json de una compilación anterior, su carpeta o la de una publicación, o un cuaderno.
family-edition_size = en la publicación «{ $file }» no hay ninguna talla { $size }.
family-edition_size_do = Tiene { $sizes }.
family-edition_closed = no se puede leer «{ $file }» ({ $reason }).
family-edition_closed_do = Revise el archivo y sus permisos.
family-edition_damaged = «{ $file }» está dañado: no contiene un patrón entero.
family-edition_damaged_do = Tómelo de una copia de esa edición, o vuelva a compilarlo con el cuaderno de entonces.
family-edition_large = «{ $file }» es más grande de lo que puede ser un patrón.
family-edition_large_do = Indique el archivo pattern.json de una compilación anterior.
family-edition_other = «{ $file }» no es un patrón de este kit.
family-edition_other_do = Indique el archivo pattern.json de una compilación anterior, su carpeta o la de una publicación, o un cuaderno.
family-edition_version = «{ $file }» es un patrón de la versión { $version }, que este kit no conoce.
family-edition_version_do = Use el kit con el que se compiló, o uno más nuevo.
family-one_edition = una sola edición no se puede comparar.
family-one_edition_do = Indique después un cuaderno u otra edición.
family-one_notebook = no se dice con qué se compara el cuaderno.
family-one_notebook_do = Indique --sizes W3,W4, --values sleeve_length=45cm, --preset "Manga larga" o --as-cut, o un segundo cuaderno o edición.
family-two_sizes = { $count ->
    [one] se ha indicado una talla.
   *[other] se han indicado { $count } tallas.
}
family-two_sizes_do = Indique dos tallas de la lección: --sizes W3,W4.
family-two_given = se indican dos, y uno de ellos debe compararse consigo mismo.
family-two_given_do = Quite --sizes y --as-cut, o el segundo nombre.
family-one_size = la lección no usa ninguna medida del cuerpo, así que tiene una sola talla.
family-one_size_do = Compare dos valores: --values length=40cm.
family-no_lesson = no hay ninguna lección que comparar.
family-no_lesson_do = Indique una lección: compare(lesson, sizes=("W3", "W5")).
family-no_other = no se dice con qué se compara la lección.
family-no_other_do = Escriba compare(lesson, sizes=("W3", "W5")) o compare(lesson, seam=1 * cm), o indique otra lección o la carpeta de una compilación anterior.
family-of_dart = { $name }, ancho en su extremo abierto
family-of_piece = { $piece }: { $name }
family-grade = { $title }: el escalado
family-grade_unit = { $unit ->
    [inch] valores en pulgadas; debajo, lo que cambia desde la talla anterior
   *[cm] valores en cm; debajo, lo que cambia desde la talla anterior
}
family-grade_breaks = A partir de aquí se quieren otros incrementos: { $sizes }.
family-grade_same = Igual en todas las tallas
family-grade_even = Cada incremento concuerda con los de al lado.
family-grade_follows = Desigual porque lo son las propias medidas del cuerpo
family-grade_jump = { $name }: de { $before } a { $size } cambia { $step }, junto a incrementos de { $usual }.
family-grade_turn = { $name }: de { $before } a { $size } va en sentido contrario, { $step }, junto a incrementos de { $usual }.
family-grade_scales = { $name }: no es igual en { $before } y { $size } ({ $step }). Si debe serlo, quite lo que hace que siga a la talla.
family-grade_missing = { $name }: de { $before } y { $size }, solo una lo tiene.
family-grade_because = También la medida: { $name }.
family-no_grade_do = Un escalado necesita dos tallas o más; revise la tabla de tallas de la lección.
family-not_drafted = Falta { $size }, porque no se puede trazar: { $why }
family-grade_off =
    { $way ->
        [above] { $name }: { $size } tiene { $by } más de lo que hacen esperar { $before } y { $after }.
       *[below] { $name }: { $size } tiene { $by } menos de lo que hacen esperar { $before } y { $after }.
    }
family-two_editions = dos ediciones son como se compilaron; no se les puede dar talla ni valores.
family-two_editions_do = Quite --size, --values y --preset, o indique el cuaderno.
family-other_language = Los dos están en idiomas distintos, así que no se comparan los textos de sus pasos.
