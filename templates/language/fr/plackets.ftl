# Phrases de kit/sewing/operations/plackets.py.

bound_placket-mark = Tracer { LE($slit) } sur l’envers jusqu’à sa fin, sur { $long }. Ne pas couper encore.
bound_placket-reinforce = Piquer tout autour à petits points : à partir { DU($edge) }, à { $allowance } de la ligne, en biais jusqu’à sa fin, un point en travers de la fin, et retour jusqu’à { $allowance } de l’autre côté.
bound_placket-cut = Couper sur la ligne avec la pointe de petits ciseaux, jusqu’au point en travers de la fin et sans le couper.
bound_placket-open = Ouvrir la fente jusqu’à ce qu’elle forme une ligne droite. Épingler l’endroit { DU($strip) } sur son envers : les bords à niveau aux deux bouts et, à la fin de la fente, le vêtement en retrait jusqu’à ce que la piqûre de renfort soit sur la ligne de couture de la bande. Piquer à { $allowance } du bord de la bande, tout juste hors de la piqûre de renfort, le vêtement dessus, en écartant les plis à la fin.
bound_placket-cover = Coucher la bande à l’opposé du vêtement au fer. Rentrer { $allowance } de son bord libre, la replier pour qu’elle couvre juste les points sur l’endroit et piquer au ras du bord : la patte est large de { $wide }.
bound_placket-slant = Plier la patte endroit contre endroit et piquer son pli du haut en biais, dans la bande seulement.
bound_placket-lie = Coucher à l’intérieur le côté qui recouvrira, sur une manche celui vers le devant, et laisser l’autre dépasser dessous ; bâtir les deux { AU($edge) }.
bound_placket-why = Piquée tout autour avant d’être coupée, la fin de la fente ne peut pas se déchirer quand on la met droite ni au porter.
bound_placket-why_row = La piqûre en biais garde à l’intérieur le pli de la bande, qui sinon ressortirait à la fin de la fente.
