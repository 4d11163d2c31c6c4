# What the draft itself tells about handling the cloth.
handling-stretches = Cloth gives where it is cut across the grain, here along { $place }. Leave it flat on the table and do not pull; pin the ends first, then notches and seams, then between.
handling-curved = Before you pin, clip the allowance of { $hollow } nearly to the stitch line, every { $near } to { $far }, so that it can spread along { $other }. Sew with the clipped layer on top.
