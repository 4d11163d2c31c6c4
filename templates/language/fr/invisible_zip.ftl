# Phrases de kit/sewing/operations/invisible_zip.py.

invisible_zip-coil = Ouvrir la fermeture invisible, longue de { $length }, et au fer tiède repasser les deux spirales sur l’envers pour qu’elles s’écartent du ruban. Si le tissu s’effiloche, surfiler maintenant les bords de l’ouverture.
invisible_zip-lay_first = Poser la fermeture ouverte face contre l’endroit { DU($under) } : la spirale sur la ligne de couture, à { $allowance } du bord, le ruban vers le bord coupé, l’arrêt du haut à { $top } sous la ligne de couture du haut ; épingler ou bâtir.
invisible_zip-stitch_first = Avec le pied pour fermeture invisible, ou un pied pour fermeture qui tient la spirale déroulée, piquer tout contre la spirale du haut jusqu’à la fin de l’ouverture, au-dessus du curseur, et arrêter les fils.
invisible_zip-lay_second = Poser de même l’autre ruban face contre { LE($over) }, sans le vriller, les bouts à la même hauteur, et le piquer du haut jusqu’à la même hauteur.
invisible_zip-close = Fermer la fermeture : le ruban ne doit pas se voir et les deux côtés doivent être à niveau en haut. Faire ensuite la couture du dessous avec le pied pour fermeture, à partir des derniers points et à côté d’eux, le bout de la fermeture tenu à l’écart.
invisible_zip-ends = Fixer à la main les bouts libres des deux rubans sur les marges une fois la couture du dessous faite.
invisible_zip-why = Écartée, la spirale laisse l’aiguille passer tout contre elle et le tissu se referme dessus ; piquée trop loin, le ruban se voit, et piquée dans la spirale la fermeture coince.
invisible_zip-why_seam = Chaque côté se coud à plat sur son ruban ; la couture du dessous vient en dernier parce qu’on peut l’amener jusqu’aux derniers points, alors que le pied ne passe pas le curseur pour rejoindre une couture déjà faite.
