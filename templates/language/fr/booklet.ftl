# Le livret : titres, tableaux et textes fixes.

booklet-title = { $title } – livret d’instructions
booklet-kind = Livret d’instructions
booklet-cover = Couverture
booklet-contents = Dans ce livret
booklet-about = À propos de ce modèle
booklet-begin = Avant de commencer
booklet-take_care = Précautions
booklet-how_to_read = Comment lire les images
booklet-measure = Prendre les mesures
booklet-sizes = Choisir sa taille
booklet-finished = Mesures du vêtement fini
booklet-cloth_and_notions = Fournitures
booklet-lays = Plans de coupe
booklet-pieces = Pièces
booklet-printing = Imprimer et assembler le patron
booklet-drafting = Tracé
booklet-sewing = Couture
booklet-to_finish = Pour finir
booklet-worksheet = Fiche de tracé à la main
booklet-fitting = Ce que les essayages ont changé
booklet-variations = Variantes
booklet-terms = Vocabulaire
booklet-index = Où sert chaque mesure
booklet-left_out = Omis

# Dans l’index.
booklet-see_step = étape { $number }
# Dans une phrase de la leçon, qui met elle-même l’article : « à l’étape 9 ».
booklet-in_step = étape { $number }
booklet-comma_page = , page{"\u00A0"}
booklet-stage = { $number } sur { $count }
booklet-rest_pictured = le reste comme montré avant
booklet-video_at = Vidéo à { $clock }
booklet-video = Le film qui accompagne ce livret : { $address }

## Couverture

booklet-drafted_for = Tracé pour
booklet-lengths_in = Longueurs en
booklet-cm_first = centimètres, puis pouces
booklet-inch_first = pouces, puis centimètres
booklet-cm_only = centimètres
booklet-inch_only = pouces
booklet-edition = Édition
booklet-for_whom = Pour qui
booklet-front_view = Devant
booklet-proof_failed = Vérification non réussie
booklet-do_not_cut = Ne pas couper d’après ce patron. La vérification a trouvé :
booklet-more_findings =
    { $count ->
        [one] Et encore un constat : voir findings.json.
       *[other] Et encore { $count } constats : voir findings.json.
    }

## Avant de commencer

booklet-how_to_use = Lire toute une étape avant de tracer ou de couper. Tracer d’abord sur papier, essayer le vêtement dans un tissu bon marché, puis seulement couper le bon.
booklet-how_to_use_pages = Le patron peut être tracé pas à pas ; on peut aussi imprimer les pages du patron et commencer par la couture.
booklet-reading_inks = Les traits épais, à l’encre de couleur, sont nouveaux à cette étape ; les traits fins et gris étaient déjà là ; les traits pâles en tirets sont supprimés.
booklet-reading_units = Les longueurs sont données dans les deux systèmes. Travailler dans un seul du début à la fin.
# The system the author thinks in, where the booklet is read in the other.
booklet-reading_own_cm = Ce patron est tracé en centimètres ; les pouces sont convertis et arrondis aux traits d’une règle.
booklet-reading_own_inch = Ce patron est tracé en pouces ; les centimètres sont convertis et arrondis aux traits d’une règle.
booklet-reading_cloths = Le tissu est dessiné avec une teinte et un motif, selon la légende ci-dessous.
booklet-reading_ticks = Cocher une étape une fois faite ; cet appareil s’en souvient.

## Mesures

booklet-measure_intro = Mesurer sur les sous-vêtements ou un haut fin. Se tenir comme d’habitude, respirer normalement et, si possible, laisser quelqu’un d’autre tenir le mètre ruban : près du corps, jamais serré.
booklet-measure_waist = Nouer d’abord un ruban étroit autour de la taille ; plusieurs mesures y commencent ou y finissent.

## Tailles et mesures

