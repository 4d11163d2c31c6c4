# Phrases de kit/sewing/operations/casings.py.

casing-first = Remplier { LE($edge) } de { $first } sur l’envers et repasser.
casing-second = Replier encore { $second } et repasser ; les deux replis prennent { $total }.
casing-sew = Piquer à { $row } du pli intérieur, sur toute la longueur.
casing-sew_gap = Piquer à { $row } du pli intérieur, en laissant une ouverture de { $gap } pour enfiler { AU($where) }. Faire un point d’arrêt aux deux bouts de cette ouverture.
casing-why = La coulisse est un peu plus large que ce qui y passe, pour que cela coulisse sans pouvoir vriller.
