# Constats du vêtement sur le corps : s’il s’enfile, se porte et se noue. $part est une mesure, toujours « tour de… » ; les
# longueurs portent leur unité.

wear-where = Sur le corps

# ---- l’enfiler ----
wear-neck_small = ouverte au plus large, l’encolure mesure { $has } et un { $part } de { $need } doit passer : il manque { $amount }.
wear-neck_small_do = Creuser ou élargir l’encolure jusqu’à { $amount } de plus, ou l’ouvrir d’une fente ou d’une fermeture plus longue de { $half }.
wear-narrow_at = impossible à enfiler : ouvert au plus large, il laisse passer { $has } à la taille, et il doit y passer { $need } pour un { $part } de { $girth }.
wear-narrow_above = impossible à enfiler : ouvert au plus large, il laisse passer { $has } à { $far } au-dessus de la taille, et il doit y passer { $need } pour un { $part } de { $girth }.
wear-narrow_below = impossible à enfiler : ouvert au plus large, il laisse passer { $has } à { $far } au-dessous de la taille, et il doit y passer { $need } pour un { $part } de { $girth }.
wear-narrow_do = L’ouvrir davantage : une fermeture ou une fente plus longue de { $half } y donne { $amount }. Ou le tracer plus large d’autant.
wear-narrow_elastic_do = Couper l’élastique plus long de { $amount } au moins.
wear-armhole_small = une emmanchure mesure { $has } ; sur l’épaule d’un bras de { $arm } il lui faut au moins { $need }.
wear-armhole_small_do = La creuser sous le bras jusqu’à { $amount } de plus.
wear-hand_stuck = une manche finit à { $has } de tour et une main de { $need } doit passer.
wear-hand_stuck_do = Élargir l’ouverture de { $amount }, ou prévoir une fente boutonnée.
wear-arm_stuck = une manche mesure { $has } là où le bras mesure { $need }.
wear-arm_stuck_do = L’élargir de { $amount } et d’un peu d’aisance.
wear-arm_tight = une manche a { $ease } d’aisance au bras ; en tissu chaîne et trame le bras a besoin de { $least } pour plier.
wear-arm_tight_do = L’élargir de { $amount }.
wear-heel_stuck = une jambe finit à { $has } de tour et un tour de talon de { $need } doit passer.
wear-heel_stuck_do = Élargir l’ourlet de { $amount }, ou laisser une fente dans la couture de côté.

# ---- le porter ----
wear-too_small = il mesure { $has } là où doit entrer un { $part } de { $need }.
wear-too_small_do = L’élargir de { $amount } et d’au moins { $ease } d’aisance : un tissu chaîne et trame ne s’étire pas.
wear-ease_small = pour le { $part } il a { $ease } d’aisance ; un vêtement ajusté en tissu chaîne et trame en veut { $least }.
wear-ease_small_do = L’élargir là de { $amount }.
wear-stride = fermé tout autour et sans fente, l’ourlet mesure { $has } ; un pas demande { $need } vers le genou.
wear-stride_do = Élargir l’ourlet de { $amount }, ou y laisser une fente ou un pli.
wear-head_small = il mesure { $has } de tour et la tête { $head }.
wear-head_small_do = L’élargir de { $amount } et ajouter 1 à 2 cm d’aisance.
wear-head_large = il mesure { $has } de tour pour une tête de { $head } : il tombe sur les yeux.
wear-head_large_do = Le resserrer, ou le reprendre avec un ruban.
wear-elastic_long = l’élastique mesure { $has } pour une taille de { $waist } : il ne tient rien.
wear-elastic_long_do = Le couper un peu plus court que la taille.
wear-elastic_short = l’élastique mesure { $has } pour une taille de { $waist } : il serre trop.
wear-elastic_short_do = Le couper plus long, à peine plus court que la taille.

# ---- le nouer ----
wear-ties_short = les liens ({ $strip }) mesurent ensemble { $long } et le chemin autour du corps de l’un à l’autre est de { $way } : pas de quoi faire un nœud.
wear-ties_short_do = Couper chacun à { $each } au moins.
wear-ties_no_bow = des liens ({ $strip }), { $long } en tout, il reste { $left } après { $way } autour du corps : assez pour un nœud simple, pas pour une boucle.
wear-wrap_small = seuls des liens tiennent les devants, qui se croisent de { $has }.
wear-wrap_small_do = Les croiser de { $amount } de plus.
wear-belt_short = la ceinture ({ $strip }) mesure { $long } ; un tour fait { $around } et le reste ne suffit pas à un nœud.
wear-belt_short_do = La couper plus longue de { $amount }.
wear-strap_small = la bride ({ $strip }) et le bord entre ses bouts font un tour de { $has }, et une tête de { $head } doit passer.
wear-strap_small_nobody = la bride ({ $strip }) et le bord entre ses bouts font un tour de { $has }. Les pièces ne suivent les mesures de personne ; la tête d’une femme adulte, { $head } en moyenne, ne passe pas.
wear-strap_small_do = Couper la bride plus longue de { $amount }.

