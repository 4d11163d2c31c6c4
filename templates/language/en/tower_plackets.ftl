# Sentences of kit/sewing/operations/tower_plackets.py.

tower_placket-mark = Mark { $slit }, { $long } long, and its end on the wrong side. Do not cut yet. Press under { $allowance } along { $around }, then fold the tower in half lengthwise, wrong sides together, and press.
tower_placket-reinforce = With short stitches sew a narrow box round the slit: from { $edge }, { $half } beside the line, up to its end, straight across, and back { $half } on the other side.
tower_placket-under = Pin the right side of { THE($strip) } to the wrong side along the side of the slit that will lie under, and stitch { $allowance } from the edge of the strip, in line with the box, up to its corner.
tower_placket-cut = Cut along the middle of the box with small scissors to { $before } before its end, then slantwise right into both corners, up to the stitches and not through them: a small triangle stays at the end.
tower_placket-pin = Press the strip over to the right side, turn its free edge under by { $allowance } so that it just covers the stitches, and edgestitch up to the end of the slit: it is { $wide } wide.
tower_placket-sew = Pin the right side of { $tower } to the wrong side along the other side of the slit and stitch { $allowance } from the edge, up to the corner of the box.
tower_placket-lay = Bring the tower through the slit to the right side and fold it along its crease: it lies over the strip, and its pressed edge covers the stitches. Fold the triangle up beneath it and pin.
tower_placket-across = Edgestitch the tower from the lower edge up along its pressed side, round the point, and across at the end of the slit, catching triangle and strip; leave its fold free below that.
tower_placket-why = The row across holds the triangle, the strip and the tower together just where the slit would tear; cut right into the corners, the tower turns through flat.
