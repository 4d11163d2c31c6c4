# Sentences of kit/sewing/operations/belt_loops.py.

belt_loop-turn = Turn { $ends } under at each end of { THE($strip) }: it is then { $length } long.
belt_loop-place = Lay it over { THE($seam) } on the outside of the garment, its top end { $at }.
belt_loop-sew = Stitch across both ends, back and forth.
