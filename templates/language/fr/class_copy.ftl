# La copie de classe : exercices avec leurs buts, et les pages de l’élève.

class_copy-edge = { $piece } : { $edge }

class_copy-grows = { $what } – à allonger de { $by }.
class_copy-grows_met = { $what } – { $change } de plus, comme demandé.
class_copy-grows_none = { $what } – pas encore de longueur en plus ; il manque { $missing }.
class_copy-grows_short = { $what } – { $change } de plus pour l’instant ; il manque { $missing }.
class_copy-grows_over = { $what } – { $change } de plus ; c’est { $over } de trop.
class_copy-grows_wrong = { $what } – { $change } de moins maintenant ; il faut { $by } de plus.

class_copy-shrinks = { $what } – à raccourcir de { $by }.
class_copy-shrinks_met = { $what } – { $change } de moins, comme demandé.
class_copy-shrinks_none = { $what } – pas encore de longueur en moins ; il manque { $missing }.
class_copy-shrinks_short = { $what } – { $change } de moins pour l’instant ; il manque { $missing }.
class_copy-shrinks_over = { $what } – { $change } de moins ; c’est { $over } de trop.
class_copy-shrinks_wrong = { $what } – { $change } de plus maintenant ; il faut { $by } de moins.

class_copy-keeps = { $what } – à garder tel quel.
class_copy-keeps_met = { $what } – comme avant.
class_copy-keeps_longer = { $what } – { $by } de plus ; cela devait rester comme avant.
class_copy-keeps_shorter = { $what } – { $by } de moins ; cela devait rester comme avant.
class_copy-keeps_moved = { $what } – déplacement de { $by } ; cela devait rester en place.

class_copy-is_length = { $what } – à amener à { $length }.
class_copy-at_least = { $what } – à amener à { $length } ou plus.
class_copy-at_most = { $what } – à amener à { $length } ou moins.
class_copy-length_met = { $what } – { $length }, comme demandé.
class_copy-too_short = { $what } – { $length } ; il manque { $missing }.
class_copy-too_long = { $what } – { $length } ; c’est { $over } de trop.

# $way dit comment un point se déplace, ou deux façons réunies.
class_copy-moves = { $what } – à déplacer de { $way }.
class_copy-moves_met = { $what } – déplacement de { $way }, comme demandé.
class_copy-moves_short = { $what } – encore à déplacer de { $way }.
class_copy-up = { $by } vers le haut
class_copy-down = { $by } vers le bas
class_copy-out = { $by } vers l’extérieur
class_copy-in = { $by } vers l’intérieur

class_copy-sound = La vérification ne trouve rien à redire.
class_copy-sound_met = La vérification ne trouve rien à redire.
# $first est le premier constat, une phrase.
class_copy-sound_not =
    { $count ->
        [one] La vérification trouve un point à revoir. { $first }
       *[other] La vérification trouve { $count } points à revoir. { $first }
    }

# L’exercice à l’écran.
class_copy-exercise = Exercice : { $title }
class_copy-done = Bravo – « { $title } » est résolu.
class_copy-start = Repartir des valeurs de la leçon
class_copy-start_tooltip = Rétablit toutes les valeurs ; les buts se mesurent à partir du tracé de la leçon
class_copy-hint =
    { $left ->
        [one] Montrer un indice (encore { $left })
       *[other] Montrer un indice (encore { $left })
    }
class_copy-no_hint = Plus d’indices
class_copy-hint_tooltip = Les indices viennent un par un
class_copy-goal_met = atteint
class_copy-goal_open = pas encore
class_copy-answer = Montrer la réponse
class_copy-answer_line = { $name } : { $value }
class_copy-waiting = Ces valeurs ne permettent pas encore de tracer.

# La page de la copie de classe.
class_copy-title = { $title } – copie de classe
class_copy-welcome = Déplacer les curseurs : l’image, les nombres et la vérification suivent. Saisir ses mesures, essayer les exercices et imprimer le patron à sa taille. Chacun garde ses valeurs pour soi.
class_copy-values = Valeurs
class_copy-body = Mes propres mesures
class_copy-exercises = Exercices
class_copy-print = Mon patron

# Les pages de l’élève.
class_copy-print_mine = Imprimer à ma taille
class_copy-print_tooltip = Prépare le livret et les pages du patron à ma taille et avec mes valeurs
class_copy-paper = Papier
class_copy-booklet_too = Avec le livret
class_copy-cancel = Annuler
class_copy-print_run = Tracé de la leçon à ma taille…
class_copy-print_prove = Vérification du patron…
class_copy-print_booklet = Mise en page du livret…
class_copy-print_pages = Disposition des pages du patron…
class_copy-print_cancelled = Annulé. Ce qui a été fait avant est toujours là.
class_copy-print_failed = Cela n’a pas marché : { $why }
class_copy-print_kept = Les fichiers ci-dessous datent d’avant.
class_copy-print_lost = Arrêt sans explication. Réessayer.
# $who est la taille ou le nom du corps, $when une heure comme 14:05.
class_copy-print_done = Fait pour { $who } à { $when }.
class_copy-print_unsound = La vérification a trouvé quelque chose à corriger : ne pas encore couper d’après ces pages.
class_copy-file_booklet = Livret
class_copy-file_pages = Pages du patron, { $paper }

# L’entrée d’un cours servi à une salle.
class_copy-room = Cours de patron
class_copy-code = Code du cours
class_copy-code_enter = Entrer
class_copy-code_ask = Taper le code que le professeur a écrit au tableau.
class_copy-code_wrong = Ce n’est pas le code de ce cours. Regarder encore : il ne contient ni lettre o, i ou l, ni chiffre 0 ou 1.
class_copy-room_full =
    { $count ->
        [one] Il y a de la place pour { $count } élève, et quelqu’un est déjà là. Réessayer quand la place sera libre.
       *[other] Il y a de la place pour { $count } élèves, et ils sont tous là. Réessayer quand quelqu’un sera parti.
    }

# ---- refus pour l’élève ----
class_copy-lesson_gone = la leçon « { $path } » n’est pas là.
class_copy-lesson_gone_do = Laisser à côté de la copie de classe le dossier fourni avec elle.
class_copy-no_lesson = ce n’est pas une leçon que l’on puisse montrer.
class_copy-no_lesson_do = Refaire la copie de classe.