booklet-size = Taille
booklet-body_measurements = Mesures du corps
booklet-cm_above = Centimètres au-dessus, pouces au-dessous.
booklet-inch_above = Pouces au-dessus, centimètres au-dessous.
booklet-cm_alone = Tout en centimètres.
booklet-inch_alone = Tout en pouces.
# { $order } est l’une des deux phrases précédentes.
booklet-drafted_for_size = { $order } Ce livret est tracé pour la taille { $size }.
booklet-drafted_for_body = { $order } Ce livret est tracé pour les mesures de cette personne, données ci-dessous : { $name }.
booklet-not_in_sizes = { $order } Avec ces choix, le tracé est impossible en { $sizes }.
booklet-estimated = estimation
booklet-measured = mesure prise
booklet-estimated_value = { $value }, estimation
booklet-estimated_note = Estimations d’après la taille la plus proche, non mesurées : { $names }. Les mesurer avant de couper.
booklet-not_in_figure = (N’est pas dessiné sur la figure.)
booklet-measurements_of = Mesures : { $name }
booklet-measurement = Mesure
booklet-value = Valeur
booklet-garment = Vêtement
booklet-finished_value = Fini
booklet-back_view = Dos
booklet-on_body = Sur le corps pour lequel il est tracé ({ $body }), devant et dos à la même échelle, avec les mesures du vêtement fini.
booklet-on_body_to_scale = Porté, devant et dos à la même échelle.
booklet-laid_flat_front = À plat, vu de face. Une mesure de tour continue de l’autre côté.
booklet-laid_flat_back = À plat, vu de dos. Une mesure de tour continue de l’autre côté.
booklet-ease = Aisance
booklet-goes_over = Sur
booklet-body_value = Corps
booklet-ease_value = Aisance
booklet-fit_close = Le vêtement se porte près du corps.
booklet-fit_easy = Le vêtement se porte avec aisance.
booklet-fit_loose = Le vêtement se porte ample.
booklet-ease_note = L’aisance est ce que le vêtement a de plus que le corps qu’il recouvre : de quoi bouger, et l’allure du modèle.
booklet-choices = Choix de ce tracé
booklet-choice = Mesure
booklet-here = Ici
booklet-range = Plage
booklet-why = Pourquoi
booklet-from_to = { $least } à { $most }

## Tissu, mercerie, coupe

booklet-fibre = Fibre
booklet-weight = Poids
booklet-drape = Tombé
booklet-avoid = À éviter
booklet-prewash = Avant de couper
booklet-cloth = Tissu
booklet-width = Laize
booklet-to_buy = Métrage à acheter
booklet-laid = Disposition
booklet-laid_lengthwise = plié dans la longueur
booklet-laid_flat = déplié à plat
booklet-laid_part = plié en partie
booklet-laid_either = { $folded } ou { $flat }
booklet-cloth_to_buy = Tissu à acheter
booklet-cloth_main = Tissu principal
booklet-cloth_lining = Doublure
booklet-cloth_interfacing = Entoilage
booklet-too_narrow = trop étroit
booklet-lengths_by_size = Tissu à acheter pour chaque taille
booklet-cloth_wide = { $cloth }, { $width }
booklet-notions = Mercerie
booklet-tools = Matériel
booklet-lays_intro = Tracer à la craie autour des pièces et contrôler chaque droit-fil par rapport à la lisière avant de couper. Ce qui se coupe dans le tissu déplié vient en dernier.

## Pièces

