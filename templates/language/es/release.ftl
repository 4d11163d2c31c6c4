# La hoja que se lee primero, y lo que muestran las imágenes de muestra.
release-title = Empiece aquí
release-edition = edición { $edition }
release-do_read = Lea el cuaderno.
release-read = En el teléfono o la tableta abra { $screen }; en papel, imprima { $printed }. Dice las tallas, lo que hay que comprar y cada paso.
release-read_one = Abra { $file }. Dice las tallas, lo que hay que comprar y cada paso.
release-do_choose = Elija su talla.
release-choose = Tome sus medidas y compárelas con la tabla de tallas del cuaderno, que dice también qué hacer entre dos tallas.
release-do_print = Imprima las páginas.
release-print = Tome de la lista de abajo el archivo de su talla e imprima su primera página al 100 %, sin ajustar al papel. Mida el cuadrado de prueba; si es exacto, imprima el resto.
release-do_nested = Todas las tallas a la vez:
release-nested = La última línea de la lista es un archivo con todas las tallas superpuestas. Su página con la clave dice qué páginas necesita cada talla.
release-do_sheets = En la copistería:
release-sheets = Haga imprimir al 100 % un archivo de { $folder } en el papel que dice su nombre. Mida el cuadrado de prueba antes de pagar.
release-do_projector = Con un proyector:
release-projector = Tome un archivo de { $folder }, claro u oscuro. Mida sus dos cuadrados en la mesa antes de cortar.
release-do_files = Con otro programa:
release-files = { $folder } contiene el patrón a tamaño real en SVG y DXF, y como simples datos.
release-do_join = Una, corte, cosa.
release-join = Una las páginas por sus marcas, recorte las piezas de papel, colóquelas como muestra el cuaderno y siga sus pasos.
release-what_to_print = Qué imprimir
release-size = Talla
release-pages_a4 = En A4
release-pages_letter = En US Letter
release-file_pages = { $count ->
    [one] { $file }, { $count } página
   *[other] { $file }, { $count } páginas
 }
release-all_sizes = Todas, superpuestas
release-mind = Cuide sus manos
release-caution_blades = Tijeras, cúteres rotatorios, alfileres y agujas hieren: corte alejándose del cuerpo, cierre la cuchilla al dejarla, mantenga los dedos lejos de la aguja y todo fuera del alcance de los niños.
release-caution_iron = La plancha quema, y su vapor también: déjela sobre su talón y desenchúfela al irse.
release-licence = Lo que se permite
release-sums = SHA256SUMS da una suma de comprobación de cada archivo, para comprobar una copia.
release-preview_cover = La primera página del cuaderno «{ $title }».
release-preview_step = Una página del cuaderno con el paso «{ $step }», su imagen y su texto.
release-preview_sizes = La página del cuaderno con su tabla de tallas.
