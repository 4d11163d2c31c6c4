# Sentences of kit/sewing/pieced.py: joining the lengths a strip is pieced from.

pieced-bias_lay = Lay two lengths of { THE($strip) } right sides together at a right angle, slanted end on slanted end, so that the long edges cross { $allowance } from the slanted ends: a small point stands out at either side.
pieced-bias_sew = Stitch { $allowance } from the slanted ends, from the one crossing to the other.
pieced-bias_open = Press the allowances open and cut the points off.
pieced-corner_lay = Lay the ends of two lengths of { THE($strip) } right sides together at a right angle, corner on corner.
pieced-corner_sew = Stitch diagonally across the square they share, so that the corner where the two ends meet lies outside the stitches.
pieced-corner_open = Cut the corner off { $allowance } beside the stitches and press the allowances open.
pieced-straight_lay = Lay the ends of two lengths of { THE($strip) } right sides together.
pieced-straight_sew = Stitch across, { $allowance } from the ends.
pieced-straight_open = Press the allowances open.
pieced-square_halve = For { THE($strip) } cut the square in two from corner to corner.
pieced-square_seam = Lay the two halves right sides together along two edges that lie on the grain, so that a slanting piece with two bias edges comes of it, and stitch { $allowance } from the edge. Press the seam open.
pieced-square_rule = On the wrong side rule lines { $width } apart, beginning at one bias edge and parallel to it. Cut off what is left over at the other.
pieced-square_tube = Bring the two edges on the grain right sides together into a tube, shifted by one line, so that lines meet lines { $allowance } from the edge and one strip stands out at either end. Stitch { $allowance } from the edge and press the seam open.
pieced-square_cut = Begin where the strip stands out and cut along the line, round and round, to the other end.
pieced-again = Join the other lengths in the same way, { $joins } joins in each strip.
