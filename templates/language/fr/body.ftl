# Comment un corps est nommé sur les pièces et les pages.

body-size = taille { $name }
body-one_size = taille unique

# Quelle taille tracer pour un corps et où passer à une autre. $measure est measure-..., $value et $off sont des longueurs.

body-advice_draw = Tracer la taille { $size } d’après la mesure « { $measure } », { $value }.
body-advice_between = Tracer la taille { $size } : la mesure « { $measure } », { $value }, se situe entre { $smaller } et { $larger }. Pour une forme ample, { $smaller } suffit ; pour une forme ajustée ou un tissu ferme, prendre { $larger }.
body-advice_beyond = Au-delà de la plus grande taille d’après la mesure « { $measure } », { $value } : la taille { $size } est trop petite de { $off }. Tracer d’après ses propres mesures et non d’après une taille.
body-advice_below = En deçà de la plus petite taille d’après la mesure « { $measure } », { $value } : la taille { $size } est trop grande de { $off }. Tracer d’après ses propres mesures et non d’après une taille.
body-advice_fuller_bust = La poitrine a { $off } de plus que ne le prévoit la taille { $size } : garder les épaules de la taille { $size } et ajouter à la poitrine.
body-advice_one_draft = Tracée d’un seul tenant, sans raccord à faire, c’est la taille { $size }.
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

# ---- refus ----
body-not_plausible = { $value } ne peut pas être juste ; on mesure entre { $least } et { $most }.
body-slip_cm_as_mm = Une valeur en cm a-t-elle été saisie en mm ?
body-slip_mm_as_cm = Une valeur en mm a-t-elle été saisie en cm ?
body-slip_inch_as_cm = Une valeur en pouces a-t-elle été saisie en cm ?
body-slip_inch_as_mm = Une valeur en pouces a-t-elle été saisie en mm ?
body-slip_cm_as_inch = Une valeur en cm a-t-elle été saisie en pouces ?
body-measure_again = Mesurer à nouveau.
body-unknown_measure = il n’y a pas de mesure du corps « { $name } ».
body-no_body_name = Corps
body-no_girth = aucun tour n’est donné qui figure dans le tableau des tailles.
body-no_girth_do = Mesurer au moins le tour de poitrine, ou le tour du haut de la poitrine, des hanches ou de la taille.
body-no_size_girth = on ne peut pas choisir de taille sans un tour.
body-no_size_girth_do = Donner le tour de poitrine de ce corps.
body-no_advice = on ne peut pas conseiller de taille sans un tour.
body-no_advice_do = Mesurer le tour de poitrine, de taille et de hanches.
body-no_such_size = il n’y a pas de taille « { $size } ».
body-no_such_kind = il n’y a pas de sorte de mesure « { $kind } ».
body-nothing_to_save = rien n’a été mesuré : il n’y a rien à enregistrer.
body-nothing_to_save_do = Mesurer d’abord.
body-file_key = « { $name } » n’a pas sa place dans un fichier de mesures.
body-file_key_measure = « { $name } » n’a pas sa place ici. Les mesures se placent sous la ligne [measured].
body-file_units = les unités sont « { $units } ».
body-write_do = Écrire par exemple { $line }
body-file_name = le nom est { $name }, pas un texte.
body-file_empty = il ne contient pas de mesures.
body-file_large = le fichier est bien trop gros pour des mesures.
body-file_own_do = Nommer le fichier des mesures.
body-file_missing = ce fichier n’existe pas.
body-file_missing_do = Vérifier son nom et son dossier.
body-file_folder = c’est un dossier.
body-file_folder_do = Nommer le fichier qu’il contient.
body-file_not_text = le fichier n’est pas du texte brut.
body-file_not_text_do = L’enregistrer en texte brut (UTF-8).
body-file_unread = le fichier ne peut pas être lu.
body-file_unread_do = Vérifier le fichier et ses droits.
body-file_broken_line = le fichier est abîmé : la ligne { $line } ne se lit pas.
body-file_broken = le fichier est abîmé : il ne se lit pas jusqu’au bout.
body-box_unusable = ce qui est saisi pour { $measures } ne peut pas encore servir.
body-box_unusable_do = Le corriger, ou vider la case.
body-no_girth_yet = il n’y a pas encore de tour.
body-name_of_size = « { $name } » est le nom d’une taille.
body-name_of_size_do = Donner à ce corps un nom à lui.
body-other_file = il existe un fichier de ce nom qui n’est pas un fichier de mesures.
body-other_file_do = Il reste tel quel. Choisir un autre nom.
body-file_no_name = le fichier n’a pas de nom.
body-file_no_name_do = Saisir par exemple mine.toml.
body-where_name = Nom
body-where_file = Fichier

# ---- tableaux de personnes ----
body-people_none = il ne contient personne.
body-people_none_do = Donner une ligne de noms de colonnes, puis une ligne par personne.
body-people_columns = aucune colonne n’est une mesure du corps ; ce sont { $columns }.
body-people_columns_do = Nommer les colonnes comme dans un fichier de mesures : bust_girth, waist_girth, hip_girth.
body-people_save_do = Enregistrer le tableau en CSV (UTF-8).
body-people_line = la ligne { $line } ne se lit pas.
body-people_bust = la colonne « { $column } » peut être le tour de poitrine, au plus fort, ou le tour du haut de la poitrine, au-dessus.
body-people_bust_do = La renommer bust_girth ou upper_chest_girth.
body-people_twice = les colonnes « { $one } » et « { $other } » sont la même mesure : { $measure }.
body-people_twice_do = En garder une.
body-report_do = Nommer un fichier pour le rapport, tel que report.json.

body-proposal = { $change } : { $amount }
body-advice_changes = Retouches pour la taille { $size } : { $changes }.
body-advice_cut = Le corps demande plus que ce vêtement ne permet. Réglé seulement au maximum possible : { $changes }. Coudre une toile d’essai, ou tracer d’après ses propres mesures.
body-advice_elsewhere = Impossibles sur ce vêtement : { $changes }.
body-advice_build = Pour le faire : { $command }
