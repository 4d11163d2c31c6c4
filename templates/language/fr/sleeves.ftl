# Phrases de kit/sewing/operations/sleeves.py.

set_in_sleeve-place = Mettre le vêtement sur l’envers et { LE($sleeve) } sur l’endroit, puis glisser la manche dans l’emmanchure, endroit contre endroit. Vérifier que gauche et droite ne sont pas interverties.
set_in_sleeve-pin = Épingler la tête de manche sur { LE($edge) }, coutures de dessous de manche et de côté ensemble et sommet de la tête à la couture d’épaule, du côté de la manche.
set_in_sleeve-pin_notched = Épingler la tête de manche sur { LE($edge) }, coutures de dessous de manche et de côté ensemble, sommet de la tête à la couture d’épaule et cran sur cran, du côté de la manche.
set_in_sleeve-ease = Tirer le fil d’embu jusqu’à ce que la tête s’ajuste : { $ease } d’embu se répartissent sur la partie haute, rien sous le bras. Aucune fronce ne doit se voir sur la ligne de couture.
set_in_sleeve-sew = Piquer à { $allowance } du bord, la manche dessus, en commençant sous le bras, et piquer deux fois la partie sous le bras.
set_in_sleeve-trim = Recouper de moitié les deux marges de la partie sous le bras.
set_in_sleeve-finish = { START($finish) } les bords bruts ensemble.
set_in_sleeve-press = Repasser les marges de la tête vers la manche ; ne pas aplatir la couture sur l’endroit.
set_in_sleeve-press_open = Ouvrir la couture au fer sur la tête de manche, sur un coussin de tailleur ; là où la partie ouverte finit, cranter les deux marges pour qu’elles restent ensemble et debout sous le bras.
set_in_sleeve-press_garment = Repasser les marges de la tête vers le vêtement ; ne pas aplatir la couture sur l’endroit.
set_in_sleeve-finish_apart = { START($finish) } chaque bord brut séparément.
set_in_sleeve-why = La tête est plus longue que l’emmanchure, car elle doit s’arrondir sur l’épaule. Resserré d’abord à longs points, l’embu ne peut pas glisser d’un côté.
