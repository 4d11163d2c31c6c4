# Sentences of kit/sewing/operations/double_darts.py.

double_dart-fold = Mark both points and the widest place of each dart with thread or chalk ({ $places }). Fold it right sides together along the line from point to point, so that its two stitching lines lie on each other, and pin.
double_dart-sew = Stitch { $dart } in two parts: from the widest place, { $half } from the fold, down to the lower point, { $down } long; then turn the work over, overlap the first stitches by { $over } and go from the widest place up to the upper point, { $up } long. The last few stitches of each part run along the very fold.
double_dart-tie = Do not backstitch at the points: leave long thread ends and tie them.
double_dart-clip = Clip the fold at the widest place, to { $left } from the stitching, so that it can spread.
double_dart-press_centre = Press the darts flat as they were sewn, then towards the centre, over a rounded pad, from the widest place out to either point and not beyond.
double_dart-press_side = Press the darts flat as they were sewn, then towards the side, over a rounded pad, from the widest place out to either point and not beyond.
double_dart-why = From the middle outwards both parts run out to nothing at a point and any ease ends there; the clip lets the folded edge, which is shorter than the line it lies on, open in the hollow of the waist.
