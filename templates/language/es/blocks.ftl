# Títulos de las piezas de los patrones base.

block-front_bodice = Delantero del cuerpo
block-back_bodice = Espalda del cuerpo
block-front_skirt = Falda delantera
block-back_skirt = Falda trasera
block-front_trouser_leg = Pantalón delantero
block-back_trouser_leg = Pantalón trasero
block-sleeve = Manga

# Lo que hay que saber de una prenda calcada.
block_note-traced =
    { $size ->
        [none] Este trazado («{ $title }») se calcó de una prenda y solo sirve para la persona de esa prenda; no cambia con el cuerpo.
       *[other] Este trazado («{ $title }») se calcó de una prenda y solo sirve para la talla { $size }; no cambia con el cuerpo.
    }

# ---- cuerpos para los que no se puede trazar ----
blocks-missing = falta una medida: { $measure }.
blocks-missing_do = Mídala: { $note }
blocks-missing_own_do = Dela con las demás medidas.
blocks-for_body = { $block } para { $body }
blocks-two_refused = { $one }, { $one_value }, y { $other }, { $other_value }, no van juntos: { $trouble }
blocks-two_refused_do = Mida otra vez { $one } y { $other }.
blocks-goes_one_do = Mida otra vez { $one } y { $other }. Se puede trazar con { $first }.
blocks-goes_two_do = Mida otra vez { $one } y { $other }. Se puede trazar con { $first } o con { $second }.
blocks-goes_with = { $measure } de { $value }
blocks-estimated = { $what } Estimado, no medido: { $measures }.
blocks-again_do = Mida otra vez: { $measure }.
blocks-arm_short = { $measure } de { $value }: demasiado poco para una copa que encaje en una sisa de { $armscye }.
blocks-arm_large = { $measure } de { $value } con { $ease } de holgura es demasiado para una sisa de { $armscye }: la copa sería más baja que { $least }.
blocks-arm_large_do = Mida otra vez el brazo y la profundidad de sisa, ahonde la sisa o use menos holgura.
blocks-arm_small = { $measure } de { $value } con { $ease } de holgura es demasiado poco para una sisa de { $armscye }: la copa sería más alta que { $most }.
blocks-arm_small_do = Mida otra vez el brazo y la profundidad de sisa, o use más holgura en el brazo.
blocks-wrist_wide = { $measure } de { $value }: la muñeca resulta mucho más ancha que el brazo, de { $arm }.
blocks-wrist_narrow = { $measure } de { $value }: la muñeca resulta mucho más estrecha que el brazo, de { $arm }.
blocks-armscyes_differ = una sisa delantera de { $front } y una trasera de { $back } son demasiado distintas para una manga.
blocks-armscyes_differ_do = Mire dónde llega la costura del hombro a la sisa.
blocks-ease_negative = la holgura es cero o más.
blocks-refused_neck_shoulders = el cuello resulta demasiado ancho para los hombros.
blocks-refused_no_side_seam = no queda costura lateral por encima de la cintura.
blocks-refused_neck_armhole = el escote delantero resulta tan profundo como la sisa.
blocks-refused_side_flat = la costura lateral queda más plana que 45 grados.
blocks-refused_armhole_shallow = la sisa resulta demasiado poco profunda para un brazo.
blocks-refused_shoulder_beyond = el hombro sobrepasa el costado del busto.
blocks-refused_width_beyond = el ancho sobrepasa el costado del busto.
blocks-refused_width_inside = el ancho queda muy por dentro de la punta del hombro.
blocks-refused_width_past_tip = el ancho sobrepasa mucho la punta del hombro.
blocks-refused_side_leans = la costura lateral se inclina demasiado para una sisa.
blocks-refused_no_dart_room = no queda sitio para pinzas por encima de la cintura.
blocks-refused_side_leans_20 = la costura lateral se inclina más de 20 grados.
blocks-refused_bust_dart_deep = la pinza de busto resulta tan profunda como la costura lateral.
blocks-refused_no_waist_shape = no queda nada que entallar de la cadera a la cintura.
blocks-refused_darts_wide = las pinzas resultan demasiado anchas para quedar planas.
blocks-refused_hip_side_flat = la costura lateral queda demasiado plana.
blocks-refused_below_hem = la medida llega más abajo que el bajo.
blocks-refused_hip_crotch = no queda sitio entre la cadera y el tiro.
blocks-refused_leg_slant = el costado de la pierna se inclina demasiado.
blocks-refused_crotch_curve = no queda sitio para la curva del tiro.

# ---- otros ----
blocks-refused_back_low = el centro de la espalda queda demasiado bajo.
blocks-refused_back_high = el centro de la espalda queda demasiado alto.
blocks-refused_wide_leg = da una pierna demasiado ancha.
blocks-refused_fork_wide = el tiro resulta demasiado ancho.

block_title-bodice = Patrón base de cuerpo
block_title-darted_bodice = Patrón base de cuerpo con pinzas
block_title-skirt = Patrón base de falda
block_title-trousers = Patrón base de pantalón
block_title-with_sleeve = { $block } con manga
