# Cómo se nombra un cuerpo en piezas y páginas.

body-size = talla { $name }
body-one_size = talla única

# Qué talla trazar para un cuerpo y dónde pasar a otra. $measure es measure-...; $value y $off son longitudes.

body-advice_draw = Trace la talla { $size } según la medida «{ $measure }», { $value }.
body-advice_between = Trace la talla { $size }: la medida «{ $measure }», { $value }, está entre { $smaller } y { $larger }. Para una forma holgada basta { $smaller }; para una ajustada o una tela firme elija { $larger }.
body-advice_beyond = Por encima de la talla más grande según la medida «{ $measure }», { $value }: a la talla { $size } le faltan { $off }. Trace con sus propias medidas en lugar de una talla.
body-advice_below = Por debajo de la talla más pequeña según la medida «{ $measure }», { $value }: a la talla { $size } le sobran { $off }. Trace con sus propias medidas en lugar de una talla.
body-advice_fuller_bust = El pecho tiene { $off } más de lo que prevé la talla { $size }: conserve los hombros de la talla { $size } y añada en el pecho.
body-advice_one_draft = Trazada de una vez, sin nada que unir a mano, es la talla { $size }.
# La costura lateral pasa a la de otra talla: hacia fuera a una mayor, hacia dentro a una menor.
body-advice_waist =
    { $way ->
        [out] La medida «{ $measure }», { $value }, es la de la talla { $size }: por debajo de la axila lleve la costura lateral hacia fuera, poco a poco, hasta la talla { $size } en la cintura.
       *[in] La medida «{ $measure }», { $value }, es la de la talla { $size }: por debajo de la axila lleve la costura lateral hacia dentro, poco a poco, hasta la talla { $size } en la cintura.
    }
body-advice_hip =
    { $way ->
        [out] La medida «{ $measure }», { $value }, es la de la talla { $size }: por debajo de la cintura lleve la costura lateral hacia fuera, poco a poco, hasta la talla { $size } en la cadera.
       *[in] La medida «{ $measure }», { $value }, es la de la talla { $size }: por debajo de la cintura lleve la costura lateral hacia dentro, poco a poco, hasta la talla { $size } en la cadera.
    }
# Un largo se modifica entre dos líneas; $measure empieza la línea.
body-advice_back_waist_length =
    { $way ->
        [longer] { $measure }: alargue { $off } entre la axila y la cintura.
       *[shorter] { $measure }: acorte { $off } entre la axila y la cintura.
    }
body-advice_waist_to_hip =
    { $way ->
        [longer] { $measure }: alargue { $off } entre la cintura y la cadera.
       *[shorter] { $measure }: acorte { $off } entre la cintura y la cadera.
    }
body-advice_arm_length =
    { $way ->
        [longer] { $measure }: alargue { $off } en la manga, por encima del codo.
       *[shorter] { $measure }: acorte { $off } en la manga, por encima del codo.
    }

# Medidas que no concuerdan: $part y $whole son measure-...

body-check_very_small = La medida «{ $part }», { $part_value }, es muy pequeña en comparación con «{ $whole }», { $whole_value }.
body-check_smaller = La medida «{ $part }», { $part_value }, es más pequeña que «{ $whole }», { $whole_value }.
body-check_much_smaller = La medida «{ $part }», { $part_value }, es mucho más pequeña que «{ $whole }», { $whole_value }.
body-check_larger = La medida «{ $part }», { $part_value }, es mayor que «{ $whole }», { $whole_value }.
body-check_larger_by_far = La medida «{ $part }», { $part_value }, es muchísimo mayor que «{ $whole }», { $whole_value }.
body-check_much_larger = La medida «{ $part }», { $part_value }, es mucho mayor que «{ $whole }», { $whole_value }.
body-check_small = La medida «{ $part }», { $part_value }, es pequeña en comparación con «{ $whole }», { $whole_value }.
body-check_large = La medida «{ $part }», { $part_value }, es grande en comparación con «{ $whole }», { $whole_value }.
body-check_short = La medida «{ $part }», { $part_value }, es corta en comparación con «{ $whole }», { $whole_value }.
body-check_long = La medida «{ $part }», { $part_value }, es larga en comparación con «{ $whole }», { $whole_value }.
body-check_low = La medida «{ $part }», { $part_value }, es baja en comparación con «{ $whole }», { $whole_value }.
body-check_high = La medida «{ $part }», { $part_value }, es alta en comparación con «{ $whole }», { $whole_value }.
body-check_shorter = La medida «{ $part }», { $part_value }, es más corta que «{ $whole }», { $whole_value }.
body-check_longer_by_far = La medida «{ $part }», { $part_value }, es muchísimo más larga que «{ $whole }», { $whole_value }.
body-check_again = Vuelva a tomar las dos medidas; si son correctas, continúe.
body-check_shoulders =
    { $how ->
        [narrow] La medida «{ $shoulder }», { $shoulder_value }, no concuerda con «{ $back }», { $back_value }: la espalda es estrecha para unos hombros de { $across } aproximadamente de punta a punta.
       *[wide] La medida «{ $shoulder }», { $shoulder_value }, no concuerda con «{ $back }», { $back_value }: la espalda es ancha para unos hombros de { $across } aproximadamente de punta a punta.
    }
