# Sentences of kit/sewing/operations/folds.py.

dart-spared = { $pieces }: this figure needs no dart there. Go on to the next step.
dart-fold = Fold each dart of { $pieces } right sides together along its middle line, so that its two stitching lines lie on each other, and pin.
dart-fold_one = Fold the dart of { $pieces } right sides together along its middle line, so that its two stitching lines lie on each other, and pin.
dart-sew = Stitch { THE($dart) } from { $edge } to its point, { $depth } long: it begins { $intake } from the fold, and the last few stitches run along the very fold.
dart-tie = Do not backstitch at the point: leave long thread ends and tie them.
dart-press = Press the dart flat as it was sewn, then towards { THE($toward) }, over a rounded pad so that no crease is pressed beyond the point.
dart-press_of = Press the darts at { $edge } flat as they were sewn, then towards { THE($toward) }, over a rounded pad so that no crease is pressed beyond the point.
dart-why = A dart turns flat cloth into a hollow: what it takes up at the edge is what the body is narrower there.
dart-why_point = Running out along the fold, the stitching ends in nothing, and no dimple shows at the point.

pleat-fold = On the right side of { $pieces } fold { THE($pleat) } along its fold line; it takes up { $intake }.
pleat-lay = Bring its two lines together, lay the fold towards { THE($toward) } and pin.
pleat-baste = Baste across it inside the allowance of { $edge }.
pleat-baste_both = Baste across it inside the allowances of { $edge } and of { $far }.
pleat-press = Press the fold lightly, through a cloth, as far as it is to stay sharp.
pleat-why = Basted to its place, a pleat cannot shift while the seam that holds it is sewn.

tuck-fold = Fold { THE($pleat) } of { $pieces } wrong sides together along its middle, so that its two lines lie on each other, and pin.
tuck-sew = Stitch along the line, { $half } from the fold.
tuck-sew_part = Stitch along the line, { $half } from the fold, for { $sewn } from { $edge }. Pull the threads to the wrong side and tie them.
tuck-press = Press it towards { THE($toward) }.
tuck-why = A tuck takes in the cloth as far as it is stitched and lets go of it below.
