# Sentences of kit/sewing/operations/plackets.py.

bound_placket-mark = Mark { $slit }, { $long } long, and its end on the wrong side. Do not cut yet.
bound_placket-reinforce = With short stitches sew a row round it: from { $edge }, { $allowance } beside the line, slanting in to its end, one stitch across the end, and back out to { $allowance } on the other side.
bound_placket-cut = Cut along the line with the points of small scissors, right up to the stitch across its end and not through it.
bound_placket-open = Pull the slit open into one straight line. Pin the right side of { THE($strip) } to its wrong side: the edges level at both ends, the garment drawn back at the end of the slit until its reinforcing row lies on the strip's stitch line. Stitch { $allowance } from the edge of the strip, just outside the reinforcing row, with the garment on top and its folds pushed away at the end.
bound_placket-cover = Press the strip away from the garment. Turn its free edge under by { $allowance }, fold it over so that it just covers the stitches on the right side, and edgestitch: the placket is { $wide } wide.
bound_placket-slant = Fold the placket right sides together and stitch its upper fold across on a slant, through the strip only.
bound_placket-lie = Press the side that will lie over, on a sleeve the one nearer to its front, to the inside and let the other stand out below it; baste both across { $edge }.
bound_placket-why = Sewn round before it is cut, the end of the slit cannot tear while it is pulled straight and worn.
bound_placket-why_row = The slanting row keeps the fold of the strip inside, where it would else push out at the end of the slit.
