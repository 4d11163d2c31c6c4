# Une leçon montrée en grand (kit/live/large.py) : devant une classe ou une caméra. Lu de loin, donc court.
large-open = Montrer en grand
large-leave = Quitter
large-back = Retour
large-next = Suivant
large-look = Fond
large-sliders = Curseurs
large-help = Page précédente et Page suivante parcourent les étapes, B change le fond, H cache les curseurs, Échap quitte.
large-look_light = Clair
large-look_dark = Sombre
large-look_green = Vert
large-look_blue = Bleu
