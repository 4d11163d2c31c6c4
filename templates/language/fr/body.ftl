# Comment un corps est nommé sur les pièces et les pages.

body-size = taille { $name }
body-one_size = taille unique

# Quelle taille tracer pour un corps et où passer à une autre. $measure est measure-..., $value et $off sont des longueurs.

body-advice_draw = Tracer la taille { $size } d’après la mesure « { $measure } », { $value }.
body-advice_between = Tracer la taille { $size } : la mesure « { $measure } », { $value }, se situe entre { $smaller } et { $larger }. Pour une forme ample, { $smaller } suffit ; pour une forme ajustée ou un tissu ferme, prendre { $larger }.
body-advice_beyond = Au-delà de la plus grande taille d’après la mesure « { $measure } », { $value } : la taille { $size } est trop petite de { $off }. Tracer d’après ses propres mesures et non d’après une taille.
body-advice_below = En deçà de la plus petite taille d’après la mesure « { $measure } », { $value } : la taille { $size } est trop grande de { $off }. Tracer d’après ses propres mesures et non d’après une taille.
body-advice_fuller_bust = La poitrine a { $off } de plus que ne le prévoit la taille { $size } : garder les épaules de la taille { $size } et ajouter à la poitrine.
# La couture de côté passe à celle d’une autre taille, vers l’extérieur pour une plus grande, vers l’intérieur pour une plus petite.
body-advice_waist =
    { $way ->
        [out] La mesure « { $measure } », { $value }, est celle de la taille { $size } : sous l’aisselle, faire passer peu à peu la couture de côté vers l’extérieur jusqu’à la taille { $size }, au niveau de la taille.
       *[in] La mesure « { $measure } », { $value }, est celle de la taille { $size } : sous l’aisselle, faire passer peu à peu la couture de côté vers l’intérieur jusqu’à la taille { $size }, au niveau de la taille.
    }
body-advice_hip =
    { $way ->
        [out] La mesure « { $measure } », { $value }, est celle de la taille { $size } : sous la taille, faire passer peu à peu la couture de côté vers l’extérieur jusqu’à la taille { $size }, au niveau des hanches.
       *[in] La mesure « { $measure } », { $value }, est celle de la taille { $size } : sous la taille, faire passer peu à peu la couture de côté vers l’intérieur jusqu’à la taille { $size }, au niveau des hanches.
    }
# Une longueur est modifiée entre deux lignes, $measure commence la ligne.
body-advice_back_waist_length =
    { $way ->
        [longer] { $measure } : rallonger de { $off } entre l’aisselle et la taille.
       *[shorter] { $measure } : raccourcir de { $off } entre l’aisselle et la taille.
    }
body-advice_waist_to_hip =
    { $way ->
        [longer] { $measure } : rallonger de { $off } entre la taille et les hanches.
       *[shorter] { $measure } : raccourcir de { $off } entre la taille et les hanches.
    }
body-advice_arm_length =
    { $way ->
        [longer] { $measure } : rallonger de { $off } le long de la manche, au-dessus du coude.
       *[shorter] { $measure } : raccourcir de { $off } le long de la manche, au-dessus du coude.
    }

# Mesures qui ne vont pas ensemble, $part et $whole sont des measure-...

body-check_very_small = La mesure « { $part } », { $part_value }, est très petite à côté de « { $whole } », { $whole_value }.
body-check_smaller = La mesure « { $part } », { $part_value }, est plus petite que « { $whole } », { $whole_value }.
body-check_much_smaller = La mesure « { $part } », { $part_value }, est beaucoup plus petite que « { $whole } », { $whole_value }.
body-check_larger = La mesure « { $part } », { $part_value }, est plus grande que « { $whole } », { $whole_value }.
body-check_larger_by_far = La mesure « { $part } », { $part_value }, est de très loin plus grande que « { $whole } », { $whole_value }.
body-check_much_larger = La mesure « { $part } », { $part_value }, est beaucoup plus grande que « { $whole } », { $whole_value }.
body-check_small = La mesure « { $part } », { $part_value }, est petite à côté de « { $whole } », { $whole_value }.
body-check_large = La mesure « { $part } », { $part_value }, est grande à côté de « { $whole } », { $whole_value }.
body-check_short = La mesure « { $part } », { $part_value }, est courte à côté de « { $whole } », { $whole_value }.
body-check_long = La mesure « { $part } », { $part_value }, est longue à côté de « { $whole } », { $whole_value }.
body-check_low = La mesure « { $part } », { $part_value }, est basse à côté de « { $whole } », { $whole_value }.
body-check_high = La mesure « { $part } », { $part_value }, est haute à côté de « { $whole } », { $whole_value }.
body-check_shorter = La mesure « { $part } », { $part_value }, est plus courte que « { $whole } », { $whole_value }.
body-check_longer_by_far = La mesure « { $part } », { $part_value }, est de très loin plus longue que « { $whole } », { $whole_value }.
body-check_again = Reprendre les deux mesures ; si elles sont justes, continuer.
body-check_shoulders =
    { $how ->
        [narrow] La mesure « { $shoulder } », { $shoulder_value }, ne va pas avec « { $back } », { $back_value } : le dos est étroit pour des épaules d’environ { $across } d’une pointe à l’autre.
       *[wide] La mesure « { $shoulder } », { $shoulder_value }, ne va pas avec « { $back } », { $back_value } : le dos est large pour des épaules d’environ { $across } d’une pointe à l’autre.
    }
body-check_shoulders_do = Chercher de nouveau le bout de l’os de l’épaule en levant le bras, puis reprendre les deux mesures.
body-check_nape = { $back } et { $waist } : ces deux mesures ensemble, { $sum }, n’atteignent pas la nuque d’une personne de { $height }.
body-check_nape_do = Nouer un ruban autour de la taille et prendre les trois mesures à partir de ce ruban ou jusqu’à lui.
body-check_rise = { $waist } moins { $inside } donne { $left }, mais la mesure « { $rise } » est de { $rise_value }.
body-check_rise_do = Mesurer la hauteur de montant assis sur une chaise plate et dure, et l’entrejambe jusqu’au sol.
