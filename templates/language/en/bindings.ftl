# Sentences of kit/sewing/operations/bindings.py.

bind-trim = Trim the allowance of { $trim } off { $edge }: the binding takes its place.
bind-fold = Press { THE($strip) } lengthwise in half, then both long edges to the crease in the middle, and open it out.
bind-fold_double = Press { THE($strip) } lengthwise in half, wrong sides together, and keep it folded.
bind-pin = Pin { THE($strip) } to { $edge } on the right side, raw edges together. Ease it round curves that bend out, stretch it a little round curves that bend in.
bind-ends_ring = Where its ends meet, join them flat before the last part is stitched, or turn one end in by { $turned } and lay the other into it.
bind-ends_turned = Turn in { $turned } at each end.
bind-ends_caught = Let its ends run into the allowance: a later seam catches them.
bind-sew = Stitch { $finished } from the raw edge.
bind-wrap = Turn the strip over the edge to the wrong side and tuck its raw edge in, so that the fold just covers the stitches.
bind-wrap_double = Turn the folded edge over to the wrong side, so that it just covers the stitches.
bind-last_machine = From the right side stitch in the groove of the seam, catching the fold underneath.
bind-last_hand = Slip stitch the fold to the stitches by hand.
bind-ties_out = Fold { THE($strip) } outwards over the binding and stitch it down there in a small box with a cross.
bind-why = A strip cut on the bias bends round a curve without pleats; cut four times as wide as it finishes, it covers the edge on both sides with its own edges shut in.
bind-why_double = Folded in two it is cut six times as wide; it wears longer and is easier in thin cloth, because a fold is stitched down and nothing must be tucked in.

bias_facing-fold = Press { $allowance } under along one long edge of { THE($strip) }.
bias_facing-pin = Pin its other long edge to { $edge }, right sides together.
bias_facing-sew = Stitch { $allowance } from the edge.
bias_facing-trim = Trim and clip the allowances.
bias_facing-turn = Turn the whole strip to the inside and press, the seam at the very edge: it is { $finished } wide there.
bias_facing-stitch = Edgestitch along its fold, or slip stitch it by hand.
bias_facing-why = Turned wholly inside, the strip is a facing of even width that needs no pattern piece of its own.