# ---- porté et en mouvement ----
wear-stretch_spent = pour le { $part }, le tissu est déjà étiré de { $spent } quand on ne bouge pas, sur { $stretch } qu’il peut donner : il en reste trop peu pour respirer et bouger.
wear-ease_style = le vêtement est dit { $style } et a { $ease } d’aisance pour le { $part } ; cette coupe en demande au moins { $least }.
wear-pocket_low = une poche s’ouvre { $has } sous la taille ; bras pendant, la main n’y entre que jusqu’à { $least } au-dessous.
wear-pocket_low_do = La placer au moins { $amount } plus haut.
wear-pocket_narrow = l’ouverture d’une poche mesure { $has } ; la main à plat demande { $need }.
wear-pocket_narrow_do = Allonger l’ouverture de { $amount }.
wear-loop_small = un passant mesure { $has } une fois ses bouts repliés ; la ceinture ({ $strip }), large de { $wide }, n’y passe pas.
wear-loop_small_do = Couper le passant { $amount } plus long, et un peu plus pour l’épaisseur de la ceinture.
wear-tie_opening = l’ouverture dans la couture mesure { $has } ; le lien ({ $strip }), large de { $wide }, s’y coince.
wear-tie_opening_do = Laisser une ouverture d’au moins { $least }, ou faire le lien plus étroit.
wear-wrap_low = les devants croisés se rejoignent { $meets } au-dessus de la taille, et la poitrine finit { $bust } au-dessus de la taille : rien ne la couvre.
wear-wrap_low_do = Tracer l’encolure de façon que les devants se croisent au moins { $amount } plus haut, ou les superposer davantage.
wear-wrap_gapes = le bord de croisure mesure { $has } depuis l’encolure, et le corps sur lequel il repose { $body } : il bâille.
wear-wrap_gapes_do = En retirer { $amount } par une pince reportée au côté ou à la taille, ou l’emboire sur un ruban.
wear-wrap_pulls = le bord de croisure mesure { $has } depuis l’encolure, et le corps qu’il couvre { $body } : il tire sur la poitrine et remonte.
wear-wrap_pulls_do = Allonger le devant sur la poitrine de { $amount } : le couper à hauteur de poitrine et l’écarter, en gardant la longueur du côté par une pince.
wear-wrap_thigh = seuls des liens tiennent les devants, et à la cuisse ils se superposent de { $has } ; pour marcher et s’asseoir il faut { $least }.
wear-wrap_thigh_do = Faire dépasser le milieu à chaque devant de { $half } de plus.
wear-button_bust = le bouton le plus proche de la ligne de poitrine en est à { $off } ; au-delà de { $most }, le devant bâille à cet endroit.
wear-button_bust_do = Placer un bouton à hauteur de poitrine, { $height } au-dessus de la taille, et répartir les autres à partir de là.
wear-arm_raised = de la taille, par le côté et le dessous de la manche, il mesure { $has }, le corps { $need } : un bras levé le fait remonter de { $up }.
wear-arm_raised_do = Remonter le dessous de bras du corsage et de la manche, ou faire la tête plus basse et la manche plus large, jusqu’à gagner { $amount } sur ces deux longueurs.
wear-cut_on = de la taille, par le côté et le dessous de bras, jusqu’au bout de la manche, il mesure { $has }, le corps bras à l’horizontale { $need }. Le bras monte de { $angle } degrés avant que l’ourlet bouge, 90 est l’horizontale ; levé jusque-là, il remonte l’ourlet de { $up }.
wear-cut_on_do = Faire rejoindre le côté plus haut par le dessous de manche, ou donner moins de pente à la manche, jusqu’à gagner { $amount } sur les deux longueurs ensemble.
wear-cap_ease = la tête de manche est plus longue que l’emmanchure de { $ease } ; dans ce tissu, on peut résorber { $most } au plus sans faire de plis.
wear-cap_ease_do = Tracer la tête { $amount } plus courte, ou la froncer en manche ballon.
wear-armhole_low = une emmanchure sans manche finit { $has } sous l’aisselle et découvre le côté ; l’usage est de { $most } au plus.
wear-armhole_low_do = La remonter de { $amount }.
wear-crotch_short = du bord supérieur devant, entre les jambes, à celui de derrière, il mesure { $has } et le corps { $need } : il serre quand on s’assied.
wear-crotch_short_do = Allonger la couture d’enfourchure de { $amount } : creuser sa courbe ou remonter la taille dos.

# ---- mesures du vêtement fini ----
wear-finished_bust_girth = Tour fini à la poitrine
wear-finished_waist_girth = Tour fini à la taille
wear-finished_hip_girth = Tour fini aux hanches
wear-finished_upper_arm_girth = Tour de manche fini en haut du bras
wear-finished_small_ring = « { $title } » mesure { $has } une fois fini, et il doit y passer : { $part }, { $need }. Il manque { $amount } et rien ne s’ouvre à cet endroit.
wear-finished_small_whole = « { $title } » mesure { $has } une fois fini, et doit entourer : { $part }, { $need }. Il manque { $amount } et rien ne s’ouvre dans le vêtement.
wear-finished_small_do = Le tracer { $amount } plus long tout autour, l’ouvrir là d’une fente ou d’une fermeture d’au moins { $half }, ou choisir un tissu extensible et en indiquer l’élasticité.
wear-untried_lines = Non essayé sur un corps : aucune pièce n’a de ligne qui dise où se trouvent poitrine, taille ou hanches. En tracer une comme repère de ce nom, par exemple waist_line.
wear-untried_measures = Non essayé sur un corps : la hauteur des lignes des pièces dépend de mesures qui manquent à ces tailles : { $measures }. Les ajouter au tableau des tailles.
wear-untried_girths = Non essayé sur un corps : les tailles n’ont aucune de ces mesures : { $measures }.
