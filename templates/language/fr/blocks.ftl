# Titres des pièces des patrons de base.

block-front_bodice = Corsage devant
block-back_bodice = Corsage dos
block-front_skirt = Jupe devant
block-back_skirt = Jupe dos
block-front_trouser_leg = Pantalon devant
block-back_trouser_leg = Pantalon dos
block-sleeve = Manche

# Ce qu’il faut savoir d’un tracé relevé sur un vêtement.
block_note-traced =
    { $size ->
        [none] Ce tracé (« { $title } ») est relevé sur un vêtement et ne va qu’à la personne de ce vêtement ; il ne change pas avec le corps.
       *[other] Ce tracé (« { $title } ») est relevé sur un vêtement et ne va qu’à la taille { $size } ; il ne change pas avec le corps.
    }

# ---- corps pour lesquels on ne peut pas tracer ----
blocks-missing = il manque une mesure : { $measure }.
blocks-missing_do = La mesurer : { $note }
blocks-missing_own_do = La donner avec les autres mesures.
blocks-for_body = { $block } pour { $body }
blocks-two_refused = { $one }, { $one_value }, et { $other }, { $other_value }, ne vont pas ensemble : { $trouble }
blocks-two_refused_do = Mesurer à nouveau { $one } et { $other }.
blocks-goes_one_do = Mesurer à nouveau { $one } et { $other }. Le tracé est possible avec { $first }.
blocks-goes_two_do = Mesurer à nouveau { $one } et { $other }. Le tracé est possible avec { $first }, ou avec { $second }.
blocks-goes_with = { $measure } de { $value }
blocks-estimated = { $what } Estimé, pas mesuré : { $measures }.
blocks-again_do = Mesurer à nouveau : { $measure }.
blocks-arm_short = { $measure } de { $value } : trop court pour une tête de manche adaptée à une emmanchure de { $armscye }.
blocks-arm_large = { $measure } de { $value } et { $ease } d’aisance, c’est trop pour une emmanchure de { $armscye } : la tête de manche serait plus basse que { $least }.
blocks-arm_large_do = Mesurer à nouveau le bras et la profondeur d’emmanchure, creuser l’emmanchure, ou prendre moins d’aisance.
blocks-arm_small = { $measure } de { $value } et { $ease } d’aisance, c’est trop peu pour une emmanchure de { $armscye } : la tête de manche serait plus haute que { $most }.
blocks-arm_small_do = Mesurer à nouveau le bras et la profondeur d’emmanchure, ou prendre plus d’aisance au bras.
blocks-wrist_wide = { $measure } de { $value } : le poignet devient bien plus large que le bras, de { $arm }.
blocks-wrist_narrow = { $measure } de { $value } : le poignet devient bien plus étroit que le bras, de { $arm }.
blocks-armscyes_differ = une emmanchure devant de { $front } et une emmanchure dos de { $back } sont trop différentes pour une manche.
blocks-armscyes_differ_do = Regarder où la couture d’épaule rejoint l’emmanchure.
blocks-ease_negative = l’aisance est nulle ou positive.
blocks-refused_neck_shoulders = l’encolure devient trop large pour les épaules.
blocks-refused_no_side_seam = il ne reste pas de couture de côté au-dessus de la taille.
blocks-refused_neck_armhole = l’encolure devant devient aussi profonde que l’emmanchure.
blocks-refused_side_flat = la couture de côté est plus plate que 45 degrés.
blocks-refused_armhole_shallow = l’emmanchure est trop peu profonde pour un bras.
blocks-refused_shoulder_beyond = l’épaule dépasse le côté de la poitrine.
blocks-refused_width_beyond = la carrure dépasse le côté de la poitrine.
blocks-refused_width_inside = la carrure est très en deçà de la pointe d’épaule.
blocks-refused_width_past_tip = la carrure dépasse de loin la pointe d’épaule.
blocks-refused_side_leans = la couture de côté penche trop pour une emmanchure.
blocks-refused_no_dart_room = il ne reste pas de place pour des pinces au-dessus de la taille.
blocks-refused_side_leans_20 = la couture de côté penche de plus de 20 degrés.
blocks-refused_bust_dart_deep = la pince de poitrine devient aussi profonde que la couture de côté.
blocks-refused_no_waist_shape = il ne reste rien à cintrer des hanches à la taille.
blocks-refused_darts_wide = les pinces sont trop larges pour être plates.
blocks-refused_hip_side_flat = la couture de côté est trop plate.
blocks-refused_below_hem = la mesure descend sous l’ourlet.
blocks-refused_hip_crotch = il ne reste pas de place entre les hanches et l’enfourchure.
blocks-refused_leg_slant = le côté de la jambe penche trop.
blocks-refused_crotch_curve = il ne reste pas de place pour la courbe d’enfourchure.

# ---- autres ----
blocks-refused_back_low = le milieu dos est trop bas.
blocks-refused_back_high = le milieu dos est trop haut.
blocks-refused_wide_leg = donne une jambe beaucoup trop large.
blocks-refused_fork_wide = l’enfourchure devient trop large.

block_title-bodice = Base de corsage
block_title-darted_bodice = Base de corsage à pinces
block_title-skirt = Base de jupe
block_title-trousers = Base de pantalon
block_title-with_sleeve = { $block } avec manche
