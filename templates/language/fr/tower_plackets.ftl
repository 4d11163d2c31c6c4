# Phrases de kit/sewing/operations/tower_plackets.py.

tower_placket-mark = Tracer { LE($slit) } sur l’envers jusqu’à sa fin, sur { $long }. Ne pas couper encore. Replier au fer { $allowance } { AU($around) }, puis plier la patte en deux dans la longueur, envers contre envers, et repasser.
tower_placket-reinforce = Piquer à petits points un rectangle étroit autour de la fente : à partir { DU($edge) }, à { $half } de la ligne, jusqu’à sa fin, droit en travers, et retour à { $half } de l’autre côté.
tower_placket-under = Épingler l’endroit { DU($strip) } sur l’envers, du côté de la fente qui sera dessous, et piquer à { $allowance } du bord de la bande, sur la ligne du rectangle, jusqu’à son coin.
tower_placket-cut = Couper au milieu du rectangle avec de petits ciseaux jusqu’à { $before } de sa fin, puis en biais jusque dans les deux coins, jusqu’aux points et sans les couper : un petit triangle reste à la fin.
tower_placket-pin = Coucher la bande sur l’endroit, rentrer { $allowance } de son bord libre pour qu’il couvre juste les points, et piquer au ras du bord jusqu’à la fin de la fente : elle est large de { $wide }.
tower_placket-sew = Épingler l’endroit { DU($tower) } sur l’envers, de l’autre côté de la fente, et piquer à { $allowance } du bord jusqu’au coin du rectangle.
tower_placket-lay = Passer la patte par la fente sur l’endroit et la plier sur son pli : elle couvre la bande, et son bord replié couvre les points. Relever le triangle dessous et épingler.
tower_placket-across = Piquer la patte au ras du bord depuis le bas le long de son côté replié, autour de la pointe et en travers à la fin de la fente, en prenant le triangle et la bande ; dessous, laisser son pli libre.
tower_placket-why = La piqûre en travers tient ensemble le triangle, la bande et la patte là où la fente se déchirerait ; coupée jusque dans les coins, la patte se retourne à plat.
