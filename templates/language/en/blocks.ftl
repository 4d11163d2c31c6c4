# Titles of the pieces of the kit's own blocks, as they stand on the paper until the lesson gives its own.

block-front_bodice = Front bodice
block-back_bodice = Back bodice
block-front_skirt = Front skirt
block-back_skirt = Back skirt
block-front_trouser_leg = Front trouser leg
block-back_trouser_leg = Back trouser leg
block-sleeve = Sleeve

# What a reader must know of a traced top; $size is the size it fits, or none.
block_note-traced =
    { $size ->
        [none] { $title } is traced from a garment and fits the wearer it was traced for alone; it does not change with the body.
       *[other] { $title } is traced from a garment and fits size { $size } alone; it does not change with the body.
    }
