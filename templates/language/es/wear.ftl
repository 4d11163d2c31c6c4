# Observaciones de la prenda en el cuerpo: si se puede poner, llevar y atar. $part es una medida, siempre «contorno de…»; las
# longitudes llevan su unidad.

wear-where = En el cuerpo

# ---- ponérsela ----
wear-neck_small = abierto del todo, el escote mide { $has } y debe pasar un { $part } de { $need }: faltan { $amount }.
wear-neck_small_do = Baje o ensanche el escote hasta que mida { $amount } más, o ábralo con una abertura o cremallera { $half } más larga.
wear-narrow_at = no hay manera de ponérsela: abierta del todo deja pasar { $has } en la cintura, y allí deben pasar { $need } para un { $part } de { $girth }.
wear-narrow_above = no hay manera de ponérsela: abierta del todo deja pasar { $has } a { $far } por encima de la cintura, y allí deben pasar { $need } para un { $part } de { $girth }.
wear-narrow_below = no hay manera de ponérsela: abierta del todo deja pasar { $has } a { $far } por debajo de la cintura, y allí deben pasar { $need } para un { $part } de { $girth }.
wear-narrow_do = Ábrala más: una cremallera o abertura { $half } más larga da allí { $amount }. O trácela más ancha en esa medida.
wear-narrow_elastic_do = Corte el elástico al menos { $amount } más largo.
wear-armhole_small = una sisa mide { $has }; sobre el hombro de un brazo de { $arm } necesita al menos { $need }.
wear-armhole_small_do = Bájela bajo el brazo hasta que mida { $amount } más.
wear-hand_stuck = una manga termina con { $has } de contorno y debe pasar una mano de { $need }.
wear-hand_stuck_do = Haga la boca { $amount } más ancha, o dele una abertura con botón.
wear-arm_stuck = una manga mide { $has } donde el brazo mide { $need }.
wear-arm_stuck_do = Hágala { $amount } más ancha y añada holgura.
wear-arm_tight = una manga tiene { $ease } de holgura en el brazo; en tela de calada el brazo necesita { $least } para doblarse.
wear-arm_tight_do = Hágala { $amount } más ancha.
wear-heel_stuck = una pernera termina con { $has } de contorno y debe pasar un contorno de talón de { $need }.
wear-heel_stuck_do = Haga el bajo { $amount } más ancho, o deje una abertura en la costura lateral.

# ---- llevarla ----
wear-too_small = mide { $has } donde debe caber un { $part } de { $need }.
wear-too_small_do = Hágala { $amount } más ancha, y al menos { $ease } de holgura: la tela de calada no cede.
wear-ease_small = para el { $part } tiene { $ease } de holgura; una prenda ceñida de tela de calada pide { $least }.
wear-ease_small_do = Hágala { $amount } más ancha ahí.
wear-stride = cerrado y sin abertura, el bajo mide { $has }; para dar un paso hacen falta { $need } a la altura de la rodilla.
wear-stride_do = Haga el bajo { $amount } más ancho, o deje en él una abertura o un pliegue.
wear-head_small = mide { $has } de contorno y la cabeza mide { $head }.
wear-head_small_do = Hágalo { $amount } más ancho y añada 1 a 2 cm de holgura.
wear-head_large = mide { $has } de contorno para una cabeza de { $head }: cae sobre los ojos.
wear-head_large_do = Hágalo más estrecho, o ajústelo con una cinta.
wear-elastic_long = el elástico mide { $has } para una cintura de { $waist }: no sujeta nada.
wear-elastic_long_do = Córtelo un poco más corto que la cintura.
wear-elastic_short = el elástico mide { $has } para una cintura de { $waist }: aprieta demasiado.
wear-elastic_short_do = Córtelo más largo, solo un poco más corto que la cintura.

# ---- atarla ----
wear-ties_short = las tiras ({ $strip }) miden juntas { $long }, y el camino alrededor del cuerpo de una a otra es de { $way }: no dan para un nudo.
wear-ties_short_do = Corte cada una de { $each } como mínimo.
wear-ties_no_bow = de las tiras ({ $strip }), { $long } en total, quedan { $left } después de recorrer { $way } alrededor del cuerpo: bastan para un nudo, no para un lazo.
wear-wrap_small = solo las tiras sujetan los delanteros, que se cruzan { $has }.
wear-wrap_small_do = Crúcelos { $amount } más.
wear-belt_short = el cinturón ({ $strip }) mide { $long }; una vuelta son { $around }, y el resto no da para un nudo.
wear-belt_short_do = Córtelo { $amount } más largo.
wear-strap_small = el tirante ({ $strip }) y el borde entre sus extremos forman un aro de { $has }, y debe pasar una cabeza de { $head }.
wear-strap_small_nobody = el tirante ({ $strip }) y el borde entre sus extremos forman un aro de { $has }. Las piezas no siguen las medidas de nadie; la cabeza de una mujer adulta, { $head } de media, no pasa.
wear-strap_small_do = Corte el tirante { $amount } más largo.

