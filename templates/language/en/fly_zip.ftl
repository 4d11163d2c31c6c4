# Sentences of kit/sewing/operations/fly_zip.py.

fly_zip-face = Pin { $facing } to { $over }, right sides together, and stitch { $allowance } from the edge down to the end of the opening. Trim the allowance to half, press it towards the facing and understitch; turn the facing in and press.
fly_zip-press = Press { $under } under, { $out } outside its stitch line.
fly_zip-under = Lay the fold of { $under } close beside the teeth of the closed zip, { $length } long and face up, its slider { $top } below the stitch line at the top, its lower stop above the end of the opening, and pin.
fly_zip-under_flush = Lay the fold of { $under } close beside the teeth of the closed zip, { $length } long and face up, its slider at the stitch line at the top, its lower stop above the end of the opening, and pin.
fly_zip-shield = Pin { $shield } underneath, its raw edge level with that of the tape.
fly_zip-stitch_under = With the zip foot edgestitch the fold of { $under } to the tape, through all that lies beneath.
fly_zip-close = Lap { $over } over the zip as it is worn, its edge on the stitch line of the other side, and pin or baste the opening shut.
fly_zip-away = Turn the work over and fold the shield back out of the way.
fly_zip-tape = From the inside lay the free tape on the facing and stitch it to the facing alone, in two rows, one beside the teeth and one at its edge.
fly_zip-curve = From the right side chalk the curve, { $lap } from the edge, rounding to the seam at the end of the opening. Stitch it from the top down through front and facing, past the lower stop of the zip and never over it.
fly_zip-bar = Work a bar across the foot of the curve, then take out pins and basting.
fly_zip-bar_shield = Lay the shield back and sew its lower end in with a second bar from the inside.
fly_zip-why = The curve holds the facing, not the zip: the zip hangs on the facing, so that it lies smooth and can be replaced.
fly_zip-why_tape = Closed first as it is worn, the free tape falls to its place by itself; measured apart, the lap gapes or pulls.
