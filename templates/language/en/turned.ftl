# Sentences of kit/sewing/operations/turned.py.

seam_to_turn-sew = Stitch { $allowance } from the edge. At corners stop with the needle down, lift the foot and pivot.
seam_to_turn-sew_gap = Stitch { $allowance } from the edge, but leave { $size } of { THE($edge) } open for turning, beginning { $from }. Backstitch at both ends of the gap.
seam_to_turn-sew_smooth = Stitch { $allowance } from the edge, all round.
seam_to_turn-extra = Carry the row on round the corner below the overlap, up to where the garment begins. Clip the allowance there up to the stitches.
seam_to_turn-trim = Trim the allowances, one narrower than the other, and cut the corners off close to the stitches.
seam_to_turn-trim_smooth = Trim the allowances, one narrower than the other.
seam_to_turn-clip = Clip the allowances where they curve in, almost to the stitches, about every { $spacing } where the curve is tightest.
seam_to_turn-notch = Cut wedges out of the allowances where they curve out, almost to the stitches, about every { $spacing } where the curve is tightest.
seam_to_turn-why = Once turned, both raw edges lie between the layers. Little cloth in the corners gives sharp corners, layers trimmed to different widths make no ridge.

turn_out-turn = Turn { $pieces } right side out through the opening along { $edge } and push the corners out gently.
turn_out-press = Roll the seam to the very edge and press.
turn_out-why = What is turned must have an edge left open; that edge is closed last.

slip_stitch-turn = Turn the edges of the gap on { $edge } in by { $allowance } each, press and pin fold on fold.
slip_stitch-sew = Slip stitch by hand: through one fold for a few millimetres, straight across into the other, and so on.
slip_stitch-why = The thread runs inside the folds, so that it shows on neither side.