booklet-no = N°
booklet-piece = Pièce
booklet-to_cut = À couper
booklet-cut_list = Liste de coupe
booklet-strip = Bande
booklet-strips = Bandes
booklet-strip_size = Longueur × largeur à la coupe
booklet-of_main = tissu principal
booklet-of_lining = doublure
booklet-of_interfacing = entoilage
booklet-cut = Couper { $count } × { $cloth }
booklet-cut_interfaced = Couper { $count } × { $cloth } et { $interfacing } × entoilage
booklet-cut_fold = Couper { $count } × { $cloth }, { LE($edge) } au pli
booklet-cut_fold_interfaced = Couper { $count } × { $cloth } et { $interfacing } × entoilage, { LE($edge) } au pli
booklet-cut_pair = Couper { $count } × { $cloth }, en miroir
booklet-cut_pair_interfaced = Couper { $count } × { $cloth } et { $interfacing } × entoilage, en miroir
booklet-cut_pairs = Couper { $count } × { $cloth }, par paires en miroir
booklet-cut_pairs_interfaced = Couper { $count } × { $cloth } et { $interfacing } × entoilage, par paires en miroir
booklet-cut_face_up =
    { $count ->
        [one] Couper { $count } × { $cloth }, en simple épaisseur, endroit dessus
       *[other] Couper { $count } × { $cloth }, chaque fois en simple épaisseur, endroit dessus
    }
booklet-cut_face_up_interfaced =
    { $count ->
        [one] Couper { $count } × { $cloth } et { $interfacing } × entoilage, en simple épaisseur, endroit dessus
       *[other] Couper { $count } × { $cloth } et { $interfacing } × entoilage, chaque fois en simple épaisseur, endroit dessus
    }
booklet-cut_continuous = Couper { $count } × { $cloth }, l’une après l’autre dans un biais continu
booklet-cut_joined = Couper { $count } × { $cloth }, { $lengths } longueurs par bande
booklet-cut_in_two = { $said }, l’entoilage en deux longueurs qui se chevauchent de { $overlap }
booklet-length_by_width = { $length } × { $width }
booklet-wide = { $width } de large
booklet-without_paper = Pièces sans papier
booklet-without_paper_note = Ces pièces sont des rectangles : les tracer à la craie directement sur le tissu, la longueur en droit-fil, et vérifier que les deux diagonales sont égales. Les marges sont comprises ; toutes les distances partent du bord coupé.
booklet-without_paper_marks = Bords et repères
booklet-strips_note = Les bandes n’ont pas de pièce de patron : les tracer à la craie directement sur le tissu, en droit-fil. Les marges sont comprises.
booklet-strips_note_mixed = Les bandes n’ont pas de pièce de patron : les tracer à la craie directement sur le tissu, dans le sens indiqué pour chacune. Les marges sont comprises.
booklet-strip_crosswise = en travers du tissu
booklet-strip_bias = en plein biais
booklet-strip_square = en un seul biais continu, dans un carré de { $square } cousu en tube avec des coutures de { $seams }
booklet-strip_pieced_straight =
    { $joins ->
        [one] bande assemblée par { $joins } couture droite, { $seams } de marge de chaque côté
       *[other] bande assemblée par { $joins } coutures droites, { $seams } de marge de chaque côté
    }
booklet-strip_pieced_straight_each =
    { $joins ->
        [one] chaque bande assemblée par { $joins } couture droite, { $seams } de marge de chaque côté
       *[other] chaque bande assemblée par { $joins } coutures droites, { $seams } de marge de chaque côté
    }
booklet-strip_pieced_diagonal =
    { $joins ->
        [one] bande assemblée par { $joins } couture en diagonale, { $seams } de marge de chaque côté
       *[other] bande assemblée par { $joins } coutures en diagonale, { $seams } de marge de chaque côté
    }
booklet-strip_pieced_diagonal_each =
    { $joins ->
        [one] chaque bande assemblée par { $joins } couture en diagonale, { $seams } de marge de chaque côté
       *[other] chaque bande assemblée par { $joins } coutures en diagonale, { $seams } de marge de chaque côté
    }

## Impression

