# Sentences of kit/sewing/operations/seams.py.

plain_seam-sew = Stitch { $allowance } from the edge.
plain_seam-sew_with_opening = Stitch { $allowance } from the edge, but leave { $size } of { THE($edge) } open, { $stretch }. Backstitch at both ends of the opening.
plain_seam-sew_to_marks = Stitch { $allowance } from the edge, but leave { THE($mark) } unsewn between its marks: { $size }, { $stretch }. Backstitch at both ends of the opening.
plain_seam-sew_open_start = Stitch { $allowance } from the edge, but leave the first { $size } of { THE($edge) } open. Backstitch where the opening ends.
plain_seam-sew_open_end = Stitch { $allowance } from the edge, but leave the last { $size } of { THE($edge) } open. Backstitch where the opening begins.
plain_seam-sew_line_to_line = Stitch { $allowance } from the edge, but begin and end where the stitch lines of the neighbouring edges cross, not at the raw edge. Backstitch there.
plain_seam-finish = Finish the raw edges of the allowances with { $finish }.
plain_seam-finish_together = Finish both allowances together with { $finish }.
plain_seam-bound = Fold { THE($strip) } over the raw edge of each allowance and stitch it down close to its edge, through all its layers.
plain_seam-bound_bought = Fold bias binding over the raw edge of each allowance and stitch it down close to its edge, through all its layers.
plain_seam-bound_together = Lay the two allowances together, fold { THE($strip) } over both raw edges and stitch it down close to its edge, through all layers.
plain_seam-bound_together_bought = Lay the two allowances together, fold bias binding over both raw edges and stitch it down close to its edge, through all layers.
plain_seam-why_open = Pressed open, a seam lies flattest: no more than two layers lie on each other anywhere.
plain_seam-why_one_side = Pressed to one side, a seam is stronger, and both allowances can be finished or stitched down as one.
plain_seam-why_later = The iron comes later, because the next row is easier to reach while the allowances still stand up.
plain_seam-why_line_to_line = Left unsewn, the ends of the allowances can be turned either way when the next seam meets this one at a corner.
plain_seam-opening_edges = Along the opening press the allowances back too, turn their raw edges under and stitch them down.
plain_seam-gap_edges = Press the allowances back along the gap too; they stay raw until the gap is closed by hand.

french_seam-first = Stitch { $first } from the raw edge.
french_seam-trim = Trim off frayed threads.
french_seam-trim_narrow = Trim both allowances to a little less than { $second }, so that no raw edge can show later.
french_seam-trim_sliver = Trim a sliver off both allowances, so that they are narrower than the second row and no raw edge can show later.
french_seam-trim_to = Trim both allowances to { $trim }.
french_seam-turn = Turn the pieces right sides together and crease sharply along the seam.
french_seam-second = Stitch { $second } from the crease: the raw edges are shut in.
french_seam-takes = The two rows together take the seam allowance of { $total }.
french_seam-why = A French seam shuts its raw edges in and suits fine cloth that frays or shows through. In thick cloth it is too bulky.
french_seam-why_wrong_sides = The first row looks wrong, with the wrong sides together: turning afterwards puts it right and hides the edges inside.

press-open = Press the allowances along { $edge } open, first from the wrong side, then lightly from the right side through a cloth.
press-one_side = Press the seam along { $edge } to one side.
press-towards = Press the seam along { $edge } towards { $piece }.
press-edge = Roll the seam along { $edge } to the very edge and press.
press-why = Press each seam before another crosses it: afterwards the iron cannot reach in.
