# Titles of the pieces of the kit's own blocks, as they stand on the paper until the lesson gives its own.

block-front_bodice = Front bodice
block-back_bodice = Back bodice
block-front_skirt = Front skirt
block-back_skirt = Back skirt
block-front_trouser_leg = Front trouser leg
block-back_trouser_leg = Back trouser leg
block-sleeve = Sleeve
