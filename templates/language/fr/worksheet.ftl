# La fiche de tracé à la main : chaque étape en chiffres, avec règle, équerre et papier.
# Les points ont des lettres. Chaque longueur est un texte dans un seul système.

worksheet-start = Le patron de base
worksheet-how = Les points se mesurent depuis O, où se croisent deux lignes d’équerre : d’abord le long de la ligne horizontale, puis d’équerre avec elle. Les courbes se relèvent à partir de leur corde, la ligne droite qui joint deux points : porter les distances le long de la corde, les écarts d’équerre avec elle, et tracer une seule courbe régulière par les marques.
worksheet-alike = { $pieces } : toutes pareilles
worksheet-origin = Sur le papier, tracer à la règle une ligne verticale et une ligne horizontale d’équerre avec elle. Elles se croisent en O.
# $line nomme une ligne du tracé qui s’y trouve.
worksheet-upright = La ligne verticale est { LE($line) }.
worksheet-level = La ligne horizontale est { LE($line) }.

# La place d’un point : cases d’un tableau.
worksheet-right = { $length } à droite
worksheet-left = { $length } à gauche
worksheet-up = { $length } vers le haut
worksheet-down = { $length } vers le bas
worksheet-on_upright = sur la verticale
worksheet-on_level = sur l’horizontale
worksheet-at_origin = en O
worksheet-point = { $letter } : { $across }, { $above }.
worksheet-named_point = { $letter }, { $name } : { $across }, { $above }.
worksheet-point_at_origin = { $letter } : en O.
worksheet-named_point_at_origin = { $letter }, { $name } : en O.

# Les lignes. $start et $end sont des lettres de points.
worksheet-rule = { $edge } : tracer à la règle de { $start } à { $end }, { $length }.
worksheet-curve = { $edge } : tracer une courbe de { $start } à { $end }. La corde entre ces points mesure { $chord }.
# De quel côté de la corde, vu de son premier point vers le second.
worksheet-off_left = { $length } à gauche
worksheet-off_right = { $length } à droite
worksheet-off_none = sur la corde
worksheet-offset = { $along } depuis { $start } : { $off }.
worksheet-leaves = En quittant { $start }, viser un point à { $along } le long de la corde, puis { $off }.
worksheet-leaves_straight = Quitter { $start } le long de la corde.
worksheet-arrives = Arriver en { $end } depuis un point à { $along } avant lui, puis { $off }.
worksheet-arrives_straight = Arriver en { $end } le long de la corde.
worksheet-trim = { $edge } : de la ligne déjà tracée, ne garder que la partie de { $start } à { $end }.
# $line est une ligne de la pièce $piece.
worksheet-trace = { $edge } : relever { LE($line) } { DU($piece) }, de { $start } à { $end }.
worksheet-rub_out = Gommer { LE($lines) }.

# Ce qui se marque sur les lignes.
worksheet-notch =
    { $kind ->
        [double] { $edge } : un double cran à { $length } de { $start } le long de la ligne.
       *[single] { $edge } : un cran à { $length } de { $start } le long de la ligne.
    }
worksheet-opening = { $edge } : marquer { LE($mark) } de { $low } à { $high } le long de la ligne depuis { $start }.
worksheet-mark_on_edge = { $edge } : marquer { LE($mark) } à { $length } de { $start } le long de la ligne.
worksheet-allow = Ajouter { $width } de marge à l’extérieur { DU($lines) }.
worksheet-grain = droit-fil
worksheet-strip =
    { $count ->
        [one] { $title } : couper { $count } bande de { $length } de long et { $width } de large.
       *[other] { $title } : couper { $count } bandes de { $length } de long et { $width } de large.
    }

# L’image.
worksheet-title = { $piece }, à tracer à la main
worksheet-alt = { $piece } avec les lettres de ses points, les cordes d’où se relèvent les courbes, et les écarts. { $words }

# Points et lignes des patrons de base du kit, quand la leçon n’a pas de mots à elle.
worksheet-name-back_cap = tête de manche dos
worksheet-name-front_cap = tête de manche devant
worksheet-name-bust_line = ligne de poitrine
worksheet-name-elbow_line = ligne de coude
worksheet-name-hip_line = ligne de hanches
worksheet-name-knee_line = ligne de genou
worksheet-name-sleeve_centre = milieu de la manche
worksheet-name-thigh_line = ligne de cuisse
worksheet-name-upper_arm_line = ligne de bras
worksheet-name-waist_line = ligne de taille
worksheet-name-back_crossing = croisement de la courbe dos
worksheet-name-back_hollow = creux dos
worksheet-name-back_swell = arrondi dos
worksheet-name-back_underarm_point = point de dessous de bras dos
worksheet-name-back_wrist = poignet dos
worksheet-name-bust_point = pointe du sein
worksheet-name-cap_top = sommet de la tête de manche
worksheet-name-centre_hem = bas au milieu
worksheet-name-centre_hip = hanches au milieu
worksheet-name-centre_neck = encolure au milieu
worksheet-name-centre_waist = taille au milieu
worksheet-name-crotch_point = pointe d’enfourchure
worksheet-name-front_crossing = croisement de la courbe devant
worksheet-name-front_hollow = creux devant
worksheet-name-front_swell = arrondi devant
worksheet-name-front_underarm_point = point de dessous de bras devant
worksheet-name-front_wrist = poignet devant
worksheet-name-neck_point = point d’encolure
worksheet-name-shoulder_tip = pointe de l’épaule
worksheet-name-side_hem = bas au côté
worksheet-name-side_hip = hanches au côté
worksheet-name-side_waist = taille au côté
worksheet-name-underarm_point = point de dessous de bras

# Surplus à l’extérieur de la marge, recoupé après l’essayage.
worksheet-allow_extra = Ajouter encore { $width } à l’extérieur { DU($lines) } pour l’essayage.
