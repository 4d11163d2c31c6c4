# Une classe dans une salle (kit/room). Ce qui est entre accolades dans room_page et room_board est mis par la page.

# ---- la porte ----
room-code_often = Trop de codes erronés depuis cet appareil. Attendez une minute, puis regardez de nouveau le code.
room-device_full =
    { $count ->
        [one] Quelqu’un est déjà entré depuis cet appareil. Continuez dans la fenêtre ouverte.
       *[other] { $count } élèves sont déjà entrés depuis cet appareil. Continuez dans une fenêtre ouverte.
    }
room-teacher_ask = Voici le tableau du professeur. Saisissez le code du professeur ; il figure là où la classe a été ouverte.
room-teacher_wrong = Ce n’est pas le code du professeur. Il diffère du code de la classe.

# ---- la page de l'élève ----
room_page-class = En classe
room_page-name = Prénom (si vous voulez)
room_page-hand_up = Lever la main
room_page-hand_down = Baisser la main
room_page-may_look = Mon professeur peut regarder mon patron et en montrer le contour à la classe, sans mon nom
room_page-private_own = Vos valeurs et vos mesures restent sur cet appareil. Votre professeur voit à quelle étape vous êtes, ce que la vérification a trouvé et quels exercices sont résolus ; rien de plus, sauf si vous le permettez ou faites préparer des pages.
room_page-private_room = La machine de votre professeur calcule la leçon pour cette page. Elle ne garde ni vos valeurs ni vos mesures. Votre professeur voit à quelle étape vous êtes, ce que la vérification a trouvé et quels exercices sont résolus.
room_page-follow_on = Vous suivez votre professeur.
room_page-follow_off = Votre professeur guide la classe d’étape en étape.
room_page-let_go = Continuer seul
room_page-go_along = Suivre
room_page-sent_step = Votre professeur a envoyé tout le monde à cette étape.
room_page-sent_values = Votre professeur a réglé des valeurs pour tout le monde.
room_page-sent_preset = Votre professeur a réglé « { $title } » pour tout le monde.
room_page-take_back = Revenir aux miennes
room_page-keep = Garder
room_page-queue = En attente. Avant vous : { $place }
room_page-booklet_follows = Le livret suit.
room_page-refused_often = Vous venez de faire préparer des pages plusieurs fois. Attendez quelques minutes.
room_page-refused_disk = La machine de votre professeur n’a plus de place pour des pages. Prévenez votre professeur.
room_page-refused_large = Ces pages dépassent la taille permise. Vérifiez vos valeurs.
room_page-lost = Pas de connexion avec la classe. Nouvel essai…
room_page-gone = Votre place dans cette classe est de nouveau libre. Rechargez la page pour revenir.
room_page-busy = La classe a beaucoup à faire en ce moment. Votre tracé arrive.
room_page-too_large = C’est plus que ce qu’on peut envoyer en une fois.

# ---- le tableau ----
room_board-board = Tableau du professeur
room_board-join = Entrer dans la classe
room_board-code = Code de la classe
room_board-large = Afficher en grand
room_board-close = Fermer
room_board-name = Nom
room_board-people = Qui est là
room_board-count = { $count } sur { $number }
room_board-nobody = Personne encore.
room_board-student = Place { $number }
room_board-away = absent
room_board-step = Étape
room_board-place = { $number } sur { $count }
room_board-exercises = Exercices
room_board-solved = résolu
room_board-open = pas encore
room_board-found = Vérification
room_board-found_none = rien à signaler
room_board-found_errors = à corriger : { $count }
room_board-found_warnings = à regarder : { $count }
room_board-hand = Main
room_board-hand_seen = Main levée – vue
room_board-look = Regarder
room_board-look_not = ne l’a pas permis
room_board-looked_none = Le patron n’a pas été montré : la page est fermée, ou ce n’est plus permis.
room_board-free = Libérer cette place
room_board-worked_here = calculé par cette machine
room_board-stage = Guider la classe
room_board-back = Retour
room_board-on = Suivant
room_board-play = Lire
room_board-pause = Pause
room_board-send_step = Envoyer tout le monde à cette étape
room_board-follow = Suivez-moi
room_board-unfollow = Les laisser
room_board-value = Valeur
room_board-send_value = Envoyer cette valeur à tous
room_board-preset = Préréglage
room_board-send_preset = Envoyer ce préréglage à tous
room_board-sent = Envoyé à { $count }.
room_board-over = Tous les patrons superposés
room_board-over_none = Personne ne permet encore de montrer son patron.
room_board-over_count = Patrons montrés : { $count }
room_board-lost = Pas de connexion avec la classe. Nouvel essai…
room_board-no_picture = Cette étape n’a pas d’image.
