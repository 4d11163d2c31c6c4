# Le livret comme page web (téléphone, tablette) et comme livre numérique : boutons, progression, sommaire.

screen-contents = Sommaire
screen-start = Début du livret
screen-access = Chaque image a un texte qui dit ce qu’elle montre. Titres, listes et tableaux sont balisés comme tels, et le sommaire mène à chaque étape.
screen-close = Fermer
screen-enlarge = Agrandir : { $picture }
screen-enlarge_plain = Agrandir l’image
screen-larger = Plus grand
screen-smaller = Plus petit
screen-whole = Image entière
screen-picture = Image
screen-done = Fait
screen-done_step = Fait : { $step }
# Les nombres sont mis par la page elle-même : pas d’accord possible.
screen-progress = Étapes faites : { $done } sur { $total }
screen-again = Décocher toutes les étapes
screen-again_ask = Décocher toutes les étapes ?
screen-again_yes = Tout décocher
screen-again_no = Les garder
screen-one = Une étape à la fois
screen-before = Étape précédente
screen-next = Étape suivante
screen-all = Livret entier
screen-forgets = Ce navigateur ne garde pas les coches : elles durent jusqu’à la fermeture de la page.
screen-fold = Imprimer les feuilles du livret à taille réelle, recto verso, retournement sur le petit côté ; puis plier la pile au milieu et l’agrafer dans le pli.
