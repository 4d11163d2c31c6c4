# Sentences of kit/sewing/operations/casings.py.

casing-first = Turn { $edge } { $first } to the wrong side and press.
casing-second = Turn it again by { $second } and press; the two turns take { $total }.
casing-sew = Stitch { $row } from the inner fold, all along.
casing-sew_gap = Stitch { $row } from the inner fold, but leave { $gap } open for threading, on { $where }. Backstitch at both ends of the gap.
casing-why = The tunnel is a little wider than what runs in it, so that this can be drawn in and still cannot twist.
