# Phrases de kit/sewing/operations/buttons.py.

buttonholes-try = Faire d’abord une boutonnière sur une chute des mêmes épaisseurs et y essayer le bouton.
buttonholes-work = Marquer et faire { LE($places) } à travers toutes les épaisseurs, sur { $length }.
buttonholes-cut = Piquer une épingle en travers de chaque extrémité et ouvrir la fente au découd-vite, du milieu vers les bouts.
buttonholes-why = Une boutonnière est aussi longue que la largeur et l’épaisseur du bouton réunies : pour un bouton plat, environ { $thick } de plus que son diamètre. Sans entoilage, elle s’étire.

buttons-find = Fermer le vêtement, piquer une épingle dans chaque boutonnière près de son extrémité et marquer l’endroit où elle ressort.
buttons-sew = 
    { $count ->
        [one] Coudre { $count } bouton de { $size } de diamètre, à fil double, au repère { DU($places) }.
       *[other] Coudre { $count } boutons de { $size } de diamètre, à fil double, aux repères { DU($places) }.
    }
buttons-one = Coudre un bouton de { $size } de diamètre, à fil double, au repère { DU($places) }.
buttons-shank = Glisser une épingle sous le fil pendant la couture, la retirer, puis enrouler le fil sous le bouton : cela fait une courte tige.
buttons-why = La tige laisse la place à l’épaisseur que l’on boutonne par-dessus.
