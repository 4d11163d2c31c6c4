# Sentences of kit/sewing/operations/hems.py.

hem-catch = Lay { $caught } flat on the inside, so that the hem folds over it and catches it.
hem-clip_ends = Clip the allowance to just short of the stitch line at { $ends }, so that this part can be turned by itself.
hem-first = Turn { $edge } { $first } to the wrong side and press.
hem-second = Turn it again by { $second } and press; the two turns take { $total }.
hem-narrow = Turn { $edge } { $first } to the wrong side and press, then { $second } more and press; the two turns take { $total }.
hem-finish = Finish the raw edge of { $edge } with { $finish }.
hem-single = Turn { $edge } { $first } to the wrong side and press.
hem-sew = Stitch { $row } from the inner fold.
hem-sew_single = Stitch { $row } from the finished edge.
hem-sew_raw = Stitch { $row } from the raw edge.
hem-press = Press the hem.
hem-ring = Turn the ring inside out and work round it with the free arm of the machine, beginning and ending at a seam.
hem-lap_rows = Let the row run over its own beginning for a few stitches.
hem-why_once = Turned once, a hem is thin and hangs softly; its raw edge must be kept from fraying.
hem-why_twice = Turned twice, the raw edge is shut inside, and the hem needs no other finish.
hem-why_narrow = The narrower the hem, the better it follows a curve.
