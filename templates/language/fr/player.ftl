# Le défilement des étapes devant une caméra.

player-title = Étapes de « { $lesson } »
player-help = Flèches droite et gauche : suivant et précédent. Espace : lecture ou pause. Origine et Fin : première et dernière. F : pleine fenêtre.
player-step_draft = Étape de tracé { $number }
player-step_sew = Étape de couture { $number }
player-part = Image { $number } sur { $count }
player-place = { $number } sur { $count }
player-first = Première étape
player-back = Précédent
player-play = Lecture
player-pause = Pause
player-next = Suivant
player-last = Dernière étape
player-again = Redessiner
player-speed = Vitesse
player-ground = Fond
player-ground_paper = Papier
player-ground_white = Blanc uni
player-ground_green = Vert uni
player-ground_blue = Bleu uni
player-show_words = Textes
player-full = Pleine fenêtre
player-leave = Quitter la pleine fenêtre
player-silent = Pas de réponse. Attendre un instant, ou redémarrer le noyau et exécuter toutes les cellules.
player-empty = Cette leçon n’a pas encore d’étapes.
player-no_picture = Cette étape n’a pas d’image.
player-clock = Chronomètre
player-clock_start = Lancer le chronomètre
player-clock_stop = Arrêter le chronomètre
player-clock_help = Le lancer en même temps que la caméra. Une étape montrée deux secondes est notée.
player-marks = Repères dans le film
player-marks_none = Aucune étape n’est encore notée.
player-mark_step = Étape
player-mark_time = Moment
player-mark_of = Moment de « { $step } »
player-chapters = Chapitres
player-copy = Copier
player-copied = Copié.
player-chapters_in = Gardés dans { $file }.
player-export = Images et films
player-export_kind = Type
player-export_mp4 = Film (MP4)
player-export_gif = Image animée (GIF)
player-export_png = Image, fond transparent (PNG)
player-export_svg = Dessin (SVG)
player-export_which = Étapes
player-export_this = Cette étape
player-export_all = Toutes les étapes
player-export_size = Taille
player-export_seconds = Secondes par image
player-export_go = Exporter
player-export_cancel = Annuler
player-export_doing = { $percent } % faits : { $file }
player-export_done =
    { $count ->
        [one] { $count } fichier est dans le dossier { $folder }.
       *[other] { $count } fichiers sont dans le dossier { $folder }.
    }
player-export_cancelled =
    { $count ->
        [0] Annulé ; aucun fichier n’a été écrit.
        [one] Annulé ; { $count } fichier terminé est dans le dossier { $folder }.
       *[other] Annulé ; { $count } fichiers terminés sont dans le dossier { $folder }.
    }
player-film_missing = Le film ne peut pas être écrit : ce qui écrit les films MP4 n’est pas installé.
# $command: what to type, never translated.
player-film_install = Choisir une image animée (GIF) ou des images, ou l’installer : taper dans une cellule { $command }, l’exécuter et exporter de nouveau.
player-clock_brief = Compter les étapes montrées brièvement
player-clock_brief_help = Une étape compte aussitôt, si peu qu’elle soit montrée.
player-export_film = Sous-titres et liste des plans (VTT, HTML)
player-export_sentence = Phrase sous l’image
# La liste des plans d’un film : ce qui est montré et ce qu’il faut préparer.
player-shots = Liste des plans : { $lesson }
player-shots_step = Plan
player-shots_picture = Image
player-shots_ready = À préparer
player-shots_pieces = Pièces
player-shots_pencil = crayon et gomme
player-shots_ruler = longue règle
player-shots_set_square = équerre
player-shots_curve = perroquet ou règle courbe
player-shots_compasses = compas
player-shots_lasts = Les mots durent environ { $seconds } s.
player-shots_short = Montrée { $shown } s, alors que les mots durent environ { $seconds } s : garder l’étape plus longtemps, sinon les sous-titres passent trop vite pour être lus.
player-film_untimed = Les chapitres et les sous-titres sont écrits dès qu’une étape a un repère.
