# Frases para la entretela sin adhesivo.

baste_interfacing-lay = Coloque la entretela sobre el revés { DEL($pieces) } y sujete con alfileres, las dos capas planas.
baste_interfacing-sew = Hilvane todo el contorno dentro del margen, a { $distance } por fuera de la línea de costura.
baste_interfacing-trim = Cuando estén hechas las costuras, recorte la entretela muy cerca de las puntadas y quite el hilván que se vea.
baste_interfacing-why = La entretela cosida conserva la suavidad y no necesita calor; hilvanada en el margen, la sujetan las costuras y su propio borde no hace relieve.
