# Sentences of kit/sewing/operations/invisible_zip.py.

invisible_zip-coil = Open the invisible zip, { $length } long, and with a cool iron press both coils from the wrong side so that they stand away from the tape. Finish the raw edges of the opening now if the cloth frays.
invisible_zip-lay_first = Lay the open zip face down on the right side of { $under }: the coil on the stitch line, { $allowance } from the edge, its tape towards the raw edge, its upper stop { $top } below the stitch line at the top; pin or baste.
invisible_zip-stitch_first = With the invisible zip foot, or a zip foot that keeps the coil rolled back, stitch close beside the coil from the top down to the end of the opening, above the slider, and secure.
invisible_zip-lay_second = Lay the other tape face down on { $over } in the same way, not twisted, the ends level, and stitch it from the top down to the same height.
invisible_zip-close = Close the zip: no tape may show, and both sides must be level at the top. Then sew the seam below, with the zip foot, from the last stitches on and beside them, the end of the zip held out of the way.
invisible_zip-ends = Fasten the loose ends of both tapes to the allowances by hand once the seam below is sewn.
invisible_zip-why = Pressed away, the coil lets the needle come right beside it, so that the cloth closes over it; stitched too far off, the tape shows, and stitched into the coil the zip sticks.
invisible_zip-why_seam = Each side is sewn to its tape lying flat; the seam below comes last because it can be brought to the last stitches, while the foot cannot pass the slider to meet a seam that is there already.
