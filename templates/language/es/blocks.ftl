# Títulos de las piezas de los patrones base.

block-front_bodice = Delantero del cuerpo
block-back_bodice = Espalda del cuerpo
block-front_skirt = Falda delantera
block-back_skirt = Falda trasera
block-front_trouser_leg = Pantalón delantero
block-back_trouser_leg = Pantalón trasero
block-sleeve = Manga
