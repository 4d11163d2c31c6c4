# Sentences of kit/sewing/operations/zips.py.

lapped_zip-press = Press { $over } under along its stitch line, { $allowance } wide. Press { $under } under a little outside its stitch line.
lapped_zip-under = Lay the fold of { $under } close beside the teeth of the closed zip, { $length } long, its slider { $top } below the stitch line at the top, and pin.
lapped_zip-under_flush = Lay the fold of { $under } close beside the teeth of the closed zip, { $length } long, its slider at the stitch line at the top, and pin.
lapped_zip-stitch_under = With the zip foot edgestitch the fold of { $under } to the tape.
lapped_zip-lay = Lay { $over } over the zip, its fold on the stitch line of the other side, so that the teeth are covered; pin or baste.
lapped_zip-stitch_over = From the right side stitch { $lap } from the fold: across below the end of the zip, pivot, and up to the top. Open the zip to pass its slider.
lapped_zip-why = The lap hides the teeth; the under fold lies a little further out, so that the lap still covers it when the zip is strained.

centred_zip-baste = Pin { $over } to { $under }, right sides together, and baste the opening shut { $allowance } from the edge.
centred_zip-press = Press the allowances open.
centred_zip-lay = Lay the closed zip, { $length } long, face down on the allowances, its teeth on the basted seam and its slider { $top } below the stitch line at the top; pin or baste the tapes.
centred_zip-lay_flush = Lay the closed zip, { $length } long, face down on the allowances, its teeth on the basted seam and its slider at the stitch line at the top; pin or baste the tapes.
centred_zip-stitch = From the right side, with the zip foot, stitch { $lap } from the seam: down one side, across below the end of the zip and up the other. Open the zip to pass its slider.
centred_zip-open = Take the basting out: the two folds meet over the teeth.
centred_zip-why = Basted shut first, both folds lie exactly edge to edge over the teeth while the zip is sewn.
