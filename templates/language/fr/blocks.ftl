# Titres des pièces des patrons de base.

block-front_bodice = Corsage devant
block-back_bodice = Corsage dos
block-front_skirt = Jupe devant
block-back_skirt = Jupe dos
block-front_trouser_leg = Pantalon devant
block-back_trouser_leg = Pantalon dos
block-sleeve = Manche
