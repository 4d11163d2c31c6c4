# Títulos de las piezas de los patrones base.

block-front_bodice = Delantero del cuerpo
block-back_bodice = Espalda del cuerpo
block-front_skirt = Falda delantera
block-back_skirt = Falda trasera
block-front_trouser_leg = Pantalón delantero
block-back_trouser_leg = Pantalón trasero
block-sleeve = Manga

# Lo que hay que saber de una prenda calcada.
block_note-traced =
    { $size ->
        [none] Este trazado («{ $title }») se calcó de una prenda y solo sirve para la persona de esa prenda; no cambia con el cuerpo.
       *[other] Este trazado («{ $title }») se calcó de una prenda y solo sirve para la talla { $size }; no cambia con el cuerpo.
    }
