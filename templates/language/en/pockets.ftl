# Sentences of kit/sewing/operations/pockets.py.

pocket_hem-turn = Turn { $edge } { $first } to the wrong side and press.
pocket_hem-fold = Fold it { $second } to the right side along the hem line; the two turns take { $total }.
pocket_hem-ends = Stitch across both ends of the hem, { $ends } from the side edges. Trim the corners.
pocket_hem-out = Turn the hem to the wrong side, push the corners out and press.
pocket_hem-sew = Stitch the hem down near its inner fold.
pocket_hem-why = Stitched to the right side first and turned, the ends of the hem lie inside it and cannot peep out at the corners.

fold_pocket-prepare_curved = Run a row of long stitches in the allowance round each curved corner of { $pocket }.
fold_pocket-prepare_mitred = At each lower corner fold { $pocket } diagonally, right sides together, and stitch square to the fold, from the corner of the stitch lines to the edge. Trim to a few millimetres and turn the corner out.
fold_pocket-press = Press { THE($edge) } of { $pocket } { $allowance } to the wrong side.
fold_pocket-square = At the lower corners press the bottom up first, then the sides over it, each corner cut off a little inside the fold.
fold_pocket-mitred = The corners lie flat, each with a seam from its point.
fold_pocket-curved = Draw the long stitches up over a card cut to the finished corner, press the gathers flat and take the card out.
fold_pocket-why_square = The folds cross at the corner; the little cloth cut off keeps it flat.
fold_pocket-why_mitred = A mitre has no double fold: it lies flattest in thick cloth and cannot slip out when it is stitched.
fold_pocket-why_curved = Drawn over a card, both corners come out alike and without points.

patch_pocket-pin = Lay { $pocket } right side up on the right side of the cloth at { $place } and pin or baste it. Lay a hand under it: it must not be strained.
patch_pocket-sew = Stitch { $distance } from the folded edges, down one side, along the bottom and up the other. Leave the mouth open.
patch_pocket-secure = At both ends of the mouth backstitch, or stitch a small triangle.
patch_pocket-why = A hand in the pocket pulls at the two ends of its mouth; that is where it tears, and that is why they are stitched twice.