# ---- puesta y en movimiento ----
wear-stretch_spent = para el { $part } la tela ya se estira un { $spent } con el cuerpo quieto, del { $stretch } que da: queda demasiado poco para respirar y moverse.
wear-ease_style = se dice de ajuste { $style } y tiene { $ease } de holgura para el { $part }; ese ajuste pide { $least } como mínimo.
wear-pocket_low = un bolsillo se abre { $has } por debajo de la cintura; con el brazo caído, la mano solo entra hasta { $least } por debajo de ella.
wear-pocket_low_do = Póngalo al menos { $amount } más arriba.
wear-pocket_narrow = la boca de un bolsillo mide { $has }; la mano plana pide { $need }.
wear-pocket_narrow_do = Haga la boca { $amount } más larga.
wear-loop_small = una trabilla mide { $has } con los extremos remetidos; el cinturón ({ $strip }), de { $wide } de ancho, no pasa.
wear-loop_small_do = Corte la trabilla { $amount } más larga, y algo más por el grosor del cinturón.
wear-tie_opening = la abertura de la costura mide { $has }; la tira ({ $strip }), de { $wide } de ancho, se atasca en ella.
wear-tie_opening_do = Deje una abertura de al menos { $least }, o haga la tira más estrecha.
wear-wrap_low = los delanteros cruzados se encuentran { $meets } por encima de la cintura y el pecho acaba { $bust } por encima de ella: nada lo cubre.
wear-wrap_low_do = Dibuje el escote de modo que los delanteros se crucen al menos { $amount } más arriba, o que monten más.
wear-wrap_gapes = el borde cruzado mide { $has } desde el cuello y el cuerpo sobre el que va { $body }: se despega.
wear-wrap_gapes_do = Quítele { $amount } con una pinza trasladada al costado o a la cintura, o embébalo sobre una cinta.
wear-wrap_pulls = el borde cruzado mide { $has } desde el cuello y el cuerpo que cubre { $body }: tira sobre el pecho y se sube.
wear-wrap_pulls_do = Alargue el delantero sobre el pecho { $amount }: córtelo a la altura del pecho y ábralo, y conserve el largo del costado con una pinza.
wear-wrap_thigh = solo las tiras sujetan los delanteros, y en el muslo montan { $has }; para andar y sentarse hacen falta { $least }.
wear-wrap_thigh_do = Haga que cada delantero pase del centro { $half } más.
wear-button_bust = el botón más próximo a la línea de pecho está a { $off }; a más de { $most }, el delantero se abre ahí.
wear-button_bust_do = Ponga un botón a la altura del pecho, { $height } por encima de la cintura, y reparta los demás a partir de él.
wear-arm_raised = de la cintura por el costado y por la costura inferior de la manga mide { $has }, el cuerpo { $need }: al levantar un brazo, la prenda sube { $up }.
wear-arm_raised_do = Suba la axila del cuerpo y de la manga, o haga la copa más baja y la manga más ancha, hasta que los dos largos crezcan { $amount }.
wear-cut_on = de la cintura por el costado y por debajo del brazo hasta el final de la manga mide { $has }, el cuerpo con el brazo horizontal { $need }. El brazo sube { $angle } grados antes de que se mueva el bajo, 90 es la horizontal; a esa altura el bajo sube { $up }.
wear-cut_on_do = Haga que la costura de la manga llegue más arriba al costado, o que la manga caiga menos, hasta que los dos largos juntos crezcan { $amount }.
wear-cap_ease = la copa de la manga es { $ease } más larga que la sisa; esta tela admite { $most } de embebido como máximo sin fruncirse.
wear-cap_ease_do = Dibuje la copa { $amount } más corta, o frúnzala para hacer una manga abullonada.
wear-armhole_low = una sisa sin manga acaba { $has } por debajo de la axila y deja el costado al aire; lo habitual son { $most } como máximo.
wear-armhole_low_do = Súbala { $amount }.
wear-crotch_short = del borde superior de delante, entre las piernas, al de detrás mide { $has }, y el cuerpo { $need }: al sentarse se clava.
wear-crotch_short_do = Alargue la costura de tiro { $amount }: haga la curva más honda o suba la cintura de atrás.

# ---- medidas de la prenda acabada ----
wear-finished_bust_girth = Contorno acabado en el pecho
wear-finished_waist_girth = Contorno acabado en la cintura
wear-finished_hip_girth = Contorno acabado en la cadera
wear-finished_upper_arm_girth = Contorno acabado de la manga en el brazo
wear-finished_small_ring = «{ $title }» mide { $has } ya terminado, y por ahí debe pasar: { $part }, { $need }. Faltan { $amount } y nada se abre ahí.
wear-finished_small_whole = «{ $title }» mide { $has } ya terminado, y debe rodear: { $part }, { $need }. Faltan { $amount } y nada se abre en la prenda.
wear-finished_small_do = Trácelo { $amount } más largo en todo el contorno, ábralo ahí con una abertura o cremallera de al menos { $half }, o elija una tela elástica e indique cuánto cede.
wear-untried_lines = No probado en un cuerpo: ninguna pieza tiene una línea que diga dónde están el busto, la cintura o la cadera. Trace una como guía con ese nombre, por ejemplo waist_line.
wear-untried_measures = No probado en un cuerpo: la altura de las líneas de las piezas depende de medidas que faltan en estas tallas: { $measures }. Añádalas a la tabla de tallas.
wear-untried_girths = No probado en un cuerpo: las tallas no tienen ninguna de estas medidas: { $measures }.