booklet-printing_alone = Imprimer seule la première page du patron, à 100 % ou « taille réelle ». Désactiver « ajuster à la page » et « réduire ».
booklet-printing_squares = Mesurer ses carrés de contrôle : l’un a 100 mm (10 cm) de côté, l’autre 4 po. Si l’un est faux, trouver le réglage d’échelle de l’imprimante avant de continuer.
booklet-printing_rest = Imprimer le reste. Le plan de la première page montre la place de chaque page : par rangée et par colonne.
booklet-printing_join = Couper chaque page le long de sa ligne de coupe, sur deux côtés seulement, la poser sur sa voisine de façon que les repères d’assemblage se rejoignent, et assembler avec du ruban adhésif.
booklet-printing_check = Contrôler une grande mesure du patron assemblé d’après ce livret avant de couper dans le tissu.

## Fiche

booklet-along = Depuis { $start }
booklet-off = Écart de la corde

## Essayages

booklet-fitting_intro = Chaque changement a été fait après un essayage. La ligne en tirets est le tracé d’avant, la ligne épaisse le tracé actuel.
booklet-fitting_on = { $title }, { $date }

## Index et droits

booklet-index_intro = Mesures par ordre alphabétique, avec les étapes où elles servent.
booklet-licence = Licence
booklet-made_with = Tracé, vérifié et mis en page à partir d’une seule source. Toutes les images et tous les nombres suivent le tracé.
booklet-place = { $across }, { $above }
booklet-named_place = { $name } : { $across }, { $above }
booklet-named_place_at_origin = { $name } : en O
booklet-how_to_use_plain = Lire une étape en entier avant de tracer ou de couper. Tracer d’abord sur papier, coudre une fois dans un tissu bon marché, et seulement ensuite couper le bon.

# Renvois entre un essayage dans la couture et le chapitre des essayages ; sur papier la page suit.
booklet-see_fitting = Ce que cet essayage a changé
booklet-tried_on_in = Essayé à l’étape { $number }
booklet-stretch = Élasticité
booklet-stretch_across = Plier le tissu en travers, loin du bord, et poser { $relaxed } du pli, au repos, sur l’échelle ci-dessous. Étiré doucement, il doit atteindre { $stretched } ({ $share }) et revenir.
booklet-stretch_along = Dans le droit-fil, le tissu s’étire de { $share }.
booklet-stretch_sewing = Coutures extensibles
booklet-stretch_seams = Coudre avec une aiguille à pointe bille, qui écarte les mailles, et un zigzag étroit, un point extensible ou un surjet ; les ourlets à l’aiguille double ou au zigzag. Une couture droite casse quand on l’étire. Maintenir les épaules par un ruban et ne pas tirer le tissu en cousant.
booklet-stretch_gauge = Échelle d’élasticité
booklet-stretch_relaxed = au repos, { $length }
booklet-stretch_reach = au moins { $length }
booklet-stretch_here = tenir ici
booklet-stretch_gauge_note = Elle est juste quelle que soit la taille d’impression : seul compte le rapport des deux longueurs.
booklet-stretch_gauge_alt = Une barre à trois repères : tenir le pli au premier ; au repos il atteint le deuxième et, étiré, il doit arriver au troisième.
booklet-needle = Aiguille et point
booklet-needle_for = Aiguille { $needle }, point de { $stitch } mm. Essayer les deux sur deux épaisseurs d’une chute.
booklet-fine_seams = Un tissu aussi fin demande des coutures étroites, à { $near } ou { $far } du bord ou du pli.

