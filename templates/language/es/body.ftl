# Cómo se nombra un cuerpo en piezas y páginas.

body-size = talla { $name }
body-one_size = talla única

# Qué talla trazar para un cuerpo y dónde pasar a otra. $measure es measure-...; $value y $off son longitudes.

body-advice_draw = Trace la talla { $size } según la medida «{ $measure }», { $value }.
body-advice_between = Trace la talla { $size }: la medida «{ $measure }», { $value }, está entre { $smaller } y { $larger }. Para una forma holgada basta { $smaller }; para una ajustada o una tela firme elija { $larger }.
body-advice_beyond = Por encima de la talla más grande según la medida «{ $measure }», { $value }: { $size } es { $off } demasiado pequeña. Trace con sus propias medidas en lugar de una talla.
body-advice_below = Por debajo de la talla más pequeña según la medida «{ $measure }», { $value }: { $size } es { $off } demasiado grande. Trace con sus propias medidas en lugar de una talla.
body-advice_fuller_bust = El pecho tiene { $off } más de lo que prevé la talla { $size }: conserve los hombros de la talla { $size } y añada en el pecho.
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
