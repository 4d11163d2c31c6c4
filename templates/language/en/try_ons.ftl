# Sentences of kit/sewing/operations/try_ons.py.

try_on-wear = Try it on, inside out or right side out, with the shoes and underclothes it will be worn with.
try_on-wear_head = Put it on your head, inside out or right side out.
try_on-mark = Mark { $places } with pins or chalk.
try_on-note = { $note }
# $note is the teacher's own sentence of what was found. The pattern is the corrected one.
try_on-found = When the first one was tried on, this was found: { $note } The pattern has it corrected already.
# The lesson's values are others than those of the try-on.
try_on-look = Look for what was found when the first one was tried on: { $note }
# $name is a value as the lesson calls it ("underarm drop").
try_on-changed = { $name }: { $before } until now, { $after } from here on.
try_on-changed_share = { $name }: { $before } % until now, { $after } % from here on.
try_on-changed_count = { $name }: { $before } until now, { $after } from here on.

# How the new stitch line runs on cloth that is cut. $place are edges with their pieces ("side seam of the front and
# back"), $at and $to edges that meet them there.
try_on-line_all_along_in = Along { $place } the new stitch line runs { $size } inside the old one.
try_on-line_all_along_out = Along { $place } the new stitch line runs { $size } outside the old one.
try_on-line_to_nothing_in = Along { $place } the new stitch line runs { $size } in at { THE($at) }, tapering to nothing at { THE($to) }.
try_on-line_to_nothing_out = Along { $place } the new stitch line runs { $size } out at { THE($at) }, tapering to nothing at { THE($to) }.
try_on-line_early_in = Along { $place } the new stitch line runs { $size } in at { THE($at) }, tapering to nothing { $far } from there.
try_on-line_early_out = Along { $place } the new stitch line runs { $size } out at { THE($at) }, tapering to nothing { $far } from there.
try_on-line_unequal_in = Along { $place } the new stitch line runs { $size } in at { THE($at) } and { $other } in at { THE($to) }.
try_on-line_unequal_out = Along { $place } the new stitch line runs { $size } out at { THE($at) } and { $other } out at { THE($to) }.
try_on-line_middle_in = Along { $place } the new stitch line runs farthest in { $far } from { THE($at) }, by { $size }, and comes nearer to the old one towards both ends.
try_on-line_middle_out = Along { $place } the new stitch line runs farthest out { $far } from { THE($at) }, by { $size }, and comes nearer to the old one towards both ends.
try_on-line_crossing_in_out = Along { $place } the new stitch line crosses the old one: from { THE($at) } on it runs up to { $size } in, then up to { $other } out.
try_on-line_crossing_out_in = Along { $place } the new stitch line crosses the old one: from { THE($at) } on it runs up to { $size } out, then up to { $other } in.

try_on-unpick = Unpick the stitching of { $place } where the two lines part, and sew it again in the same way along the new one.
try_on-open = Open { $place } beside it as far as you must, and close it again when the new line is sewn.
try_on-basted = The basting of { $place } lies on the old line: take it out and baste along the new one.
try_on-trim = Trim { $place } to { $allowance } outside the new line.
try_on-trim_line = Trim { $place } on the new line.
# $left is how wide the allowance still is at one place.
try_on-left = No more than { $left } of allowance is left outside the new line of { $place } at { THE($at) }.
try_on-left_far = No more than { $left } of allowance is left outside the new line of { $place }, { $far } from { THE($at) }.
# $piece is the title of a piece.
try_on-redrawn = { $piece }: its edges are others now. Lay the new pattern piece on the cloth and mark its lines.
try_on-marks = { $piece }: mark { THE($marks) } anew.
try_on-opening_moved = The opening in { $place } hangs on a mark that has moved; it now lies { $stretch }. Close the seam where the old one was, unpick it along the new one, and turn in and stitch its edges there as before.
try_on-row_moved = The stitching along { $place } hangs on a mark that has moved; it now ends { $spot }. Unpick what lies beyond, or carry it on that far.
try_on-folds = { $piece }: mark { THE($folds) } anew.
try_on-folds_unpick = { $piece }: unpick { THE($folds) }, mark and sew anew.
try_on-fresh = { $piece }: cut this piece now.
try_on-gone = { $piece }: this piece is not needed any more.
try_on-strip_longer = { $strip }: { $size } longer from now on.
try_on-strip_shorter = { $strip }: cut { $size } off its length.
try_on-strip_wider = { $strip }: { $size } wider from now on.
try_on-strip_narrower = { $strip }: cut { $size } off its width.

trim_to_fit-cut = Trim the extra cloth off { $edge }: { $allowance } of allowance is left outside the stitch line.
trim_to_fit-why = The extra cloth was cut to fit with; once the fit is right it would only lie thick in the seam.
