# Titres des pièces des patrons de base.

block-front_bodice = Corsage devant
block-back_bodice = Corsage dos
block-front_skirt = Jupe devant
block-back_skirt = Jupe dos
block-front_trouser_leg = Pantalon devant
block-back_trouser_leg = Pantalon dos
block-sleeve = Manche

# Ce qu’il faut savoir d’un tracé relevé sur un vêtement.
block_note-traced =
    { $size ->
        [none] Ce tracé (« { $title } ») est relevé sur un vêtement et ne va qu’à la personne de ce vêtement ; il ne change pas avec le corps.
       *[other] Ce tracé (« { $title } ») est relevé sur un vêtement et ne va qu’à la taille { $size } ; il ne change pas avec le corps.
    }
