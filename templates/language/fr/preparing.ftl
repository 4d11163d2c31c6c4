# Phrases de kit/sewing/operations/preparing.py.

gather-sew = Régler le point le plus long et piquer deux rangs le long { DU($edge) }, à { $apart } l’un de l’autre, de part et d’autre de la ligne de couture. Laisser de longs bouts de fil, sans point d’arrêt.
gather-sew_more = 
    { $rows ->
        [one] Régler le point le plus long et piquer { $rows } rang le long { DU($edge) }, à { $apart } l’un de l’autre. Laisser de longs bouts de fil, sans point d’arrêt.
       *[other] Régler le point le plus long et piquer { $rows } rangs le long { DU($edge) }, à { $apart } l’un de l’autre. Laisser de longs bouts de fil, sans point d’arrêt.
    }
gather-mark = Marquer les quarts { DU($edge) } et ceux du bord qui sera cousu avec.
gather-draw = Tirer les fils de canette par les deux bouts jusqu’à ce que le bord mesure { $to } au lieu de { $full }, et les enrouler autour d’une épingle.
gather-draw_to_fit = Tirer les fils de canette par les deux bouts jusqu’à ce que le bord s’ajuste { AU($fit) } : { $to } au lieu de { $full }. Les enrouler autour d’une épingle.
gather-spread = Répartir régulièrement les fronces entre les repères.
gather-why = Deux rangs rangent les petits plis côte à côte ; un seul rang les laisse basculer.
gather-why_quarters = Les quarts marqués gardent l’ampleur là où le modèle la veut.

ease_stitch-sew = Passer un fil d’embu : un rang de longs points le long { DU($edge) }, à { $distance } à l’extérieur de la ligne de couture, en laissant de longs bouts de fil.
ease_stitch-sew_two = Passer deux fils d’embu : deux rangs de longs points dans la marge { DU($edge) }, le premier à { $distance } à l’extérieur de la ligne de couture, en laissant de longs bouts de fil.
ease_stitch-draw = Tirer le fil de canette jusqu’à ce que le bord soit plus court de { $less } et ne mesure plus que { $to }.
ease_stitch-draw_to_fit = Tirer le fil de canette jusqu’à ce que le bord soit plus court de { $less } et ne mesure plus que { $to } ; il s’ajuste alors { AU($fit) }.
ease_stitch-draw_later = Tirer un peu le fil de canette, jusqu’à ce que le bord commence à se creuser.
ease_stitch-smooth = Répartir l’embu du bout des doigts jusqu’à ce qu’aucun pli ne se voie, et le résorber à la vapeur.
ease_stitch-why = Un bord plus long, resserré sans pli, fait de la place au corps : sur l’épaule, au coude, au bassin.

baste-sew = Bâtir { LE($edge) } à { $distance } à l’extérieur de la ligne de couture, à travers toutes les épaisseurs.
baste-sew_on_line = Bâtir { LE($edge) } sur la ligne de couture, à travers toutes les épaisseurs, avec un fil d’une autre couleur.
baste-sew_together = Épingler { LE($edge) } endroit contre endroit et bâtir sur la ligne de couture, avec un fil d’une autre couleur.
baste-later = Ce bâti se retire ensuite. Si la couture commence envers contre envers ou par un pli, avant la première piqûre ; sinon une fois la couture piquée, tout près du bâti et non à travers.
baste-why = De longs points tiennent les épaisseurs là où des épingles les laisseraient glisser, et se retirent facilement.

remove_basting-pull = Retirer le bâti { DU($edge) }, en le coupant tous les quelques points et en tirant.
