# Phrases de kit/sewing/operations/channels.py.

channel-mark = Sur l’endroit, tracer à la craie le long { DU($edge) } une ligne à { $distance } du bord, puis une seconde { $depth } plus bas. Épingler les épaisseurs ensemble.
channel-first = Piquer sur la ligne du haut, à travers toutes les épaisseurs.
channel-second = Piquer sur la ligne du bas, à { $total } du bord, elle aussi à travers toutes les épaisseurs.
channel-second_gap = Piquer sur la ligne du bas, à { $total } du bord, elle aussi à travers toutes les épaisseurs, en laissant une ouverture de { $gap } pour enfiler { AU($where) }. Faire un point d’arrêt aux deux bouts de cette ouverture.
channel-why = Les deux piqûres tiennent les épaisseurs ensemble : ce qui y passe reste entre elles, sans remonter vers le bord ni descendre dans la doublure.