body-check_shoulders_do = Busque otra vez el final del hueso del hombro levantando el brazo y vuelva a tomar las dos medidas.
body-check_nape = { $back } y { $waist }: las dos medidas juntas, { $sum }, no llegan a la nuca de una persona de { $height } de estatura.
body-check_nape_do = Ate una cinta a la cintura y tome las tres medidas desde ella o hasta ella.
body-check_rise = { $waist } menos { $inside } da { $left }, pero la medida «{ $rise }» es { $rise_value }.
body-check_rise_do = Tome la altura de tiro en una silla plana y dura, y el largo interior de pierna hasta el suelo.

# ---- rechazos ----
body-not_plausible = { $value } no puede ser; las personas miden entre { $least } y { $most }.
body-slip_cm_as_mm = ¿Se escribió como mm un valor en cm?
body-slip_mm_as_cm = ¿Se escribió como cm un valor en mm?
body-slip_inch_as_cm = ¿Se escribió como cm un valor en pulgadas?
body-slip_inch_as_mm = ¿Se escribió como mm un valor en pulgadas?
body-slip_cm_as_inch = ¿Se escribió como pulgadas un valor en cm?
body-measure_again = Mida otra vez.
body-unknown_measure = no hay ninguna medida corporal «{ $name }».
body-no_body_name = Cuerpo
body-no_girth = no se da ningún contorno que figure en la tabla de tallas.
body-no_girth_do = Mida al menos el contorno de busto, o el del pecho alto, la cadera o la cintura.
body-no_size_girth = no se puede elegir una talla sin un contorno.
body-no_size_girth_do = Dé el contorno de busto de este cuerpo.
body-no_advice = no se puede aconsejar una talla sin un contorno.
body-no_advice_do = Mida los contornos de busto, cintura y cadera.
body-no_such_size = no hay ninguna talla «{ $size }».
body-no_such_kind = no hay ningún tipo de medida «{ $kind }».
body-nothing_to_save = no se midió nada, así que no hay nada que guardar.
body-nothing_to_save_do = Mida primero.
body-file_key = «{ $name }» no va en un archivo de medidas.
body-file_key_measure = «{ $name }» no va aquí. Las medidas van bajo la línea [measured].
body-file_units = las unidades son «{ $units }».
body-write_do = Escriba, por ejemplo, { $line }
body-file_name = el nombre es { $name }, no un texto.
body-file_empty = no contiene medidas.
body-file_large = el archivo es demasiado grande para unas medidas.
body-file_own_do = Nombre el archivo de las medidas.
body-file_missing = no existe ese archivo.
body-file_missing_do = Compruebe su nombre y su carpeta.
body-file_folder = es una carpeta.
body-file_folder_do = Nombre el archivo que contiene.
body-file_not_text = el archivo no es texto simple.
body-file_not_text_do = Guárdelo como texto simple (UTF-8).
body-file_unread = el archivo no se puede leer.
body-file_unread_do = Compruebe el archivo y sus permisos.
body-file_broken_line = el archivo está dañado: no se puede leer la línea { $line }.
body-file_broken = el archivo está dañado: no se puede leer hasta el final.
body-box_unusable = lo escrito en { $measures } todavía no sirve.
body-box_unusable_do = Corríjalo o vacíe la casilla.
body-no_girth_yet = todavía no hay ningún contorno.
body-name_of_size = «{ $name }» es el nombre de una talla.
body-name_of_size_do = Dé a este cuerpo un nombre propio.
body-other_file = ya hay un archivo con ese nombre que no es de medidas.
body-other_file_do = Queda como estaba. Elija otro nombre.
body-file_no_name = el archivo no tiene nombre.
body-file_no_name_do = Escriba, por ejemplo, mine.toml.
body-where_name = Nombre
body-where_file = Archivo

# ---- tablas de personas ----
body-people_none = no contiene personas.
body-people_none_do = Dé una línea con los nombres de las columnas y después una por persona.
body-people_columns = ninguna columna es una medida corporal; son { $columns }.
body-people_columns_do = Nombre las columnas como en un archivo de medidas: bust_girth, waist_girth, hip_girth.
body-people_save_do = Guarde la tabla como CSV (UTF-8).
body-people_line = no se puede leer la línea { $line }.
body-people_bust = la columna «{ $column }» puede ser el contorno de busto, por la parte más saliente, o el del pecho alto, por encima.
body-people_bust_do = Cambie su nombre por bust_girth o upper_chest_girth.
body-people_twice = las columnas «{ $one }» y «{ $other }» son la misma medida: { $measure }.
body-people_twice_do = Deje una de ellas.
body-report_do = Nombre un archivo para el informe, como report.json.

body-proposal = { $change }: { $amount }
body-advice_changes = Arreglos para la talla { $size }: { $changes }.
body-advice_cut = El cuerpo pide más de lo que admite esta prenda. Ajustado solo hasta el máximo posible: { $changes }. Cosa una prueba o trace con sus propias medidas.
body-advice_elsewhere = No se pueden hacer en esta prenda: { $changes }.
body-advice_build = Para hacerla: { $command }
