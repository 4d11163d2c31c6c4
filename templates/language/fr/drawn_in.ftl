# Phrases de kit/sewing/operations/drawn_in.py.

thread_elastic-draw = Couper { $length } d’élastique de { $width } de large, fixer un passe-lacet à un bout et le faire passer dans la coulisse { DU($edge) }. Tenir l’autre bout.
thread_elastic-join = Superposer les extrémités sur { $join }, sans vriller l’élastique, et les piquer en rectangle.
thread_elastic-fasten = Fixer les deux extrémités par une piqûre en travers des bouts de la coulisse.
thread_elastic-close = Laisser l’anneau glisser à l’intérieur et fermer l’ouverture { DU($gap) } par une piqûre dans le prolongement du rang.
thread_elastic-spread = Étirer le bord plusieurs fois, pour que l’ampleur se répartisse régulièrement.
thread_elastic-why = L’élastique se coupe plus court que le bord qu’il resserre ; essayer sa longueur autour du corps avant de le fermer.

thread_cord-draw = Fixer un passe-lacet au bout d’un cordon de { $length } et le faire passer dans la coulisse { DU($edge) }.
thread_cord-draw_strip = Fixer un passe-lacet à un bout { DU($strip) } et le faire passer dans la coulisse { DU($edge) }.
thread_cord-ends = Faire sortir les extrémités { AU($places) }.
thread_cord-close = Fermer l’ouverture { DU($gap) } par une piqûre dans le prolongement du rang.
thread_cord-tack = Piquer une fois en travers de la coulisse et du cordon, à mi-tour, pour que le cordon ne puisse pas sortir. Nouer ses bouts.
thread_cord-knot = Nouer les deux bouts ensemble, pour qu’ils ne rentrent pas.
thread_cord-why = Pas de cordon de serrage à la capuche ou au cou des vêtements de jeunes enfants ; ailleurs, garder des bouts courts et suivre EN 14682, ASTM F1816 et les règles locales.

drawn_in-beside_elastic = Le guider le long de l’élastique, du côté des œillets, sans que le passe-lacet le croise.
drawn_in-beside_cord = Le guider le long du cordon, qui reste du côté des œillets, sans que le passe-lacet le croise.
