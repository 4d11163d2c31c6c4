# Sentences of kit/sewing/operations/enclosed.py.

mock_french_seam-sew = Stitch { $allowance } from the edge.
mock_french_seam-turn = Turn the raw edge of each allowance in by { $turn } towards the other and press, so that the two folds lie on each other.
mock_french_seam-stitch = Stitch the folds together close to their edge.
mock_french_seam-why = It looks like a French seam inside, but it is sewn on the stitch line like a plain seam, so it also suits curves.

flat_felled_seam-sew = Stitch { $allowance } from the edge and press the allowances towards { $under }, that of { $lapping } on top.
flat_felled_seam-trim = Trim only the allowance of { $under }, the lower one, to { $trim }.
flat_felled_seam-trim_same_piece = Trim only the allowance of { THE($under_side) } half, the lower one, to { $trim }.
flat_felled_seam-fold = Fold the edge of the allowance of { $lapping } around the trimmed one, so that it is { $width } wide, and press.
flat_felled_seam-fold_same_piece = Fold the edge of the allowance of { THE($lapping_side) } half around the trimmed one, so that it is { $width } wide, and press.
flat_felled_seam-lay = Lay the fold flat on { $under }, so that every raw edge is hidden, and pin.
flat_felled_seam-lay_same_piece = Lay the fold flat on { THE($under_side) } half, so that every raw edge is hidden, and pin.
flat_felled_seam-stitch = Stitch it down { $row } from the fold, through all layers.
flat_felled_seam-why = A flat-felled seam lies flat, shows no raw edge on either side and is held by two rows: the strongest seam for work clothes and shirts.
flat_felled_seam-why_trim = One allowance is trimmed so that the other can fold around it without a ridge.

lapped_seam-turn = Turn { $edge } under by { $allowance }, to its stitch line, and press.
lapped_seam-lay = Lay the fold on the right side of { $other }, along its stitch line, and pin.
lapped_seam-lay_raw = Lay { $edge } on the right side of { $other }, so that the two stitch lines lie on each other, and pin.
lapped_seam-stitch = Stitch { $row } from the fold, through all layers.
lapped_seam-stitch_raw = Stitch { $row } from the upper raw edge, then again as far from the lower one.
lapped_seam-finish = Finish the raw edges inside with { $finish }.
lapped_seam-why = A lapped seam is sewn from the right side, so you see exactly where corners and curves come to lie.
