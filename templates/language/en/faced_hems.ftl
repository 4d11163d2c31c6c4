# Sentences of kit/sewing/operations/faced_hems.py.

faced_hem-pin = Pin { $facing } to { $edge }, right sides together.
faced_hem-sew = Stitch { $allowance } from the edge in one row.
faced_hem-grade = Trim the allowance of the facing narrower than that of the garment.
faced_hem-press = Press the allowances towards the facing, then turn the facing to the inside and press, the seam just inside the fold.
faced_hem-turn_free = Turn the free edge of the facing under by { $turn } and press.
faced_hem-finish_free = Finish the free edge of the facing with { $finish }.
faced_hem-free_done = The free edge of the facing is finished already.
faced_hem-hand = Sew it down by hand with loose blind stitches.
faced_hem-machine = Stitch it down close to its free edge.
faced_hem-why = Where an edge is too curved, or the cloth too short or too thick for a turned hem, a facing of its own shape lies flat.