booklet-marking = Couper et marquer
booklet-allowances_line = Les marges de couture sont comprises dans les pièces : { $seams }.
booklet-allowances_line_hems = Les marges sont comprises dans les pièces : coutures { $seams } ; ourlets { $hems }.
booklet-marking_cut_out = Couper chaque pièce sur sa ligne extérieure, les ciseaux à plat sur la table. Laisser le papier jusqu’à ce que tout soit marqué.
booklet-marking_notch = Entailler chaque cran sur { $deep } au plus, perpendiculairement au bord ; un cran double, ce sont deux coups de ciseaux.
booklet-marking_mark = Reporter tous les repères sur l’envers à la craie ou par un fil à travers les deux épaisseurs ; essayer d’abord la craie sur une chute.
booklet-marking_interface = Couper l’entoilage d’après les mêmes pièces et le poser avec elles, pour que rien ne soit thermocollé sur la mauvaise pièce.
booklet-marking_table = Ce qui est marqué sur chaque pièce
booklet-notches = Crans
booklet-marks = Repères
booklet-marks_on_one = { $half } : { $marks }
booklet-interfacing = Entoilage
booklet-notches_on =
    { $kind ->
        [double] { $edge } : { $count } { $count ->
            [one] double
           *[other] doubles
        }
       *[single] { $edge } : { $count }
    }
booklet-is_interfacing = est l’entoilage
booklet-interfaced_layers =
    { $count ->
        [one] 1 épaisseur
       *[other] { $count } épaisseurs
    }
booklet-time_in_all = La couture prend { $time } en tout, sans la coupe ni les essayages.

booklet-care = Entretien
booklet-care_wash = Laver et repasser comme le tissu avant la coupe ; les indications du magasin ou du rouleau priment.
booklet-care_shut = Fermer toutes les attaches avant le lavage.
booklet-care_fused = Là où il y a de l’entoilage thermocollant, repasser à travers une pattemouille, sans dépasser la chaleur qu’il supporte.
booklet-care_stretch = Faire sécher à plat, pour que le poids n’allonge pas l’ouvrage.
booklet-choose_bust_girth = Choisir la taille d’après le tour de poitrine : c’est la mesure la plus difficile à modifier une fois le tissu coupé.
booklet-choose_waist_girth = Choisir la taille d’après le tour de taille.
booklet-choose_hip_girth = Choisir la taille d’après le tour de hanches.
booklet-choose_between = Entre deux tailles, comparer les mesures finies sous le tableau : la plus grande donne plus d’aisance, la plus petite est plus près du corps.
booklet-live_at = Cette leçon existe aussi en ligne. Les étapes, les images et les longueurs y suivent les mesures de chacun, qui restent sur son appareil.
booklet-live_at_sized = Cette leçon existe aussi en ligne. Les étapes, les images et les longueurs y suivent les mesures de chacun, qui restent sur son appareil ; elle s’ouvre à la taille { $size }, celle des dessins de ce livret.
booklet-live_at_plain = Cette leçon existe aussi en ligne. Les images et les longueurs y suivent les valeurs choisies.
booklet-live_code = Code qui mène à { $address }
booklet-choose_over_both = Si le tour de taille ou le tour de hanches correspond à une autre taille, garder la taille du tour de poitrine jusqu’au dessous de bras, puis rejoindre l’autre le long de la couture de côté, par une courbe douce entre les deux niveaux. Faire de même sur chaque pièce qui s’y assemble.
booklet-choose_over_waist_girth = Si le tour de taille correspond à une autre taille, garder la taille du tour de poitrine jusqu’au dessous de bras, puis rejoindre l’autre le long de la couture de côté, par une courbe douce entre les deux niveaux. Faire de même sur chaque pièce qui s’y assemble.
booklet-choose_over_hip_girth = Si le tour de hanches correspond à une autre taille, rejoindre celle-ci le long de la couture de côté, par une courbe douce entre les deux niveaux. Faire de même sur chaque pièce qui s’y assemble.

booklet-fit_changes = Retouches sur le papier
booklet-fit_changes_intro = Retoucher le papier avant de couper le tissu. La différence entre sa propre mesure et celle de la taille choisie dit de combien. Retoucher parementures, doublures et entoilages comme la pièce sur laquelle ils vont ; poser ensuite l’un sur l’autre les bords cousus ensemble et vérifier qu’ils ont la même longueur. Coudre d’abord une toile. En tirets : avant ; en gras : après ; la flèche montre l’endroit qui bouge.
