# Sentences of kit/sewing/operations/strips.py.

fold_strip-half = Fold { THE($strip) } lengthwise through the middle, wrong sides together, press and open out.
fold_strip-ends = Turn in { $ends } at each short end that will show, and press.
fold_strip-quarter = Fold both long edges to the crease in the middle, then fold along the middle again: { $width } wide.
fold_strip-sew = Edgestitch { $edgestitch } from both long edges.
fold_strip-sew_one = Edgestitch { $edgestitch } from the open long edge, where the two folds meet.
fold_strip-count = Make { $count } alike.

turn_strip-fold = Fold { THE($strip) } lengthwise, right sides together, and pin.
turn_strip-sew = Stitch { $allowance } from the long raw edges.
turn_strip-slant = At one end carry on across it on a slant, so that the fold is { $slant } longer than the seamed edge. The other end stays open for turning.
turn_strip-slant_trim = Trim the allowance of the slant and cut the corners off.
turn_strip-turn = Turn right side out and press: { $width } wide.
turn_strip-ends = Tuck in { $ends } at each short end that will show, and close it by stitching.
turn_strip-stitch_one = Edgestitch { $edgestitch } from the seamed edge.
turn_strip-stitch_both = Edgestitch { $edgestitch } from both long edges.
turn_strip-count = Make { $count } alike.

hem_strip-turn = Turn both long edges of { THE($strip) } { $turn } to the wrong side, twice, and press: { $width } wide.
hem_strip-sew = Stitch close to the inner folds.
hem_strip-ends_both = Turn in both short ends in the same way, the corners folded flat, and stitch across.
hem_strip-ends_one = Turn in one short end in the same way, the corners folded flat, and stitch across; the other stays raw until a seam takes it in.
hem_strip-count = Make { $count } alike.
hem_strip-why = In thin cloth a single layer ties in a soft knot; turned twice, its edge cannot fray.

attach_strip-stitched_on-place_start = Lay the end of { THE($strip) } { $lap } over { $run }, { $at }, on the inside.
attach_strip-stitched_on-place_end = Lay the end of { THE($strip) } { $lap } over { $run }, { $at }, on the inside.
attach_strip-stitched_on-place_along = Lay the end of { THE($strip) } { $lap } over { $run }, { $at }, on the inside.
attach_strip-stitched_on-place_mark = Lay the end of { THE($strip) } { $lap } over { $run } at the mark for { THE($mark) }, on the inside.
attach_strip-stitched_on-sew = Stitch it down in a small box with a cross.

attach_strip-caught-place_start = Lay { THE($strip) } on the right side of { $run }, { $at }, raw end to raw edge.
attach_strip-caught-place_end = Lay { THE($strip) } on the right side of { $run }, { $at }, raw end to raw edge.
attach_strip-caught-place_along = Lay { THE($strip) } on the right side of { $run }, { $at }, raw end to raw edge.
attach_strip-caught-place_mark = Lay { THE($strip) } on the right side of { $run } at the mark for { THE($mark) }, raw end to raw edge.
attach_strip-caught-sew = Baste it inside the allowance; the next seam catches it. Keep the loose end out of the way.
attach_strip-caught-sew_edge = Baste it { $row } from the raw edge; the next row catches it. Keep the loose end out of the way.
