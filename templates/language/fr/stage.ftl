# La scène (kit/live/stage.py) : réglages, dessin et étapes au même endroit.
stage-title = Scène de { $lesson }
stage-views = Les vues de la leçon
stage-panel = Réglages
stage-canvas = Déplacer
stage-player = Étape par étape
stage-large = Montrer en grand
stage-leave = Quitter
stage-help = 1, 2 et 3 changent de vue, Échap quitte.
# L’étape affichée. $step : « Étape de tracé 2 » ; $title : son titre.
stage-at = { $step } : { $title }
